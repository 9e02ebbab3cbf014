// Small programs of the tests as processes of their own: bundled, so that they start in no time.

import { type ChildProcess, spawn } from "node:child_process";
import { chmodSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { temporaryFolder } from "./saving.ts";

/** Path of the program that the file of this folder makes. Every account may run it. */
export async function programOf(file: string): Promise<string> {
  const folder = temporaryFolder();
  chmodSync(folder, 0o755);
  const outfile = join(folder, "program.mjs");
  await build({
    entryPoints: [join(import.meta.dirname, file)],
    bundle: true,
    format: "esm",
    platform: "browser",
    external: ["node:*"],
    outfile,
    logLevel: "silent",
  });
  return outfile;
}

/** What it printed, errors too, once it has ended. */
export function ended(child: ChildProcess): Promise<string> {
  let said = "";
  for (const stream of [child.stdout, child.stderr])
    stream?.on("data", (part: Buffer) => {
      said += part.toString();
    });
  return new Promise((resolve) => child.on("close", () => resolve(said)));
}

export function start(program: string, ...words: readonly (string | number)[]): ChildProcess {
  return spawn(process.execPath, [program, ...words.map(String)]);
}
