// Names for the tests of formulas, and one row worked out.

import { unitNamed } from "../../lib/quantity/read-unit.ts";
import { readFormula } from "../../lib/sheet/formula.ts";
import type { Formula, FormulaScope, NameKind } from "../../lib/sheet/formula-type.ts";

const column = (unit?: string): NameKind => ({
  kind: "number",
  per: "row",
  ...(unit === undefined ? {} : { unit: unitNamed(unit)! }),
});

export const names: ReadonlyMap<string, NameKind> = new Map<string, NameKind>([
  ["wet", column("g")],
  ["dry", column("g")],
  ["dry mass", column("g")],
  ["heap", column("kg")],
  ["height", column("mm")],
  ["load", column("lb")],
  ["strength", column("psi")],
  ["moisture", column("% of damp mass")],
  ["clay", column("% of dry mix")],
  ["percent", column("%")],
  ["inside", column("°C")],
  ["outside", column("°F")],
  ["absolute", column("K")],
  ["warming", column("°C difference")],
  ["n", column()],
  ["bag", { kind: "text", per: "row" }],
  ["tested", { kind: "date", per: "row" }],
  ["made", { kind: "date", per: "row" }],
  ["basis", { kind: "number", unit: unitNamed("kg")!, per: "sheet" }],
]);

export const otherSheets = new Map([
  [
    "makers",
    new Map<string, NameKind>([
      ["bag", { kind: "text", per: "row" }],
      ["mass", column("kg")],
    ]),
  ],
]);

export interface Wanting {
  readonly in?: FormulaScope["in"];
  readonly wants?: string;
  readonly names?: ReadonlyMap<string, NameKind>;
}

export function read(text: string, { in: where = "column", wants, names: given = names }: Wanting = {}) {
  return readFormula(text, {
    names: given,
    otherSheets,
    in: where,
    ...(wants === undefined ? {} : { wants: unitNamed(wants)! }),
  });
}

/** The formula, or the messages as an error. */
export function formula(text: string, wanting?: Wanting): Formula {
  const { value, issues } = read(text, wanting);
  if (!value) throw new Error(`${text}: ${issues.map(({ message }) => message).join(" ")}`);
  return value;
}

/** Its result for one row, and its unit. Aggregates and look-ups take their names from `sheet`, by their place. */
export function worked(
  text: string,
  row: Readonly<Record<string, number>> = {},
  wanting?: Wanting & { readonly sheet?: readonly number[] },
): { readonly value: number; readonly unit: string | undefined; readonly why: string | undefined } {
  const read = formula(text, wanting);
  const inputs = [
    ...read.rows.map((name) => row[name]!),
    ...read.sheet.map((name) => row[name]!),
    ...(wanting?.sheet ?? []),
  ];
  const out = new Float64Array(1);
  read.run(inputs, out);
  return { value: out[0]!, unit: read.unit?.text, why: read.why(inputs) };
}

/** What is wrong: the text that each fault points at, and its message. */
export function faults(text: string, wanting?: Wanting): string[] {
  return read(text, wanting).issues.map(({ at, message }) => `${text.slice(at.from, at.to)} | ${message}`);
}
