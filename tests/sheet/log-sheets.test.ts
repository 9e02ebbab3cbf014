// The sheets of a log, worked out: scales, look-ups by need, circles, and faults at their places.

import { expect, test } from "vitest";
import { readLog } from "../../lib/log/read-log.ts";
import { logSheets } from "../../lib/sheet/log-sheets.ts";
import type { Cell } from "../../lib/sheet/sheet.ts";

const head =
  "format: 1\nmetal: aluminium\nbond: bentonite\nscales: { pocket scale: { reads to: 0.1 g, within: 0.2 g } }\nsheets:\n";

function worked(sheets: string) {
  const text = head + sheets;
  const { value, issues } = readLog(text, { name: "yard.yaml" });
  expect(issues).toEqual([]);
  return { text, sheets: logSheets(value!) };
}
const value = (cell: Cell) => (cell.kind === "figure" ? cell.value : cell);
/** What stands in the log where an issue points. */
const pointedAt = (text: string, place: { readonly offset?: number } | undefined, length: number) =>
  text.slice(place!.offset!, place!.offset! + length);

test("a scale of the log gives its cells a ± of their own and a bias that they share", () => {
  const { sheets } = worked(`  s:
    columns: { wet: { unit: g, scale: pocket scale }, dry: { unit: g, scale: pocket scale }, lost: { unit: g, formula: wet - dry } }
    rows: [ { wet: 152.4, dry: 147.8 } ]
`);
  const [wet, lost] = ["wet", "lost"].map((name) => sheets[0]!.cell(0, name));
  if (wet!.kind !== "figure" || lost!.kind !== "figure") throw new Error("no figures");
  expect(lost!.value).toBeCloseTo(4.6, 10);
  // By hand: two roundings to 0.1 in each, triangular, sd 0.1/√6; the bias, sd 0.2/√3, cancels in the difference.
  const step = 0.1 / Math.sqrt(6);
  expect(wet!.figure.sd).toBeCloseTo(Math.hypot(step, 0.2 / Math.sqrt(3)), 3);
  expect(lost!.figure.sd).toBeCloseTo(step * Math.SQRT2, 3);
  const bias = lost!.figure.shares.find(({ id }) => id.startsWith("bias"));
  expect(bias?.percent ?? 0).toBe(0);
});

test("a sheet is worked out after those that it looks up in, whatever the order in the log", () => {
  const { sheets } = worked(`  mixes:
    columns: { clay: text, mass: kg, cost: { formula: 'mass * lookUp("prices", clay, "each kg")' } }
    rows: [ { clay: Alder, mass: 2 kg }, { clay: Birch, mass: 1 lb } ]
  prices:
    columns: { clay: text, paid: number, bag: kg, each kg: { unit: 1/kg, formula: paid / bag } }
    rows: [ { clay: Birch, paid: 9, bag: 3 }, { clay: Alder, paid: 10, bag: 4 } ]
`);
  expect(sheets.map(({ name }) => name)).toEqual(["mixes", "prices"]);
  expect(sheets.flatMap(({ issues }) => issues)).toEqual([]);
  expect(value(sheets[0]!.cell(0, "cost"))).toBeCloseTo(5, 12);
  // 1 lb = 0.45359237 kg exactly (international pound, NIST SP 811).
  expect(value(sheets[0]!.cell(1, "cost"))).toBeCloseTo(3 * 0.45359237, 12);
});

test("sheets that look up in each other are named, and only what needs it is without a figure", () => {
  const { sheets } = worked(`  one:
    columns: { bag: text, wet: g, other: { unit: g, formula: 'lookUp("two", bag, "dry")' }, twice: { unit: g, formula: 2 * wet } }
    rows: [ { bag: A, wet: 3 } ]
  two:
    columns: { bag: text, dry: g, back: { unit: g, formula: 'lookUp("one", bag, "wet")' } }
    rows: [ { bag: A, dry: 2 } ]
  three:
    columns: { bag: text, sum: { unit: g, formula: 'lookUp("two", bag, "dry") + 1 g' } }
    rows: [ { bag: A } ]
`);
  const codes = sheets.map(({ issues }) => issues.map(({ code }) => code));
  expect(codes).toEqual([["sheet/circle-of-sheets"], ["sheet/circle-of-sheets"], []]);
  expect(sheets[0]!.issues[0]).toMatchObject({ about: "one", place: { file: "yard.yaml", line: 6 } });
  expect(sheets[0]!.issues[0]!.message).toMatch(/one, two|two, one/);
  expect(value(sheets[0]!.cell(0, "twice"))).toBe(6);
  expect(sheets[0]!.cell(0, "other")).toMatchObject({
    kind: "fault",
    fault: { code: "sheet/circle-of-sheets" },
  });
  // A sheet outside the circle reads what stands in one within it.
  expect(value(sheets[2]!.cell(0, "sum"))).toBe(3);
  const self = worked(`  s:
    columns: { bag: text, a: { formula: 'lookUp("s", bag, "a")' } }
    rows: [ { bag: A } ]
`).sheets[0]!;
  expect(self.issues.map(({ message }) => message)).toEqual(['The sheet "s" looks up in itself.']);
});

test("a fault within a formula, a cell, a value and a foot points at its own characters", () => {
  const { text, sheets } = worked(`  s:
    values: { bore: 50 mmm }
    columns:
      wet: g
      height: mm
      wrong: { unit: g, formula: "2 * wet + height" }
    rows:
      - { wet: 12.4 kPa, height: 50 mm }
    foot:
      bare: 3 * wet
`);
  const found = (code: string) => sheets[0]!.issues.find((issue) => issue.code.includes(code));
  // The whole of what cannot be added.
  expect(pointedAt(text, found("differ")?.place, 16)).toBe("2 * wet + height");
  expect(pointedAt(text, found("cell-unit")?.place, 8)).toBe("12.4 kPa");
  expect(pointedAt(text, found("bare-column")?.place, 3)).toBe("wet");
  expect(pointedAt(text, found("unknown-unit")?.place, 2)).toBe("50");
  expect(sheets[0]!.issues.every(({ about, place }) => about === "s" && place?.line !== undefined)).toBe(
    true,
  );
});

test("the ends of a band are turned into the unit of what stands before it", () => {
  const sheet = (band: string) =>
    worked(`  s:
    columns: { bag: text, strength: kPa }
    rows: [ { bag: A, strength: 70 } ]
    charts: [ { x: bag, y: strength, band: ${band} } ]
`).sheets[0]!;
  expect(sheet("60 to 80").charts[0]!.band).toEqual({ low: 60, high: 80 });
  // 1 psi = 6.894757 kPa, NIST SP 811.
  expect(sheet("10 to 12 psi").charts[0]!.band!.low).toBeCloseTo(68.94757, 5);
  const wrong = sheet("1 to 2 kg");
  expect(wrong.charts[0]!.band).toBeUndefined();
  expect(wrong.issues.map(({ code, place }) => [code, place?.line])).toEqual([["sheet/band-unit", 9]]);
});
