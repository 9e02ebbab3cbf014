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

type Doing = "read" | "written";

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

const noFolder = (path: string): Refusal => ({
  refused: `${path} cannot be reached: a part of the path is a file, not a folder.`,
  remedy: "Put the path right.",
});
const noRight = (path: string, doing: Doing): Refusal => ({
  refused: `${path} may not be ${doing}: your account has no permission.`,
  remedy: doing === "read" ? "Change the file's permissions." : "Choose another folder: --to DIR.",
});
const full = (path: string): Refusal => ({
  refused: `${path} cannot be written: the disk is full.`,
  remedy: "Make room, or choose another disk: --to DIR. Nothing that was there has changed.",
});

const FAULTS: { readonly [code: string]: (path: string, doing: Doing) => Refusal } = {
  ENOENT: (path) => ({ refused: `There is no file ${path}.`, remedy: "Put the name or the folder right." }),
  EACCES: noRight,
  EPERM: noRight,
  EROFS: (path) => ({
    refused: `${path} cannot be written: the disk is read-only.`,
    remedy: "Choose another folder: --to DIR.",
  }),
  ENOSPC: full,
  EDQUOT: full,
  ENOTDIR: noFolder,
  EEXIST: noFolder,
  EISDIR: (path) => ({ refused: `${path} is a folder, not a file.`, remedy: "Name the file in it." }),
  ENAMETOOLONG: (path) => ({
    refused: `${path.slice(0, 60)} ... is longer than a name may be.`,
    remedy: "Choose a shorter name.",
  }),
  ELOOP: (path) => ({
    refused: `${path} is a link that leads back to itself.`,
    remedy: "Name the file itself.",
  }),
};
