// What is not known about a ±: a scale that nobody checked, and draws in which a formula has no number.

import { expect, test } from "vitest";
import { type Cell, type SheetSpec, sheet, spread } from "../../lib/index.ts";

const scales = [
  { name: "kitchen scale", stepG: 0.1 },
  { name: "pocket scale", stepG: 0.01, withinG: 0.02 },
];
const figureOf = (cell: Cell | undefined) => {
  if (cell?.kind !== "figure") throw new Error(`no figure: ${JSON.stringify(cell)}`);
  return cell;
};

/** Invented. */
const spec: SheetSpec = {
  name: "drying",
  columns: {
    bag: "text",
    wet: { unit: "g", scale: "kitchen scale" },
    fine: { unit: "g", scale: "pocket scale" },
    loss: "= wet - fine",
    doubled: "= fine * 2",
    share: "= loss / sum(loss)",
  },
  rows: [
    { bag: "Alder", wet: "52.4 ± 0.1 g", fine: 50 },
    { bag: "Birch", wet: 52.9, fine: 50.5 },
  ],
  foot: {
    "mean wet": "mean(wet)",
    "mean fine": "mean(fine)",
    weighed: "count(wet)",
    twice: "mean_wet * 2",
  },
};

test("a ± is a lower bound where a reading of an unchecked scale is under it, and only there", () => {
  const made = sheet(spec, { scales });
  expect(made.issues).toEqual([]);
  const bound = (column: string) => [0, 1].map((row) => figureOf(made.cell(row, column)).atLeast ?? false);
  // The first reading has a ± of the founder's own, which wins over the scale.
  expect(bound("wet")).toEqual([false, true]);
  expect(bound("fine")).toEqual([false, false]);
  expect(bound("loss")).toEqual([false, true]);
  expect(bound("doubled")).toEqual([false, false]);
  expect(bound("share")).toEqual([true, true]);
  expect(
    Object.fromEntries(made.foot.map(({ name, cell }) => [name, figureOf(cell).atLeast ?? false])),
  ).toEqual({ "mean wet": true, "mean fine": false, weighed: false, twice: true });
});

test("a figure that is looked up brings its lower bound along", () => {
  const other = sheet(spec, { scales });
  const made = sheet(
    {
      columns: { bag: "text", found: '= lookUp("drying", bag, "wet") * 1' },
      rows: [{ bag: "Birch" }, { bag: "Alder" }],
      foot: { fixed: 'lookUp("drying", "Birch", "loss")' },
    },
    { others: [other] },
  );
  expect([0, 1].map((row) => figureOf(made.cell(row, "found")).atLeast ?? false)).toEqual([true, false]);
  expect(figureOf(made.foot[0]?.cell).atLeast).toBe(true);
});

test("few draws without a number are left out and told; with many the ± is not known; both say why", () => {
  const made = sheet({
    columns: { d: { unit: "mm²", plusMinus: "3 mm²" }, side: { unit: "mm", formula: "sqrt(d)" } },
    rows: [{ d: 2.95 }, { d: 2 }, { d: 9 }],
    foot: { mean: "mean(side)", middle: "median(side)", above: "count(d > 1 mm²)" },
  });
  const [few, many, none] = [0, 1, 2].map((row) => figureOf(made.cell(row, "side")).figure);
  // Even from −0.05 to 5.95: one draw in 120 lies below 0. Of the others the ends are those of √(0 … 5.95).
  expect(few!.lost?.percent).toBeCloseTo(100 / 120, 1);
  expect(few!.lost?.why).toMatch(/root of a negative number: "d" is below 0/);
  expect(few!.low).toBeCloseTo(Math.sqrt(5.95 * 0.025), 2);
  expect(few!.high).toBeCloseTo(Math.sqrt(5.95 * 0.975), 2);
  expect(few!.quantile(0.5)).toBeCloseTo(Math.sqrt(5.95 / 2), 2);
  // A step of the source to its end, from which its share is taken, has no number.
  expect(few!.shares).toEqual([]);
  // Even from −1 to 5: one in six.
  expect(many!.lost?.percent).toBeCloseTo(100 / 6, 1);
  expect([many!.low, many!.high, many!.mean, many!.sd, many!.quantile(0.5)].every(Number.isNaN)).toBe(true);
  expect(many!.shares).toEqual([]);
  expect(none!.lost).toBeUndefined();
  expect(none!.low).toBeCloseTo(Math.sqrt(6.15), 2);
  // Lost in either row: 1 − (119/120)(5/6).
  for (const { cell } of made.foot.slice(0, 2)) {
    expect(figureOf(cell).figure.lost?.percent).toBeCloseTo(100 * (1 - (119 / 120) * (5 / 6)), 0);
    expect(figureOf(cell).figure.lost?.why).toMatch(/root of a negative number/);
    expect(figureOf(cell).figure.low).toBeNaN();
  }
});

