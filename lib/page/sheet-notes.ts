// What is said under a sheet: which figures have no ± and why, and what the ± of the foot is made of.

import { printNumber } from "../quantity/print.ts";
import type { Cell, Sheet } from "../sheet/sheet.ts";
import type { Block } from "./blocks.ts";

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
    blocks.push({ kind: "prose", text: `“At least”: ${why}.` });
  }
  const over = sheet.foot.filter(({ formula }) => /\b(mean|sum|median|quantile)\s*\(/.test(formula));
  if (over.some(({ cell }) => cell.kind === "figure" && cell.figure.sources.length > 0)) {
    blocks.push({
      kind: "prose",
      text: "The ± of a figure of the foot is what the readings bring to it. How far the rows scatter is not in it, and is what sd() tells.",
    });
  }
  const doubts = sheet.foot.flatMap(({ name, cell }) => {
    if (cell.kind !== "figure" || cell.figure.sources.length < 2) return [];
    const shares = cell.figure.shares.filter(({ percent }) => percent >= 1).slice(0, 6);
    const told = shares.map(({ source, id, percent }) => {
      return `${printNumber(Math.min(100, percent), 0)} % ${source.says ?? id}`;
    });
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
