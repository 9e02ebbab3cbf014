// Typical curves as drawn: what stands where, that no words collide, and that little data still make a chart.

import { expect, test } from "vitest";
import type { Chart } from "../../lib/chart/chart.ts";
import { chartSvg } from "../../lib/chart/svg.ts";
import { textWidth } from "../../lib/chart/text.ts";
import {
  permeabilityByClayChart,
  permeabilityByFinenessChart,
  permeabilityByMoistureChart,
  strengthByClayChart,
  temperChart,
} from "../../lib/chart/typical-charts.ts";
import { typicalCurveChart } from "../../lib/chart/typical-curve-chart.ts";
import { readSvg } from "./read-svg.ts";

/** Invented batches: place, figure, half-widths of both. */
const batches = (rows: readonly (readonly [number, number, number, number])[]) =>
  rows.map(([x, y, dx, dy], i) => ({
    label: `Batch ${i + 1}`,
    x,
    y,
    xLow: x - dx,
    xHigh: x + dx,
    yLow: y - dy,
    yHigh: y + dy,
  }));
const strength = strengthByClayChart({
  name: "strength",
  bond: "bentonite",
  moistureOfDampPercent: 3.5,
  compactabilityPercent: 45,
  batches: batches([
    [6, 58, 0.3, 8],
    [8, 72, 0.3, 9],
    [10, 81, 0.4, 12],
  ]),
});
const natural = strengthByClayChart({
  name: "natural",
  bond: "natural",
  moistureOfDampPercent: 6,
  compactabilityPercent: 45,
  batches: batches([[14, 70, 1, 8]]),
});
const byMoisture = permeabilityByMoistureChart({
  name: "by-moisture",
  clayPercent: 8,
  batches: batches([
    [2.6, 88, 0.1, 9],
    [3.4, 110, 0.1, 12],
    [5, 104, 0.1, 11],
  ]),
});
const byClay = permeabilityByClayChart({
  name: "by-clay",
  bond: "bentonite",
  moistureOfDampPercent: 4,
  batches: batches([[6, 120, 0.3, 18]]),
});
const temper = temperChart({ name: "temper", clayKind: "sodium", batches: batches([[8, 3.4, 0.3, 0.1]]) });
const fineness = permeabilityByFinenessChart({
  name: "fineness",
  bond: "natural",
  clayPercent: 0,
  batches: [],
});
const charts: readonly Chart[] = [strength, natural, byMoisture, byClay, temper, fineness];

test.each(charts.flatMap((chart) => [340, 500, 720].map((width) => ({ chart, width }))))(
  "$chart.name at $width px: no word is cut or small, none stands on another",
  async ({ chart, width }) => {
    const svg = readSvg(await chartSvg(chart.spec(width)));
    const rects = svg.words.map(({ text, sizePx, anchor, x, y }) => {
      const wide = textWidth(text, sizePx);
      const before = anchor === "middle" ? wide / 2 : anchor === "end" ? wide : 0;
      return {
        text,
        sizePx,
        left: x - before,
        right: x - before + wide,
        top: y - 0.75 * sizePx,
        bottom: y + 0.22 * sizePx,
      };
    });
    expect(rects.length).toBeGreaterThan(8);
    for (const [i, a] of rects.entries()) {
      expect(a.sizePx).toBeGreaterThanOrEqual(11);
      expect(
        a.left >= -1 && a.right <= width + 1 && a.top >= -1 && a.bottom <= svg.height + 1,
        `"${a.text}" is cut`,
      ).toBe(true);
      for (const b of rects.slice(i + 1)) {
        const meet = a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
        expect(meet, `"${a.text}" on "${b.text}"`).toBe(false);
      }
    }
  },
);

test("batches and curve stand where the axes have them", async () => {
  const svg = readSvg(await chartSvg(strength.spec(720)));
  const x = (text: string) => svg.words.find((word) => word.text === text && word.anchor === "middle")!.x;
  const y = (text: string) => svg.words.find((word) => word.text === text && word.anchor === "end")!;
  const [first, , third] = svg.places("batches");
  const px = (value: number) => x("4") + ((value - 4) / 4) * (x("8") - x("4"));
  const per100 = y("0").y - y("100").y;
  // Ticks stand on whole pixels, data do not.
  expect(Math.abs(first!.x - px(6))).toBeLessThan(1.5);
  expect(Math.abs(third!.x - px(10))).toBeLessThan(1.5);
  expect(first!.y - third!.y).toBeCloseTo(((81 - 58) / 100) * per100, 0);
  const curve = svg.paths("line-1")[0]!;
  expect(Math.abs(curve[0]!.x - px(3))).toBeLessThan(1.5);
  expect(Math.abs(curve.at(-1)!.x - px(12))).toBeLessThan(1.5);
});

