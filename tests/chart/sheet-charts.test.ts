// The charts of a founder's own sheet: places, intervals, bands and words, read back from the drawing.

import { expect, test } from "vitest";
import { sheetNames } from "../../lib/chart/sheet-names.ts";
import { sheetPlot } from "../../lib/chart/sheet-plot.ts";
import { sheetCharts } from "../../lib/page/sheet-charts.ts";
import { sheet } from "../../lib/sheet/sheet.ts";
import { box, levelAxis, near, svgOf, uprightAxis } from "./read-axes.ts";

const shares = [4, 5, 6, 7, 8, 9];
const trial = (chart: object, rows = shares.length) =>
  sheet({
    name: "yard trial",
    columns: {
      batch: "text",
      made: "date",
      share: "% of dry mix",
      strength: { unit: "kPa", plusMinus: "2 kPa" },
      density: "g/cm³",
    },
    rows: shares.slice(0, rows).map((share, k) => ({
      batch: k === 5 ? "B1" : `B${k + 1}`,
      made: `2026-05-${String(10 + 2 * k).padStart(2, "0")}`,
      share,
      strength: 30 + 8 * k + (k % 2),
      density: 1.5 + 0.02 * k,
    })),
    charts: [chart as never],
  });

test("a column against a column: points with their ±, the line with its intervals, the band behind", async () => {
  const [chart] = sheetCharts(
    trial({ x: "share", y: "strength", line: "straight", band: { low: 40, high: 60 } }),
  );
  const svg = await svgOf(chart!);
  const [x, y] = [levelAxis(svg, "4", "8"), uprightAxis(svg, "40", "60")];
  const points = svg.places("points-1");
  expect(points).toHaveLength(6);
  near(points[2]!.x, x(6));
  near(points[2]!.y, y(46));
  const band = box(svg.paths("band-1")[0]!);
  near(band.top, y(60));
  near(band.bottom, y(40));
  // Least squares by hand through 30, 39, 46, 55, 62, 71 over 4 to 9: y = 50.5 + (283/35)(x − 6.5).
  const line = svg.paths("line-1")[0]!;
  near(line[0]!.y, y(50.5 - (283 / 35) * 2.5));
  near(line.at(-1)!.y, y(50.5 + (283 / 35) * 2.5));
  const [inner, outer] = ["interval-1", "new-batch-1"].map((name) => box(svg.paths(name)[0]!));
  expect(outer!.bottom - outer!.top).toBeGreaterThan(inner!.bottom - inner!.top);
  expect(chart!.caption).toContain("where 95 % of new rows fall");
  expect(chart!.alt).toContain("Fitted from");
  expect(svg.words.map(({ text }) => text)).toContain("your band: 40 to 60");
});

test("too few rows for a line: the points stand alone, and the caption says so", () => {
  const [chart] = sheetCharts(trial({ x: "share", y: "strength", line: "curve" }, 5));
  expect(chart!.caption).toContain("Too few rows for a line through strength: 5 of at least 6");
  expect(JSON.stringify(chart!.spec(720))).not.toContain("line-1");
});

test("several columns stand in panels of their own units; dates count days", async () => {
  const [chart, ...others] = sheetCharts(trial({ x: "made", y: ["strength", "density"] }));
  expect(others).toEqual([]);
  const svg = await svgOf(chart!, 340);
  const words = svg.words.map(({ text }) => text);
  for (const text of ["strength, kPa", "density, g/cm³", "made, days after 2026-05-10"])
    expect(words).toContain(text);
  expect(chart!.table.columns.map(({ name }) => name)).toContain("unit");
  expect(chart!.table.rows).toHaveLength(12);
});

test("names on x are rows: a chart for each column, rows of one name on one line", async () => {
  const charts = sheetCharts(trial({ x: "batch", y: ["strength", "density"], band: { low: 40, high: 60 } }));
  expect(charts.map(({ name }) => name)).toEqual([
    "yard-trial-strength-by-batch",
    "yard-trial-density-by-batch",
  ]);
  const svg = await svgOf(charts[0]!);
  const x = levelAxis(svg, "40", "60");
  const points = svg.places("points");
  expect(points).toHaveLength(6);
  near(points[1]!.x, x(39));
  near(points[5]!.y, points[0]!.y);
  expect(points[1]!.y).toBeGreaterThan(points[0]!.y + 15);
  expect(charts[0]!.alt).toContain("B2, 39");
  expect(charts[1]!.alt).not.toContain("your band");
});

test("nothing to draw is said; ends the wrong way round are our own mistake", async () => {
  const axis = { title: "wet", unit: "g" };
  const empty = sheetPlot({ name: "none", x: axis, panels: [{ axis, points: [] }], missing: 3 });
  expect((await svgOf(empty)).words.map(({ text }) => text)).toContain("No figures to draw.");
  expect(empty.alt).toContain("3 rows without a figure, not drawn.");
  const names = sheetNames({ name: "none", names: "bag", y: axis, points: [], missing: 1 });
  expect((await svgOf(names)).words.map(({ text }) => text)).toContain("No figures to draw.");
  const turned = {
    name: "t",
    names: "bag",
    y: axis,
    missing: 0,
    points: [{ label: "A", value: 1, low: 2, high: 1 }],
  };
  expect(() => sheetNames(turned)).toThrow("above the high end");
});
