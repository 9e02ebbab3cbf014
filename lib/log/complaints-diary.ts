// What can be wrong with the reminders of a diary.

import type { Issue } from "../issue.ts";

export const remindNothing = (): Issue => ({
  code: "log/remind-nothing",
  severity: "warning",
  message: "After remind, tests with days are expected, and none stands there.",
  remedy: "Write `remind: { moisture: 1 day, green compression: 7 days }`",
});
