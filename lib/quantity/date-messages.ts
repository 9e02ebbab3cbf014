// What can be wrong with a typed date.

import type { Issue } from "../issue.ts";

export const badDate = (text: string, readings: string, example: string): Issue => ({
  code: "log/bad-date",
  severity: "warning",
  message: `"${text}" is not a date as year-month-day${readings === "" ? "" : `; it could be ${readings}`}.`,
  remedy: `Write the day as ${example}.`,
});

export const impossibleDate = (text: string, why: string): Issue => ({
  code: "log/impossible-date",
  severity: "warning",
  message: `There is no day ${text}: ${why}.`,
  remedy: "Write the right day as year-month-day.",
});
