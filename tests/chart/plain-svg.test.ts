// Drawings without Vega are Vega's to the letter, or none: Vega and Vega-Lite are the reference here, run on the same
// specs. Sands, trials and names are invented.

import fc from "fast-check";
import { expect, test } from "vitest";
import type { VegaLiteSpec } from "../../lib/chart/chart.ts";
import { axesLayer, boxFor, frame, type Layer } from "../../lib/chart/frame.ts";
import { plainSvg } from "../../lib/chart/plain-svg.ts";
import { tickTexts } from "../../lib/chart/plain-tick-text.ts";
import { chartSvg, vegaSvg } from "../../lib/chart/svg.ts";
import { controlSamples } from "./control-samples.ts";
import { samples } from "./samples.ts";
import { trialSamples } from "./trial-samples.ts";

const all = [...samples, ...trialSamples, ...controlSamples];

test.each(all)("$name: as Vega draws it, at a desk's and a phone's width", async (chart) => {
  for (const width of [720, 340]) {
    const spec = chart.spec(width);
    expect(plainSvg(spec), `${chart.name} at ${width}`).toBe(await vegaSvg(spec));
  }
});

const number = fc.oneof(
  fc.double({ min: -900, max: 900, noNaN: true }),
  fc.double({ min: -1e-3, max: 1e-3, noNaN: true }),
  fc.integer({ min: -500, max: 500 }),
  fc.integer({ min: -5_000, max: 5_000 }).map((thousandths) => thousandths / 1_000),
);
const positive = fc.double({ min: 0.01, max: 90, noNaN: true });
const part = fc.double({ min: 0, max: 1, noNaN: true });
const colour = fc.constantFrom("#1f2a30", "#9c4a1a", "#eadfc8");
const text = fc.oneof(
  fc.string({ unit: "binary", maxLength: 12 }),
  fc.constantFrom(
    "",
    "  ",
    "null",
    '</text><script>"',
    "a & b",
    "line\nbreak",
    "datum.x",
    "{signal: 'width'}",
  ),
);
/** Fields that may be left out. */
const some = <T extends object>(model: { [K in keyof T]: fc.Arbitrary<T[K]> }) =>
  fc.record(model, { requiredKeys: [] });
const dash = fc.array(fc.integer({ min: 1, max: 9 }), { maxLength: 4 });
const stroke = some({ strokeWidth: positive, strokeDash: dash, opacity: part });

/** A mark with the channels that it takes besides x and y. */
const mark: fc.Arbitrary<{ readonly mark: object; readonly channels: string }> = fc.oneof(
  fc.record({
    mark: fc
      .record({ color: colour, look: stroke })
      .map(({ color, look }) => ({ type: "rule", color, ...look })),
    channels: fc.constantFrom("x2 y2", "x2", "y2"),
  }),
  fc.record({
    mark: fc
      .record({ color: colour, look: stroke, more: some({ fillOpacity: part, stroke: colour }) })
      .map(({ color, look, more }) => ({ type: "rect", color, ...look, ...more })),
    channels: fc.constant("x2 y2"),
  }),
  fc.record({
    mark: fc
      .record({
        align: fc.constantFrom("left", "center", "right"),
        look: some({
          fontSize: fc.integer({ min: 9, max: 20 }),
          color: colour,
          opacity: part,
          angle: fc.constantFrom(-90, 45),
        }),
      })
      .map(({ align, look }) => ({ type: "text", align, baseline: "middle", ...look })),
    channels: fc.constant("text"),
  }),
  fc.record({
    mark: fc
      .record({
        filled: fc.boolean(),
        shape: fc.constantFrom("circle", "square", "diamond", "cross", "triangle-up", "triangle-down"),
        size: positive,
        opacity: part,
        colour,
        look: some({ strokeWidth: positive }),
      })
      .map(({ filled, colour, look, ...mark }) => ({
        type: "point",
        filled,
        ...mark,
        ...look,
        ...(filled ? { color: colour } : { stroke: colour }),
      })),
    channels: fc.constant(""),
  }),
  fc.record({
    mark: fc
      .record({ color: colour, thickness: positive, size: positive, opacity: part })
      .map((look) => ({ type: "tick", orient: "horizontal", ...look })),
    channels: fc.constant(""),
  }),
  fc.record({
    mark: fc
      .record({
        interpolate: fc.constantFrom("linear", "linear-closed"),
        look: stroke,
        more: some({ color: colour, fill: colour, fillOpacity: part }),
      })
      .map(({ interpolate, look, more }) => ({ type: "line", interpolate, ...look, ...more })),
    channels: fc.constantFrom("", "detail", "detail order", "order"),
  }),
  fc.record({
    mark: fc
      .record({ color: colour, look: some({ opacity: part }) })
      .map(({ color, look }) => ({ type: "area", interpolate: "linear", line: false, color, ...look })),
    channels: fc.constant("y2"),
  }),
);

