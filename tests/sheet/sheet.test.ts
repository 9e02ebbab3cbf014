import { inspect } from "node:util";
import { expect, test } from "vitest";
import { type Cell, figure, type SheetSpec, sheet, spread } from "../../lib/index.ts";

const kitchen = { name: "kitchen scale", stepG: 0.1, withinG: 0.5 };

/** Invented: three bags of clay. */
const bags: SheetSpec = {
  name: "clay bags",
  values: { basis: "5.00 kg ± 0.02 kg" },
  columns: {
    bag: "text",
    tested: "date",
    wet: { unit: "g", scale: "kitchen scale" },
    dry: { unit: "g", scale: "kitchen scale" },
    load: { unit: "kg", plusMinus: "0.1 kg" },
    moisture: { unit: "% of damp mass", formula: "100 * (wet - dry) / wet" },
  },
  rows: [
    { bag: "Alder", tested: "2026-05-02", wet: 152.4, dry: "147.8 ± 0.1", load: "12 lb" },
    { bag: "Birch", tested: "2026-05-03", wet: "140.2", dry: "136.8", load: 5 },
    { bag: "Cedar", tested: "2026-05-04", wet: "150.2" },
  ],
  foot: { "mean load": "mean(load)", total: "sum(load)", weighed: "count(dry)", "mean wet": "mean(wet)" },
};
const computed = sheet(bags, { scales: [kitchen] });

function figureOf(cell: Cell | undefined) {
  if (cell?.kind !== "figure") throw new Error(`no figure: ${JSON.stringify(cell)}`);
  return cell;
}
const faultOf = (cell: Cell) => (cell.kind === "fault" ? cell.fault : undefined);
const foot = (of: typeof computed, name: string) => of.foot.find((one) => one.name === name)?.cell;

test("typed figures come out in the unit of their column, texts and dates as they are", () => {
  expect(computed.issues).toEqual([]);
  expect(computed.cell(0, "bag")).toEqual({ kind: "text", text: "Alder" });
  expect(computed.cell(1, "tested")).toEqual({ kind: "date", text: "2026-05-03" });
  const load = figureOf(computed.cell(0, "load"));
  expect([load.value, load.unit?.text]).toEqual([5.44310844, "kg"]);
  expect(computed.column("load").values[1]).toBe(5);
  expect(computed.column("bag").texts).toEqual(["Alder", "Birch", "Cedar"]);
  expect(figureOf(computed.values[0]?.cell).figure.high).toBeCloseTo(5.019, 9);
});

test("the ± of a cell wins over its column's, and that over its scale's: two roundings and the bound", () => {
  expect(figureOf(computed.cell(0, "dry")).figure.high).toBeCloseTo(147.895, 9);
  expect(figureOf(computed.cell(0, "load")).figure.high).toBeCloseTo(5.44310844 + 0.095, 9);
  const { sources, high } = figureOf(computed.cell(0, "wet")).figure;
  expect(sources.map(({ id, kind }) => [id, kind])).toEqual([
    ["clay bags, wet, Alder, 2026-05-02", "reading"],
    ["bias of kitchen scale", "rig"],
  ]);
  // A triangle within ± a = 0.1 on an even ± b = 0.5: P(above b − c) = (c + (a − c)³/(6a²))/(2b), by hand, 0.025 at c = 0.01463.
  expect(high).toBeCloseTo(152.4 + 0.5 - 0.01463, 3);
});

test("a scale's bias cancels in a difference and does not average out in a mean; readings do", () => {
  const moist = figureOf(computed.cell(1, "moisture")).figure;
  const bias = moist.shares.find(({ id }) => id === "bias of kitchen scale");
  expect(bias?.percent).toBeLessThan(4);
  const mean = figureOf(foot(computed, "mean wet")).figure;
  expect(mean.sd).toBeCloseTo(Math.hypot(0.5 / Math.sqrt(3), 0.1 / Math.sqrt(6) / Math.sqrt(3)), 6);
  const loads = figureOf(foot(computed, "mean load")).figure;
  expect(loads.sd).toBeCloseTo(0.1 / Math.sqrt(3) / Math.sqrt(2), 9);
});

