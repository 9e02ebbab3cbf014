// How long the files are.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Row } from "./row.ts";

const root = join(import.meta.dirname, "..", "..");

interface Lines {
  readonly file: string;
  readonly lines: number;
}

export function fileRows(): Row[] {
  const library = linesIn("lib");
  const longest = library.at(-1)!;
  const row = (work: string, lines: number, most?: number): Row => ({
    work,
    measured: `${lines} lines`,
    against: "",
    ...(most === undefined ? {} : { figure: lines, target: { most, unit: "lines" } }),
  });
  return [
    row(`files in lib (${library.length}): median`, at(library, 0.5).lines, 90),
    row("files in lib: p90", at(library, 0.9).lines, 250),
    row(`files in lib: the longest, ${longest.file}`, longest.lines, 250),
    ...linesIn("notebooks").map(({ file, lines }) => row(file, lines)),
  ];
}

/** Shortest first. */
function linesIn(folder: string): Lines[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => ({ file: `${folder}/${file}`, lines: linesOf(join(root, folder, file)) }))
    .sort((a, b) => a.lines - b.lines);
}

const linesOf = (path: string): number => readFileSync(path, "utf8").trimEnd().split("\n").length;

function at(sorted: readonly Lines[], p: number): Lines {
  return sorted[Math.min(sorted.length - 1, Math.ceil(p * sorted.length) - 1)]!;
}
