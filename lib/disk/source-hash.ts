// Tells whether dist was built from the source as it is.

import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";

/** Written into dist by the build; no part of the published package. */
export const HASH_FILE = ".source-hash";

/** SHA-256 over everything that the build reads: names and bytes of lib, notebooks and the package's own files. */
export function sourceHash(root: string): string {
  const files = ["lib", "notebooks"].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => relative(root, join(entry.parentPath, entry.name))),
  );
  const hash = createHash("sha256");
  for (const file of [...files, "package.json", "package-lock.json", "tsconfig.json"].sort()) {
    hash
      .update(`${file}\0`)
      .update(readFileSync(join(root, file)))
      .update("\0");
  }
  return hash.digest("hex");
}

/** True where dist was built from the source as it is. */
export function isBuilt(root: string): boolean {
  const file = join(root, "dist", HASH_FILE);
  return existsSync(file) && readFileSync(file, "utf8") === sourceHash(root);
}
