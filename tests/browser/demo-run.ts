// One run of "mullbook demo" for all test files that look at the demo pages, whichever worker they are in.

import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join, relative } from "node:path";
import { sourceHash } from "../../lib/disk/source-hash.ts";
import { built, mullbookProcess, type Run, root } from "../cli/mullbook.ts";
import { madeOnce } from "../made-once.ts";

export interface DemoRun extends Run {
  /** Where the pages are. */
  readonly folder: string;
}

/** Pages of a source that is no more are kept this long: another run may be reading them. */
const KEPT_MS = 3_600_000;

/** Written by dist as it is built from this source, from the logs as they are now. */
export async function demoRun(): Promise<DemoRun> {
  await built();
  const all = join(root, "node_modules", ".mullbook-demo-pages");
  const folder = join(all, demoHash());
  const record = join(folder, "run.json");
  await madeOnce(
    "demo",
    () => existsSync(record),
    () => {
      mkdirSync(all, { recursive: true });
      for (const old of readdirSync(all)) {
        const path = join(all, old);
        if (Date.now() - statSync(path).mtimeMs > KEPT_MS) rmSync(path, { recursive: true, force: true });
      }
      // From the package's own folder, so that the paths it says are short.
      const run = mullbookProcess(["demo", "--to", relative(root, folder)]);
      if (run.code !== 0) throw new Error(`the demo pages cannot be written:\n${run.err}`);
      writeFileSync(`${record}.tmp`, JSON.stringify(run));
      renameSync(`${record}.tmp`, record);
    },
  );
  return { ...(JSON.parse(readFileSync(record, "utf8")) as Run), folder };
}

function demoHash(): string {
  const hash = createHash("sha256").update(sourceHash(root)).update(process.version);
  const demo = join(root, "data-demo");
  const files = readdirSync(demo, { recursive: true, encoding: "utf8" }).filter((file) =>
    /\.(yaml|csv)$/.test(file),
  );
  for (const file of files.sort()) hash.update(`${file}\0`).update(readFileSync(join(demo, file)));
  return hash.digest("hex").slice(0, 20);
}
