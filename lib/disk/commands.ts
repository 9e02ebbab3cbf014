// What the command line can be asked: the words for the parser and for its help.

import { beginnings } from "../log/begin.ts";
import { EXAMPLE_NOTEBOOK } from "./example-notebook.ts";

export const FORMATS = ["html", "markdown", "csv", "json", "vega-lite"] as const;
export type Format = (typeof FORMATS)[number];

export interface Command {
  readonly name: string;
  /** What it is asked with, in order. */
  readonly words: readonly string[];
  /** A further word that may follow. */
  readonly also?: string;
  readonly options: readonly ("to" | "as" | "for" | "live")[];
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
    options: ["to", "as", "live"],
    does: "a page: what the notebook makes of the log",
    examples: [
      ["mullbook write grain-fineness my-sands.yaml", "my-sands-grain-fineness.html, to read or print"],
      ["mullbook write grain-fineness my-sands.yaml --to pages", "in the folder pages, made if need be"],
      ["mullbook write grain-fineness my-sands.yaml --as csv", "a folder with every table as a CSV file"],
      ["mullbook write grain-fineness my-sands.yaml --live", "my-sands-grain-fineness-live.html, to edit"],
      ["mullbook write my-notebook.ts my-sands.yaml", "a notebook of your own"],
    ],
    more: `--as html       one file, with its charts (the default)
--as markdown   a folder with the text and its charts as SVG
--as csv        a folder with the page's tables, those of the charts too
--as json       one file with figures, tables, findings and issues
--as vega-lite  a folder with every chart as a Vega-Lite spec, its data in it
--live          one HTML file with the log in it: change a figure in the browser, without a network, and
                everything is worked out again; a copy of the log is handed out by the page
--to DIR        where to; the folder that you are in unless said otherwise

A log with errors gives a page all the same, which shows what is missing; the exit code is 1 then.

A notebook of your own is a file that ends in .ts, .js or .mjs, in any folder. A whole one:

${EXAMPLE_NOTEBOOK.trimEnd().replace(/^(?=.)/gm, "    ")}`,
  },
  {
    name: "open",
    words: ["log"],
    also: "notebook",
    options: [],
    does: "the pages of a log in your browser, saved into the log itself",
    examples: [
      ["mullbook open my-sands.yaml", "an address, for this machine only, of all pages of the log"],
      ["mullbook open my-sands.yaml moisture-trial", "straight to one page"],
      ["mullbook open my-sands.yaml my-notebook.ts", "straight to the page of a notebook of your own"],
    ],
    more: `It prints an address and opens no browser by itself. The address works on this machine alone and holds a
secret: who has it can read and change the log.

A save replaces my-sands.yaml in one step and keeps the version before it as my-sands.yaml.before. Where the
file was changed elsewhere meanwhile, nothing is written over: the page offers both. An edit in a text editor
reaches the open pages by itself. CSV files that the log names are saved first, the log last.

Ctrl+C stops it, after a save that is under way.`,
  },
  {
    name: "reference",
    words: ["name"],
    bare: true,
    options: ["to"],
    does: "every public function for a script, with its comment",
    examples: [
      ["mullbook reference", "reference.html, all of them on one page"],
      ["mullbook reference grainFineness", "that one, on the terminal"],
    ],
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
