// What can be wrong with a typed date.

import { issueMessage } from "../message.ts";

export const badDate = issueMessage(
  "log/bad-date",
  "warning",
  (text: string, readings: string, example: string) => ({
    message: `"${text}" is not a date as year-month-day${readings === "" ? "" : `; it could be ${readings}`}.`,
    remedy: `Write the day as ${example}.`,
  }),
);

export const impossibleDate = issueMessage("log/impossible-date", "warning", (text: string, why: string) => ({
  message: `There is no day ${text}: ${why}.`,
  remedy: "Write the right day as year-month-day.",
}));
