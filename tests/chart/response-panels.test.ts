import { expect, test } from "vitest";
import type { ResponsePanelsInput } from "../../lib/chart/response-input.ts";
import { responsePanels } from "../../lib/chart/response-panels.ts";
import { textWidth } from "../../lib/chart/text.ts";
import { colours } from "../../lib/chart/theme.ts";
import { box, levelAxis, near, sample, svgOf, uprightAxis } from "./read-axes.ts";
import { moisture, trialSamples } from "./trial-samples.ts";

// Permeability of a sand with 6 % bentonite at 3 to 6 % water: a casting laboratory's joint table of student groups,
// Universitas Brawijaya, table 2.2. Flat on top near 3 and 4 %, then falling.
const published = [
  [3, 240],
  [4, 240],
  [5, 225],
  [6, 210],
] as const;

test("a published series stands where its axes have it", async () => {
  const points = published.map(([x, y]) => ({ x, y }));
  const water = { title: "water", unit: "%", basis: "dry mix" };
  const chart = responsePanels({
    name: "series",
    axis: water,
    panels: [{ property: "permeability number", unit: "", points }],
  });
  const svg = await svgOf(chart);
  const x = levelAxis(svg, "3", "6");
  const y = uprightAxis(svg, "210", "240");
  const marks = svg.places("points-1");
  expect(marks).toHaveLength(4);
  for (const [i, [water, number]] of published.entries()) {
    near(marks[i]!.x, x(water));
    near(marks[i]!.y, y(number));
  }
  expect(marks[0]!.y).toBe(marks[1]!.y);
  expect(chart.table.rows.map((row) => [row[3], row[6]])).toEqual(published.map((pair) => [...pair]));
  expect(chart.alt).toContain("Permeability number: 240 at 3; 240 at 4; 225 at 5; 210 at 6.");
});

test("bands, aims, window, curve and ± lie at their values; batches in front of all", async () => {
  const svg = await svgOf(sample("trial-whole"));
  const x = levelAxis(svg, "2", "5");
  const y = uprightAxis(svg, "20", "60");
  const band = box(svg.paths("band-1")[0]!);
  near(band.top, y(70));
  near(band.bottom, y(40));
  const shades = svg.paths("window").map(box);
  expect(shades).toHaveLength(3);
  for (const shade of shades) {
    near(shade.left, x(3));
    near(shade.right, x(3.6));
  }
  const aims = svg.places("aim-1").map((at) => at.y);
  near(Math.max(...aims), y(50));
  near(Math.min(...aims), y(75));
  // The invented course is 62 − 9 (x − 3.1)².
  const curve = svg.paths("line-1")[0]!;
  near(Math.min(...curve.map((at) => at.y)), y(62));
  near(curve.at(-1)!.y, y(62 - 9 * 1.9 ** 2));
  expect(box(svg.paths("new-batch-1")[0]!).top).toBeLessThan(box(svg.paths("interval-1")[0]!).top);
  const [level] = svg.elements.filter(({ classes, tag }) => classes.includes("doubt-1") && tag === "line");
  near(Math.abs(Number(level!.attributes.get("x2"))), x(2.42) - x(2.18));
  near(svg.places("aim-place")[0]!.x, x(3.3));
  const order = (name: string) => svg.elements.findIndex(({ classes }) => classes.includes(name));
  const back = ["band-1", "window", "new-batch-1", "interval-1", "aim-1", "line-1", "doubt-1", "points-1"];
  const places = back.map(order);
  expect(places.every((place) => place > 0)).toBe(true);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
});

test("the house's colours: points, curve and band; aims in ink", async () => {
  const svg = await svgOf(sample("trial-whole"));
  const paint = (name: string, attribute: string) =>
    new Set(
      svg.elements
        .filter(({ classes, tag }) => classes.includes(name) && tag !== "g")
        .map(({ attributes }) => attributes.get(attribute)),
    );
  expect(paint("points-1", "fill")).toEqual(new Set([colours.measured]));
  expect(paint("line-1", "stroke")).toEqual(new Set([colours.fitted]));
  expect(paint("interval-1", "fill")).toEqual(new Set([colours.fitted]));
  expect(paint("band-1", "fill")).toEqual(new Set([colours.band]));
  expect(paint("aim-1", "stroke")).toEqual(new Set([colours.ink]));
  // From memory and our own: dashed.
  expect(paint("band-2", "stroke-dasharray")).toEqual(new Set(["4,3"]));
  const all = new Set(Object.values(colours) as string[]);
  for (const { attributes } of svg.elements)
    for (const name of ["fill", "stroke"]) {
      const colour = attributes.get(name);
      if (colour?.startsWith("#")) expect(all.has(colour), colour).toBe(true);
    }
});

