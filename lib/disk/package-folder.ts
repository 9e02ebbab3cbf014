// Where this package lies, whether run from its source or from dist.

import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder of the nearest package.json above the running file: a bundle may put that file at any depth. */
export const packageFolder: string = folderAbove(dirname(fileURLToPath(import.meta.url)));

/** "0.1.0" */
export function packageVersion(): string {
  const { version } = JSON.parse(readFileSync(join(packageFolder, "package.json"), "utf8")) as {
    readonly version: string;
  };
  return version;
}

function folderAbove(folder: string): string {
  const above = dirname(folder);
  return existsSync(join(folder, "package.json")) || above === folder ? folder : folderAbove(above);
}
