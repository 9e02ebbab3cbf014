// A row of a chart's data in one line: its name, its figures with unit and ±, and what else it tells.

import type { ChartTable } from "../chart/chart.ts";
import { printFigure } from "../quantity/print.ts";
import { chartTableParts, toldColumns } from "./chart-table.ts";
import { visibleLine } from "./visible.ts";

/** A longer text behind the first is told under the table alone. */
const LONGEST_TEXT = 40;
const LOW = /(^|, )low end\b/;
const HIGH = /(^|, )high end\b/;

/**
 * A function from a row of the table to its words. columns: of the numbers to tell; all of the row's where none is given.
 * @example readingWords({ columns: [{ name: "batch" }, { name: "moisture", unit: "%" }], rows: [["W1", 3.2]] })(0) // "W1: moisture 3.2 %"
 */
export function readingWords(table: ChartTable): (row: number, columns?: readonly number[]) => string {
  const { columns, rows } = table;
  const shown = chartTableParts(table).rows;
  const told = toldColumns(table);
  const named = (name: string) => columns.findIndex((column) => column.name === name);
  const [property, unit] = [named("property"), named("unit")];
  const ends = columns.map((_, c) => intervalColumns(columns, c));
  const numbers = columns.flatMap(({ name }, c) => (LOW.test(name) || HIGH.test(name) ? [] : [c]));

  function figureText(r: number, c: number): string {
    const row = rows[r]!;
    const { name } = columns[c]!;
    const general = name === "figure" || name === "value";
    const own = general && unit >= 0 ? row[unit] : columns[c]!.unit;
    const behind = typeof own === "string" && own !== "" ? ` ${own}` : "";
    const head = general && property >= 0 ? String(row[property]) : name;
    const value = row[c];
    const [low, high] = (ends[c] ?? []).map((end) => row[end]);
    if (isNumber(low) && isNumber(high)) {
      if (isNumber(value) && low <= value && value <= high) {
        const printed = printFigure({ value, low, high });
        const uneven = printed.form === "range" ? `${printed.value} (${printed.text})` : printed.text;
        return `${head} ${uneven}${behind}`;
      }
      if (!isNumber(value) && low <= high)
        return `${head} ${textAt(r, ends[c]![0])} to ${textAt(r, ends[c]![1])}${behind}`;
    }
    return isNumber(value) ? `${head} ${textAt(r, c)}${behind}` : "";
  }
  function textAt(r: number, c: number): string {
    const cell = shown[r]![told.indexOf(c)] ?? "";
    return typeof cell === "string" ? cell : cell.text;
  }

  return (r, only) => {
    const texts = columns.flatMap(({ name }, c) => {
      const text = rows[r]![c];
      const tells = c !== property && c !== unit && typeof text === "string" && text.trim() !== "";
      return tells && (c === 0 || text.length <= LONGEST_TEXT) ? [{ name, text }] : [];
    });
    const [first, ...others] = texts;
    const figures = (only ? numbers.filter((c) => only.includes(c)) : numbers)
      .map((c) => figureText(r, c))
      .filter((text) => text !== "");
    const more = others.map(({ name, text }) => (name === "what" ? text : `${name} ${text}`));
    const rest = [...figures, ...more].join("; ");
    return visibleLine(first === undefined ? rest : `${first.text}: ${rest}`);
  };
}

/** The columns behind a figure that hold the ends of its interval. */
function intervalColumns(
  columns: ChartTable["columns"],
  c: number,
): readonly [low: number, high: number] | undefined {
  const [low, high] = [columns[c + 1]?.name ?? "", columns[c + 2]?.name ?? ""];
  const own = columns[c]!.name;
  if (LOW.test(own) || HIGH.test(own) || !LOW.test(low) || !HIGH.test(high)) return undefined;
  return [c + 1, c + 2];
}

function isNumber(value: unknown): value is number {
  return typeof value === "number" && Number.isFinite(value);
}