test.each(
  trialSamples.filter(({ name }) => name.startsWith("trial")).map((chart) => ({ chart, name: chart.name })),
)(
  "$name: each panel says its quantity, unit and basis, and no name lies on a batch or its ±",
  async ({ chart }) => {
    for (const width of [340, 720]) {
      const svg = await svgOf(chart, width);
      const words = svg.words.map(({ text }) => text).join(" ");
      const titles = new Set(chart.table.rows.map((row) => `${row[0]}, ${row[1]}`));
      for (const title of titles)
        if (!title.endsWith(", ")) expect(words.replaceAll(/\s+/gu, " ")).toContain(title);
      const marks = [1, 2, 3].flatMap((n) => [...svg.places(`points-${n}`), ...svg.places(`left-out-${n}`)]);
      const bars = svg.elements.filter(({ classes, tag }) => classes.includes("doubt") && tag === "line");
      for (const word of svg.words) {
        const left = word.anchor === "start" ? word.x : word.x - textWidth(word.text, word.sizePx);
        const right = left + textWidth(word.text, word.sizePx);
        const covers = (px: number, py: number) =>
          px > left && px < right && py > word.y - 0.75 * word.sizePx && py < word.y + 0.2 * word.sizePx;
        if (word.anchor === "middle") continue;
        expect(
          marks.find((mark) => covers(mark.x, mark.y)),
          word.text,
        ).toBeUndefined();
        const crossed = bars.find(({ x, y, attributes }) => {
          const [dx, dy] = ["x2", "y2"].map((name) => Number(attributes.get(name) ?? 0)) as [number, number];
          return Array.from({ length: 41 }, (_, step) => step / 40).some((share) =>
            covers(x + dx * share, y + dy * share),
          );
        });
        expect(crossed, word.text).toBeUndefined();
      }
    }
  },
);

test("what is left out of the fit is hollow, and an open end is said to be open", async () => {
  const chart = sample("trial-left-out");
  const svg = await svgOf(chart);
  expect(svg.places("points-1")).toHaveLength(5);
  const [hollow] = svg.elements.filter(
    ({ classes, tag }) => classes.includes("left-out-1") && tag === "path",
  );
  expect(hollow!.attributes.get("fill") ?? "none").toMatch(/none|transparent/u);
  expect(chart.alt).toContain("30 (95 %: 27 to 33) at 4.4 (left out of the fit)");
  expect(chart.alt).toContain("Window: up to 3.6 % of damp mass.");
  expect(chart.alt).toContain("not bounded below");
  expect(chart.table.rows.filter((row) => String(row[2]).includes("left out"))).toHaveLength(1);
});

test("an interval without end stays in its panel, and three batches have no curve", async () => {
  const endless = Number.POSITIVE_INFINITY;
  const wild = [2, 3, 4].map((x) => ({
    x,
    mean: 50,
    low: 50 - 1e4,
    high: 50 + 1e4,
    newLow: -endless,
    newHigh: endless,
  }));
  const points = [2, 3, 4].map((x) => ({ x, y: 48 + x }));
  const panels = [{ property: "strength", unit: "kPa", points, curve: wild }];
  const svg = await svgOf(responsePanels({ name: "wild", axis: moisture, panels }));
  const fill = box(svg.paths("interval-1")[0]!);
  expect(fill.bottom - fill.top).toBeLessThan(160);
  expect(Math.max(...svg.places("points-1").map(({ y }) => y))).toBeLessThan(fill.bottom);
  expect(svg.paths("new-batch-1")).toEqual([]);
  const three = await svgOf(sample("trial-three-batches"));
  expect(three.paths("line")).toEqual([]);
  expect(sample("trial-three-batches").alt).not.toContain("Fitted");
});

test("a turn that nothing bounds is not given as a figure with limits", () => {
  const { alt, table } = sample("trial-whole");
  expect(alt).toContain("The curve turns at 3.1 (95 %: 2.8 to 3.36).");
  expect(alt).toContain("Where the curve turns near 4.2 is not bounded by these batches.");
  const [, turns] = table.rows.filter((row) => row[2] === "where the curve turns");
  expect(turns!.slice(3, 6)).toEqual([4.2, null, null]);
});

test("what a founder wrote is a word, whatever it looks like", async () => {
  const evil = "datum.x signal(1) <b>'\"";
  const input: ResponsePanelsInput = {
    name: "evil",
    axis: { title: evil, unit: "kPa" },
    panels: [{ property: evil, unit: evil, points: [{ x: 1, y: 2, label: evil }] }],
  };
  const { words } = await svgOf(responsePanels(input));
  expect(words.filter(({ text }) => text.includes("<b>'\"")).length).toBeGreaterThanOrEqual(2);
});

test("an aim whose doubt is known in part says so in the key and in the text", () => {
  const of = (atLeast: boolean) =>
    responsePanels({
      name: "aimed",
      axis: { title: "moisture", unit: "%", basis: "damp mass" },
      panels: [
        {
          property: "compactability",
          unit: "%",
          basis: "height",
          points: [
            { x: 3, y: 40 },
            { x: 4, y: 50 },
          ],
        },
      ],
      aimAt: { x: 3.42, low: 3.33, high: 3.57, atLeast },
    });
  for (const said of [of(true).alt, JSON.stringify(of(true).spec(720))])
    expect(said).toMatch(/im for 3\.42 \(95 %: 3\.33 to 3\.57 or wider\) %/);
  expect(of(false).alt).toContain("3.33 to 3.57) %");
});