const rows = fc.array(
  fc.record({
    x: positive,
    y: number,
    x2: positive,
    y2: number,
    text,
    run: fc.integer({ min: 0, max: 2 }),
    i: number,
  }),
  { minLength: 1, maxLength: 6 },
);

const layer = fc
  .record({
    mark,
    rows,
    scaled: fc.boolean(),
    name: fc.stringMatching(/^[a-z]{1,6}(-[a-z]{1,4})?(-[1-9])?$/),
  })
  .filter(({ name }) => name !== "axes")
  .map(({ mark: { mark, channels }, rows, scaled, name }): Layer => {
    const at = (field: string) => ({
      field,
      type: "quantitative",
      ...(scaled ? {} : { scale: null }),
      axis: null,
    });
    const others: { readonly [channel: string]: object } = {
      x2: { field: "x2" },
      y2: { field: "y2" },
      text: { field: "text", type: "nominal" },
      detail: { field: "run", type: "nominal" },
      order: { field: "i", type: "quantitative" },
    };
    const more = channels
      .split(" ")
      .flatMap((channel) => (channel === "" ? [] : [[channel, others[channel]!]]));
    return {
      name,
      data: { values: rows },
      mark,
      encoding: { x: at("x"), y: at("y"), ...Object.fromEntries(more) },
    };
  });

const ends = fc.tuple(positive, positive).filter(([from, to]) => Math.abs(from - to) > 0.01);
const ticks = fc.uniqueArray(fc.oneof(positive, fc.integer({ min: 1, max: 90 })), {
  minLength: 1,
  maxLength: 14,
});
const axes = fc
  .record({
    x: ends,
    y: ends,
    log: fc.boolean(),
    reverse: fc.boolean(),
    values: ticks,
    title: fc.array(fc.constantFrom("water & clay", "<mass>", "sand"), { minLength: 1, maxLength: 3 }),
    grid: fc.boolean(),
    titlePadding: fc.integer({ min: 0, max: 30 }),
    bare: fc.boolean(),
    upright: fc.option(ticks),
  })
  .map(({ x, y, log, reverse, values, title, grid, titlePadding, bare, upright }) =>
    axesLayer(
      {
        scale: { ...(log ? { type: "log", reverse } : { zero: false }), domain: x, nice: false },
        axis: bare
          ? { title, labels: false, ticks: false, grid: false, titlePadding }
          : {
              ...{ title, values, grid, titlePadding, format: "~f", labelFlush: false },
              ...(log ? { labelOverlap: false } : {}),
            },
      },
      {
        scale: { domain: y, nice: false },
        axis: upright && {
          ...{ title: "passing, %", values: upright, format: "~f" },
          ...{ titleAngle: 0, titleAlign: "left", titleBaseline: "middle", titleX: -34, titleY: -18 },
        },
      },
    ),
  );