test("a condition is told by the draws in which it can be told", () => {
  const made = sheet({
    columns: { d: { unit: "mm²", plusMinus: "3 mm²" }, wide: "= sqrt(d) > 2 mm" },
    rows: [{ d: 2 }],
  });
  // Of 0 … 5 a fifth is above 4.
  expect(made.cell(0, "wide")).toEqual({ kind: "text", text: "no (80 in 100)" });
});

test("sources are named by what tells the rows apart, never by the figures in them", () => {
  const columns = { bag: "text", portion: "text", mass: { unit: "g", plusMinus: "0.1 g" } };
  const says = (rows: SheetSpec["rows"]) =>
    figureOf(
      sheet({ name: "s", columns, rows, foot: { all: "sum(mass)" } }).foot[0]?.cell,
    ).figure.sources.map((source) => source.says);
  expect(
    says([
      { bag: "Alder", portion: "A", mass: 1.98 },
      { bag: "Alder", portion: "B", mass: 2.01 },
      { bag: "Birch", portion: "A", mass: 2.02 },
    ]),
  ).toEqual(["mass of Alder, A", "mass of Alder, B", "mass of Birch"]);
  expect(says([{ bag: "Alder", mass: 1.98 }, { bag: "Alder", mass: 2.01 }, { mass: 3 }])).toEqual([
    "mass of Alder, row 1",
    "mass of Alder, row 2",
    "mass of row 3",
  ]);
});

test("a fault within a formula shows the part that it is about", () => {
  const { issues } = sheet({
    columns: { wet: "g", tall: "cm", odd: "= (wet + 2 g) * 3 + tall * 2", plain: "wet + tall" },
    rows: [{ wet: 1, tall: 2 }],
  });
  expect(issues.map(({ message }) => message)).toEqual([
    '"wet + tall" stands where the unit of "plain" belongs, and is none.',
    'In "(wet + 2 g) * 3 + tall * 2": g and cm cannot be added.',
  ]);
  expect(issues[0]?.remedy).toContain("plain: = wet + tall");
});

test("many keys that are not there are told with what is near only at first; lists of thousands stay quick", () => {
  const keys = Array.from({ length: 2000 }, (_, k) => ({ bag: `bag number ${k}`, mass: k + 1 }));
  const other = sheet({ name: "bags", columns: { bag: "text", mass: "g" }, rows: keys });
  const { issues } = sheet(
    {
      columns: { bag: "text", mass: '= lookUp("bags", bag, "mass")' },
      rows: keys.map(({ bag }) => ({ bag: `x${bag}` })),
    },
    { others: [other] },
  );
  expect(issues).toHaveLength(21);
  expect(issues.filter(({ remedy }) => remedy?.startsWith("Write bag number"))).toHaveLength(5);
});

test("a share of the whole is drawn with heavy tails where any row has them", () => {
  const heavy = spread({ mean: 5, sd: 0.1, kind: "t", df: 2, source: "few" });
  const made = sheet({
    columns: { mass: { plusMinus: "0.1" }, share: "= abs(mass / sum(mass))" },
    rows: [{ mass: 1 }, { mass: heavy }],
  });
  expect(figureOf(made.cell(0, "share")).figure.sd).toBeNaN();
});
