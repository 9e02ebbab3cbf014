// The types of the public door, as the compiler writes them, without those that no public name leads to.

import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync, rmdirSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";

const require = createRequire(import.meta.url);

/** Writes dist/types anew. False where the compiler complains; it has said of what. */
export function buildTypes(root: string): boolean {
  const types = join(root, "dist", "types");
  rmSync(types, { recursive: true, force: true });
  const tsc = join(dirname(require.resolve("typescript/package.json")), "bin", "tsc");
  const project = ["-p", "lib/disk/types.tsconfig.json"];
  if (spawnSync(process.execPath, [tsc, ...project], { cwd: root, stdio: "inherit" }).status !== 0)
    return false;
  const wanted = reached(join(types, "index.d.ts"));
  for (const name of readdirSync(types, { recursive: true, encoding: "utf8" })) {
    const path = join(types, name);
    if (name.endsWith(".d.ts") && !wanted.has(path)) rmSync(path);
  }
  for (const entry of readdirSync(types, { withFileTypes: true })) {
    const folder = join(types, entry.name);
    if (entry.isDirectory() && readdirSync(folder).length === 0) rmdirSync(folder);
  }
  return true;
}

/** A file of types and all that it imports, however far. */
function reached(path: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(path)) return seen;
  seen.add(path);
  for (const [, file] of readFileSync(path, "utf8").matchAll(
    /\b(?:from |import\(|import )"(\.[^"\n]+)\.ts"/g,
  ))
    reached(join(dirname(path), `${file}.d.ts`), seen);
  return seen;
}