test("an empty cell leaves a worked-out one empty, and aggregates pass it over", () => {
  expect(computed.cell(2, "moisture")).toEqual({ kind: "empty" });
  expect(figureOf(foot(computed, "weighed")).value).toBe(2);
  expect(figureOf(foot(computed, "total")).value).toBeCloseTo(10.44310844, 9);
});

test("a wrong unit is a fault at its cell with both units, and travels to what needs it, foot and all", () => {
  const rows = [...bags.rows, { bag: "Dog rose", tested: "2026-05-05", wet: 150, dry: "12 mm", load: 4 }];
  const foots = { "mean moisture": "mean(moisture)", dried: "count(moisture)", "mean load": "mean(load)" };
  const place = ({ row, column }: { row?: number; column?: string }) => ({
    file: `${column}`,
    line: row ?? 0,
  });
  const faulty = sheet({ ...bags, rows, foot: foots }, { scales: [kitchen], place });
  const fault = faultOf(faulty.cell(3, "dry"));
  expect(fault).toMatchObject({
    code: "sheet/cell-unit",
    raisedIn: { column: "dry", row: 3 },
    place: { file: "dry", line: 3 },
  });
  expect(fault?.message).toMatch(/mm.*g/);
  expect(faultOf(faulty.cell(3, "moisture"))).toBe(fault);
  expect(faulty.foot[0]?.cell).toEqual({ kind: "fault", fault });
  expect(figureOf(faulty.foot[1]?.cell).value).toBe(2);
  expect(figureOf(faulty.foot[2]?.cell).value).toBeCloseTo(14.44310844 / 3, 9);
  expect(faulty.issues.map(({ code, severity }) => [code, severity])).toEqual([["sheet/cell-unit", "error"]]);
});

test("a division by zero is a fault where it happens, in words", () => {
  const faulty = sheet({
    columns: { a: "g", b: "g", c: "= a / b" },
    rows: [
      { a: 1, b: 0 },
      { a: 1, b: 2 },
    ],
  });
  expect(faultOf(faulty.cell(0, "c"))?.message).toMatch(/division by zero/);
  expect(figureOf(faulty.cell(1, "c")).value).toBe(0.5);
});

test("a circle names its members, and leaves the rest alone", () => {
  const columns = {
    x: "g",
    a: "= b + x",
    b: "= c",
    c: "= a",
    after: "= a * 2",
    apart: "= x * 2",
    self: "= self",
  };
  const circled = sheet({ columns, rows: [{ x: 1 }], foot: { total: "sum(apart)", broken: "sum(after)" } });
  for (const name of ["a", "b", "c", "after"]) {
    expect(faultOf(circled.cell(0, name))?.message).toContain("a → b → c → a");
  }
  expect(faultOf(circled.cell(0, "self"))?.message).toContain('"self" needs itself');
  expect(figureOf(circled.cell(0, "apart")).value).toBe(2);
  expect(figureOf(circled.foot[0]?.cell).value).toBe(2);
  expect(circled.foot[1]?.cell.kind).toBe("fault");
  expect(circled.issues.filter(({ code }) => code === "sheet/circle")).toHaveLength(2);
});

test("columns may stand in any order, and read foot figures, values and aggregates", () => {
  const spec: SheetSpec = {
    values: { factor: 2 },
    columns: { part: "= clay / whole", twice: "= factor * part", share: "= clay / sum(clay)", clay: "kg" },
    rows: [{ clay: 1 }, { clay: "3 ± 0.1" }],
    foot: { whole: "sum(clay)" },
  };
  const made = sheet(spec);
  expect(made.issues).toEqual([]);
  expect(figureOf(made.cell(1, "twice")).value).toBe(1.5);
  const [part, share] = ["part", "share"].map((name) => figureOf(made.cell(1, name)).figure);
  expect([share?.low, share?.high]).toEqual([part?.low, part?.high]);
  // Its own weighing is in the sum as well: d(share)/d(clay) = 1/16, not 1/4.
  expect(share?.sd).toBeCloseTo(0.1 / Math.sqrt(3) / 16, 3);
});

