// A property over two varied things: lines lie where the surface has their figure, and nothing is drawn untried.

import { expect, test } from "vitest";
import { convexHull, inHull } from "../../lib/chart/hull.ts";
import { type Ring, ringsAbove } from "../../lib/chart/isolines.ts";
import { surfaceChart } from "../../lib/chart/surface-chart.ts";
import type { SurfaceChartInput } from "../../lib/chart/surface-input.ts";
import { chartSvg } from "../../lib/chart/svg.ts";
import { Misuse } from "../../lib/issue.ts";
import { inlineSvg } from "../../lib/page/svg-text.ts";
import { readSvg } from "./read-svg.ts";

const area = (ring: Ring) =>
  ring.reduce((all, a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    return all + (a.x * b.y - b.x * a.y) / 2;
  }, 0);
const bowl = (sign: number) => {
  const values = Float64Array.from(
    { length: 41 * 41 },
    (_, k) => sign * (((k % 41) - 20) ** 2 + (Math.floor(k / 41) - 20) ** 2),
  );
  return { columns: 41, rows: 41, values };
};

// Circles: area πr², geometry.
test("rings of a round hill are circles; a hollow is a ring the other way round", () => {
  for (const radius of [5.3, 10, 17.2]) {
    const hill = ringsAbove(bowl(-1), -(radius ** 2));
    expect(hill).toHaveLength(1);
    expect(area(hill[0]!) / (Math.PI * radius ** 2)).toBeCloseTo(1, 1);
    for (const { x, y } of hill[0]!) expect(Math.hypot(x - 20, y - 20)).toBeCloseTo(radius, 1);
    const hollow = ringsAbove(bowl(1), radius ** 2)
      .map(area)
      .sort((a, b) => a - b);
    expect(hollow).toHaveLength(2);
    expect(hollow[0]).toBeCloseTo(-area(hill[0]!), 9);
    expect(hollow[1]).toBe(1600);
  }
});

test("a saddle is parted or joined by its middle; gaps are below every level", () => {
  const saddle = { columns: 2, rows: 2, values: Float64Array.of(1, 0, 0, 1) };
  expect(ringsAbove(saddle, 0.4)).toHaveLength(1);
  expect(ringsAbove(saddle, 0.6)).toHaveLength(2);
  const values = new Float64Array(9).fill(1);
  values[8] = Number.NaN;
  const [ring] = ringsAbove({ columns: 3, rows: 3, values }, 0.5);
  expect(area(ring!)).toBe(3.5);
  expect(ringsAbove({ columns: 3, rows: 3, values }, 2)).toEqual([]);
});

test("the hull of places holds them all, and a line holds nothing", () => {
  const hull = convexHull([
    { x: 0, y: 0 },
    { x: 2, y: 0 },
    { x: 1, y: 1 },
    { x: 2, y: 2 },
    { x: 0, y: 2 },
    { x: 1, y: 0 },
  ]);
  expect(hull).toHaveLength(4);
  expect(inHull(hull, { x: 1, y: 1 })).toBe(true);
  expect(inHull(hull, { x: 2.01, y: 1 })).toBe(false);
  const line = convexHull([
    { x: 0, y: 0 },
    { x: 1, y: 1 },
    { x: 2, y: 2 },
  ]);
  expect(inHull(line, { x: 1, y: 1 })).toBe(false);
});

/** Invented. */
const mean = (x: number, clay: number) => 70 - 18 * (x - 3.4) ** 2 - 2.2 * (clay - 8.4) ** 2;
const places = [
  [2.6, 6],
  [4.2, 6],
  [2.6, 10],
  [4.2, 10],
  [3.4, 8],
] as const;
const input: SurfaceChartInput = {
  name: "surface",
  axis: { title: "moisture", unit: "%", basis: "damp mass" },
  other: { title: "bentonite added", unit: "%", basis: "dry mix" },
  property: { title: "green compression strength", unit: "kPa" },
  at: (x, clay) => ({ mean: mean(x, clay), low: mean(x, clay) - 4, high: mean(x, clay) + 4 }),
  aim: { low: 55, high: Number.POSITIVE_INFINITY },
  batches: places.map(([x, y], i) => ({ label: `B${i + 1}`, x, y, value: mean(x, y) + (i % 2) })),
};
interface Read {
  readonly name: string;
  readonly data: {
    readonly values: readonly { readonly px: number; readonly py: number; readonly text?: string }[];
  };
  readonly mark: { readonly fill?: string; readonly fillOpacity?: number };
}
const layersOf = (chart: { spec(width: number): { readonly [key: string]: unknown } }, width: number) => {
  const {
    layer,
    width: innerWidth,
    height,
  } = chart.spec(width) as unknown as { layer: Read[]; width: number; height: number };
  const axes = layer.find(({ name }) => name === "axes") as unknown as {
    encoding: { x: { scale: { domain: [number, number] } } };
  };
  const [from, to] = axes.encoding.x.scale.domain;
  return { layer, xAt: (px: number) => from + (px / innerWidth) * (to - from), innerWidth, height };
};

