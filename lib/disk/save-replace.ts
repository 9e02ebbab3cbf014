// One file put in the place of another: whole, or not at all.

import { randomBytes } from "node:crypto";
import * as fs from "node:fs";
import { dirname, join } from "node:path";

/** What of the file system can fail while saving; a test hands in one that does. */
export type Disk = Pick<typeof fs, "writeFileSync" | "fsyncSync" | "renameSync">;
export const DISK: Disk = fs;

const FRESH = /^\.mullbook-save-[0-9a-f]{12}\.tmp$/;

/** The version that a save replaced stands beside the file under this name. */
export function beforeName(path: string): string {
  return `${path}.before`;
}

/**
 * Writes the bytes beside the file, flushed, under a name of their own; mode and owner are those of the file where the
 * system lets us. Access lists and other attributes are not carried over. Returns the path.
 */
export function writeBeside(path: string, bytes: Uint8Array, disk: Disk): string {
  const like = fs.statSync(path);
  const fresh = join(dirname(path), `.mullbook-save-${randomBytes(6).toString("hex")}.tmp`);
  const file = fs.openSync(fresh, "wx", 0o600);
  try {
    try {
      disk.writeFileSync(file, bytes);
      try {
        fs.fchownSync(file, like.uid, like.gid);
      } catch (error) {
        // Only an administrator may give a file away.
        if (!/^(EPERM|ENOSYS|EINVAL)$/.test((error as NodeJS.ErrnoException).code ?? "")) throw error;
      }
      fs.fchmodSync(file, like.mode & 0o7777);
      disk.fsyncSync(file);
    } finally {
      fs.closeSync(file);
    }
  } catch (error) {
    fs.rmSync(fresh, { force: true });
    throw error;
  }
  return fresh;
}

/** Makes the renames in a folder last through a power cut, on systems where a folder can be flushed. */
export function flushFolder(folder: string, disk: Disk): void {
  if (process.platform === "win32") return;
  const file = fs.openSync(folder, "r");
  try {
    disk.fsyncSync(file);
  } catch (error) {
    if (!/^(EINVAL|ENOTSUP|EPERM)$/.test((error as NodeJS.ErrnoException).code ?? "")) throw error;
  } finally {
    fs.closeSync(file);
  }
}

/** Removes what saves that were cut off have left. Only for whoever holds the folder's lock. */
export function sweepFresh(folder: string): void {
  for (const name of fs.readdirSync(folder)) {
    if (FRESH.test(name)) fs.rmSync(join(folder, name), { force: true });
  }
}
