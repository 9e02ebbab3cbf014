// Why an edit of a log is refused, or what it does besides.

import { issueMessage } from "../message.ts";

export const noSuchText = issueMessage("log/edit-no-file", "error", (file: string) => ({
  message: `"${file}" is neither this log nor a CSV file that it names.`,
  remedy: "Read the log again, with the files beside it.",
}));

export const unreadableText = issueMessage("log/edit-unreadable", "error", (file: string) => ({
  message: `"${file}" cannot be read as it stands, so nothing is written into it.`,
  remedy: "Put right in a text editor what the log's check complains of, then read it again.",
}));

export const noValueHere = issueMessage("log/edit-no-value", "error", (file: string) => ({
  message: `No value that can be changed stands at this place of "${file}".`,
  remedy:
    "Read the log again: it may have changed since. What stands on a line that could not be read is put right in a text editor.",
}));

export const throughRepeat = issueMessage("log/edit-repeat", "error", (name: string) => ({
  message: `"${name}" only repeats by * what is written elsewhere.`,
  remedy: "Change it where the & stands; or, in a text editor, write the figures out in the place of the *.",
}));

export const alsoRepeated = issueMessage("log/edit-repeated", "note", (times: string) => ({
  message: `What was changed is repeated by * at ${times === "1" ? "one other place" : `${times} other places`}, which changed with it.`,
}));

export const changesMore = issueMessage("log/edit-changes-more", "error", (text: string) => ({
  message: `Written here, "${text}" would change more of the file than this one value, so it is not written.`,
  remedy: "Make this change in a text editor, and have the log checked.",
}));

export const nothingWritten = issueMessage("log/edit-no-name", "error", (name: string) => ({
  message: `A name cannot be left empty; "${name}" stays.`,
  remedy: "Write a name, or remove the entry.",
}));

export const nameTaken = issueMessage("log/edit-name-taken", "error", (name: string) => ({
  message: `"${name}" is there already.`,
  remedy: "Choose another name, or change what is there.",
}));

export const noSuchPath = issueMessage("log/edit-no-path", "error", (path: string) => ({
  message: `The log has no ${path}.`,
  remedy: "Read the log again: it may have changed since.",
}));

export const standsTwice = issueMessage("log/edit-twice", "error", (name: string) => ({
  message: `"${name}" stands more than once here, so it cannot be told which is meant.`,
  remedy: "Give one of them another name first.",
}));

export const notRows = issueMessage("log/edit-not-rows", "error", (path: string) => ({
  message: `${path} is a single value: nothing can be added to it.`,
  remedy: "Change the value itself, or make a list of it in a text editor.",
}));

export const noNameWanted = issueMessage("log/edit-name-unwanted", "error", (path: string) => ({
  message: `${path} is a list: its rows have no names.`,
  remedy: "Leave the name out.",
}));

export const clashingKeys = issueMessage("log/edit-clashing-keys", "error", (key: string) => ({
  message: `"${key}" is given both as a value and with values below it.`,
  remedy: "Give it one or the other.",
}));

export const lastOne = issueMessage("log/edit-last", "error", () => ({
  message: "A log cannot be left without anything in it.",
  remedy: "Remove the file instead.",
}));

export const commentBetween = issueMessage("log/edit-comment-between", "error", (name: string) => ({
  message: `Between "${name}" and what follows stands a comment that would be lost.`,
  remedy: "Remove it in a text editor.",
}));

export const oddWriting = issueMessage("log/edit-odd-writing", "error", (path: string) => ({
  message: `${path} is written in a way in which its parts cannot surely be told apart.`,
  remedy: "Make this change in a text editor: one entry a line, or commas between entries in brackets.",
}));

export const unknownColumns = issueMessage(
  "log/edit-unknown-column",
  "error",
  (names: string, known: string) => ({
    message: `The file has no column ${names}.`,
    remedy: `Its columns are ${known}.`,
  }),
);

export const noSuchRow = issueMessage("log/edit-no-row", "error", (row: string, rows: string) => ({
  message: `There is no row ${row}: the file has ${rows}.`,
  remedy: "Read the file again: it may have changed since.",
}));

export const signInCsv = issueMessage("log/edit-sign", "error", () => ({
  message: "A character that cannot be seen stands in this text, and a CSV file has no way to show it.",
  remedy: "Type the text again instead of pasting it, without signs that cannot be seen.",
}));
