// Why nothing was saved, as an answer to the page.

import type { Issue } from "../issue.ts";
import * as say from "../log/complaints-save.ts";
import { fileRefusal, type Refusal } from "./refusal.ts";

export interface Refused {
  readonly kind: "refused";
  /** A whole sentence. */
  readonly message: string;
  /** What to do about it. */
  readonly remedy: string;
}

export function refused({ message, remedy = "" }: Issue): Refused {
  return { kind: "refused", message, remedy };
}

/** A fault of the file system, by what it means for saving; what is no such fault is thrown on. */
export function cannotSave(error: unknown, name: string): Refused {
  switch ((error as NodeJS.ErrnoException).code) {
    case "ENOSPC":
    case "EDQUOT":
      return refused(say.diskFull(name));
    case "EROFS":
      return refused(say.readOnlyDisk(name));
    case "EACCES":
    case "EPERM":
      return refused(say.readOnly(name));
    case "ENOENT":
      return refused(say.vanished(name));
    case "EISDIR":
      return refused(say.noFile(name));
    default: {
      const { refused: why, remedy } = fileRefusal(error, name, "written");
      return refused(say.otherwise(why, remedy));
    }
  }
}

export function cannotRead({ refused: why, remedy }: Refusal): Refused {
  return refused(say.otherwise(`Nothing is saved. ${why}`, remedy));
}

export function halfWay(saved: readonly string[], { message, remedy }: Refused): Refused {
  return refused(say.halfWay(message, remedy, saved.join(", "), saved.length > 1));
}
