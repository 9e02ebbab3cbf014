// Which files of a package lead to which.

import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";

/**
 * The files named and all that they import, by their names within the folder. Throws where one is not there. What is
 * imported is told from the text; a built file imports by a path in quotes, whether in a list or when it is needed.
 */
export function reached(folder: string, names: readonly string[]): string[] {
  const seen = new Set<string>();
  const follow = (name: string): void => {
    if (seen.has(name)) return;
    seen.add(name);
    const text = readFileSync(join(folder, name), "utf8");
    for (const [, file] of text.matchAll(/(?:\bfrom|\bimport|\bimport\()\s*"(\.{1,2}\/[^"\n]+\.[jt]s)"/g))
      follow(join(dirname(name), name.endsWith(".d.ts") ? file!.replace(/\.ts$/, ".d.ts") : file!));
  };
  for (const name of names) follow(name);
  return [...seen];
}
