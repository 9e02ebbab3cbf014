// Where in a founder's script a fault lies.

import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { packageFolder } from "./package-folder.ts";

const FRAME = /(file:\/\/\/[^\s()?]+|(?<=[\s(])(?:\/|[A-Za-z]:\\)[^\s():?]+)(?:\?[^\s():]*)?(:\d+(?::\d+)?)/g;

/** "my-notebook.ts:4:11": the innermost line of a stack that lies in a file of the founder's. */
export function placeInStack(stack: string): string | undefined {
  for (const [, place, line] of stack.matchAll(FRAME)) {
    const file = pathOf(place!);
    const ours = file.startsWith(packageFolder + sep) && !/\.(ts|mts)$/.test(file);
    if (!ours && !file.includes(`${sep}node_modules${sep}`)) return shown(file) + line;
  }
  return undefined;
}

/** The first line that a name or a package stands in. */
export function placeOfWord(script: string, word: string): string | undefined {
  const pattern = new RegExp(`(^|[^\\w$])${escaped(word)}([^\\w$]|$)`);
  const line = linesOf(script).findIndex((text) => pattern.test(text));
  return line < 0 ? undefined : `${shown(script)}:${line + 1}`;
}

/** What node itself says of a script in JavaScript that it cannot parse; its line is in no stack. */
export function placeOfSyntaxFault(script: string): string | undefined {
  if (!/\.m?js$/i.test(script)) return undefined;
  const checked = spawnSync(process.execPath, ["--input-type=module", "--check"], {
    input: linesOf(script).join("\n"),
    encoding: "utf8",
    timeout: 10_000,
  });
  const line = /^\[stdin\]:(\d+)/m.exec(checked.stderr)?.[1];
  return line === undefined ? undefined : `${shown(script)}:${line}`;
}

/** As seen from the folder that the call is made in. */
export function shown(path: string): string {
  const near = relative(process.cwd(), path);
  return near === "" || near.startsWith("..") ? path : near;
}

export function pathOf(place: string): string {
  return place.startsWith("file:") ? fileURLToPath(place.replace(/\?.*/, "")) : place;
}

function linesOf(script: string): string[] {
  return readFileSync(script, "utf8").split(/\r\n|\r|\n/);
}

function escaped(name: string): string {
  return name.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");
}