test("sd, median, quantile, least and largest are the plain statistics, with a ± by draws", () => {
  const rows = [2.1, 2.9, 3.4, 5.0, 7.2].map((x) => ({ x }));
  const foots = { s: "sd(x)", m: "median(x)", q: "quantile(x, 0.25)", least: "min(x)", most: "max(x)" };
  const made = sheet({ columns: { x: { plusMinus: "0.2" } }, rows, foot: foots });
  const cells = made.foot.map(({ cell }) => figureOf(cell));
  // numpy: std(ddof=1), median, quantile 0.25, min, max of the five.
  expect(cells.map(({ value }) => Number(value.toFixed(6)))).toEqual([2.021633, 3.4, 2.9, 2.1, 7.2]);
  for (const { figure } of cells) expect(figure.high - figure.low).toBeGreaterThan(0.05);
  expect(cells[3]?.figure.sd).toBeCloseTo(0.2 / Math.sqrt(3), 2);
});

test("a condition that the doubt reaches over says how often it holds; a count of it counts", () => {
  const made = sheet({
    columns: { x: { unit: "g", plusMinus: "1 g" }, heavy: "= x > 10 g" },
    rows: [{ x: 10.5 }, { x: 12 }, { x: 8 }],
    foot: { heavy_rows: "count(x > 10 g)" },
  });
  expect([0, 1, 2].map((row) => made.cell(row, "heavy"))).toEqual([
    { kind: "text", text: "yes (75 in 100)" },
    { kind: "text", text: "yes" },
    { kind: "text", text: "no" },
  ]);
  const { value, figure } = figureOf(made.foot[0]?.cell);
  expect([value, figure.low, figure.high]).toEqual([2, 1, 2]);
});

test("a look-up finds the row by its text, with its ±; a missing row is a fault with the nearest", () => {
  const other = sheet({
    name: "bins",
    columns: { bin: "text", clay: { unit: "% of sand", plusMinus: "0.5 % of sand" }, note: "text" },
    rows: [
      { bin: "Alder", clay: 8, note: "old" },
      { bin: "Birch", clay: 6 },
    ],
  });
  const made = sheet(
    {
      columns: { bag: "text", clay: '= lookUp("bins", bag, "clay")', note: '= lookUp("bins", bag, "note")' },
      rows: [{ bag: "Alder" }, { bag: "Brich" }, {}],
      foot: { first: 'lookUp("bins", "Birch", "clay")' },
    },
    { others: [other] },
  );
  const found = figureOf(made.cell(0, "clay"));
  expect([found.value, found.figure.high]).toEqual([8, 8.475]);
  expect(found.figure.sources[0]?.id).toBe("bins, clay, Alder");
  expect(made.cell(0, "note")).toEqual({ kind: "text", text: "old" });
  expect(faultOf(made.cell(1, "clay"))).toMatchObject({
    code: "sheet/no-such-row",
    remedy: "Write Birch if that is what is meant.",
  });
  expect(made.cell(2, "clay")).toEqual({ kind: "empty" });
  expect(figureOf(made.foot[0]?.cell).value).toBe(6);
});

test("a percentage that looks like a fraction is warned of once", () => {
  const made = sheet({
    columns: { a: "g", b: "g", p: { unit: "% of sand", formula: "a / b" } },
    rows: [{ a: 1, b: 9 }],
  });
  expect(made.issues.map(({ code }) => code)).toEqual(["sheet/looks-like-fraction"]);
});

test("issues name what is wrong with names, scales, units and rows, and the rest is worked out", () => {
  const made = sheet(
    {
      columns: {
        "2nd": "g",
        wet: { unit: "g", scale: "kitchn scale" },
        Wet: "g",
        long: { unit: "mm", scale: "kitchen scale" },
        odd: "furlongs",
        twice: "= 2 * wet",
      },
      rows: [{ wet: 3, wett: 4, twice: 7 }],
      charts: [
        { x: "wet", y: "twicee" },
        { x: "wet", y: "twice" },
      ],
    },
    { scales: [kitchen] },
  );
  expect(made.issues.map(({ code }) => code).sort()).toEqual([
    "quantity/unknown-unit",
    "sheet/chart-column",
    "sheet/name",
    "sheet/name-clash",
    "sheet/no-such-column",
    "sheet/no-such-scale",
    "sheet/scale-not-mass",
    "sheet/typed-over",
  ]);
  expect(figureOf(made.cell(0, "twice")).value).toBe(6);
  expect(made.charts).toHaveLength(1);
});

