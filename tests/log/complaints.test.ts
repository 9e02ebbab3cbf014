// Every complaint is triggered once, at its place, with its remedy; none is left out.

import { expect, test } from "vitest";
import type { Issue } from "../../lib/issue.ts";
import * as csv from "../../lib/log/complaints-csv.ts";
import * as field from "../../lib/log/complaints-field.ts";
import * as figure from "../../lib/log/complaints-figure.ts";
import * as file from "../../lib/log/complaints-file.ts";
import * as sieving from "../../lib/log/complaints-sieving.ts";
import * as yaml from "../../lib/log/complaints-yaml.ts";
import { issueOf, read, soundLog } from "./helpers.ts";

interface Case {
  readonly code: string;
  readonly text: string;
  readonly files?: Readonly<Record<string, string>>;
  /** line:column */
  readonly at: string;
  readonly message: RegExp;
  readonly remedy: RegExp;
  readonly file?: string;
  readonly about?: string;
}

const swap = (from: string, to: string): string => {
  if (!soundLog.includes(from)) throw new Error(`${from} is not in the sound log`);
  return soundLog.replace(from, () => to);
};
const csvLog =
  "format: 1\nscales: { s: { reads to: 0.1 g } }\nsands:\n  Dune sand:\n    state: new\n    sievings file: s.csv\n";
const head = "date,portion,scale,start,No. 40,No. 50,No. 70,pan\n";
const withCsv = (text: string) => ({
  text: csvLog,
  files: { "s.csv": text },
  file: "s.csv",
  about: "Dune sand",
});
const dune = "Dune sand";
/** Rows of a small sieving in place of the first sand's. */
const rows = (...lines: string[]) =>
  swap(
    /retained:\n(?: {10}.*\n)+/.exec(soundLog)?.[0] ?? "",
    `retained:\n${lines.map((line) => `          ${line}\n`).join("")}`,
  );

