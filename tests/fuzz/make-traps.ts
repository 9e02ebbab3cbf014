// Logs that are made to choke a reader: deep nesting, anchors of anchors, numbers without end, one part a thousand times.

import type { Dice } from "./dice.ts";
import { grammarLog, logName } from "./make-log.ts";
import { hostile } from "./make-scalars.ts";
import type { Texts } from "./texts.ts";

const deep = (dice: Dice): string => {
  const depth = dice.pick([10, 58, 59, 60, 61, 100, 1000, 5000]);
  const [open, close] = dice.pick([
    ["[", "]"],
    ["{a: ", "}"],
    ["- ", ""],
    ["[{a: ", "}]"],
    ["? ", ""],
    ["a: {", "}"],
    ['{"a": ', "}"],
  ] as const);
  return `${dice.pick(["", "sands: ", "a:\n  "])}${open.repeat(depth)}${dice.pick(["", "x", "1"])}${dice.chance(70) ? close.repeat(depth) : ""}\n`;
};
const steps = (dice: Dice): string =>
  Array.from(
    { length: dice.integer(2, 90) },
    (_, k) => `${dice.pick([" ", "  "]).repeat(k)}${dice.pick(["a", "sands", "rows"])}:`,
  ).join("\n");
const laughs = (dice: Dice): string => {
  const [levels, wide] = [dice.integer(2, 12), dice.integer(2, 10)];
  const list = Array.from(
    { length: levels },
    (_, k) =>
      `a${k}: &a${k} [${Array(wide)
        .fill(k === 0 ? "x" : `*a${k - 1}`)
        .join(", ")}]`,
  );
  return `${list.join("\n")}\n${dice.pick(["sands", "batches", "sheets", "heap"])}: *a${levels - 1}\n`;
};
const circle = (dice: Dice): string =>
  dice.pick([
    "sands: &a\n  Dune: *a\n",
    "batches: &a { W1: *a }\n",
    "sheets: &s\n  one: &t { columns: *t, rows: *s }\n",
    "&r format: *r\nsands: *r\n",
    "a: &a [*a, *a]\n",
    "sands: &a { x: &b { sievings: [*a, *b] } }\n",
    "heap: &h { mass: *h }\nrecipe: *h\n",
    "&k mass: 1\nheap: { *k : 5 kg }\n",
    "scales: &s { one: { reads to: 0.1 g } }\nrigs: *s\nsieve sets: *s\nsands: *s\n",
    "<<: &b { format: 1 }\nsands: *b\n",
  ]);
/** One line of a sound log many times over: what takes time by the square shows here. */
const pumped = (dice: Dice): string => {
  const lines = grammarLog(dice)[0]!.text.split("\n");
  const from = dice.integer(0, lines.length - 1);
  const block = lines.slice(from, from + dice.integer(1, 4));
  const times = dice.pick([10, 100, 400]);
  const copies = Array.from({ length: times }, (_, k) =>
    block
      .map((line) =>
        line.replace(/^( *)(\w[\w ]*?):/, (_, pad, key) => `${pad}${dice.chance(80) ? `${key} ${k}` : key}:`),
      )
      .join("\n"),
  );
  return [...lines.slice(0, from), ...copies, ...lines.slice(from + block.length)].join("\n");
};
const longLine = (dice: Dice): string => {
  const part = dice.pick([
    " ",
    ",",
    "#",
    "a: ",
    "{",
    "}",
    "[",
    '"',
    "'",
    "&a ",
    "*a ",
    "- ",
    "\t",
    "9",
    "x ",
    "\\",
    "1,",
    ": ",
    "#40: 1 ",
    "“",
    "\u00a0",
    "| ",
    "±",
    "{a: 1}, ",
    "%",
  ]);
  return `${dice.pick(["", "format: 1\nnote: ", "sands:\n  ", "a: [", "retained: {"])}${part.repeat(dice.pick([50, 500, 4000]))}${dice.pick(["", "x", ": 1", "]", "}"])}\n`;
};
const blockScalars = (dice: Dice): string =>
  `format: 1\nnote: ${dice.pick(["|", ">", "|-", ">+", "|9", "|0", ">-2", "| # x", "|x"])}\n${dice.pick(["  a\n   b\n\n", "a\n", "\ta\n", "  a\n c\n", "", "  # no comment\n"])}title: ${dice.pick(hostile)}\n`;
const documents = (dice: Dice): string =>
  `${dice.pick(["", "%YAML 1.2\n", "%YAML 9.9\n", "%TAG ! x\n", "%\n", "# x\n"])}---${dice.pick(["\n", " ", " !x\n", " &a\n"])}format: 1\n${dice.pick(["---\nformat: 1\n", "...\n", "...\nx", "", "--- x\n"])}`;

const sorts = [deep, steps, laughs, circle, pumped, longLine, blockScalars, documents];

export const trapLog = (dice: Dice): Texts => [{ name: logName, text: dice.pick(sorts)(dice) }];
