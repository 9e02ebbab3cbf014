// The control chart: what is drawn, what is said, and that nothing lies on anything else.

import { expect, test } from "vitest";
import { type ControlInput, controlChart } from "../../lib/chart/control-chart.ts";
import { dayTicks } from "../../lib/chart/control-days.ts";
import { limitText } from "../../lib/chart/control-input.ts";
import { chartSvg } from "../../lib/chart/svg.ts";
import { textWidth } from "../../lib/chart/text.ts";
import { Misuse } from "../../lib/issue.ts";
import { whole } from "./control-samples.ts";

const day = (date: string): number => Date.parse(date) / 86_400_000;
const start = day("2025-10-04");
interface Read {
  readonly name: string;
  readonly data: {
    readonly values: readonly { px: number; py: number; px2?: number; py2?: number; text?: string }[];
  };
}
const layersOf = (input: ControlInput, width: number) =>
  new Map(
    (controlChart(input).spec(width).layer as readonly Read[]).map((layer) => [
      layer.name,
      layer.data.values,
    ]),
  );

test.each([340, 720])(
  "at %d px: every value, ring, step, limit and mark is there, and inside the box",
  (width) => {
    const layers = layersOf(whole, width);
    const count = (name: string) => layers.get(name)?.length;
    expect([count("values"), count("before"), count("signals"), count("doubt")]).toEqual([9, 1, 1, 10]);
    expect([count("steps"), count("step-signals"), count("limits"), count("range-limit")]).toEqual([
      8, 1, 2, 1,
    ]);
    expect([count("events"), count("pours"), count("change")]).toEqual([4, 2, 1]);
    const { width: inner, height } = controlChart(whole).spec(width) as { width: number; height: number };
    for (const name of ["values", "before", "signals", "steps", "limits"]) {
      for (const { px, py } of layers.get(name)!) {
        expect(px).toBeGreaterThanOrEqual(0);
        expect(px).toBeLessThanOrEqual(inner + 0.5);
        expect(py).toBeLessThanOrEqual(height);
      }
    }
  },
);

test("the titles of both plots say the quantity, its unit and of what", () => {
  const titles = ["title-1", "title-2"].map((name) =>
    layersOf(whole, 720)
      .get(name)!
      .map(({ text }) => text)
      .join(" "),
  );
  expect(titles).toEqual(["moisture, % of damp mass", "step from one value to the next, % of damp mass"]);
});

test("letters of two days beside each other stand side by side", () => {
  const letters = layersOf(whole, 340).get("event-letters")!;
  expect(letters.map(({ text }) => text)).toEqual(["A", "B"]);
  expect(letters[1]!.px - letters[0]!.px).toBeGreaterThanOrEqual(textWidth("B", 12));
});

test("the figures of the limits keep a line's distance, also where the limits lie close", () => {
  const close = { ...whole, limits: { ...whole.limits!, upper: 3.37, lower: 3.33 } };
  const places = layersOf(close, 340)
    .get("limit-labels")!
    .map(({ py }) => py);
  expect(places[1]! - places[0]!).toBeGreaterThanOrEqual(13);
  expect(places[2]! - places[1]!).toBeGreaterThanOrEqual(13);
});

test("what the log leaves out is crossed, and the key says so", () => {
  const words = (input: typeof whole) =>
    layersOf(input, 340)
      .get("key-words")!
      .map(({ text }) => text);
  const out = { ...whole, leftOut: [{ day: start + 40, value: 3.9, judged: false }] };
  expect(layersOf(out, 340).get("left-out")).toHaveLength(2);
  expect(words(out)).toContain("crossed: left out by the log");
  expect(words(whole)).not.toContain("crossed: left out by the log");
});

test("without limits the points stand alone, and that is said", () => {
  const { limits: _, change: __, ...rest } = whole;
  const layers = layersOf(rest, 720);
  expect([layers.has("steps"), layers.has("limits")]).toEqual([false, false]);
  expect(controlChart(rest).caption).toContain("too few for limits");
});

test("the caption names the constants; the text tells limits, signals and the suggested days", () => {
  const { caption, alt } = controlChart(whole);
  expect(caption).toContain("3/d2, d2 = 1.128");
  expect(caption).toContain("3.267");
  expect(alt).toContain("10 values from 2025-10-04 to 2026-07-01");
  expect(alt).toContain("1 value stands in a signal");
  expect(alt).toContain("A change is suggested between 2026-06-01 and 2026-07-01");
});

test("the table keeps every value with its step; a value that is none is left out and counted", () => {
  const { table, alt } = controlChart({
    ...whole,
    points: [...whole.points, { day: start + 300, value: Number.NaN }],
  });
  expect(table.rows).toHaveLength(11);
  expect(table.rows[2]).toEqual(["2025-12-03", 3.2, 3.1, 3.3000000000000003, expect.closeTo(0.3, 10), ""]);
  expect(table.rows[10]![1]).toBeNull();
  expect(alt).toContain("1 without a figure");
});

test("limits are told to tenths of a standard deviation, zeros kept, and alike beside the plot and in the caption", () => {
  // Limits a sixth apart give sd 0.183: its tenths are hundredths. By hand.
  const labels = layersOf(whole, 340).get("limit-labels")!;
  expect(labels.map(({ text }) => text)).toEqual(["3.90", "3.35", "2.80"]);
  expect(controlChart(whole).caption).toContain("mean 3.35 and limits 2.80 and 3.90");
  const wide = { ...whole.limits!, upper: 48.65, mean: 40.99, lower: 33.33 };
  expect([wide.upper, wide.mean, -0.004].map((value) => limitText(wide, value))).toEqual([
    "48.6",
    "41.0",
    "0.0",
  ]);
});

test("nothing to draw, one value, values all alike: drawn without a fault", async () => {
  const { limits: _, ...bare } = whole;
  for (const points of [[], [{ day: start, value: 3 }], [1, 2, 3].map((i) => ({ day: start + i, value: 3 }))])
    expect(await chartSvg(controlChart({ ...bare, points, events: [], pours: [] }).spec(340))).toContain(
      "<svg",
    );
});

test("a percentage that does not say of what, and ends the wrong way round, are misuse", () => {
  const { basis: _, ...unsaid } = whole;
  expect(() => controlChart(unsaid)).toThrow(Misuse);
  expect(() => controlChart({ ...whole, points: [{ day: 1, value: 2, low: 3, high: 1 }] })).toThrow(Misuse);
});

test("ticks of days: firsts of months over a year, days over a month, none nearer than their words", () => {
  const year = dayTicks([day("2025-09-20"), day("2026-08-25")], 640);
  expect(year.map(({ text }) => text)).toEqual([
    "Oct",
    "Nov",
    "Dec",
    "Jan",
    "Feb",
    "Mar",
    "Apr",
    "May",
    "Jun",
    "Jul",
    "Aug",
  ]);
  expect(year.flatMap(({ year: told }) => told ?? [])).toEqual(["2025", "2026"]);
  const month = dayTicks([day("2026-03-02"), day("2026-04-01")], 300);
  expect(month[0]).toMatchObject({ text: "2 Mar", year: "2026" });
  for (const [span, width] of [
    [3, 300],
    [90, 300],
    [400, 290],
    [4000, 640],
    [30_000, 290],
  ] as const) {
    const ticks = dayTicks([start, start + span], width);
    const apart = ticks.slice(1).map((tick, i) => ((tick.day - ticks[i]!.day) * width) / span);
    expect(Math.min(...apart)).toBeGreaterThan(34);
  }
});