const spec = fc
  .record({
    axes,
    layers: fc.uniqueArray(layer, { minLength: 1, maxLength: 4, selector: ({ name }) => name }),
    at: fc.constantFrom(0, 0, 0, 0, 2),
    height: fc.integer({ min: 40, max: 700 }),
    words: text,
  })
  .map(({ axes, layers, at, height, words }) => {
    const box = boxFor(720, { height, left: 34, right: 16, top: 8, bottom: 41 });
    const chart = { name: "made-up", alt: `${words}.`, caption: words };
    return frame(chart, box, [...layers.slice(0, at), axes, ...layers.slice(at)]);
  });

const RUNS = Number(process.env.RUNS ?? 40);

test("whatever is put together of these parts is drawn as Vega draws it", async () => {
  let drawn = 0;
  await fc.assert(
    fc.asyncProperty(spec, async (made) => {
      const plain = plainSvg(made);
      if (plain !== undefined) drawn += 1;
      expect(plain ?? (await vegaSvg(made))).toBe(await vegaSvg(made));
    }),
    { numRuns: RUNS, seed: 20_260_606 },
  );
  // The rest have a layer before the axes that would have its word on their scales.
  expect(drawn / RUNS).toBeGreaterThan(0.6);
}, 120_000);

/** The spec with one more word in each of its objects in turn, but for the rows of the data. */
function* withOneMore(spec: VegaLiteSpec): Generator<VegaLiteSpec> {
  const places = (value: unknown, path: readonly string[]): (readonly string[])[] => {
    if (typeof value !== "object" || value === null || path.at(-1) === "values") return [];
    const own = Array.isArray(value) ? [] : [path];
    return [...own, ...Object.entries(value).flatMap(([key, each]) => places(each, [...path, key]))];
  };
  for (const path of places(spec, [])) {
    if (path[0] === "usermeta") continue;
    const copy = structuredClone(spec) as { [key: string]: unknown };
    let object = copy;
    for (const key of path) object = object[key] as typeof copy;
    object.further = 1;
    yield copy;
  }
}

test("a spec that says anything more is left to Vega", () => {
  for (const chart of [...samples.slice(0, 4), ...trialSamples.slice(0, 2)]) {
    const spec = chart.spec(720);
    expect(plainSvg(spec)).toBeDefined();
    expect([...withOneMore(spec)].filter((more) => plainSvg(more) !== undefined)).toEqual([]);
  }
});

test("a spec of another kind is drawn by Vega", async () => {
  const bars = {
    data: { values: [{ sand: "dune", kg: 3 }] },
    mark: "bar",
    encoding: { x: { field: "kg", type: "quantitative" }, y: { field: "sand", type: "nominal" } },
  };
  expect(plainSvg(bars)).toBeUndefined();
  expect(await chartSvg(bars)).toBe(await vegaSvg(bars));
  const spec = samples[0]!.spec(720) as { readonly layer: readonly { readonly mark: object }[] };
  for (const type of ["bar", "geoshape", "constructor", "__proto__"])
    expect(
      plainSvg({ ...spec, layer: spec.layer.map((each) => ({ ...each, mark: { ...each.mark, type } })) }),
    ).toBeUndefined();
});

test("labels have the decimals that tell ticks apart, and a minus that is one", () => {
  const linear = { type: "linear", domain: [-30, 120] } as const;
  const said = (values: readonly number[]) =>
    tickTexts(linear, values, { format: "~f", count: values.length });
  expect(said([-20, 0, 100])).toEqual(["−20", "0", "100"]);
  expect(said([-0.2, 0.5, 100])).toEqual(["0", "1", "100"]);
  expect(tickTexts(linear, [2_000], { format: undefined, count: 1 })).toBeUndefined();
  const fine = { type: "linear", domain: [2.1, 2.9] } as const;
  expect(tickTexts(fine, [2.2, 2.4, 2.45], { format: "~f", count: 3 })).toEqual(["2.2", "2.4", "2.5"]);
  expect(tickTexts(fine, [2, 2.4], { format: undefined, count: 2 })).toEqual(["2.0", "2.4"]);
  const log = { type: "log", domain: [0.05, 3] } as const;
  expect(tickTexts(log, [0.07, 0.125, 2], { format: "~f", count: 3 })).toEqual(["0.07", "0.125", "2"]);
});
