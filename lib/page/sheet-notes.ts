// What is said under a sheet: which figures have no ± and why, and what the ± of the foot is made of.

import { rowName } from "../finding/sheet-points.ts";
import { printNumber } from "../quantity/print.ts";
import type { Cell, Sheet } from "../sheet/sheet.ts";
import type { Block } from "./blocks.ts";

/** Of figures whose ± leaves out draws without a number, or is not known for that; the first of a column stands for those like it. */
function lostWords(sheet: Sheet, cellsOf: (name: string) => Cell[]): string[] {
  const words = (what: string, cell: Cell, known: boolean): string[] => {
    if (cell.kind !== "figure" || !cell.figure.lost) return [];
    const { lost, low } = cell.figure;
    if (Number.isFinite(low) !== known) return [];
    const share = `${printNumber(lost.percent, lost.percent < 1 ? 2 : 0)} % of the draws give no figure (${lost.why})`;
    return [
      known
        ? `${what}: ${share}; its ± is that of the others, so at least that.`
        : `${what}: ± not known, because ${share}.`,
    ];
  };
  return [true, false].flatMap((known) => [
    ...sheet.columns.flatMap(({ name }) => {
      const [first, ...more] = cellsOf(name).flatMap((cell, row) =>
        words(`${name} of ${rowName(sheet, row)}`, cell, known),
      );
      if (first === undefined) return [];
      const like = more.length === 1 ? "1 more row is" : `${more.length} more rows are`;
      return [more.length === 0 ? first : `${first} ${like} like it.`];
    }),
    ...sheet.foot.flatMap(({ name, cell }) => words(name, cell, known)),
  ]);
}

export function sheetNotes(sheet: Sheet, scales: readonly { name: string; withinG?: number }[]): Block[] {
  const cellsOf = (name: string): Cell[] =>
    Array.from({ length: sheet.rowCount }, (_, row) => sheet.cell(row, name));
  const numbers = sheet.columns.filter(({ kind }) => kind === "quantity" || kind === "number");
  const exact = numbers.filter(({ name }) => {
    const figures = cellsOf(name).filter((cell) => cell.kind === "figure");
    return figures.length > 0 && figures.every(({ figure }) => figure.sources.length === 0);
  });
  const given = exact.filter(({ formula }) => formula === undefined).map(({ name }) => name);
  const worked = exact.filter(({ formula }) => formula !== undefined).map(({ name }) => name);
  const bounded = [
    ...numbers.flatMap(({ name }) => cellsOf(name)),
    ...sheet.foot.map(({ cell }) => cell),
  ].some((cell) => cell.kind === "figure" && cell.atLeast);
  const blocks: Block[] = [];
  if (exact.length > 0) {
    const what = [
      given.length > 0 ? `${given.join(", ")}, for which the log gives no ±` : "",
      worked.length > 0 ? `${worked.join(", ")}, worked out from exact figures alone` : "",
    ].filter((part) => part !== "");
    blocks.push({ kind: "prose", text: `Taken as exact: ${what.join("; ")}.` });
  }
  if (bounded) {
    const unchecked = scales.filter(({ withinG }) => withinG === undefined).map(({ name }) => name);
    const why =
      unchecked.length > 0
        ? `the ${unchecked.join(", ")} was never checked with known weights (within), so its bias is not in the ±`
        : "a part of the doubt is not known";
    blocks.push({ kind: "prose", text: `"At least": ${why}.` });
  }
  const lost = lostWords(sheet, cellsOf);
  if (lost.length > 0) blocks.push({ kind: "list", items: lost });
  const over = sheet.foot.filter(({ formula }) => /\b(mean|sum|median|quantile)\s*\(/.test(formula));
  if (over.some(({ cell }) => cell.kind === "figure" && cell.figure.sources.length > 0)) {
    blocks.push({
      kind: "prose",
      once: true,
      text: "The ± of a figure of the foot is what the readings bring to it. How far the rows scatter is not in it, and is what sd() tells.",
    });
  }
  const doubts = sheet.foot.flatMap(({ name, cell }) => {
    if (cell.kind !== "figure" || cell.figure.sources.length < 2) return [];
    const shares = cell.figure.shares.filter(({ percent }) => percent >= 1).slice(0, 6);
    const told = shares.map(({ source, id, percent }) => {
      return `${printNumber(Math.min(100, percent), 0)} % ${source.says ?? id}`;
    });
    if (shares.length === 0) return [];
    const rest = cell.figure.shares.length - shares.length;
    const together = cell.figure.actTogether ? " (they act together, so the parts don't add up)" : "";
    return [`${name}: ${told.join("; ")}${rest > 0 ? `; ${rest} more` : ""}${together}.`];
  });
  if (doubts.length > 0) {
    blocks.push({
      kind: "fold",
      summary: "What the ± of the foot is made of",
      blocks: [{ kind: "list", items: doubts }],
    });
  }
  return blocks;
}