const cases: readonly Case[] = [
  // The file as a whole.
  { code: "empty-file", text: " \n\n", at: "1:1", message: /empty/, remedy: /begin/ },
  {
    code: "not-text",
    text: "PK\u0003\u0004\0\0",
    at: "1:1",
    message: /zip archive, or a spreadsheet/,
    remedy: /plain text/,
  },
  {
    code: "too-large",
    text: "a: b\n".repeat(1_100_000),
    at: "1:1",
    message: /5\.5 million characters/,
    remedy: /right file/,
  },
  {
    code: "hidden-character",
    text: swap("title: An", "title: A\u200Bn"),
    at: "2:9",
    message: /U\+200B/,
    remedy: /type it again/,
  },
  { code: "too-deep", text: `a: ${"[".repeat(70)}`, at: "1:64", message: /60 levels/, remedy: /bracket/ },
  { code: "not-a-log", text: "- a\n- b\n", at: "1:1", message: /not a log/, remedy: /begin/ },
  {
    code: "no-format",
    text: swap("format: 1\n", ""),
    at: "1:1",
    message: /which format/,
    remedy: /`format: 1`/,
  },
  {
    code: "bad-format",
    text: swap("format: 1", "format: one"),
    at: "1:9",
    message: /"one"/,
    remedy: /`format: 1`/,
  },
  {
    code: "no-usual-ranges",
    text: swap("metal: aluminium\nbond: bentonite\n", ""),
    at: "1:1",
    message: /which metal is poured, nor what holds the grains/,
    remedy: /`metal: aluminium` and `bond: bentonite`/,
  },
  {
    code: "no-usual-ranges",
    text: swap("bond: bentonite\n", ""),
    at: "1:1",
    message: /does not say what holds the grains;/,
    remedy: /`bond: bentonite`/,
  },
  {
    code: "newer-format",
    text: swap("format: 1", "format: 2"),
    at: "1:9",
    message: /format 2.*newer/,
    remedy: /up to date/,
  },
  { code: "no-sands", text: "format: 1\n", at: "1:1", message: /no sand/, remedy: /`sands:`/ },

  // Writing.
  {
    code: "hash-row",
    text: swap("No. 40: 3.20", "#40: 3.20"),
    at: "21:11",
    message: /"#40: 3\.20" is a comment/,
    remedy: /^Write No\. 40: 3\.20$/,
    about: dune,
  },
  {
    code: "hash-row",
    text: swap("No. 40: 3.20", "# 40: 3.20"),
    at: "21:11",
    message: /comment/,
    remedy: /Write No\. 40: 3\.20/,
    about: dune,
  },
  {
    code: "hash-row",
    text: swap("No. 40: 3.20", "No #40: 3.20"),
    at: "21:14",
    message: /comment/,
    remedy: /Write No\. 40: 3\.20/,
    about: dune,
  },
  {
    code: "row-commented-out",
    text: swap("No. 40: 3.20", "# No. 40: 3.20"),
    at: "21:11",
    message: /not counted/,
    remedy: /Take the #/,
    about: dune,
  },
  {
    code: "hash-cut",
    text: swap("    state: new", "    state: new\n    note: from bag #3, dry"),
    at: "13:20",
    message: /Only "from bag"/,
    remedy: /"from bag #3, dry"/,
    about: dune,
  },
  {
    code: "tabs",
    text: "format: 1\nsands:\n\tDune sand:\n\t\tstate: new\n",
    at: "3:1",
    message: /lines 3 to 4,/,
    remedy: /two spaces/,
    about: dune,
  },
  {
    code: "tab-among-spaces",
    text: swap("        start: 50.0 g", "\tstart: 50.0 g"),
    at: "19:1",
    message: /tabs at the start of line 19 /,
    remedy: /spaces/,
    about: dune,
  },
  {
    code: "curly-quotes",
    text: swap("No. 40: 3.20", "“No. 40”: 3.20"),
    at: "21:11",
    message: /curly quotes on line 21/,
    remedy: /use straight ones/,
    about: dune,
  },
  {
    code: "colon-in-text",
    text: swap("    state: new", "    state: new\n    note: drew 3: too wet"),
    at: "13:11",
    message: /second colon/,
    remedy: /note: "drew 3: too wet"/,
    about: dune,
  },
  {
    code: "colon-in-text",
    text: swap("    state: new", "    since: 2026-05-02 state: new # from the yard"),
    at: "12:12",
    message: /second colon with a space stands on the same line/,
    remedy: /Two entries\? Give each a line of its own.*since: "2026-05-02 state: new"$/,
    about: dune,
  },
  {
    code: "no-figure",
    text: swap(
      "        retained:",
      "        retained: { No. 40: 3.20, No. 50: 12.60, No. 70: 20.10, No. 100: 12.00, pan: - }\n        x:",
    ),
    at: "20:86",
    message: /says that there is no figure/,
    remedy: /Leave the line out/,
    about: dune,
  },
  {
    code: "no-space-after-colon",
    text: swap("No. 40: 3.20", "No. 40:3.20"),
    at: "21:11",
    message: /"No\. 40:3\.20"/,
    remedy: /^Write No\. 40: 3\.20$/,
    about: dune,
  },
  {
    code: "no-space-after-dash",
    text: swap("- date: 2026-03-02", "-date: 2026-03-02"),
    at: "14:7",
    message: /dash/,
    remedy: /- date: 2026-03-02/,
    about: dune,
  },
  {
    code: "no-colon",
    text: swap("No. 40: 3.20", "spilled some"),
    at: "21:11",
    message: /no colon/,
    remedy: /a colon, a space/,
    about: dune,
  },
  {
    code: "no-colon-after",
    text: swap("No. 40: 3.20", "No. 40 3.20"),
    at: "21:11",
    message: /no colon after "No\. 40"/,
    remedy: /^Write No\. 40: 3\.20$/,
    about: dune,
  },
  {
    code: "no-colon-after",
    text: swap("{ frame: 200 mm, checked: no }", "{ frame: 200 mm, checked no }"),
    at: "9:32",
    message: /no colon after "checked"/,
    remedy: /^Write checked: no$/,
  },
  {
    code: "indent",
    text: swap("        portion: A", "          portion: A"),
    at: "15:11",
    message: /"portion: A"/,
    remedy: /same number of spaces/,
    about: dune,
  },
  {
    code: "unclosed-bracket",
    text: swap("within: 0.02 g }", "within: 0.02 g"),
    at: "7:16",
    message: /bracket \{/,
    remedy: /Close it with \}/,
  },
  {
    code: "unclosed-quote",
    text: swap("    state: new", '    state: new\n    note: "dry'),
    at: "13:11",
    message: /quote "/,
    remedy: /end of the text/,
    about: dune,
  },
  {
    code: "backslash",
    text: swap("title: An invented log", 'title: "a\\qb"'),
    at: "2:10",
    message: /backslash/i,
    remedy: /single quotes/,
  },
  {
    code: "sign-at-start",
    text: swap("title: An invented log", "title: %5 clay"),
    at: "2:8",
    message: /begin with %/,
    remedy: /"%5 clay"/,
  },
  {
    code: "sign-at-start",
    text: swap("title: An invented log", "title: *best* sand"),
    at: "2:8",
    message: /begin with \*/,
    remedy: /"\*best\* sand"/,
  },
  {
    code: "several-documents",
    text: `${soundLog}---\nformat: 1\n`,
    at: "39:1",
    message: /---/,
    remedy: /Take the line/,
  },
  {
    code: "not-yaml",
    text: swap("title: An invented log", "title: 'a' b"),
    at: "2:1",
    message: /cannot be read/,
    remedy: /quotes/,
  },
  {
    code: "more-faults",
    text: soundLog.replace(/^title.*$/m, Array(25).fill("a: b: c").join("\n")),
    at: "22:4",
    message: /5 more/,
    remedy: /first ones/,
  },
  {
    code: "too-many-repeats",
    text: `a: &a x\nb: [${"*a, ".repeat(101)}]\n`,
    at: "2:405",
    message: /More than 100/,
    remedy: /CSV/,
  },
  {
    code: "odd-key",
    text: swap("title: An invented log", "[a, b]: c"),
    at: "2:1",
    message: /plain text/,
    remedy: /one name/,
  },

  // Fields.
  {
    code: "unknown-key",
    text: swap("washed: no", "wahsed: no"),
    at: "18:9",
    message: /"wahsed" is not known/,
    remedy: /"washed"/,
    about: dune,
  },
  {
    code: "unknown-key",
    text: swap("washed: no", "xyzzy: no"),
    at: "18:9",
    message: /"xyzzy"/,
    remedy: /Known here: date, portion/,
    about: dune,
  },
  {
    code: "unknown-key",
    text: swap("scales:\n  small scale: { reads to: 0.01 g, within: 0.02 g }", "Scale: 0.1g"),
    at: "6:1",
    message: /"Scale" is not known/,
    remedy: /"scales"\? Write `scales: \{ kitchen scale: \{ reads to: 0\.1 g \} \}`/,
  },
  {
    code: "dash-before-name",
    text: swap("  Dune sand:\n    state: new", "  - name: Dune\n    state: new").replace(
      / {2}Pit sand[\s\S]*/,
      "",
    ),
    at: "11:3",
    message: /After sands.*"- name: Dune" begins with a dash/,
    remedy: /Write `Dune:` in its place/,
  },
  {
    code: "dash-before-name",
    text: swap("  home stack: { frame", "  - home stack: { frame"),
    at: "9:3",
    message: /After sieve sets/,
    remedy: /Write `home stack:`/,
  },
  {
    code: "repeated-key",
    text: swap("washed: no", "washed: no\n        washed: yes"),
    at: "19:9",
    message: /first on line 18/,
    remedy: /Take one/,
    about: dune,
  },
  {
    code: "not-a-map",
    text: swap("home stack: { frame: 200 mm, checked: no }", "home stack: 200 mm"),
    at: "9:15",
    message: /home stack/,
    remedy: /name: value/,
  },
  {
    code: "not-a-value",
    text: swap("portion: A", "portion: [A, B]"),
    at: "15:18",
    message: /single value/,
    remedy: /same line/,
    about: dune,
  },
  {
    code: "empty-value",
    text: swap("portion: A", "portion:"),
    at: "15:17",
    message: /Nothing stands after "portion:"/,
    remedy: /after the colon/,
    about: dune,
  },
  {
    code: "not-yes-no",
    text: swap("washed: no", "washed: a bit"),
    at: "18:17",
    message: /neither yes nor no/,
    remedy: /washed: yes/,
    about: dune,
  },
  {
    code: "unknown-choice",
    text: swap("metal: aluminium", "metal: alumnium"),
    at: "4:8",
    message: /"alumnium"/,
    remedy: /Did you mean "aluminium"/,
  },
  {
    code: "unknown-choice",
    text: swap("metal: aluminium", "metal: iron"),
    at: "4:8",
    message: /"iron"/,
    remedy: /Did you mean "grey iron"/,
  },
  {
    code: "unknown-choice",
    text: swap("bond: bentonite", "bond: bentonite clay"),
    at: "5:7",
    message: /"bentonite clay"/,
    remedy: /Did you mean "bentonite"/,
  },
  {
    code: "unknown-choice",
    text: swap("bond: bentonite", "bond: clay"),
    at: "5:7",
    message: /"clay"/,
    remedy: /Did you mean "bentonite"/,
  },
  {
    code: "bad-date",
    text: swap("date: 2026-03-02", "date: 2/3/2026"),
    at: "14:15",
    message: /2 March 2026 \(2026-03-02\) or 3 February 2026 \(2026-02-03\)/,
    remedy: /2026-03-02 or 2026-02-03/,
    about: dune,
  },
  {
    code: "impossible-date",
    text: swap("date: 2026-03-02", "date: 2026-02-30"),
    at: "14:15",
    message: /February 2026 has 28 days/,
    remedy: /right day/,
    about: dune,
  },
  {
    code: "decimal-comma",
    text: swap("No. 40: 3.20", "No. 40: 3,20"),
    at: "21:19",
    message: /comma/,
    remedy: /^Write 3\.20$/,
    about: dune,
  },
  {
    code: "decimal-comma",
    text: swap("within: 0.02 g", "within: 0,02 g"),
    at: "7:44",
    message: /"0,02 g"/,
    remedy: /Write 0\.02 g/,
  },
  {
    code: "wrong-unit",
    text: swap("start: 50.0 g", "start: 50 ml"),
    at: "19:16",
    message: /"50 ml".*measured in g/,
    remedy: /in g/,
    about: dune,
  },
  {
    code: "negative",
    text: swap("No. 40: 3.20", "No. 40: -3.20"),
    at: "21:19",
    message: /below zero/,
    remedy: /tare/,
    about: dune,
  },
  {
    code: "not-above-zero",
    text: swap("start: 50.0 g", "start: 0 g"),
    at: "19:16",
    message: /more than zero/,
    remedy: /was read/,
    about: dune,
  },
  {
    code: "too-much",
    text: swap("start: 50.0 g", "start: 500 kg"),
    at: "19:16",
    message: /more than 100000 g/,
    remedy: /decimal point/,
    about: dune,
  },
  {
    code: "undeclared",
    text: swap("        scale: small scale", "        scale: smal scale"),
    at: "16:16",
    message: /"smal scale" is not declared/,
    remedy: /Did you mean "small scale"/,
    about: dune,
  },
  {
    code: "undeclared",
    text: swap("        scale: small scale", "        scale: scale"),
    at: "16:16",
    message: /"scale" is not declared/,
    remedy: /Did you mean "small scale"/,
    about: dune,
  },
  {
    code: "undeclared",
    text: swap("sieve set: home stack", "sieve set: shop stack of a friend"),
    at: "17:20",
    message: /sieve set/,
    remedy: /top of the log: `sieve sets: \{ shop stack of a friend: \{ frame: 200 mm \} \}`/,
    about: dune,
  },
  {
    code: "undeclared",
    text: swap("        scale: small scale", "        Scale: 0.1g"),
    at: "16:16",
    message: /"0\.1g" is not declared/,
    remedy:
      /`scales: \{ kitchen scale: \{ reads to: 0\.1 g \} \}`, and write its name here, `scale: kitchen scale`/,
    about: dune,
  },
  {
    code: "scale-without-step",
    text: swap("{ reads to: 0.01 g, within", "{ within"),
    at: "7:3",
    message: /small scale/,
    remedy: /reads to: 0\.1 g/,
  },

  // Figures.
  {
    code: "letter-for-digit",
    text: swap("No. 40: 3.20", "No. 40: 3.2O"),
    at: "21:19",
    message: /letter/,
    remedy: /^Write 3\.20$/,
    about: dune,
  },
  {
    code: "stray-mark",
    text: swap("No. 50: 12.60", "No. 50: 12.60,"),
    at: "22:19",
    message: /The , at the end of "12\.60," is no part/,
    remedy: /^Write 12\.60$/,
    about: dune,
  },
  {
    code: "stray-mark",
    text: swap("No. 50: 12.60", "No. 50: 12.60:"),
    at: "22:19",
    message: /The : at the end of "12\.60:"/,
    remedy: /^Write 12\.60$/,
    about: dune,
  },
  {
    code: "odd-mark",
    text: swap("No. 50: 12.60", "No. 50: 12:60"),
    at: "22:19",
    message: /"12:60" has : where a decimal point/,
    remedy: /^Write 12\.60$/,
    about: dune,
  },
  {
    code: "space-in-figure",
    text: swap("No. 50: 12.60", "No. 50: 12. 60"),
    at: "22:19",
    message: /space beside its decimal point/,
    remedy: /^Write 12\.60$/,
    about: dune,
  },
  {
    code: "sum-for-figure",
    text: swap("No. 50: 12.60", "No. 50: 6.50 + 6.10"),
    at: "22:19",
    message: /is a sum/,
    remedy: /^Write 12\.6$/,
    about: dune,
  },
  {
    code: "other-digits",
    text: swap("No. 50: 12.60", "No. 50: １２．６０"),
    at: "22:19",
    message: /another script/,
    remedy: /^Write 12\.60$/,
    about: dune,
  },
  {
    code: "decimal-comma",
    text: swap("No. 50: 12.60", "No. 50: ,60"),
    at: "22:19",
    message: /has a comma/,
    remedy: /^Write 0\.60$/,
    about: dune,
  },
  {
    code: "unit-spelt",
    text: swap("No. 40: 3.20", "No. 40: 3.20 gms"),
    at: "21:19",
    message: /"gms"/,
    remedy: /^Write 3\.20 g$/,
    about: dune,
  },
  {
    code: "remark-in-figure",
    text: swap("No. 40: 3.20", "No. 40: 3.20 (spilled some)"),
    at: "21:19",
    message: /remark: "spilled some"/,
    remedy: /note: spilled some/,
    about: dune,
  },
  {
    code: "trace-only",
    text: swap("No. 40: 3.20", "No. 40: trace"),
    at: "21:19",
    message: /less than the scale/,
    remedy: /0\.05 ± 0\.05 g/,
    about: dune,
  },
  {
    code: "word-for-zero",
    text: swap("No. 40: 3.20", "No. 40: nil"),
    at: "21:19",
    message: /nothing/,
    remedy: /Write 0/,
    about: dune,
  },
  {
    code: "no-figure",
    text: swap("No. 40: 3.20", "No. 40: n/a"),
    at: "21:19",
    message: /no figure/,
    remedy: /not on the stack/,
    about: dune,
  },
  {
    code: "rough-figure",
    text: swap("No. 40: 3.20", "No. 40: about 3.20"),
    at: "21:19",
    message: /how far off/,
    remedy: /Write 3\.20 with/,
    about: dune,
  },

  // Sands and sievings.
  {
    code: "no-state",
    text: swap("    state: new\n", ""),
    at: "11:3",
    message: /new or used/,
    remedy: /state: new/,
    about: dune,
  },
  {
    code: "no-sievings",
    text: `${soundLog}  Beach sand:\n    state: new\n`,
    at: "39:3",
    message: /no sieving/,
    remedy: /sievings file/,
    about: "Beach sand",
  },
  {
    code: "no-retained",
    text: soundLog.replace(/ {8}retained:\n(?: {10}.*\n)+/, ""),
    at: "14:9",
    message: /what the sieves held/,
    remedy: /`retained:`/,
    about: dune,
  },
  {
    code: "repeated-sieve",
    text: swap("No. 50: 12.60", "0.425 mm: 12.60"),
    at: "22:11",
    message: /line 21 as "No\. 40"/,
    remedy: /Keep one/,
    about: dune,
  },
  {
    code: "repeated-sieve",
    text: swap("No. 50: 12.60", "No. 40: 12.60"),
    at: "22:11",
    message: /line 21/,
    remedy: /Keep one/,
    about: dune,
  },
  {
    code: "misplaced-sieve",
    text: rows("No. 50: 12.60", "No. 40: 3.20", "No. 70: 34.00", "pan: 0.15"),
    at: "22:11",
    message: /"No\. 40" is coarser than "No\. 50"/,
    remedy: /beside the right sieves/,
    about: dune,
  },
  {
    code: "no-pan",
    text: swap("          pan: 0.15\n", ""),
    at: "20:9",
    message: /finest grains count most/,
    remedy: /0\.2 g of the start mass/,
    about: dune,
  },
  {
    code: "pan-of-zero",
    text: swap("pan: 0.15", "pan: 0"),
    at: "26:16",
    message: /rare/,
    remedy: /paper/,
    about: dune,
  },
  {
    code: "no-start",
    text: swap("        start: 50.0 g\n", ""),
    at: "14:9",
    message: /start mass is missing/,
    remedy: /start: 50\.0 g/,
    about: dune,
  },
  {
    code: "sum-above-start",
    text: swap("No. 70: 20.10", "No. 70: 30.10"),
    at: "19:16",
    message: /59\.95 g together, more than the 50 g/,
    remedy: /swapped digits/,
    about: dune,
  },
  {
    code: "sum-above-start",
    text: swap("No. 50: 12.60", "No. 50: 21.60"),
    at: "22:19",
    message: /21\.60 may be 12\.60/,
    remedy: /swapped digits/,
    about: dune,
  },
  {
    code: "sum-above-start",
    text: rows("No. 40: 6.4", "No. 50: 25.2", "No. 70: 40.2", "No. 100: 24.0", "pan: 3.8"),
    at: "19:16",
    message: /99\.6 g together, more than the 50 g/,
    remedy: /percent of what went on, write % after each/,
    about: dune,
  },
  {
    code: "running-totals",
    text: rows("No. 40: 3.20", "No. 50: 15.80", "No. 70: 35.90", "No. 100: 47.90", "pan: 50.00"),
    at: "21:11",
    message: /rise from sieve to sieve up to the 50 g.*running totals\?/,
    remedy: /No\. 40: 3\.2, No\. 50: 12\.6, No\. 70: 20\.1, No\. 100: 12, pan: 2\.1\./,
    about: dune,
  },
  {
    code: "passing-shares",
    text: rows("No. 40: 94 %", "No. 50: 68 %", "No. 70: 28 %", "No. 100: 4 %", "pan: 0 %"),
    at: "20:9",
    message: /do they say what passed\?/,
    remedy: /No\. 40: 6 %, No\. 50: 26 %, No\. 70: 40 %, No\. 100: 24 %, pan: 4 %\./,
    about: dune,
  },
  {
    code: "sum-far-below-start",
    text: swap("start: 50.0 g", "start: 50.0 kg"),
    at: "19:16",
    message: /only 49\.95 g together, less than half of the 50000 g that went on\. 50\.0 kg may be 50\.0 g\./,
    remedy: /another unit/,
    about: dune,
  },
  {
    code: "sum-far-below-start",
    text: rows("No. 40: 0.0032", "No. 50: 0.0327", "No. 100: 0.0139", "pan: 0.0002"),
    at: "21:19",
    message: /The masses may be in kg: write kg after each\./,
    remedy: /another unit/,
    about: dune,
  },
  {
    code: "sum-above-start",
    text: swap("start: 50.0 g", "start: 0.050"),
    at: "19:16",
    message: /0\.050 may be 0\.050 kg\./,
    remedy: /another unit/,
    about: dune,
  },
  {
    code: "sum-above-start",
    text: swap("No. 70: 20.10", "No. 70: 2010"),
    at: "23:19",
    message: /2010 may be 20\.1\./,
    remedy: /decimal point/,
    about: dune,
  },
  {
    code: "sum-above-start",
    text: swap("No. 50: 12.60", "No. 50: 12.60 oz"),
    at: "22:19",
    message: /12\.60 oz may be 12\.60 g\./,
    remedy: /another unit/,
    about: dune,
  },
  {
    code: "sum-above-start",
    text: swap("No. 70: 20.10", "No. 70: 98.40"),
    at: "23:19",
    message: /No\. 70 alone has 98\.40, more than that\./,
    remedy: /with its dish/,
    about: dune,
  },
  {
    code: "sum-above-start",
    text: rows("No. 40: 3.20 kg", "No. 50: 32.70 kg", "No. 100: 13.90 kg", "pan: 0.15 kg"),
    at: "21:19",
    message: /The masses may be in g: write g after each\./,
    remedy: /another unit/,
    about: dune,
  },
  {
    code: "digits-swapped",
    text: swap("No. 70: 20.10", "No. 70: 02.10"),
    at: "23:19",
    message: /02\.10 may be 20\.10/,
    remedy: /notes/,
    about: dune,
  },
  {
    code: "percent-sum-above",
    text: rows("No. 40: 44 %", "No. 50: 34 %", "No. 70: 60 %", "pan: 2 %"),
    at: "20:9",
    message: /140 %/,
    remedy: /swapped/,
    about: dune,
  },
  {
    code: "percent-sum-below",
    text: rows("No. 40: 10 %", "No. 50: 30 %", "No. 70: 30 %", "pan: 2 %"),
    at: "20:9",
    message: /72 %/,
    remedy: /Check the rows/,
    about: dune,
  },
  {
    code: "mixed-units",
    text: swap("No. 50: 12.60", "No. 50: 25.2 %"),
    at: "22:19",
    message: /"25\.2 %" on No\. 50 is not in grams/,
    remedy: /all in percent/,
    about: dune,
  },
  {
    code: "one-sieve-only",
    text: rows("No. 50: 30.00", "pan: 19.95"),
    at: "20:9",
    message: /one sieve/,
    remedy: /three or four/,
    about: dune,
  },
  {
    code: "all-on-one",
    text: rows("No. 40: 0", "No. 50: 50.0", "No. 70: 0", "pan: 0"),
    at: "22:19",
    message: /All the sand lies on No\. 50/,
    remedy: /Shake longer/,
    about: dune,
  },
  {
    code: "no-sand",
    text: rows("No. 40: 0", "No. 50: 0", "pan: 0"),
    at: "20:9",
    message: /No sieve and no pan/,
    remedy: /what each held/,
    about: dune,
  },
  {
    code: "no-scale",
    text: swap("        scale: small scale\n", ""),
    at: "14:9",
    message: /unknown/,
    remedy: /reads to: 0\.1 g.*`scale: kitchen scale`/,
    about: dune,
  },
  {
    code: "no-sieve-set",
    text: swap("        sieve set: home stack\n", ""),
    at: "14:9",
    message: /overloaded/,
    remedy: /frame: 200 mm.*`sieve set: home stack`/,
    about: dune,
  },
  {
    code: "finer-than-scale",
    text: swap("reads to: 0.01 g", "reads to: 0.1 g"),
    at: "26:16",
    message: /"0\.15" on pan is finer/,
    remedy: /display/,
    about: dune,
  },
  {
    code: "same-name",
    text: swap(
      "  Pit sand:\n    state: used\n    sievings:\n      - date: 2026-03-03\n        scale: small scale\n        sieve set: home stack\n        start: 40.0 g\n",
      "      - date: 2026-03-02\n        portion: A\n        scale: small scale\n        sieve set: home stack\n        start: 40.0 g\n",
    ),
    at: "27:9",
    message: /same date and portion/,
    remedy: /portion: B/,
    about: dune,
  },
  {
    code: "same-twice",
    text: `${soundLog}${soundLog.slice(soundLog.indexOf("      - date: 2026-03-03"))}`,
    at: "39:9",
    message: /line 30/,
    remedy: /copied/,
    about: "Pit sand",
  },

  {
    code: "empty-mass",
    text: swap("No. 40: 3.20", "No. 40:"),
    at: "21:18",
    message: /what No\. 40 held/,
    remedy: /Write 0/,
    about: dune,
  },

  // CSV.
  {
    code: "no-such-file",
    text: csvLog,
    files: { "t.csv": "" },
    at: "6:20",
    message: /"s\.csv" beside the log/,
    remedy: /Did you mean "t\.csv"/,
    about: dune,
  },
  {
    code: "file-elsewhere",
    text: csvLog.replace("s.csv", "../s.csv"),
    at: "6:20",
    message: /not the name of a CSV file/,
    remedy: /folder of the log/,
    about: dune,
  },
  {
    code: "csv-no-rows",
    ...withCsv(head),
    at: "1:1",
    message: /no row of figures/,
    remedy: /one row a sieving/,
  },
  {
    code: "csv-no-sieves",
    ...withCsv("date,start\n2026-03-02,50\n"),
    at: "1:1",
    message: /no sieve/,
    remedy: /one column a sieve/,
  },
  {
    code: "csv-separator",
    ...withCsv(`${head}2026-03-02,A,s,50,10,20,19,1\n`.replaceAll(",", ";")),
    at: "1:1",
    message: /semicolons/,
    remedy: /Nothing to do/,
  },
  {
    code: "csv-decimal-commas",
    ...withCsv(
      `${head}2026-03-02,A,s,50,10.5,20,19,0.5\n`.replaceAll(",", ";").replaceAll(/(?<=\d)\.(?=\d)/g, ","),
    ),
    at: "2:19",
    message: /"10,5".*2 cells/,
    remedy: /10\.5/,
  },
  {
    code: "csv-open-quote",
    ...withCsv(`${head}2026-03-02,"A,s,50,10,20,19,1\n`),
    at: "2:12",
    message: /never closed/,
    remedy: /twice/,
  },
  {
    code: "csv-after-quote",
    ...withCsv(`${head}2026-03-02,"A"x,s,50,10,20,19,1\n`),
    at: "2:15",
    message: /follows the closing quote/,
    remedy: /in quotes/,
  },
  {
    code: "csv-cell-count",
    ...withCsv(`${head}2026-03-02,A,s,50,10,20,0,19,1\n`),
    at: "2:1",
    message: /9 cells, the first row has 8/,
    remedy: /decimal comma/,
  },
  {
    code: "empty-mass",
    ...withCsv(`${head}2026-03-02,A,s,50,10,,19,1\n`),
    at: "2:22",
    message: /what No\. 50 held/,
    remedy: /Write 0/,
  },
  {
    code: "csv-no-column-name",
    ...withCsv(`date,scale,start,No. 40,,No. 70,pan\n2026-03-02,s,50,10,20,19,1\n`),
    at: "1:25",
    message: /no name/,
    remedy: /first row/,
  },
];

