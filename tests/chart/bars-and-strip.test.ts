import { expect, test } from "vitest";
import { mergeCategories } from "../../lib/chart/categories.ts";
import { doubtBars } from "../../lib/chart/doubt-bars.ts";
import { numberStrip } from "../../lib/chart/number-strip.ts";
import { retainedBars } from "../../lib/chart/retained-bars.ts";
import { chartSvg } from "../../lib/chart/svg.ts";
import { fromZero, niceTicks } from "../../lib/chart/ticks.ts";
import { readSvg } from "./read-svg.ts";
import { samples } from "./samples.ts";

const svgOf = async (chart: { spec(width: number): object }, width = 720) =>
  readSvg(await chartSvg(chart.spec(width) as never));
const box = (path: { x: number; y: number }[]) => ({
  left: Math.min(...path.map(({ x }) => x)),
  right: Math.max(...path.map(({ x }) => x)),
  top: Math.min(...path.map(({ y }) => y)),
  bottom: Math.max(...path.map(({ y }) => y)),
});

// Percent retained of a sand in a Korean foundry textbook (page image seen, title not visible).
const textbook = [
  ["No. 30", 0.1],
  ["No. 40", 0.3],
  ["No. 50", 1.3],
  ["No. 70", 33.1],
  ["No. 100", 50.1],
  ["No. 140", 11.5],
  ["No. 200", 1.7],
  ["No. 270", 0.4],
  ["pan", 0.5],
] as const;
const bars = textbook.map(([label, percent]) => ({ label, percent }));

test("bars are equally wide, coarse to fine, and as high as what was retained", async () => {
  const chart = retainedBars({ name: "textbook", sands: [{ name: "Textbook sand", bars }] });
  const drawn = (await svgOf(chart)).paths("bars-1").map(box);
  expect(drawn).toHaveLength(9);
  const tallest = drawn[4]!.bottom - drawn[4]!.top;
  for (const [i, each] of drawn.entries()) {
    expect((each.bottom - each.top) / tallest).toBeCloseTo(textbook[i]![1] / 50.1, 3);
    expect(each.right - each.left).toBeCloseTo(drawn[0]!.right - drawn[0]!.left, 1);
    if (i > 0) expect(each.left).toBeGreaterThan(drawn[i - 1]!.right);
  }
  expect(chart.alt).toContain("50.1 % on No. 100");
  expect(chart.alt).toContain("0.5 % on the pan");
  expect(chart.caption).toContain("not a density");
});

test("two sands stand side by side and never on each other", async () => {
  const svg = await svgOf(samples.find((chart) => chart.name === "bars-two")!, 340);
  const all = [...svg.paths("bars-1"), ...svg.paths("bars-2")].map(box).sort((a, b) => a.left - b.left);
  expect(all).toHaveLength(24);
  for (let i = 1; i < all.length; i += 1)
    expect(all[i]!.left).toBeGreaterThanOrEqual(all[i - 1]!.right - 0.02);
});

test("sieves of different stacks come in one order, the pan last", () => {
  const sieve = (label: string, openingMm?: number) => ({ label, ...(openingMm ? { openingMm } : {}) });
  expect(
    mergeCategories([
      [sieve("No. 50", 0.3), sieve("No. 100", 0.15), sieve("pan")],
      [sieve("0.25 mm", 0.25), sieve("pan"), sieve("No. 50", 0.3)],
    ]),
  ).toEqual(["No. 50", "0.25 mm", "No. 100", "pan"]);
  const unknown = [
    [sieve("a"), sieve("c"), sieve("pan")],
    [sieve("a"), sieve("b"), sieve("c"), sieve("d"), sieve("pan")],
  ];
  expect(mergeCategories(unknown)).toEqual(["a", "b", "c", "d", "pan"]);
});

test("a strip sets points, ± and bands where its own axis has them", async () => {
  const svg = await svgOf(samples.find((chart) => chart.name === "strip")!);
  const tick = (text: string) => svg.words.find((word) => word.text === text && word.anchor === "middle")!.x;
  const px = (value: number) => tick("60") + ((value - 60) / 60) * (tick("120") - tick("60"));
  const band = box(svg.paths("band-1")[0]!);
  // Ticks stand on whole pixels, data do not: within a pixel.
  const near = (found: number, wanted: number) => expect(Math.abs(found - wanted)).toBeLessThan(1);
  near(band.left, px(60));
  near(band.right, px(90));
  near(svg.places("points-1")[0]!.x, px(69.1));
  const bar = svg.elements.find(({ classes, tag }) => classes.includes("interval-2") && tag === "line")!;
  near(Math.abs(Number(bar.attributes.get("x2"))), px(88) - px(78));
  // From memory and our own: dashed.
  for (const name of ["band-weak-2", "band-weak-3"]) {
    const found = svg.elements.find(({ classes, tag }) => classes.includes(name) && tag === "path")!;
    expect(found.attributes.get("stroke-dasharray")).toBe("4,3");
  }
});

test("a strip's words give figure, interval, source and tag", () => {
  const chart = samples.find((each) => each.name === "strip")!;
  expect(chart.alt).toContain("Harbour sand: 69.1 (95 %: 68.7 to 69.5); possible 66 to 72.");
  expect(chart.alt).toContain("Band fine detail: 90 to 130; an invented note (from memory).");
  expect(chart.alt).toContain("Band heavy work: up to 60;");
  const bare = samples.find((each) => each.name === "strip-bare")!;
  expect(bare.alt).toContain("no test: no figure.");
  const band = { label: "b", low: 2, high: 1, source: "s", tag: "read" };
  expect(() => numberStrip({ name: "s", title: "t", unit: "", marks: [], bands: [band] })).toThrow(
    "runs from",
  );
});

