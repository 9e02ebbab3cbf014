// The CSV file that a sand names: found among the files beside the log, or a complaint.

import { nearest } from "../numbers/nearest.ts";
import { fileElsewhere, noSuchFile } from "./complaints-csv.ts";
import type { Report, TextNode } from "./node.ts";
import { type Source, sourceOf } from "./source.ts";

export type Files = Readonly<Record<string, string>>;

/** A name alone, ending in .csv or .txt: nothing that leads out of the log's folder. */
export function isFileName(name: string): boolean {
  return /^[^/\\:\x00-\x1F]{1,200}\.(csv|tsv|txt)$/i.test(name) && !name.startsWith(".");
}

export function csvFile(node: TextNode, files: Files, report: Report): Source | undefined {
  const name = node.text.trim();
  if (!isFileName(name)) report(fileElsewhere(name), node.place);
  else if (Object.hasOwn(files, name)) return sourceOf(name, files[name] ?? "");
  else report(noSuchFile(name, nearest(name, Object.keys(files)) ?? ""), node.place);
  return undefined;
}
