// The file that was most likely meant by a name that is not there.

import { readdirSync } from "node:fs";
import { basename, dirname, join, parse } from "node:path";
import { nearest } from "../numbers/nearest.ts";

/** A folder of more is no place to guess in. */
const MOST_NAMES = 2000;

/**
 * The path of a file beside it, as the caller would write it: of the same name but for its ending or its capitals, or else
 * the nearest name of the same ending. Undefined where nothing is near, or where the folder cannot be looked into.
 */
export function nearFile(path: string): string | undefined {
  const [wanted, folder] = [basename(path), dirname(path)];
  const names = namesIn(folder);
  const stem = (name: string) => parse(name).name.toLowerCase();
  const ending = (name: string) => parse(name).ext.toLowerCase();
  const near =
    names.find((name) => name.toLowerCase() === wanted.toLowerCase()) ??
    names.find((name) => /^\.ya?ml$/.test(ending(name)) && stem(name) === stem(wanted)) ??
    nearest(
      wanted,
      names.filter((name) => ending(name) === ending(wanted)),
    );
  if (near === undefined) return undefined;
  return folder === "." && !path.startsWith(".") ? near : join(folder, near);
}

function namesIn(folder: string): string[] {
  try {
    const names = readdirSync(folder);
    return names.length > MOST_NAMES ? [] : names;
  } catch {
    return [];
  }
}
