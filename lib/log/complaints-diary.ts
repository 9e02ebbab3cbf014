// What can be wrong with the reminders of a diary.

import { issueMessage } from "../message.ts";

export const remindNothing = issueMessage("log/remind-nothing", "warning", () => ({
  message: "After remind, tests with days are expected, and none stands there.",
  remedy: "Write `remind: { moisture: 1 day, green compression: 7 days }`",
}));
