// Logs from the grammar of the format, most parts right in some and wrong in others; with the CSV files they name.

import type { Dice } from "./dice.ts";
import * as bench from "./make-bench.ts";
import { csvText } from "./make-csv.ts";
import { a, type Field, group, oneOf } from "./make-parts.ts";
import { hostile } from "./make-scalars.ts";
import { experiment, sheets } from "./make-sheet-part.ts";
import { styleOf, written } from "./make-writing.ts";
import * as yard from "./make-yard.ts";
import type { Texts } from "./texts.ts";

export const logName = "log.yaml";

const head: readonly Field[] = [
  ["format", oneOf("1")],
  ["title", a("words"), 70],
  ["founder", a("words"), 50],
  ["note", a("words"), 20],
  ["invented", a("yesNo"), 70],
  ["metal", oneOf("aluminium", "bronze", "grey iron", "brass"), 80],
  ["bond", oneOf("bentonite", "natural"), 80],
  ["units", oneOf("US", "metric"), 15],
];
const scales: Field = ["scales", bench.scales, 85];
const sets: Field = ["sieve sets", bench.sieveSets, 50];
const rigs: Field = ["rigs", bench.rigs, 85];
const sands: Field = ["sands", bench.sands];
const batches: Field = ["batches", bench.batches, 95];

/** What belongs together, as a founder's log for one purpose has it; a few of everything at the end. */
const purposes: readonly (readonly Field[])[] = [
  [scales, sets, sands],
  [scales, sets, sands, ["prices", yard.prices], ["blend", yard.blend]],
  [scales, rigs, ["trial", bench.trial, 80], ["aims", bench.aims, 70], batches],
  [scales, rigs, batches, ["heap", yard.heap], ["recipe", yard.recipe, 60], ["experiment", experiment, 60]],
  [
    ["heap", yard.heap],
    ["recipe", yard.recipe],
    ["prices", yard.prices, 60],
    ["muller", yard.muller, 40],
  ],
  [
    ["heap", yard.heap],
    ["recipe", yard.recipe, 60],
    ["events", yard.events],
    ["planned", yard.planned, 60],
    ["flask", yard.flask, 60],
    ["weather", yard.weather, 60],
    ["measured", yard.measured, 70],
    ["wanted", yard.wanted, 60],
  ],
  [
    scales,
    rigs,
    ["heap", yard.heap, 80],
    ["batches file", oneOf("batches.csv"), 40],
    batches,
    ["measured", yard.measured],
    ["events", yard.events],
    ["remind", yard.remind, 60],
  ],
  [batches, ["events", yard.events], ["castings", yard.castings], ["questions", yard.questions, 80]],
  [
    ["heap", yard.heap, 60],
    ["mulling", bench.mulling],
    ["muller", yard.muller, 60],
  ],
  [scales, ["sheets", sheets]],
  [scales, ["sheets", sheets], ["experiment", experiment, 60]],
];
const everything: readonly Field[] = [...new Map(purposes.flat().map((field) => [field[0], field])).values()];

/** Wrong values in a hundred: none in two of five logs. */
export const shareWrong = (dice: Dice): number => dice.pick([0, 0, 2, 10, 40]);

export function grammarLog(dice: Dice): Texts {
  const wrong = shareWrong(dice);
  const size = dice.integer(0, 99);
  const purpose =
    size < 55
      ? dice.some([scales, rigs], 40).concat([dice.pick(everything)])
      : size < 95
        ? dice.pick(purposes)
        : everything.map(([key, make, percent = 100]): Field => [key, make, percent / 3]);
  const part = group(...head, ...purpose)(dice, wrong);
  const style = styleOf(dice, wrong);
  const text = `${written(dice, part, style, wrong)}\n`;
  return [{ name: logName, text }, ...filesFor(dice, text, wrong)];
}

/** The files that the text may name, now and then one that is missing. */
function filesFor(dice: Dice, text: string, wrong: number): Texts {
  return (["sievings", "batches", "rows"] as const)
    .filter((kind) => text.includes(`${kind}.csv`) && !dice.chance(wrong))
    .map((kind) => ({ name: `${kind}.csv`, text: csvText(dice, kind, wrong) }));
}

/** Any words in any order, as lines of a log. */
export function wordsLog(dice: Dice): Texts {
  const keys = [...everything, ...head].map(([key]) => key);
  const lines = Array.from({ length: dice.integer(0, 14) }, () => {
    const indent = " ".repeat(dice.pick([0, 0, 2, 2, 4, 6, 1, 3]));
    const dash = dice.pick(["", "", "", "- "]);
    const key = dice.pick([...keys, "retained", "No. 40", "formula", "rows", dice.pick(hostile)]);
    return `${indent}${dash}${dice.chance(80) ? `${key}:` : ""} ${dice.chance(60) ? dice.pick(hostile) : ""}`;
  });
  return [{ name: logName, text: lines.join("\n") }];
}
