// What a founder's own script builds a page of: columns, a curve through them, a chart, a table, findings, sections.

import { expect, test } from "vitest";
import {
  batchColumns,
  chartSvg,
  columnTable,
  curveThrough,
  type FigureColumn,
  finding,
  Misuse,
  pointsChart,
  readLog,
  section,
  silicaDust,
  spread,
} from "../../lib/index.ts";

const water: FigureColumn = { title: "water", unit: "% of damp mass", values: [2, 3, undefined, 5, 6] };
const rise: FigureColumn = {
  title: "swelling",
  unit: "ml",
  values: [spread("18 ± 1 ml"), spread("22 ± 1 ml"), 24, undefined, 30],
};

test("batches come as columns in the log's order, with the unit of the test", () => {
  const { value } = readLog(
    "format: 1\nbatches:\n  W1: { moisture: 3.2 % ± 0.1 %, permeability: 80 }\n  W2: { compactability: 44 % }\n",
    { name: "log.yaml" },
  );
  const columns = batchColumns(value!);
  expect(columns.batch.values).toEqual(["W1", "W2"]);
  expect(columns.moisture).toMatchObject({ title: "moisture", unit: "% of damp mass" });
  expect(columns.moisture.values.map((one) => one?.value)).toEqual([3.2, undefined]);
  expect(columns.compactability.values.map((one) => one?.value)).toEqual([undefined, 44]);
  expect("unit" in columns.permeability).toBe(false);
});

test("a curve rests on the rows with both figures and stops at their ends", () => {
  const curve = curveThrough(water, rise);
  expect(curve).toMatchObject({ form: "straight line", rows: 3, from: 2, to: 6 });
  // By hand, through (2, 18), (3, 22), (6, 30): slope 76/26 = 38/13 about (11/3, 70/3).
  expect(curve.at(6)!.mean).toBeCloseTo(70 / 3 + (38 / 13) * (6 - 11 / 3), 10);
  expect(curve.at(6.01)).toBeUndefined();
  expect(curve.at(1.99)).toBeUndefined();
  expect(curveThrough(water, { ...rise, values: rise.values.map(() => undefined) }).at(3)).toBeUndefined();
  expect(curveThrough(water, rise, { peaked: true }).form).toBe("points only");
});

test("a chart draws the rows with both figures, with their ±, and counts the others", async () => {
  const chart = pointsChart({ name: "swelling", x: water, y: rise, labels: ["a", "b", "c", "d", "e"] });
  expect(chart.table.rows).toEqual([
    ["swelling", "a", 2, 18, expect.closeTo(17.05, 2), expect.closeTo(18.95, 2), null, null],
    ["swelling", "b", 3, 22, expect.closeTo(21.05, 2), expect.closeTo(22.95, 2), null, null],
    ["swelling", "e", 6, 30, null, null, null, null],
  ]);
  expect(chart.alt).toContain("2 rows without a figure");
  const drawn = pointsChart({
    name: "swelling",
    x: water,
    y: [rise, rise],
    curve: curveThrough(water, rise),
  });
  for (const width of [340, 720]) expect(await chartSvg(drawn.spec(width))).toContain("swelling, ml");
});

test("a table rounds to the ±, keeps the number, and leaves open what was not measured", () => {
  const table = columnTable({
    name: "rows",
    caption: "Rows",
    columns: [{ title: "row", values: ["a", "b", "c", "d", "e"] }, water, rise],
  });
  expect(table.columns.map(({ align }) => align)).toEqual(["text", "number", "number"]);
  expect(table.rows[0]!.slice(1)).toEqual([
    { text: "2", number: 2 },
    { text: "18.0 ± 1.0", number: 18 },
  ]);
  expect(table.rows[2]![1]).toEqual({ text: "" });
});

test("columns that do not go together are the script's mistake", () => {
  const short = { title: "short", values: [1, 2] };
  expect(() => pointsChart({ name: "x", x: water, y: short })).toThrow(Misuse);
  expect(() => curveThrough(water, short)).toThrow(/"short" has a row for each of "water"/);
  expect(() => columnTable({ name: "x", caption: "x", columns: [water, short] })).toThrow(/2 rows/);
  const texts = { title: "bag", values: ["a", "b", "c", "d", "e"] };
  expect(() => pointsChart({ name: "x", x: texts, y: rise })).toThrow(/"a" in the column "bag" is a text/);
  expect(() => curveThrough(texts, rise)).toThrow(/is a text/);
});

test("a column that is not there is named by its place or by its chart", () => {
  const nothing = undefined as unknown as typeof water;
  expect(() => columnTable({ name: "rows", caption: "Rows", columns: [water, nothing] })).toThrow(
    /column 2 of the table "rows" is not there/,
  );
  expect(() => pointsChart({ name: "swelling", x: water, y: nothing })).toThrow(
    /chart "swelling" is not there/,
  );
});

test("a section takes texts, charts, tables, findings and cautions in the order given", () => {
  const chart = pointsChart({ name: "swelling", x: water, y: rise });
  const table = columnTable({ name: "rows", caption: "Rows", columns: [water] });
  const made = section("result", "All", ["Read this.", chart, table, finding("1 kg.", []), silicaDust]);
  expect(made.blocks.map(({ kind }) => kind)).toEqual(["prose", "chart", "table", "finding", "caution"]);
  expect(finding("1 kg.", ["why"], { tone: "doubt" })).toEqual({
    code: "own/finding",
    tone: "doubt",
    text: "1 kg.",
    because: ["why"],
  });
});
