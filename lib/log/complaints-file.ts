// What can be wrong with a file as a whole: one function a complaint, plain words in, an issue out.

import { issueMessage } from "../message.ts";

export const emptyFile = issueMessage("log/empty-file", "error", (table: boolean) => ({
  message: "The file is empty.",
  remedy: table
    ? "Write a row that names the columns (date, start, one for each sieve, pan), and under it a row for each sieving or batch."
    : "Begin with a starter log (mullbook begin my-log.yaml) and put your own sand in the place of the example.",
}));

export const notText = issueMessage("log/not-text", "error", (kind: string, table: boolean) => ({
  message: `This is not a text file; it seems to be ${kind}.`,
  remedy: table
    ? "Save the table as CSV from the program that made it: a plain text file."
    : "Name the log itself: a plain text file in UTF-8, as a text editor saves it.",
}));

export const inUtf16 = issueMessage("log/utf-16", "error", () => ({
  message: "The file is written in UTF-16 (some editors call it Unicode), which is not read.",
  remedy:
    "Open it in its editor and save it as UTF-8 (under Save as, Encoding); from a spreadsheet, as CSV UTF-8.",
}));

export const tooLarge = issueMessage("log/too-large", "error", (size: string, limit: string) => ({
  message: `The file holds ${size}; a log or a CSV file may hold up to ${limit}.`,
  remedy: "Check that it is the right file; a season of sievings stays far below this. Split what is longer.",
}));

export const hiddenCharacter = issueMessage("log/hidden-character", "warning", (name: string) => ({
  message: `A character that cannot be seen stands here (${name}).`,
  remedy: "Delete the word around it and type it again.",
}));

export const tooDeep = issueMessage("log/too-deep", "error", (limit: string) => ({
  message: `From here on, more than ${limit} levels lie within one another; a log needs about seven.`,
  remedy:
    "Look for a bracket [ or { that is never closed, or for lines that are indented further and further.",
}));

export const notALog = issueMessage("log/not-a-log", "error", () => ({
  message: "This is text, but not a log: a log is made of lines such as `title: My sands`.",
  remedy: "See a starter log: mullbook begin my-log.yaml.",
}));

export const noFormat = issueMessage("log/no-format", "warning", () => ({
  message: "The log does not say which format it is in; it is read as format 1.",
  remedy: "Write `format: 1` as the first line.",
}));

export const noUsualRanges = issueMessage(
  "log/no-usual-ranges",
  "note",
  (unsaid: string, example: string) => ({
    message: `The log does not say ${unsaid}; usual ranges need the metal and the bond, so none is shown.`,
    remedy: `Write at the top ${example}, or what yours is.`,
  }),
);

export const badFormat = issueMessage("log/bad-format", "warning", (text: string) => ({
  message: `"${text}" is not the number of a format; the log is read as format 1.`,
  remedy: "Write `format: 1`.",
}));

export const newerFormat = issueMessage("log/newer-format", "error", (text: string) => ({
  message: `The log is in format ${text}, which is newer than this library: it reads format 1.`,
  remedy: "Bring the library up to date, or write `format: 1` if that is what the log is.",
}));

export const secondLog = issueMessage("log/second-log", "error", (names: string, first: string) => ({
  message: `A second log begins here: ${names} stand a second time (the first "format" on line ${first}); nothing from here on is read.`,
  remedy:
    "Keep it in a file of its own; or put its sands below those of the first log, under the one `sands:`, and take the rest away.",
}));

export const noSands = issueMessage("log/no-sands", "error", () => ({
  message: "The log names no sand, no batch and no sheet.",
  remedy:
    "Write `sands:` and under it, indented, the name of a sand with its sievings; `batches:` with what was tested, or `sheets:` with columns and rows of your own.",
}));
