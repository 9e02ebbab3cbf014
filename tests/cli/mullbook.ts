// The command line as a founder runs it: dist/main.js, built from the source as it stands.

import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { HASH_FILE, sourceHash } from "../../lib/disk/source-hash.ts";

export const root = join(import.meta.dirname, "..", "..");
export const main = join(root, "dist", "main.js");
const lock = join(root, "node_modules", ".mullbook-build");

/** Longer than any build takes; a lock this old was left by a run that was stopped. */
const LOCK_AGE_MS = 120_000;

/** Builds dist unless it is of this source; test files that run at once build once. */
export async function built(): Promise<void> {
  while (!isFresh()) {
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
      if (isFresh()) return;
      const run = spawnSync("npm", ["run", "--silent", "build"], { cwd: root, encoding: "utf8" });
      if (run.status !== 0) throw new Error(`the build failed:\n${run.stdout}${run.stderr}`);
    } finally {
      rmSync(lock, { recursive: true, force: true });
    }
  }
}

function isFresh(): boolean {
  const path = join(root, "dist", HASH_FILE);
  return existsSync(path) && readFileSync(path, "utf8") === sourceHash(root);
}

/** The environment without what npm sets for the scripts that it runs: the tests may be one. */
export function asFounder(): NodeJS.ProcessEnv {
  return Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^npm_|^INIT_CWD$/i.test(name)));
}

export interface Run {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
  readonly seconds: number;
}

let bin: string | undefined;
/** A folder with the program under its own name, as an installation has it; called so, its messages name it so. */
function binFolder(): string {
  if (bin === undefined) {
    bin = temporaryFolder();
    symlinkSync(main, join(bin, "mullbook"));
  }
  return bin;
}

/** No run may show a stack, or take longer than twenty seconds. */
export function mullbook(
  args: readonly string[],
  options: { readonly cwd?: string; readonly env?: NodeJS.ProcessEnv } = {},
): Run {
  const started = performance.now();
  const folder = binFolder();
  const run = spawnSync(process.execPath, [join(folder, "mullbook"), ...args], {
    encoding: "utf8",
    timeout: 120_000,
    cwd: options.cwd ?? root,
    env: { ...asFounder(), PATH: `${folder}:${process.env.PATH}`, ...options.env },
  });
  if (run.error) throw run.error;
  const stack = /^ +at /m.exec(run.stdout + run.stderr);
  if (stack && options.env?.MULLBOOK_DEBUG === undefined)
    throw new Error(`a stack reached the founder:\n${run.stderr}`);
  return {
    code: run.status,
    out: run.stdout,
    err: run.stderr,
    seconds: (performance.now() - started) / 1000,
  };
}

export function temporaryFolder(): string {
  return mkdtempSync(join(tmpdir(), "mullbook-test-"));
}
