// Why a log is not saved, and what to do; what was typed is still in the page.

import { issueMessage } from "../message.ts";

const COPY = "Save a copy elsewhere from the page";

/** name: of the file, here and below. */
export const diskFull = issueMessage("save/disk-full", "error", (name: string) => ({
  message: `${name} is not saved: the disk is full. The file is as it was.`,
  remedy: `Make room and save again. ${COPY} if that cannot wait.`,
}));

export const readOnlyDisk = issueMessage("save/read-only-disk", "error", (name: string) => ({
  message: `${name} is not saved: the disk is read-only.`,
  remedy: `${COPY}, to another disk.`,
}));

export const readOnly = issueMessage("save/read-only", "error", (name: string) => ({
  message: `${name} is not saved: your account may not write the file, or may write nothing in its folder.`,
  remedy: `Change the permissions and save again, or: ${COPY}.`,
}));

export const vanished = issueMessage("save/vanished", "error", (name: string) => ({
  message: `${name} is not saved: it is no longer there, so it was moved, renamed or deleted.`,
  remedy: `Put it back and save again, or: ${COPY}.`,
}));

export const noFile = issueMessage("save/no-file", "error", (name: string) => ({
  message: `${name} is not saved: something that is no plain file stands in its place.`,
  remedy: `Move that away and put the file back, or: ${COPY}.`,
}));

export const busy = issueMessage("save/busy", "error", (name: string) => ({
  message: `${name} is not saved: another program is saving in this folder at the moment.`,
  remedy: "Save again in a few seconds.",
}));

export const notUtf8There = issueMessage("save/not-utf8", "error", (name: string) => ({
  message: `${name} is not saved: the file on the disk is not in UTF-8, and saving would lose some of its letters.`,
  remedy: "Open it in a text editor, save it as UTF-8, and load the page again.",
}));

export const tooLong = issueMessage("save/too-long", "error", (name: string) => ({
  message: `${name} is not saved: it is or would be larger than 5 MB, and could not be read again.`,
  remedy: "Take rows out, or begin a second log.",
}));

export const brokenText = issueMessage("save/broken-text", "error", (name: string) => ({
  message: `${name} is not saved: it holds half of a sign, which no file can hold.`,
  remedy: "Type the last entry anew.",
}));

export const strangeFiles = issueMessage("save/strange-files", "error", (log: string) => ({
  message: `Nothing is saved: the page asked for files other than ${log} and the CSV files that it names.`,
  remedy: "Load the page again.",
}));

export const unreadableRequest = issueMessage("save/unreadable-request", "error", () => ({
  message: "Nothing is saved: what the page sent is not a log with its files.",
  remedy: "Load the page again.",
}));

export const tooMuch = issueMessage("save/too-much", "error", () => ({
  message: "Nothing is saved: the log and its CSV files are too much for one save.",
  remedy: `${COPY}, and keep older rows in a log of their own.`,
}));

/** why, remedy: as the disk tells them. */
export const otherwise = issueMessage(
  "save/otherwise",
  "error",
  (why: string, remedy: string | undefined) => ({
    message: why,
    remedy: remedy ?? `${COPY}.`,
  }),
);

/** cause: a whole sentence of those above; saved: names of files. */
export const halfWay = issueMessage(
  "save/half-way",
  "error",
  (cause: string, remedy: string, saved: string, several: boolean) => ({
    message: `${cause} ${saved} ${several ? "were" : "was"} saved before that.`,
    remedy,
  }),
);

/** Of the page itself. */
export const noAnswer = issueMessage("save/no-answer", "error", () => ({
  message: "The program that this page came from does not answer.",
  remedy:
    "Save a copy; or start mullbook open again and open the address that it says: this browser brings your changes back there.",
}));
