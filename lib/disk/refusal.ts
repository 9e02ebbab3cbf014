// What a command answers when it cannot do what it was asked: words and a remedy, never a stack.

export interface Refusal {
  /** What is in the way: a whole sentence. */
  readonly refused: string;
  /** What to do about it. */
  readonly remedy?: string;
}

export function isRefusal(value: object): value is Refusal {
  return "refused" in value;
}

/** What was under way: a page goes to another folder by --to, a new log by its own name. */
type Doing = "read" | "written" | "begun";

/** A fault of the file system in plain words; what is no such fault is thrown on. */
export function fileRefusal(error: unknown, path: string, doing: Doing): Refusal {
  const { code } = error as NodeJS.ErrnoException;
  const known = code === undefined ? undefined : FAULTS[code];
  if (known) return known(path, doing);
  if (code === undefined || !/^E[A-Z0-9]+$/.test(code)) throw error;
  return {
    refused: `${path} cannot be ${doing} (${code}).`,
    remedy: "Try a file on another disk or in another folder.",
  };
}

const another = (what: "disk" | "folder", doing: Doing): string =>
  doing === "written" ? `another ${what}: --to DIR` : `another ${what} for it`;

const noFolder = (path: string): Refusal => ({
  refused: `${path} cannot be reached: a part of the path is a file, not a folder.`,
  remedy: "Put the path right.",
});
const noRight = (path: string, doing: Doing): Refusal => ({
  refused: `${path} may not be ${doing}: your account has no permission.`,
  remedy: doing === "read" ? "Change the file's permissions." : `Choose ${another("folder", doing)}.`,
});
const full = (path: string, doing: Doing): Refusal => ({
  refused: `${path} cannot be ${doing}: the disk is full.`,
  remedy: `Make room, or choose ${another("disk", doing)}. Nothing that was there has changed.`,
});
const notThere = (path: string, doing: Doing): Refusal => {
  if (path.trim() === "")
    return { refused: "The name of the file is empty.", remedy: "Write its name in full." };
  if (path === "-")
    return {
      refused: "A log is read from a file, not from what is piped in.",
      remedy: "Save the text as a file and name that.",
    };
  if (doing === "read")
    return { refused: `There is no file ${path}.`, remedy: "Put the name or the folder right." };
  return {
    refused: `${path} cannot be ${doing}: its folder is not there and cannot be made.`,
    remedy: `Choose ${another("folder", doing)}.`,
  };
};
const isFolder = (path: string, doing: Doing): Refusal =>
  doing === "read"
    ? { refused: `${path} is a folder, not a file.`, remedy: "Name the file in it." }
    : {
        refused: `${path} cannot be ${doing}: there is a folder of that name.`,
        remedy: `Move that folder away, or choose ${another("folder", doing)}.`,
      };

const FAULTS: { readonly [code: string]: (path: string, doing: Doing) => Refusal } = {
  ENOENT: notThere,
  EACCES: noRight,
  EPERM: noRight,
  EROFS: (path, doing) => ({
    refused: `${path} cannot be ${doing}: the disk is read-only.`,
    remedy: `Choose ${another("folder", doing)}.`,
  }),
  ENOSPC: full,
  EDQUOT: full,
  ENOTDIR: noFolder,
  EEXIST: noFolder,
  EISDIR: isFolder,
  ENAMETOOLONG: (path) => ({
    refused: `${path.slice(0, 60)} ... is longer than a name may be.`,
    remedy: "Choose a shorter name.",
  }),
  ELOOP: (path) => ({
    refused: `${path} is a link that leads back to itself.`,
    remedy: "Name the file itself.",
  }),
};
