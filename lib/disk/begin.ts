// mullbook begin: a new log that teaches.

import { closeSync, mkdirSync, openSync, writeFileSync } from "node:fs";
import { basename, dirname, extname } from "node:path";
import { beginLog, beginningFor, beginnings } from "../log/begin.ts";
import { nearest } from "../numbers/nearest.ts";
import { shellWord } from "./called.ts";
import { type Console, type ExitCode, refuse } from "./console.ts";
import { fileRefusal, type Refusal } from "./refusal.ts";

export function begin(name: string, { for: what }: { readonly for?: string }, console: Console): ExitCode {
  const beginning = beginningFor(what);
  if (!beginning) return refuse(console, unknown(what!));
  const path = extname(name) === "" && !/[/\\]$/.test(name) ? `${name}.yaml` : name;
  if (!/\.ya?ml$/i.test(path)) {
    return refuse(console, {
      refused: `A log is a text file that ends in .yaml; "${name}" does not.`,
      remedy: "For example: mullbook begin my-sands.yaml",
    });
  }
  try {
    mkdirSync(dirname(path), { recursive: true });
    // "wx" makes the file or fails: nothing can come between looking and writing.
    const file = openSync(path, "wx");
    try {
      writeFileSync(file, beginLog(what, basename(path)));
    } finally {
      closeSync(file);
    }
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") {
      return refuse(console, {
        refused: `${path} is there already; a log is never written over.`,
        remedy: "Choose another name, or move the old file away.",
      });
    }
    return refuse(console, fileRefusal(error, path, "written"));
  }
  console.result(path);
  const word = shellWord(path);
  console.say(`Open it in a text editor and write your own figures over the invented ones. The next two commands:
    mullbook check ${word}
    mullbook write ${beginning.notebook} ${word}`);
  return 0;
}

function unknown(what: string): Refusal {
  const names = beginnings.map(({ name }) => name);
  const near = nearest(what, names);
  return {
    refused: `There is no log to begin with for "${what}".`,
    remedy: near === undefined ? `There are: ${names.join(", ")}.` : `Did you mean: --for ${near}`,
  };
}
