// Something that test files that run at once want made once: the first makes it, the others wait.

import { mkdirSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";

/** Longer than anything here takes; a lock this old was left by a run that was stopped. */
const LOCK_AGE_MS = 120_000;

export async function madeOnce(
  name: string,
  isThere: () => boolean,
  make: () => Promise<void> | void,
): Promise<void> {
  const lock = join(import.meta.dirname, "..", "node_modules", `.mullbook-${name}`);
  while (!isThere()) {
    try {
      mkdirSync(lock);
    } catch {
      const since = statSync(lock, { throwIfNoEntry: false })?.mtimeMs;
      if (since !== undefined && Date.now() - since > LOCK_AGE_MS)
        rmSync(lock, { recursive: true, force: true });
      await pause(100);
      continue;
    }
    try {
      if (!isThere()) await make();
    } finally {
      rmSync(lock, { recursive: true, force: true });
    }
  }
}