test("each line lies where the surface has its figure, in order of the figures", () => {
  const chart = surfaceChart(input);
  const { layer, xAt, innerWidth, height } = layersOf(chart, 720);
  const batches = layer.find(({ name }) => name === "batches")!.data.values;
  // The upright scale from two batches of known clay.
  const clayAt = (py: number) => 6 + ((py - batches[0]!.py) / (batches[2]!.py - batches[0]!.py)) * 4;
  expect(xAt(batches[1]!.px)).toBeCloseTo(4.2, 6);
  const lines = layer.filter(({ name }) => name.startsWith("isoline-"));
  expect(lines.length).toBeGreaterThanOrEqual(4);
  const found = lines.map(({ data }) => {
    const inside = data.values.filter(
      ({ px, py }) => px > 1 && py > 1 && px < innerWidth - 1 && py < height - 1,
    );
    const figures = inside.map(({ px, py }) => mean(xAt(px), clayAt(py)));
    expect(Math.max(...figures) - Math.min(...figures)).toBeLessThan(0.5);
    return figures.reduce((all, one) => all + one, 0) / figures.length;
  });
  expect(found).toEqual(found.toSorted((a, b) => a - b));
  const figures = layer.find(({ name }) => name === "figures")!.data.values;
  expect(figures.length).toBeGreaterThan(2);
  for (const { px, py, text } of figures)
    expect(Math.abs(mean(xAt(px), clayAt(py)) - Number(text))).toBeLessThan(0.5);
});

test("fills only add up, so that higher is darker in grey too; ink on the darkest stands 4.5 : 1", () => {
  const { layer } = layersOf(surfaceChart(input), 340);
  const fills = layer.filter(({ name }) => name.startsWith("level-"));
  const all = 1 - fills.reduce((left, { mark }) => left * (1 - mark.fillOpacity!), 1);
  expect(new Set(fills.map(({ mark }) => mark.fill)).size).toBe(1);
  expect(all).toBeGreaterThan(0.3);
  expect(all).toBeLessThanOrEqual(0.4001);
});

test("beyond what was tried nothing shows: by the hull, or by what is given", async () => {
  const round = (x: number, clay: number) => ((x - 3.4) / 0.5) ** 2 + ((clay - 8) / 1.2) ** 2 <= 1;
  for (const [tried, share] of [
    [undefined, 1],
    [round, (Math.PI * 0.5 * 1.2) / (1.6 * 4)],
  ] as const) {
    const { layer } = layersOf(surfaceChart(tried ? { ...input, tried } : input), 720);
    const outline = layer.find(({ name }) => name === "outline")!.data.values;
    const size = Math.abs(area(outline.map(({ px, py }) => ({ x: px, y: py }))));
    const batches = layer.find(({ name }) => name === "batches")!.data.values;
    const whole = Math.abs((batches[1]!.px - batches[0]!.px) * (batches[2]!.py - batches[0]!.py));
    expect(size / whole).toBeCloseTo(share, 1.6);
    expect(layer.findIndex(({ name }) => name === "not-tried")).toBeGreaterThan(
      layer.findLastIndex(({ name }) => name.startsWith("isoline-") || name.startsWith("aim-")),
    );
  }
});

test("words and table: the range of the mean, its ±, the batches", () => {
  const { alt, caption, table } = surfaceChart(input);
  expect(caption).toContain("mean ± about 4 kPa, 95 %");
  expect(alt).toMatch(/to 70 \(95 %: 66 to 74\) at 3\.4\d* and 8\.[34]/);
  expect(alt).toContain("Your aim: from 55 up kPa");
  expect(table.rows.filter(([what]) => what === "fitted mean").length).toBeGreaterThanOrEqual(9);
  for (const [what, x, clay, value, low] of table.rows)
    if (what === "fitted mean") {
      expect(Number(value)).toBeCloseTo(mean(Number(x), Number(clay)), 9);
      expect(Number(low)).toBeCloseTo(Number(value) - 4, 9);
    }
});

test("few batches, gaps and nothing at all are drawn without complaint; misuse throws", async () => {
  const cases: readonly SurfaceChartInput[] = [
    { ...input, batches: [] },
    { ...input, batches: input.batches.slice(0, 2) },
    { ...input, at: () => undefined },
    { ...input, at: () => ({ mean: 60, low: Number.NaN, high: Number.NaN }) },
    { ...input, batches: [...input.batches, { label: "odd", x: Number.NaN, y: 7, value: 60 }] },
  ];
  for (const one of cases)
    for (const width of [240, 340])
      expect((await chartSvg(surfaceChart(one).spec(width))).length).toBeGreaterThan(500);
  expect(surfaceChart(cases[4]!).alt).toContain("1 without a figure, not drawn.");
  expect(readSvg(await chartSvg(surfaceChart(cases[0]!).spec(340))).words.map(({ text }) => text)).toContain(
    "No figures to draw.",
  );
  expect(() => surfaceChart({ ...input, other: { title: "clay", unit: "%" } })).toThrow(Misuse);
});

test("a page holds it whole, and small", async () => {
  const svg = inlineSvg(await chartSvg(surfaceChart(input).spec(720)), "a-");
  expect(svg).toContain('fill="var(--paper)"');
  expect(svg.length).toBeLessThan(14_000);
});
