import { expect, test } from "vitest";
import { doubtBars } from "../../lib/chart/doubt-bars.ts";
import { grainCurve } from "../../lib/chart/grain-curve.ts";
import { numberStrip } from "../../lib/chart/number-strip.ts";
import { retainedBars } from "../../lib/chart/retained-bars.ts";
import { chartSvg } from "../../lib/chart/svg.ts";
import { readSvg } from "./read-svg.ts";
import { samples } from "./samples.ts";

test.each(samples)("$name is drawn the same twice, scales, and says what it is", async (chart) => {
  const spec = chart.spec(720);
  expect(chart.spec(720)).toEqual(spec);
  const before = structuredClone(spec);
  const svg = await chartSvg(spec);
  expect(await chartSvg(spec)).toBe(svg);
  expect(spec).toEqual(before);
  const { elements } = readSvg(svg);
  const root = elements[0]!;
  expect(root.attributes.get("role")).toBe("img");
  expect(root.attributes.get("aria-label")).toBe(chart.alt);
  expect(root.attributes.has("width") || root.attributes.has("height")).toBe(false);
  expect(elements.filter(({ tag }) => tag === "title" || tag === "desc")).toHaveLength(2);
  for (const each of elements) {
    expect(each.attributes.has("id"), "ids of two charts on a page would meet").toBe(false);
    if (each !== root)
      expect([...each.attributes.keys()].filter((name) => /^(aria|role)/u.test(name))).toEqual([]);
    for (const name of ["d", "transform", "x2", "y2"])
      expect(each.attributes.get(name) ?? "").not.toMatch(/\.\d{3}|e[+-]?\d/u);
  }
  expect(svg).not.toMatch(/NaN|undefined|Infinity|url\(|http:\/\/(?!www\.w3\.org)/u);
  expect(svg.length).toBeLessThan(40_000);
});

test("layers can be found by a style sheet", async () => {
  const svg = await chartSvg(samples.find(({ name }) => name === "curve-one")!.spec(720));
  for (const name of [
    "band",
    "interval interval-1",
    "points points-1",
    "line line-1",
    "doubt doubt-1",
    "axis",
  ])
    expect(svg).toContain(`class="${name}"`);
});

const hostile = [
  '</text><script>alert("x")</script>',
  "datum.x + signal['width']",
  "{signal: 'width'}",
  "a.b[0] \\' \" & <b>",
  "line\nbreak\u0000\u0007",
  "__proto__",
  "constructor",
  "10e9",
  "null",
];

test("names stay text, whatever they hold", async () => {
  for (const label of hostile) {
    const charts = [
      grainCurve({
        name: "h",
        sands: [0, 1].map(() => ({ name: label, points: [{ openingMm: 0.3, label, passingPercent: 50 }] })),
        band: { label, lowMm: 0.1, highMm: 0.2 },
      }),
      retainedBars({
        name: "h",
        sands: [0, 1].map(() => ({ name: label, bars: [{ label, percent: 50 }] })),
      }),
      numberStrip({
        name: "h",
        title: label,
        unit: label,
        marks: [{ label, value: 1, low: 0, high: 2 }],
        bands: [{ label, low: 0, high: 3, source: label, tag: label }],
      }),
      doubtBars({ name: "h", of: label, shares: [{ label, sharePercent: 100 }] }),
    ];
    for (const chart of charts) {
      const text = await chartSvg(chart.spec(720));
      const svg = readSvg(text);
      const shown = svg.words.map((word) => word.text).join(" ");
      const start = label.split(/[\s,]/u)[0]!.slice(0, 8);
      expect(shown, `${chart.alt}`).toContain(start);
      const tags = new Set(svg.elements.map(({ tag }) => tag));
      for (const tag of tags)
        expect(["svg", "title", "desc", "g", "path", "text", "tspan", "line"]).toContain(tag);
    }
  }
});

test("a spec that reaches out, or that Vega-Lite warns about, is refused", async () => {
  const mark = { mark: "point", encoding: { x: { field: "a", type: "quantitative" } } };
  await expect(chartSvg({ data: { url: "https://example.org/a.json" }, ...mark })).rejects.toThrow(
    "cannot be drawn",
  );
  await expect(chartSvg({ data: { url: "file:///etc/hostname" }, ...mark })).rejects.toThrow(
    "cannot be drawn",
  );
  await expect(
    chartSvg({ data: { values: [{ a: 1 }] }, mark: "point", encoding: { nowhere: { field: "a" } } }),
  ).rejects.toThrow("cannot be drawn");
});
