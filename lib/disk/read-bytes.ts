// A file's bytes, unless it is too large or no file at all.

import { closeSync, fstatSync, openSync, readSync, statSync } from "node:fs";
import { nearFile } from "./near-file.ts";
import { fileRefusal, type Refusal } from "./refusal.ts";

/** Says how large the file is where it is larger than the limit; nothing of it is read then. */
export interface TooLarge {
  readonly bytes: number;
}

/**
 * Only a plain file: a pipe or a device could be without end, and opening it could wait for ever.
 * @param called  What the file is called in words: its path unless said otherwise.
 */
export function readBytes(path: string, limit: number, called = path): Buffer | TooLarge | Refusal {
  try {
    const before = statSync(path);
    if (before.isDirectory())
      return { refused: `${called} is a folder, not a file.`, remedy: "Name the file in it." };
    if (!before.isFile())
      return { refused: `${called} is not a plain file.`, remedy: "Save the text as a file and name that." };
    const file = openSync(path, "r");
    try {
      const { size } = fstatSync(file);
      if (size > limit) return { bytes: size };
      const bytes = Buffer.alloc(size);
      let have = 0;
      // An editor may be saving it at this moment: what is there counts.
      for (let got = -1; got !== 0 && have < size; have += got)
        got = readSync(file, bytes, have, size - have, have);
      return bytes.subarray(0, have);
    } finally {
      closeSync(file);
    }
  } catch (error) {
    const refusal = fileRefusal(error, called, "read");
    const near = (error as NodeJS.ErrnoException).code === "ENOENT" ? nearFile(path) : undefined;
    return near === undefined ? refusal : { ...refusal, remedy: `Did you mean ${near}?` };
  }
}
