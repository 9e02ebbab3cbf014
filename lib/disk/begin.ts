// mullbook begin: a new log that teaches.

import { closeSync, openSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, extname } from "node:path";
import { beginLog, beginningFor, beginnings } from "../log/begin.ts";
import { nearest } from "../numbers/nearest.ts";
import { shellWord } from "./called.ts";
import { type Console, type ExitCode, refuse } from "./console.ts";
import { makeFolders } from "./make-folders.ts";
import { fileRefusal, type Refusal } from "./refusal.ts";

export function begin(name: string, { for: what }: { readonly for?: string }, console: Console): ExitCode {
  const beginning = beginningFor(what);
  if (!beginning) return refuse(console, unknown(what!));
  if (/^\.*$/.test(basename(name))) return refuse(console, noName(name));
  const path = extname(name) === "" && !/[/\\]$/.test(name) ? `${name}.yaml` : name;
  if (!/\.ya?ml$/i.test(path)) {
    return refuse(console, noName(name));
  }
  try {
    makeFolders(dirname(path));
    // "wx" makes the file or fails: nothing can come between looking and writing.
    const file = openSync(path, "wx");
    try {
      writeFileSync(file, beginLog(what, basename(path)));
    } catch (error) {
      // Half a log would stand in the way of the next try.
      rmSync(path);
      throw error;
    } finally {
      closeSync(file);
    }
  } catch (error) {
    const { code, syscall } = error as NodeJS.ErrnoException;
    if (code === "EEXIST" && syscall === "open") {
      return refuse(console, {
        refused: `${path} is there already; a log is never written over.`,
        remedy: "Choose another name, or move the old file away.",
      });
    }
    return refuse(console, fileRefusal(error, path, "begun"));
  }
  console.result(path);
  const word = shellWord(path);
  console.say(`Write your own figures over the invented ones, in one of two ways.
In a text editor; then, to look for mistakes and to write the page:
    mullbook check ${word}
    mullbook write ${beginning.notebook} ${word}
Or in the browser, where the page changes as you write and is saved into the log:
    mullbook open ${word} ${beginning.notebook}`);
  return 0;
}

function noName(name: string): Refusal {
  return {
    refused: `A log is a text file that ends in .yaml; "${name}" does not.`,
    remedy: "For example: mullbook begin my-sands.yaml",
  };
}

function unknown(what: string): Refusal {
  const names = beginnings.map(({ name }) => name);
  const near = nearest(what, names);
  return {
    refused: `There is no log to begin with for "${what}".`,
    remedy: near === undefined ? `There are: ${names.join(", ")}.` : `Did you mean: --for ${near}`,
  };
}
