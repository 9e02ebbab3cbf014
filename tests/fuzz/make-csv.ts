// CSV files: of sievings, batches and sheets, with slips; and tables of anything at all.

import type { Dice } from "./dice.ts";
import { hostile, type Kind, scalar } from "./make-scalars.ts";
import { afsNumbers } from "./make-sieves.ts";

const columns: {
  readonly [kind: string]: readonly (readonly [head: string, cell: Kind | readonly string[]])[];
} = {
  sievings: [
    ["date", "date"],
    ["portion", ["A", "B", "C", "D"]],
    ["repeat of", ["split", "grab"]],
    ["scale", ["shed scale"]],
    ["sieve set", ["home stack"]],
    ["minutes", "count"],
    ["washed", "yesNo"],
    ["start", ["100 g", "100", "50.0 g"]],
    ...afsNumbers.map((label) => [label, ["0", "0.4", "3.1", "12.6", "18.3"]] as const),
    ["pan", ["0.2", "0.1"]],
  ],
  batches: [
    ["date", "date"],
    ["batch", ["M1", "M2", "M3", "W1", "9"]],
    ["order", "count"],
    ["moisture", "moisture"],
    ["moisture/damp", "grams"],
    ["moisture/dry", "grams"],
    ["compactability", "compactability"],
    ["green compression", "strength"],
    ["green compression/load", "kilograms"],
    ["permeability", "gfn"],
    ["squeeze", ["1", "3", "5"]],
    ["note", "words"],
  ],
  rows: [
    ["bag", ["Alder", "Birch", "Cedar"]],
    ["made", "date"],
    ["damp", ["52.4", "50.1 ± 0.1 g", "1.8 oz"]],
    ["dry", ["47.6", "47.1 ± 0.2"]],
    ["share", ["5.0", "7"]],
  ],
};

export function csvText(dice: Dice, kind: "sievings" | "batches" | "rows", wrong: number): string {
  const separator = dice.pick([",", ",", ",", ";", "\t", "|"]);
  const chosen = columns[kind]!.filter(() => dice.chance(85));
  const head = chosen.map(([name]) =>
    dice.chance(wrong) ? dice.pick([...hostile, name.toUpperCase(), ""]) : name,
  );
  const rows = Array.from({ length: dice.integer(0, 6) }, () => {
    const cells = chosen.map(([, cell]) => {
      if (typeof cell === "string") return scalar(dice, cell, wrong);
      return dice.chance(wrong) ? dice.pick(hostile) : dice.pick(["", ...cell, ...cell]);
    });
    if (dice.chance(wrong)) cells.push(dice.pick(hostile));
    if (dice.chance(wrong)) cells.pop();
    return cells;
  });
  return table(dice, [head, ...rows], separator, wrong);
}

/** A table of anything: cells of every kind, quotes that close or not. */
export function anyTable(dice: Dice): string {
  const width = dice.integer(0, 5);
  const cell = (): string =>
    dice.pick([
      dice.pick(hostile),
      dice.pick(hostile),
      '"',
      '""',
      '"a""b"',
      '"a\nb"',
      'x"y',
      '"x"y',
      " ",
      "1",
      "a,b",
      "a;b",
    ]);
  const rows = Array.from({ length: dice.integer(0, 6) }, () =>
    Array.from({ length: Math.max(0, width + dice.integer(-1, 1)) }, cell),
  );
  return table(dice, rows, dice.pick([",", ";", "\t", "|", " "]), 50);
}

function table(dice: Dice, rows: readonly (readonly string[])[], separator: string, wrong: number): string {
  const quote = (cell: string): string =>
    (cell.includes(separator) || /["\r\n]/.test(cell)) && !dice.chance(wrong / 2)
      ? `"${cell.replaceAll('"', '""')}"`
      : cell;
  const eol = dice.pick(["\n", "\n", "\r\n", "\r"]);
  const end = dice.pick([eol, eol, "", `${eol}${eol}`]);
  return `${dice.chance(4) ? "\ufeff" : ""}${rows.map((row) => row.map(quote).join(separator)).join(eol)}${end}`;
}
