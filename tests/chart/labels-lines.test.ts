// No line runs through the letters of a name: the name stands off all lines, or on a ground of its own.

import { expect, test } from "vitest";
import type { Chart } from "../../lib/chart/chart.ts";
import { surfaceChart } from "../../lib/chart/surface-chart.ts";
import { textWidth } from "../../lib/chart/text.ts";
import { temperChart } from "../../lib/chart/typical-charts.ts";
import { bareChart } from "./bare-chart.ts";

interface Place {
  readonly px: number;
  readonly py: number;
  readonly px2: number;
  readonly py2: number;
  readonly run: number;
  readonly text: string;
}
interface Read {
  readonly name: string;
  readonly data: { readonly values: readonly Place[] };
  readonly mark: { readonly fontSize?: number };
}

/** Names through whose letters a line runs that no ground covers, by nothing but the spec. */
function struckOut(chart: Chart, width: number): { readonly names: number; readonly struck: string[] } {
  const layers = chart.spec(width).layer as readonly Read[];
  const of = (pattern: RegExp) => layers.filter(({ name }) => pattern.test(name));
  const pieces = of(/^(isoline|aim|line|edge)-\d+$/).flatMap(({ data: { values } }) =>
    values.slice(1).flatMap((to, i) => (to.run === values[i]!.run ? [[values[i]!, to] as const] : [])),
  );
  const grounds = of(/^(name|label)-ground$/).flatMap(({ data }) => data.values);
  const names = of(/^(names|batch-labels|published-labels)$/).flatMap(({ data, mark }) =>
    data.values.map((at) => ({ ...at, size: mark.fontSize ?? 12 })),
  );
  const struck = names.filter(({ px, py, text, size }) => {
    const [right, half] = [px + textWidth(text, size), size / 2];
    const covered = grounds.some(
      (ground) => ground.px <= px && ground.px2 >= right && ground.py <= py - half && ground.py2 >= py + half,
    );
    const crossed = pieces.some(([from, to]) =>
      Array.from({ length: 21 }, (_, step) => step / 20).some((share) => {
        const x = from.px + (to.px - from.px) * share;
        const y = from.py + (to.py - from.py) * share;
        return x > px && x < right && y > py - half && y < py + half;
      }),
    );
    return crossed && !covered;
  });
  return { names: names.length, struck: struck.map(({ text }) => text) };
}

const nine = [2.5, 3.2, 4].flatMap((y, i) =>
  [5.5, 7.5, 9.5].map((x, j) => ({ label: `batch ${i}${j}`, x, y })),
);
const surface = surfaceChart({
  name: "surface",
  axis: { title: "bentonite", unit: "%", basis: "dry mix" },
  other: { title: "moisture", unit: "%", basis: "damp mass" },
  property: { title: "compactability", unit: "%", basis: "height" },
  aim: { low: 40, high: 50 },
  at: (clay, water) => ({ mean: 20 + 13 * water - 2.2 * clay, low: 30, high: 60 }),
  batches: nine.map((one) => ({ ...one, value: 45 })),
});
const temper = temperChart({ name: "temper", clayKind: "sodium", batches: nine });

test.each([
  ["a surface", surface],
  ["ways to temper", temper],
])("%s: no line through a name at 340, 360 and 720 px", (_, chart) => {
  for (const width of [340, 360, 720]) {
    const { names, struck } = struckOut(chart, width);
    expect(names).toBeGreaterThan(4);
    expect(struck).toEqual([]);
  }
});

test("the probe finds a line through a name", () => {
  const layer = [
    {
      name: "isoline-1",
      data: {
        values: [
          { px: 0, py: 50, run: 0 },
          { px: 90, py: 50, run: 0 },
        ],
      },
    },
    { name: "names", data: { values: [{ px: 20, py: 52, text: "on it" }] }, mark: { fontSize: 11 } },
  ];
  expect(struckOut(bareChart(layer), 360).struck).toEqual(["on it"]);
});
