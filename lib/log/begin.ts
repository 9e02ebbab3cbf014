// Logs to begin with: they teach by their comments, and read without an error.

import { invariant } from "../issue.ts";
import { everything } from "./begin-everything.ts";
import { castings, diary, heap } from "./begin-heap.ts";
import { blend, sieving } from "./begin-sands.ts";
import { ownSheets } from "./begin-sheets.ts";
import { clayTrial, moistureTrial, mullingTrial } from "./begin-trials.ts";
import { writeUp } from "./begin-write-up.ts";
import { type Beginning, headLines } from "./beginning.ts";

export type { Beginning };

/** The ways in, in the order in which a founder comes to them. */
export const beginnings: readonly Beginning[] = Object.freeze([
  sieving,
  moistureTrial,
  clayTrial,
  mullingTrial,
  heap,
  diary,
  castings,
  blend,
  ownSheets,
  writeUp,
]);

/** The way in of that name, or whose page is that notebook's; without a name the log that shows everything. */
export function beginningFor(what?: string): Beginning | undefined {
  if (what === undefined) return everything;
  const plain = what
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, "-");
  return (
    beginnings.find(({ name }) => name === plain) ?? beginnings.find(({ notebook }) => notebook === plain)
  );
}

/**
 * Text of a log to begin with, which is invented and says so; the founder writes over it.
 * what: one of the names in `beginnings`; left out, everything that a log can hold, most of it in comments.
 * file: the log's name, for the commands in its first lines. Throws Misuse where no beginning has that name.
 * @example beginLog("moisture-trial", "my-trial.yaml")
 */
export function beginLog(what?: string, file = "my-sands.yaml"): string {
  const beginning = beginningFor(what);
  invariant(beginning !== undefined, `there is no log to begin with for "${what}"`);
  return `${headLines(beginning, file)}\n${what === undefined ? shorter() : ""}\n${beginning.body}`;
}

const shorter = (): string =>
  `#\n# A shorter log, for one thing alone: mullbook begin FILE --for WHAT, where WHAT is one of\n#   ${beginnings.map(({ name }) => name).join(", ")}.\n`;
