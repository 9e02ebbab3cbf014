// What the command line can be asked: the words for the parser and for its help.

import { beginnings } from "../log/begin.ts";
import { EXAMPLE_NOTEBOOK } from "./example-notebook.ts";

export const FORMATS = ["html", "markdown", "csv", "json"] as const;
export type Format = (typeof FORMATS)[number];

export interface Command {
  readonly name: string;
  /** What it is asked with, in order. */
  readonly words: readonly string[];
  readonly options: readonly ("to" | "as" | "for")[];
  /** What it does, in one line. */
  readonly does: string;
  readonly examples: readonly (readonly [call: string, gives: string])[];
  readonly more?: string;
  /** True where it can be asked with none of its words. */
  readonly bare?: true;
}

export const COMMANDS: readonly Command[] = [
  {
    name: "begin",
    words: ["file"],
    options: ["for"],
    does: "a new log, with comments that teach and invented figures to write over",
    examples: [
      ["mullbook begin my-sands.yaml", "a new file; one that is there is never written over"],
      ["mullbook begin my-trial.yaml --for moisture-trial", "a short one, for one thing alone"],
    ],
    more: `Without --for it shows everything that a log can hold. With it, the way in that you name:

${beginnings.map(({ name, says }) => `    --for ${name.padEnd(16)}${says}`).join("\n")}`,
  },
  {
    name: "check",
    words: ["log"],
    options: [],
    does: "everything that is wrong in a log, with file:line:column and what to do",
    examples: [
      ["mullbook check my-sands.yaml", "exit code 1 if anything is an error, 0 if not"],
      ["mullbook check my-sands.yaml | grep error:", "only the errors"],
    ],
    more: "CSV files that the log names are read from the log's own folder and checked with it.",
  },
  {
    name: "card",
    words: ["test"],
    bare: true,
    options: ["to"],
    does: "a bench card to print: hazard, rig, steps, and boxes to write in",
    examples: [
      ["mullbook card", "the cards, one line each"],
      ["mullbook card moisture", "card-moisture.html, one page, A4 or Letter"],
      ["mullbook card trial --to cards", "in the folder cards, made if need be"],
    ],
    more: "A card has the fields of its test in the order and with the keys of the log, and the lines to copy.",
  },
  {
    name: "list",
    words: [],
    options: [],
    does: "the notebooks, and what each answers",
    examples: [["mullbook list", ""]],
  },
  {
    name: "write",
    words: ["notebook", "log"],
    options: ["to", "as"],
    does: "a page: what the notebook makes of the log",
    examples: [
      ["mullbook write grain-fineness my-sands.yaml", "my-sands-grain-fineness.html, to read or print"],
      ["mullbook write grain-fineness my-sands.yaml --to pages", "in the folder pages, made if need be"],
      ["mullbook write grain-fineness my-sands.yaml --as csv", "a folder with every table as a CSV file"],
      ["mullbook write my-notebook.ts my-sands.yaml", "a notebook of your own"],
    ],
    more: `--as html       one file, with its charts (the default)
--as markdown   a folder with the text and its charts as SVG
--as csv        a folder with the page's tables, those of the charts too
--as json       one file with figures, tables, findings and issues
--to DIR        where to; the folder that you are in unless said otherwise

A log with errors gives a page all the same, which shows what is missing; the exit code is 1 then.

A notebook of your own is a file that ends in .ts, .js or .mjs, in any folder. A whole one:

${EXAMPLE_NOTEBOOK.trimEnd().replace(/^(?=.)/gm, "    ")}`,
  },
  {
    name: "demo",
    words: [],
    options: ["to"],
    does: "a page for every notebook from invented logs, to see what comes out",
    examples: [["mullbook demo --to out", "pages in the folder out"]],
  },
  {
    name: "help",
    words: ["command"],
    options: [],
    does: "this; or more about one command",
    examples: [["mullbook help write", "the same as mullbook write --help"]],
  },
];
