// Places and edits of the log in words.

import type { LogPath } from "../log/edit-types.ts";

/** Sections whose entries have names that tell enough by themselves. */
const NAMED: readonly unknown[] = ["batches", "sands", "sheets", "rigs", "scales", "sieve sets"];

/**
 * "W3, moisture, damp" for ["batches", "W3", "moisture", "damp"]; rows of lists and CSV files are counted from 1.
 * @example pathWords(["swelling.csv", 3, "dry"]) // "swelling.csv, row 4, dry"
 */
export function pathWords(path: LogPath): string {
  const told = path.length > 1 && NAMED.includes(path[0]) ? path.slice(1) : path;
  return told.map((part) => (typeof part === "number" ? `row ${part + 1}` : part)).join(", ");
}

/** Keys below one another as one name of a new entry: "moisture/damp"; strokes and tildes as in RFC 6901. */
export function entryName(keys: LogPath): string {
  return keys.map((key) => String(key).replaceAll("~", "~0").replaceAll("/", "~1")).join("/");
}

/** "3 changes" */
export function counted(n: number, one: string): string {
  return `${n} ${one}${n === 1 ? "" : "s"}`;
}
