// Looks up a unit without a "/" in it by any of its names.

import type { Unit } from "./unit.ts";
import { unitRows } from "./unit-table.ts";
import type { UnitRow } from "./unit-table-row.ts";

const superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** One spelling for the many: micro sign U+00B5, degree sign, "^2" for "²", "·" for every multiplication sign, single spaces. */
export function plainUnitText(text: string): string {
  return text
    .replace(
      /[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+/g,
      (run) => `^${[...run].map((c) => (c === "⁻" ? "-" : superscripts.indexOf(c))).join("")}`,
    )
    .replaceAll("μ", "µ")
    .replaceAll("₂", "2")
    .replaceAll("℃", "°C")
    .replaceAll("℉", "°F")
    .replace(/[º˚]/g, "°")
    .replace(/\s*[⋅∙•×*·]\s*/g, "·")
    .replaceAll("−", "-")
    .replace(/\s+per\s+/g, "/")
    .replace(/\s*\/\s*/g, "/")
    .replace(/\s+/g, " ")
    .trim();
}

const byName = new Map<string, UnitRow>();
/** In lower case; null where two units differ only in capitals. */
const byLowerCase = new Map<string, UnitRow | null>();
for (const row of unitRows) {
  for (const name of [row.text, ...row.names].map(plainUnitText)) {
    byName.set(name, row);
    const lower = name.toLowerCase();
    const before = byLowerCase.get(lower);
    byLowerCase.set(lower, before === undefined || before === row ? row : null);
  }
}

/** In the library's spelling. */
export const simpleUnitNames: readonly string[] = unitRows.map((row) => row.text);

/** The row of a name in plain spelling, undefined if there is none. */
export function unitRow(plain: string): UnitRow | undefined {
  const row = byName.get(plain);
  if (row || plain.length < 2) return row;
  const other = byLowerCase.get(plain.toLowerCase()) ?? undefined;
  return other && !mixesUpPrefix(plain, other) ? other : undefined;
}

/** "Mg" would be a tonne and "mJ" a thousandth of a joule: m and M may be swapped only where all is in capitals. */
function mixesUpPrefix(plain: string, { text, dimension }: UnitRow): boolean {
  const isSymbol = plain.toLowerCase() === text.toLowerCase() && dimension[2] !== 1;
  return isSymbol && text[0]!.toLowerCase() === "m" && plain[0] !== text[0] && plain !== plain.toUpperCase();
}

/** Built once: the same name gives the same object. */
const units = new Map<UnitRow, Unit>(
  unitRows.map((row) => {
    const { text, dimension, ratio, offset = 0, kind = "plain" } = row;
    return [row, Object.freeze({ text, dimension, factor: ratio[0] / ratio[1], offset, kind })];
  }),
);

export function simpleUnit(plain: string): Unit | undefined {
  const row = unitRow(plain);
  return row && units.get(row);
}
