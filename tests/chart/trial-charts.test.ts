import { expect, test } from "vitest";
import { chancePanel } from "../../lib/chart/chance-panel.ts";
import { differencePlot } from "../../lib/chart/difference-plot.ts";
import { nextTrialChart } from "../../lib/chart/next-trial-chart.ts";
import { responsePanels } from "../../lib/chart/response-panels.ts";
import { squeezeChart } from "../../lib/chart/squeeze-chart.ts";
import { promisesIn } from "../forbidden-words.ts";
import { levelAxis, near, sample, svgOf, uprightAxis } from "./read-axes.ts";
import { moisture, squeezeSteps } from "./trial-samples.ts";

test("the chance is of the founder's own aims, never of a sound casting", async () => {
  const chart = sample("chance-whole");
  expect(chart.caption).toContain("own aims");
  for (const text of [chart.caption, chart.alt]) {
    expect(text).toContain("not the chance of a sound casting");
    expect(promisesIn(text)).toEqual([]);
  }
  const svg = await svgOf(chart);
  const y = uprightAxis(svg, "0", "100");
  const heavy = svg.elements.find(({ classes, tag }) => classes.includes("line-1") && tag === "path")!;
  const others = svg.elements.find(({ classes, tag }) => classes.includes("line-2") && tag === "path")!;
  expect(Number(heavy.attributes.get("stroke-width"))).toBeGreaterThan(
    Number(others.attributes.get("stroke-width")),
  );
  // The invented chance of all at once is 86 % where it is highest.
  near(Math.min(...svg.paths("line-1")[0]!.map((at) => at.y)), y(86));
});

test("where a chance is not known the line is broken, and nearly sure is not called sure", async () => {
  const all = [
    [2.5, 99.7],
    [3, 60],
    [3.5, Number.NaN],
    [4, 40],
    [4.5, 0.2],
  ].map(([x, chance]) => ({ x: x!, chance: chance! }));
  const chart = chancePanel({ name: "gap", axis: moisture, each: [], all });
  const svg = await svgOf(chart);
  expect(svg.paths("line-1")).toHaveLength(2);
  expect(chart.alt).toContain("from over 99 % at 2.5 to under 1 % at 4.5");
  expect(chart.table.rows).toHaveLength(5);
});

test("the table of chances has a row for each place and a column for each course, about nine places of a long one", () => {
  const long = (chance: number) =>
    Array.from({ length: 41 }, (_, i) => ({ x: 2 + i / 20, chance: chance + i }));
  const { columns, rows } = chancePanel({
    name: "long",
    axis: moisture,
    each: [{ property: "strength", points: long(10) }],
    all: long(5),
  }).table;
  expect(columns.map(({ name }) => name).slice(0, 3)).toEqual([
    "moisture",
    "chance, strength",
    "chance, all at once",
  ]);
  expect(rows.length).toBe(9);
  expect(rows[0]!.slice(0, 3)).toEqual([2, 10, 5]);
  expect(rows.at(-1)!.slice(0, 3)).toEqual([4, 50, 45]);
});

test("the hand: each step in its row, the dash at the mean, and steps that mix are named", async () => {
  const chart = sample("squeeze-whole");
  const svg = await svgOf(chart);
  const x = levelAxis(svg, "30", "60");
  expect(svg.places("points")).toHaveLength(9);
  // Step 2 was felt at 35 and 38 %, step 4 at 48 and 56 %.
  const dashes = svg
    .places("means")
    .map((at) => at.x)
    .sort((a, b) => a - b);
  near(dashes[0]!, x(36.5));
  near(dashes[2]!, x(52));
  expect(chart.alt).toContain('sharp edges" and "4. bends a little before it breaks" overlap');
  const clear = squeezeChart({
    name: "clear",
    steps: squeezeSteps,
    points: [
      { step: 2, compactability: 36 },
      { step: 3, compactability: 45 },
    ],
  });
  expect(clear.alt).toContain("The steps do not overlap.");
});

test("the difference has its zero under the first mean, to the same scale", async () => {
  const chart = sample("difference-whole");
  const svg = await svgOf(chart);
  const [upper, lower] = [levelAxis(svg, "48", "58"), levelAxis(svg, "0", "8")];
  const first = (48 + 51 + 47 + 50.5 + 48.3) / 5;
  near(lower(0), upper(first));
  near(lower(6.3), svg.places("difference")[0]!.x);
  near(lower(8) - lower(0), upper(56) - upper(48));
  const bar = svg.elements.find(({ classes, tag }) => classes.includes("interval") && tag === "line")!;
  near(Math.abs(Number(bar.attributes.get("x2"))), lower(9.1) - lower(3.6));
  expect(chart.alt).toContain("Difference: Harbour bag less Coppice bag: 6.3 (95 %: 3.6 to 9.1) kPa.");
  expect(sample("difference-bare").alt).toContain("no figure.");
});

test("the next batch: the narrowest place is marked, and no help is called no help", async () => {
  const svg = await svgOf(sample("next-whole"));
  near(svg.places("best")[0]!.x, levelAxis(svg, "2.5", "5")(2.6));
  expect(sample("next-whole").alt).toContain("As it stands: 0.74 % of damp mass.");
  expect(sample("next-whole").alt).toContain("Narrowest after a batch at 2.6 % of damp mass: 0.44.");
  const none = sample("next-no-help");
  expect(none.alt).toContain("None of these places narrows it.");
  expect((await svgOf(none)).places("best")).toEqual([]);
});

test("without figures every chart says so", async () => {
  for (const name of ["trial-none", "chance-none", "next-none"])
    expect((await svgOf(sample(name), 340)).words.map(({ text }) => text)).toContain("No figures to draw.");
  expect(sample("squeeze-none").alt).toContain("not felt yet");
});

test("calls that break the contract throw", () => {
  const panels = [{ property: "moisture", unit: "%", points: [] }];
  expect(() => responsePanels({ name: "x", axis: moisture, panels })).toThrow("of what");
  expect(() => responsePanels({ name: "x", axis: { title: "clay", unit: "%" }, panels: [] })).toThrow(
    "of what",
  );
  const window = { low: 4, high: 3 };
  expect(() => responsePanels({ name: "x", axis: moisture, panels: [], window })).toThrow("window runs");
  const upside = [{ property: "s", unit: "kPa", points: [{ x: 1, y: 1, yLow: 2, yHigh: 1 }] }];
  expect(() => responsePanels({ name: "x", axis: moisture, panels: upside })).toThrow("above");
  const all = [{ x: 3, chance: 101 }];
  expect(() => chancePanel({ name: "x", axis: moisture, each: [], all })).toThrow("chance");
  expect(() => squeezeChart({ name: "x", steps: [], points: [{ step: 1, compactability: 40 }] })).toThrow(
    "steps",
  );
  const wet = [{ step: 1, compactability: 140 }];
  expect(() => squeezeChart({ name: "x", steps: squeezeSteps, points: wet })).toThrow("140");
  const difference = { value: 1, low: 0, high: 2 };
  expect(() => differencePlot({ name: "x", property: "s", unit: "", groups: [], difference })).toThrow("two");
  expect(() =>
    nextTrialChart({ name: "x", axis: moisture, candidates: [{ x: 1, width: -1 }], now: 1 }),
  ).toThrow("width");
});
