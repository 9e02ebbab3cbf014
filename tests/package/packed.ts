// The package as npm packs it, from dist as it is built from this source.

import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { built, root, temporaryFolder } from "../cli/mullbook.ts";

export interface Packed {
  /** Of the packed file. */
  readonly path: string;
  /** Of the files in it, with "/". */
  readonly names: readonly string[];
  readonly bytes: number;
}

/** True where the long form is asked for: npm run package. */
export const whole = process.env.PACKAGE === "whole";

let once: Promise<Packed> | undefined;
export function packed(): Promise<Packed> {
  once ??= pack();
  return once;
}

async function pack(): Promise<Packed> {
  await built();
  const folder = temporaryFolder();
  const options = ["--json", "--ignore-scripts", "--pack-destination", folder];
  const run = spawnSync("npm", ["pack", ...options], { cwd: root, encoding: "utf8" });
  if (run.status !== 0) throw new Error(`npm pack ended with ${run.status}:\n${run.stderr}`);
  const [report] = JSON.parse(run.stdout) as readonly {
    readonly filename: string;
    readonly size: number;
    readonly files: readonly { readonly path: string }[];
  }[];
  const { filename, size, files } = report!;
  return { path: join(folder, filename), names: files.map(({ path }) => path), bytes: size };
}