test.each(cases)("$code at $at", ({ code, text, files, at, message, remedy, file: name, about }) => {
  const result = read(text, files);
  const found = issueOf(result, `log/${code}`);
  expect(`${found.place?.line}:${found.place?.column}`).toBe(at);
  expect(found.place?.file).toBe(name ?? "log.yaml");
  expect(found.message).toMatch(message);
  expect(found.remedy).toMatch(remedy);
  expect(found.about).toBe(about);
});

test("every complaint of the catalogue has its case above, and each function its own code", () => {
  const catalogue = [csv, field, figure, file, sieving, yaml].flatMap((part) => Object.values(part));
  const codes = catalogue.map((complaint) => {
    const words = Array.from({ length: complaint.length }, () => "x") as [string, string, string, string];
    return (complaint as (...words: string[]) => Issue)(...words).code;
  });
  expect(new Set(codes).size).toBe(codes.length);
  const triggered = new Set(cases.map((item) => `log/${item.code}`));
  expect(codes.filter((code) => !triggered.has(code))).toEqual([]);
});

test("every complaint is whole sentences and ends as one", () => {
  for (const complaint of [csv, field, figure, file, sieving, yaml].flatMap((part) => Object.values(part))) {
    const words = Array.from({ length: complaint.length }, () => "x");
    const { message, remedy, code } = (complaint as (...words: string[]) => Issue)(...words);
    expect(message, code).toMatch(/[.?x]$/);
    expect(remedy, code).toBeTruthy();
  }
});
