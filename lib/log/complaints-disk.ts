// What can be wrong with a file before any of it is read.

import { issueMessage } from "../message.ts";

/** Why a file could not be read, as the disk tells it. */
export const unreadable = issueMessage(
  "disk/unreadable",
  "error",
  (why: string, remedy: string | undefined) => ({
    message: why,
    remedy: remedy ?? "Look whether the file is there and may be read.",
  }),
);

export const notUtf8 = issueMessage("disk/not-utf8", "warning", () => ({
  message:
    "The file is not in UTF-8: letters and signs outside plain English, such as ± and µ, are lost, here the first of them.",
  remedy: "Open it in a text editor and save it as UTF-8 (under Save as, Encoding).",
}));
