// The command line as a founder runs it: mostly within the test's own process, since a process of its own takes longer
// than most commands; and dist/main.js, built from the source as it stands, where the process itself is the point.

import { spawnSync } from "node:child_process";
import { mkdtempSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { commandLine } from "../../lib/disk/command-line.ts";
import { consoleOn } from "../../lib/disk/console.ts";
import { isBuilt } from "../../lib/disk/source-hash.ts";
import { madeOnce } from "../made-once.ts";

export const root = join(import.meta.dirname, "..", "..");
export const main = join(root, "dist", "main.js");

/** Builds dist unless it is of this source; test files that run at once build once. */
export async function built(): Promise<void> {
  await madeOnce(
    "build",
    () => isBuilt(root),
    () => {
      const run = spawnSync("npm", ["run", "--silent", "build"], { cwd: root, encoding: "utf8" });
      if (run.status !== 0) throw new Error(`the build failed:\n${run.stdout}${run.stderr}`);
    },
  );
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

interface From {
  readonly cwd?: string;
}

/** One call, worked through in this process from the folder named. No run may show a stack. */
export async function mullbook(args: readonly string[], { cwd = root }: From = {}): Promise<Run> {
  const texts = { out: "", err: "" };
  const stream = (name: "out" | "err") => ({
    write: (text: string) => {
      texts[name] += text;
    },
  });
  const started = performance.now();
  const before = process.cwd();
  process.chdir(cwd);
  try {
    const code = await commandLine(args, consoleOn(stream("out"), stream("err")));
    return withoutStack({ code, ...texts, seconds: (performance.now() - started) / 1000 });
  } finally {
    process.chdir(before);
  }
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

/** One call as a process of its own, from dist. No run may show a stack, or take longer than two minutes. */
export function mullbookProcess(
  args: readonly string[],
  { cwd = root, env = {} }: From & { readonly env?: NodeJS.ProcessEnv } = {},
): Run {
  const started = performance.now();
  const folder = binFolder();
  const run = spawnSync(process.execPath, [join(folder, "mullbook"), ...args], {
    encoding: "utf8",
    timeout: 120_000,
    cwd,
    env: { ...asFounder(), PATH: `${folder}:${process.env.PATH}`, ...env },
  });
  if (run.error) throw run.error;
  const seconds = (performance.now() - started) / 1000;
  return withoutStack({ code: run.status, out: run.stdout, err: run.stderr, seconds });
}

function withoutStack(run: Run): Run {
  if (/^ +at /m.test(run.out + run.err)) throw new Error(`a stack reached the founder:\n${run.err}`);
  return run;
}

export function temporaryFolder(): string {
  return mkdtempSync(join(tmpdir(), "mullbook-test-"));
}
