// Why nothing was saved, and what to do; what was typed is still in the page.

import { fileRefusal, type Refusal } from "./refusal.ts";

export interface Refused {
  readonly kind: "refused";
  /** A whole sentence. */
  readonly message: string;
  /** What to do about it. */
  readonly remedy: string;
}

const COPY = "Save a copy elsewhere from the page";

function refused(message: string, remedy: string): Refused {
  return { kind: "refused", message, remedy };
}

/** A fault of the file system, by what it means for saving; what is no such fault is thrown on. */
export function cannotSave(error: unknown, name: string): Refused {
  switch ((error as NodeJS.ErrnoException).code) {
    case "ENOSPC":
    case "EDQUOT":
      return refused(
        `${name} is not saved: the disk is full. The file is as it was.`,
        `Make room and save again. ${COPY} if that cannot wait.`,
      );
    case "EROFS":
      return refused(`${name} is not saved: the disk is read-only.`, `${COPY}, to another disk.`);
    case "EACCES":
    case "EPERM":
      return readOnly(name);
    case "ENOENT":
      return vanished(name);
    case "EISDIR":
      return noFile(name);
    default: {
      const { refused: message, remedy } = fileRefusal(error, name, "written");
      return refused(message, remedy ?? `${COPY}.`);
    }
  }
}

export function cannotRead({ refused: message, remedy }: Refusal): Refused {
  return refused(`Nothing is saved. ${message}`, remedy ?? `${COPY}.`);
}

export function readOnly(name: string): Refused {
  return refused(
    `${name} is not saved: your account may not write the file, or may write nothing in its folder.`,
    `Change the permissions and save again, or: ${COPY}.`,
  );
}

export function vanished(name: string): Refused {
  return refused(
    `${name} is not saved: it is no longer there, so it was moved, renamed or deleted.`,
    `Put it back and save again, or: ${COPY}.`,
  );
}

export function noFile(name: string): Refused {
  return refused(
    `${name} is not saved: something that is no plain file stands in its place.`,
    `Move that away and put the file back, or: ${COPY}.`,
  );
}

export function busy(name: string): Refused {
  return refused(
    `${name} is not saved: another program is saving in this folder at the moment.`,
    "Save again in a few seconds.",
  );
}

export function notUtf8(name: string): Refused {
  return refused(
    `${name} is not saved: the file on the disk is not in UTF-8, and saving would lose some of its letters.`,
    "Open it in a text editor, save it as UTF-8, and load the page again.",
  );
}

export function tooLong(name: string): Refused {
  return refused(
    `${name} is not saved: it is or would be larger than 5 MB, and could not be read again.`,
    "Take rows out, or begin a second log.",
  );
}

export function brokenText(name: string): Refused {
  return refused(
    `${name} is not saved: it holds half of a sign, which no file can hold.`,
    "Type the last entry anew.",
  );
}

export function strangeFiles(log: string): Refused {
  return refused(
    `Nothing is saved: the page asked for files other than ${log} and the CSV files that it names.`,
    "Load the page again.",
  );
}

export function unreadableRequest(): Refused {
  return refused("Nothing is saved: what the page sent is not a log with its files.", "Load the page again.");
}

export function tooMuch(): Refused {
  return refused(
    "Nothing is saved: the log and its CSV files are too much for one save.",
    `${COPY}, and keep older rows in a log of their own.`,
  );
}

export function halfWay(saved: readonly string[], cause: Refused): Refused {
  return refused(
    `${cause.message} ${saved.join(", ")} ${saved.length === 1 ? "was" : "were"} saved before that.`,
    cause.remedy,
  );
}
