// Why an edit of a log is refused, or what it does besides.

import type { Issue } from "../issue.ts";

const refused = (code: string, message: string, remedy: string): Issue => ({
  code: `log/edit-${code}`,
  severity: "error",
  message,
  remedy,
});

export const noSuchText = (file: string): Issue =>
  refused(
    "no-file",
    `"${file}" is neither this log nor a CSV file that it names.`,
    "Read the log again, with the files beside it.",
  );

export const unreadableText = (file: string): Issue =>
  refused(
    "unreadable",
    `"${file}" cannot be read as it stands, so nothing is written into it.`,
    "Put right in a text editor what the log's check complains of, then read it again.",
  );

export const noValueHere = (file: string): Issue =>
  refused(
    "no-value",
    `No value that can be changed stands at this place of "${file}".`,
    "Read the log again: it may have changed since. What stands on a line that could not be read is put right in a text editor.",
  );

export const throughRepeat = (name: string): Issue =>
  refused(
    "repeat",
    `"${name}" only repeats by * what is written elsewhere.`,
    "Change it where the & stands; or, in a text editor, write the figures out in the place of the *.",
  );

export const alsoRepeated = (times: string): Issue => ({
  code: "log/edit-repeated",
  severity: "note",
  message: `What was changed is repeated by * at ${times === "1" ? "one other place" : `${times} other places`}, which changed with it.`,
});

export const changesMore = (text: string): Issue =>
  refused(
    "changes-more",
    `Written here, "${text}" would change more of the file than this one value, so it is not written.`,
    "Make this change in a text editor, and have the log checked.",
  );

export const nothingWritten = (name: string): Issue =>
  refused("no-name", `A name cannot be left empty; "${name}" stays.`, "Write a name, or remove the entry.");

export const nameTaken = (name: string): Issue =>
  refused("name-taken", `"${name}" is there already.`, "Choose another name, or change what is there.");

export const noSuchPath = (path: string): Issue =>
  refused("no-path", `The log has no ${path}.`, "Read the log again: it may have changed since.");

export const standsTwice = (name: string): Issue =>
  refused(
    "twice",
    `"${name}" stands more than once here, so it cannot be told which is meant.`,
    "Give one of them another name first.",
  );

export const notRows = (path: string): Issue =>
  refused(
    "not-rows",
    `${path} is a single value: nothing can be added to it.`,
    "Change the value itself, or make a list of it in a text editor.",
  );

export const noNameWanted = (path: string): Issue =>
  refused("name-unwanted", `${path} is a list: its rows have no names.`, "Leave the name out.");

export const clashingKeys = (key: string): Issue =>
  refused(
    "clashing-keys",
    `"${key}" is given both as a value and with values below it.`,
    "Give it one or the other.",
  );

export const lastOne = (): Issue =>
  refused("last", "A log cannot be left without anything in it.", "Remove the file instead.");

export const commentBetween = (name: string): Issue =>
  refused(
    "comment-between",
    `Between "${name}" and what follows stands a comment that would be lost.`,
    "Remove it in a text editor.",
  );

export const oddWriting = (path: string): Issue =>
  refused(
    "odd-writing",
    `${path} is written in a way in which its parts cannot surely be told apart.`,
    "Make this change in a text editor: one entry a line, or commas between entries in brackets.",
  );

export const unknownColumns = (names: string, known: string): Issue =>
  refused("unknown-column", `The file has no column ${names}.`, `Its columns are ${known}.`);

export const noSuchRow = (row: string, rows: string): Issue =>
  refused(
    "no-row",
    `There is no row ${row}: the file has ${rows}.`,
    "Read the file again: it may have changed since.",
  );

export const signInCsv = (): Issue =>
  refused(
    "sign",
    "A character that a CSV file cannot hold stands in this text.",
    "Leave out signs that cannot be seen.",
  );
