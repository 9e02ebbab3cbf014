// A name and its value with the colon between them lost.

import type { Issue } from "../issue.ts";
import { readSieveLabel } from "../sand/sieve-label.ts";
import { noColonAfter } from "./complaints-yaml.ts";
import {
  batchKeys,
  logKeys,
  readingKeys,
  recipeKeys,
  sandKeys,
  scaleKeys,
  sieveSetKeys,
  sievingKeys,
} from "./log-keys.ts";
import { plainName } from "./node.ts";

/** Between the two a sign may stand that was meant for the colon. */
const figure =
  /^(?:"([^"]+)"|'([^']+)'|(.*?\S))(?:\s*[=;：–—]\s*|\s+-\s+|\s+)([-+]?[\d.,]*\d(?:\s*(?:g|%|oz))?)$/;
const known = [
  ...new Set([
    ...logKeys,
    ...sandKeys,
    ...sievingKeys,
    ...scaleKeys,
    ...sieveSetKeys,
    ...batchKeys,
    ...recipeKeys,
    ...readingKeys,
  ]),
].sort((a, b) => b.length - a.length);

/** "No. 200 9.8" or "washed yes": the complaint that names both parts; undefined where they cannot be told apart. */
export function lostColon(text: string, names: readonly string[] = known): Issue | undefined {
  const [, double, single, plain, value] = figure.exec(text) ?? [];
  const label = double ?? single ?? plain;
  if (label !== undefined && value !== undefined && readSieveLabel(label).value !== undefined) {
    return noColonAfter(label, `${label.includes("#") ? `"${label}"` : label}: ${value}`);
  }
  const name = names.find((key) => plainName(text).startsWith(`${key} `));
  if (name === undefined) return undefined;
  const rest = text
    .trim()
    .replace(/\s+/g, " ")
    .slice(name.length + 1);
  return noColonAfter(name, `${name}: ${rest}`);
}