test("names that JavaScript has already are names like others", () => {
  const names = ["constructor", "toString", "hasOwnProperty", "valueOf", "prototype"];
  const columns = JSON.parse(`{ "__proto__": "g", ${names.map((name) => `"${name}": "g"`).join(", ")} }`);
  const made = sheet({
    columns: { ...columns, all: `= ${names.join(" + ")}` },
    rows: [{}, Object.fromEntries(names.map((name) => [name, 1]))],
  });
  expect(made.cell(0, "all")).toEqual({ kind: "empty" });
  expect(figureOf(made.cell(1, "all")).value).toBe(5);
});

test("a script's spreads keep their sources and are turned into the column's unit", () => {
  const x = spread("0.5 ± 0.1 oz");
  const made = sheet({ columns: { a: "g", b: "g", d: "= a - b" }, rows: [{ a: x, b: x }] });
  expect(figureOf(made.cell(0, "a")).value).toBeCloseTo(14.1747615625, 9);
  const { low, high } = figureOf(made.cell(0, "d")).figure;
  expect([low, high]).toEqual([0, 0]);
});

test("without any ± a figure is exact; names and rows that are not there throw", () => {
  const made = sheet({ columns: { a: "g", b: "= 2 * a" }, rows: [{ a: 3 }] });
  const { figure } = figureOf(made.cell(0, "b"));
  expect([figure.low, figure.sd, figure.high, figure.sources]).toEqual([6, 0, 6, []]);
  expect(() => made.cell(0, "c")).toThrow("no column");
  expect(() => made.cell(1, "a")).toThrow("no row");
  expect(() => made.column("c")).toThrow("no column");
});

test("a foot that was not drawn agrees with very many draws", () => {
  const rows = [3, 4, 5, 6, 8].map((k) => ({ wet: 100 + k, dry: 96 + k / 2, depth: 40 + k }));
  const made = sheet(
    {
      columns: {
        wet: { unit: "g", scale: "kitchen scale" },
        dry: { unit: "g", scale: "kitchen scale" },
        depth: { unit: "mm", plusMinus: "1 mm" },
        loose: "= wet / depth^2",
      },
      rows,
      foot: { mean: "mean(100 * (wet - dry) / wet)", all: "sum(loose)", ratio: "100 * sum(dry) / sum(wet)" },
    },
    { scales: [kitchen] },
  );
  for (const { cell } of made.foot) {
    const { value, low, high, sd, sources, shares } = figureOf(cell).figure;
    const fill = figureOf(cell).figure.fill.bind(figureOf(cell).figure);
    const many = figure({ value, sources, fill }, { draws: 1 << 16 });
    const half = (many.high - many.low) / 2;
    expect(Math.abs(low - many.low) / half).toBeLessThan(0.02);
    expect(Math.abs(high - many.high) / half).toBeLessThan(0.02);
    expect(Math.abs(sd / many.sd - 1)).toBeLessThan(0.01);
    expect(Math.abs(shares.reduce((total, { percent }) => total + percent, 0) - 100)).toBeLessThan(2);
  }
});

test("a cell is printed with its figure, though that is worked out when it is read", () => {
  const twice = sheet({ columns: { a: "g", b: { unit: "g", formula: "2 * a" } }, rows: [{ a: "5 ± 1 g" }] });
  const cell = twice.cell(0, "b");
  expect(JSON.parse(JSON.stringify(cell))).toMatchObject({ kind: "figure", value: 10, figure: { low: 8.1 } });
  expect(inspect(cell)).toMatch(/low: 8\.1/);
});
