// A wide table cut into groups of columns, so that a sheet of paper holds each of them.

import { cellOf, type TableParts } from "./table-parts.ts";

/** What a sheet of A4 or Letter holds in the print style, in characters; a desk holds about as much. */
const SHEET = 125;
/** Between two columns. */
const GAP = 2.5;
/** Heads break into lines past this, texts past twice as much. */
const BREAKS_AT = 12;

/**
 * The places of the columns, in as few groups as a sheet allows and about as wide as each other; each begins with
 * the first column where that holds the names of the rows. One group for a table that fits.
 */
export function columnGroups({ columns, rows, foot = [] }: TableParts): readonly (readonly number[])[] {
  const all = columns.map((_, c) => c);
  const widths = columns.map(({ head, unit, align }, c) => {
    const cells = [...rows, ...foot].map((row) => cellOf(row[c]).text.length);
    const widest = Math.max(0, ...cells);
    const heads = [head, unit ?? ""].map(headWidth);
    return GAP + Math.max(...heads, align === "number" ? widest : Math.min(widest, 2 * BREAKS_AT));
  });
  const names = columns[0]?.align === "text" ? [0] : [];
  const fixed = sum(names.map((c) => widths[c]!));
  const others = all.slice(names.length);
  const needed = sum(others.map((c) => widths[c]!));
  if (fixed + needed <= SHEET) return [all];
  const count = Math.ceil(needed / Math.max(SHEET - fixed, SHEET / 4));
  const groups: number[][] = Array.from({ length: count }, () => [...names]);
  let passed = 0;
  for (const c of others) {
    // By where the middle of the column falls, so that the last group is no remnant.
    const group = Math.floor(((passed + widths[c]! / 2) / needed) * count);
    groups[group]!.push(c);
    passed += widths[c]!;
  }
  return groups.filter((group) => group.length > names.length);
}

function headWidth(text: string): number {
  const longest = Math.max(...text.split(/\s+/).map((word) => word.length));
  return Math.max(longest, Math.min(text.length, BREAKS_AT));
}

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}
