// Folders made where they are missing.

import { mkdirSync, statSync } from "node:fs";
import { dirname } from "node:path";

/**
 * Makes a folder and those above it. One at a time, from the top: where a folder takes nothing new, as /proc does, the
 * recursion of mkdirSync never ends. Throws what the file system says.
 */
export function makeFolders(path: string): void {
  if (isFolder(path)) return;
  if (dirname(path) !== path) makeFolders(dirname(path));
  try {
    mkdirSync(path);
  } catch (error) {
    // Another program may have made it meanwhile.
    if (!isFolder(path)) throw error;
  }
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() === true;
}