test("what was read and what is from memory differ by mark, and the words give tags and sources", async () => {
  const svg = readSvg(await chartSvg(strength.spec(720)));
  expect(svg.places("published-other")).toHaveLength(2);
  expect(svg.places("published-read")).toHaveLength(0);
  expect(readSvg(await chartSvg(natural.spec(720))).places("published-read")).toHaveLength(7);
  expect(strength.alt).toContain("Jolt, squeeze (from memory): 85 at 5.25.");
  expect(strength.alt).toContain("Bond relation (derived)");
  expect(strength.alt).toContain("Your batch Batch 1: 58 (95 %: 50 to 66)");
  expect(strength.caption).toContain("at 3.5 % water of damp mass, compactability 45 %, mulling not stated");
  expect(strength.table.rows.filter((row) => row[5] === "your batch")).toHaveLength(3);
  for (const chart of charts)
    for (const row of chart.table.rows) expect(row).toHaveLength(chart.table.columns.length);
});

test("natural sands get points and no curve; bonds do not mix", () => {
  expect(natural.caption).toContain("no curve is known here, only points");
  expect(natural.alt).not.toContain("Jolt");
  expect(strength.alt).not.toContain("Kwali");
  // A chart of bentonite by moisture never shows a natural sand's water.
  expect(byMoisture.alt).not.toMatch(/Ilorin|Ureje/);
});

test("ways that disagree are drawn each with its dash, over its own range only", async () => {
  const svg = readSvg(await chartSvg(temper.spec(720)));
  const dashes = [1, 2, 3, 4].map((k) =>
    svg.elements
      .find(({ classes, tag }) => classes.includes(`line-${k}`) && tag === "path")!
      .attributes.get("stroke-dasharray"),
  );
  expect(new Set(dashes).size).toBe(4);
  const ends = (k: number) => svg.paths(`line-${k}`)[0]!;
  expect(ends(1)[0]!.x).toBeGreaterThan(ends(2)[0]!.x);
  expect(ends(3).at(-1)!.x).toBeLessThan(ends(2).at(-1)!.x);
});

test("no curve in range, no points, no batches: still a chart that says so", async () => {
  const axis = { title: "moisture", unit: "%", basis: "damp mass" };
  const property = { title: "green compression strength", unit: "kPa" };
  const bare = { axis, property, curves: [], published: [], batches: [] };
  const svg = readSvg(await chartSvg(typicalCurveChart({ name: "bare", ...bare }).spec(340)));
  expect(svg.words.some(({ text }) => text === "No figures to draw.")).toBe(true);
  const lost = { ...bare, name: "lost", batches: [{ label: "Batch 1", x: Number.NaN, y: 4 }] };
  expect(typicalCurveChart(lost).table.rows[0]).toEqual(["Batch 1", null, 4, null, null, "your batch", ""]);
  const outside = strengthByClayChart({
    name: "outside",
    bond: "bentonite",
    moistureOfDampPercent: 9,
    compactabilityPercent: 45,
    batches: [],
  });
  expect(outside.alt).toContain("Bond relation: no figure here.");
  expect((await chartSvg(outside.spec(340))).length).toBeGreaterThan(500);
});

test("misuse throws: no basis, a bad name, ends the wrong way round", () => {
  const property = { title: "permeability number", unit: "" };
  const bare = { name: "x", property, curves: [], published: [], batches: [] };
  expect(() => typicalCurveChart({ ...bare, axis: { title: "moisture", unit: "%" } })).toThrow("of what");
  const axis = { title: "moisture", unit: "%", basis: "damp mass" };
  expect(() => typicalCurveChart({ ...bare, axis, name: "No Name" })).toThrow("lower case");
  const batch = { label: "a", x: 3, y: 4, yLow: 5, yHigh: 3 };
  expect(() => typicalCurveChart({ ...bare, axis, batches: [batch] })).toThrow("low end");
});
