// A fault in a founder's script: where it is in the script, and a hint; nothing of our own stack.

import { readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { nearest } from "../numbers/nearest.ts";
import { packageFolder } from "./package-folder.ts";
import type { Refusal } from "./refusal.ts";
import { pathOf, placeInStack, placeOfSyntaxFault, placeOfWord, shown } from "./script-place.ts";

const LOOK = "Look at this place and just before it: a bracket, a quote or a comma may be missing.";

/** @param path  Of the script, as the founder gave it: named where no line is known. */
export function scriptRefusal(error: unknown, path: string): Refusal {
  const { name, message, stack = "" } = error instanceof Error ? error : new Error(String(error));
  const unread = /^(.+?):(\d+):(\d+): ERROR: (.+)$/m.exec(message);
  if (unread) {
    const [, file, line, column, what] = unread;
    return faulty(
      `${shown(file!)}:${line}:${Number(column) + 1}`,
      `this cannot be read as a script: ${what}.`,
      LOOK,
    );
  }
  const what = withoutAddresses(message.split("\n")[0]!);
  const missing = /does not provide an export named '([^']+)'/.exec(what)?.[1];
  if (missing !== undefined) return faulty(placeOfWord(path, missing) ?? path, what, nameHint(missing));
  const lost = /^Cannot find (?:module|package) '([^']+)'/.exec(what)?.[1];
  if (lost !== undefined) return faulty(placeOfWord(path, basename(lost)) ?? path, what, IMPORTS);
  if (name === "SyntaxError" && placeInStack(stack) === undefined) {
    return faulty(placeOfSyntaxFault(path) ?? path, `this cannot be read as a script: ${what}.`, LOOK);
  }
  const kind = /^(Error|Misuse)$/.test(name) ? "" : `${name}: `;
  const place = error instanceof Error ? placeInStack(stack) : undefined;
  return faulty(place ?? path, kind + what, hintFor(what));
}

function faulty(place: string, what: string, remedy: string | undefined): Refusal {
  return { refused: `${place}: ${what}`, ...(remedy === undefined ? {} : { remedy }) };
}

/** Messages of the module loader name whole addresses. */
function withoutAddresses(message: string): string {
  return message
    .replace(/ imported from .*/, "")
    .replace(/file:\/\/\/[^\s'"]+/g, (address) => shown(pathOf(address)))
    .replace(/(?<=')\/[^']+/g, shown);
}

const IMPORTS =
  'A script can import "mullbook", files of its own by "./name.ts", and packages installed beside it.';

function nameHint(missing: string): string {
  const near = nearest(missing, doorNames());
  if (near !== undefined) return `Did you mean ${near}?`;
  return `The names that mullbook offers: ${doorNames().join(", ")}.`;
}

function hintFor(what: string): string | undefined {
  if (/of undefined|of null/.test(what)) {
    return "Something is not there: a log may lack what the script counts on. Ask first, or write ?. for the dot.";
  }
  if (/is not defined$/.test(what)) {
    return 'Is it spelt as where it was made, or does an import from "mullbook" lack it?';
  }
  return undefined;
}

/** What the public door exports, from its types: they are there without running anything. */
function doorNames(): string[] {
  const types = readFileSync(join(packageFolder, "dist", "types", "index.d.ts"), "utf8");
  return [...types.matchAll(/^export \{([^}]*)\}/gm)]
    .flatMap(([, names]) => names!.split(","))
    .map((name) => name.trim())
    .filter((name) => name !== "" && !name.startsWith("type "));
}
