// The new files into the place of the old ones, all prepared before the first is renamed.

import { accessSync, constants, rmSync, type Stats, statSync } from "node:fs";
import { dirname } from "node:path";
import type { Lock } from "./save-lock.ts";
import { cannotSave, halfWay, type Refused } from "./save-messages.ts";
import { beforeName, type Disk, flushFolder, writeBeside } from "./save-replace.ts";

export interface Target {
  readonly name: string;
  /** The file itself, where the name is a link. */
  readonly path: string;
  readonly base: Buffer;
  readonly text: Buffer;
}

/** A file as it was found under the lock. */
export interface Now {
  readonly target: Target;
  readonly bytes: Buffer;
  readonly stats: Stats;
}

/** Each once and in one order, so that two programs never wait for each other. */
export function foldersOf(targets: readonly Target[]): string[] {
  return [...new Set(targets.map(({ path }) => dirname(path)))].sort();
}

/** Write access by the account, and at least one right to write on the file: an administrator's account has any. */
export function isWritable(path: string): boolean {
  try {
    accessSync(path, constants.W_OK);
    return (statSync(path).mode & 0o222) !== 0;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "EACCES" || code === "EPERM") return false;
    throw error;
  }
}

/** Undefined where all is done; "changed" where somebody else came between, and nothing is. */
export function replaceAll(
  changed: readonly Now[],
  locks: readonly Lock[],
  disk: Disk,
): "changed" | Refused | undefined {
  const fresh: string[] = [];
  const done: string[] = [];
  let at = changed[0]!.target.name;
  try {
    const ready = changed.map(({ target, bytes }) => {
      at = target.name;
      const [before, after] = [bytes, target.text].map((one) => {
        const written = writeBeside(target.path, one, disk);
        fresh.push(written);
        return written;
      });
      return { target, before: before!, after: after! };
    });
    for (const { target, before } of ready) {
      at = beforeName(target.name);
      disk.renameSync(before, beforeName(target.path));
    }
    if (!locks.every((lock) => lock.held()) || changed.some(isTouched)) return "changed";
    for (const { target, after } of ready) {
      at = target.name;
      disk.renameSync(after, target.path);
      done.push(target.name);
    }
    for (const folder of foldersOf(changed.map(({ target }) => target))) flushFolder(folder, disk);
    return undefined;
  } catch (error) {
    const cause = cannotSave(error, at);
    return done.length === 0 ? cause : halfWay(done, cause);
  } finally {
    for (const path of fresh) rmSync(path, { force: true });
  }
}

function isTouched({ target, stats }: Now): boolean {
  const there = statSync(target.path, { throwIfNoEntry: false });
  return (
    !there ||
    there.ino !== stats.ino ||
    there.size !== stats.size ||
    there.mtimeMs !== stats.mtimeMs ||
    there.ctimeMs !== stats.ctimeMs
  );
}
