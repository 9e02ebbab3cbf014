// A lock on a folder, so that two programs never save into it at once; a program that died holds it no longer.

import { randomBytes } from "node:crypto";
import {
  closeSync,
  linkSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";

export interface Lock {
  /** False once somebody else took it, which happens only to a program that stood still for a minute. */
  held(): boolean;
  release(): void;
}

export const LOCK_FILE = ".mullbook-saving.lock";

/** No save takes as long: a lock of this age belongs to nobody, whatever it says. */
const LONGEST_SAVE_MS = 60_000;
/** A lock without its words was left by a program that died between making and filling it. */
const UNFILLED_MS = 1000;
const PAUSE_MS = 15;

/**
 * Waits until the lock is free. Undefined where somebody else holds it for longer than the patience; a fault of the
 * file system is thrown. The file says host and process: where that process is gone, the lock is taken over.
 */
export function takeLock(folder: string, patienceMs = 3000): Lock | undefined {
  const path = join(folder, LOCK_FILE);
  const mine = JSON.stringify({ host: hostname(), pid: process.pid, key: randomBytes(8).toString("hex") });
  const until = Date.now() + patienceMs;
  while (!made(path, mine)) {
    const there = lockAt(path);
    if (there !== undefined && isStale(there)) takeAway(path, there.text);
    else if (Date.now() >= until) return undefined;
    else pause(PAUSE_MS);
  }
  const held = () => lockAt(path)?.text === mine;
  return {
    held,
    release: () => {
      if (held()) rmSync(path, { force: true });
    },
  };
}

/** "wx" makes the file or fails: of two programs one is first. */
function made(path: string, text: string): boolean {
  let file: number;
  try {
    file = openSync(path, "wx", 0o644);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
    throw error;
  }
  try {
    writeFileSync(file, text);
  } catch (error) {
    rmSync(path, { force: true });
    throw error;
  } finally {
    closeSync(file);
  }
  return true;
}

interface LockThere {
  readonly text: string;
  readonly ageMs: number;
}

function lockAt(path: string): LockThere | undefined {
  try {
    const text = readFileSync(path, "utf8");
    return { text, ageMs: Date.now() - statSync(path).mtimeMs };
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    throw error;
  }
}

function isStale({ text, ageMs }: LockThere): boolean {
  if (ageMs > LONGEST_SAVE_MS) return true;
  const owner = ownerIn(text);
  if (owner === undefined) return ageMs > UNFILLED_MS;
  if (owner.host !== hostname()) return false;
  // Saving is done in one go: a lock of this process that is met here is from an earlier one of the same number.
  return owner.pid === process.pid || !isRunning(owner.pid);
}

function ownerIn(text: string): { readonly host: string; readonly pid: number } | undefined {
  try {
    const { host, pid } = JSON.parse(text) as { readonly host?: unknown; readonly pid?: unknown };
    return typeof host === "string" && Number.isInteger(pid) ? { host, pid: pid as number } : undefined;
  } catch {
    return undefined;
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Somebody else's process may not be asked, and runs.
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

/**
 * Moves the stale lock aside and looks at what was moved: where another program was faster and it is that one's fresh
 * lock, it is put back. Whoever holds a lock asks held() before the last step all the same.
 */
function takeAway(path: string, stale: string): void {
  const aside = `${path}.${randomBytes(6).toString("hex")}`;
  try {
    renameSync(path, aside);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return;
    throw error;
  }
  try {
    if (readFileSync(aside, "utf8") !== stale) linkSync(aside, path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
  } finally {
    rmSync(aside, { force: true });
  }
}

function pause(ms: number): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);
}
