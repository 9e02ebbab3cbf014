// What a live page says about itself.

import { type Issue, issueText } from "../issue.ts";

/** The texts are no log, so that the page of before stands. */
export function noLog(issues: readonly Issue[]): readonly string[] {
  const [first] = issues.filter(({ severity }) => severity === "error");
  return [
    "The log cannot be read as it is now. What you see is the page of before the last change.",
    ...(first ? [issueText(first)] : []),
  ];
}

/** The notebook threw. */
export function notebookFailed(message: string): readonly string[] {
  return [
    "The notebook failed on the log as it is now. What you see is the page of before the last change.",
    message,
  ];
}