test("doubt stands largest first, and small shares are put together", async () => {
  const chart = samples.find((each) => each.name === "doubt")!;
  expect(chart.table.rows.map((row) => row[1])).toEqual([41, 33, 20, 5.7, 0.3]);
  expect(chart.alt).toContain("start mass under 1 %");
  const svg = await svgOf(chart);
  const lengths = svg.paths("bars").map((path) => box(path).right - box(path).left);
  expect(lengths[1]! / lengths[0]!).toBeCloseTo(33 / 41, 2);
  const many = samples.find((each) => each.name === "doubt-many")!;
  expect(many.table.rows).toHaveLength(12);
  expect(many.alt).toContain("the other 5 together 42 %");
  expect(() => doubtBars({ name: "d", shares: [{ label: "x", sharePercent: -1 }] })).toThrow("share");
  expect(() =>
    retainedBars({ name: "r", sands: [{ name: "S", bars: [{ label: "a", percent: -1 }] }] }),
  ).toThrow("retain");
});

test("an endless ± is not drawn, and does not stretch the axis", async () => {
  const bar = { label: "No. 50", percent: 40, low: 0, high: Number.POSITIVE_INFINITY };
  const svg = await svgOf(retainedBars({ name: "endless", sands: [{ name: "S", bars: [bar] }] }));
  expect(svg.words.some(({ text }) => text === "40")).toBe(true);
  expect(svg.elements.some(({ classes }) => classes.includes("doubt"))).toBe(false);
});

test("all bars zero, or without figures, still make a chart", async () => {
  for (const percent of [0, Number.NaN]) {
    const sands = [{ name: "S", bars: [{ label: "No. 50", percent }] }];
    expect((await svgOf(retainedBars({ name: "flat", sands }))).words.length).toBeGreaterThan(2);
    const shares = [{ label: "x", sharePercent: percent }];
    expect((await svgOf(doubtBars({ name: "flat", shares }))).words.length).toBeGreaterThan(1);
  }
});

test("ticks are round and inside; a domain from zero reaches the highest value", () => {
  expect(niceTicks(58.7, 131.2, 5)).toEqual([60, 80, 100, 120]);
  expect(niceTicks(0.1, 0.32, 4)).toEqual([0.1, 0.2, 0.3]);
  expect(niceTicks(3, 3, 4)).toEqual([3]);
  expect(fromZero(41, 4)).toEqual({ domain: [0, 60], ticks: [0, 20, 40, 60] });
  expect(fromZero(0, 4).domain).toEqual([0, 1]);
});

test("a strip's drawing names a band by range and tag; its source stands in the table, and no bands are promised without one", async () => {
  const chart = samples.find((each) => each.name === "strip")!;
  const words = (await svgOf(chart)).words.map(({ text }) => text);
  expect(words).toContain("60 to 90");
  expect(words).toContain("90 to 130, from memory");
  expect(words).toContain("grain fineness number");
  expect(words.join(" ")).not.toMatch(/invented handbook|many uses|bare number/u);
  const heads = chart.table.columns.map(({ name }) => name);
  const row = chart.table.rows.find(([what]) => what === "small castings")!;
  expect([
    row[heads.indexOf("band from")],
    row[heads.indexOf("band to")],
    row[heads.indexOf("source")],
  ]).toEqual([60, 90, "An invented handbook, table 4"]);
  const bare = samples.find((each) => each.name === "strip-bare")!;
  expect(`${bare.caption} ${bare.alt}`).not.toContain("bands");
  expect(chart.caption).toContain("against the usual bands");
});

test("a strip's table says where a ± is a lower bound, as the printed figure does", () => {
  const mark = { label: "S", value: 55.7, low: 54, high: 57.4 };
  const boundOf = (more: object) => {
    const { columns, rows } = numberStrip({
      name: "s",
      title: "grain fineness number",
      unit: "",
      marks: [{ ...mark, ...more }],
      bands: [],
    }).table;
    return rows[0]![columns.findIndex(({ name }) => name === "the ± is")];
  };
  expect(boundOf({ figure: "55.7 ± at least 1.7" })).toBe("at least");
  expect(boundOf({ figure: "54 to 57 or wider" })).toBe("at least");
  expect(boundOf({ figure: "55.7 ± 1.7" })).toBe("");
  expect(boundOf({ atLeast: true })).toBe("at least");
});

test("what the shares leave of the doubt is a bar of its own, so that the bars tell the whole", async () => {
  const shares = [
    { label: "weighing of the pan", sharePercent: 62.3 },
    { label: "opening of No. 100", sharePercent: 30 },
  ];
  const chart = doubtBars({ name: "d", shares });
  const told = chart.table.rows.map(([label, share]) => [label, Number(share)] as const);
  expect(told.at(-1)![0]).toBe("the rest");
  expect(told.reduce((sum, [, share]) => sum + share, 0)).toBeCloseTo(100, 10);
  expect(chart.alt).toContain("the rest 8 %");
  expect((await svgOf(chart)).paths("bars")).toHaveLength(3);
  const whole = samples.find((each) => each.name === "doubt")!;
  expect(whole.alt).not.toContain("the rest");
  expect(doubtBars({ name: "d", shares: [] }).table.rows).toEqual([]);
});

test("of more than four sands the first four get bars, and the caption counts the others", async () => {
  const sands = Array.from({ length: 6 }, (_, i) => ({ name: `Lot ${i + 1}`, bars }));
  const chart = retainedBars({ name: "six", sands });
  const svg = await svgOf(chart);
  expect([4, 5].map((n) => svg.paths(`bars-${n}`).length)).toEqual([9, 0]);
  expect(chart.caption).toMatch(/The first 4 of 6 sands are drawn; 2 more are in the table\.$/u);
  expect(chart.table.rows).toHaveLength(54);
});
