import { expect, test } from "vitest";
import { grainCurve } from "../../lib/chart/grain-curve.ts";
import { chartSvg } from "../../lib/chart/svg.ts";
import { textWidth } from "../../lib/chart/text.ts";
import { colours, seriesStyle } from "../../lib/chart/theme.ts";
import { seeded } from "../seeded.ts";
import { readSvg } from "./read-svg.ts";
import { elevenSieves, longName, samples, sand } from "./samples.ts";

// Percent retained of a sand in a Korean foundry textbook (page image seen, title not visible): 99.0 % in all.
const retained = [0.1, 0.3, 1.3, 33.1, 50.1, 11.5, 1.7, 0.4];
const printedSum = 99.0;
const sieves = elevenSieves.slice(3);
let below = 100;
const points = sieves.map(([openingMm, label], i) => {
  below -= (retained[i]! / printedSum) * 100;
  return { openingMm, label, passingPercent: below, low: below - 0.4, high: below + 0.4 };
});
const textbook = grainCurve({ name: "textbook", sands: [{ name: "Textbook sand", points }] });

test("passing falls by what each sieve retained, on a log axis of openings", async () => {
  const svg = readSvg(await chartSvg(textbook.spec(720)));
  const [curve] = svg.paths("line-1");
  const marks = svg.places("points-1");
  expect(curve).toHaveLength(8);
  const passed = (i: number) => curve![i]!.y;
  const scale = (passed(4) - passed(3)) / 50.1; // px for a percent of the sieve No. 100
  for (const i of [1, 2, 3, 4, 5, 6, 7])
    expect((passed(i) - passed(i - 1)) / scale).toBeCloseTo(retained[i]!, 0);
  // 0.6 to 0.3, 0.3 to 0.15 and 0.15 to 0.075 mm are each a halving: equal steps, coarse at left.
  const at = (mm: number) => marks[sieves.findIndex(([opening]) => opening === mm)]!.x;
  const halving = at(0.3) - at(0.6);
  expect(halving).toBeGreaterThan(0);
  expect(at(0.15) - at(0.3)).toBeCloseTo(halving, 1);
  expect(at(0.075) - at(0.15)).toBeCloseTo(halving, 1);
});

test("openings stand below, sieve numbers above, each in its place", async () => {
  const svg = readSvg(await chartSvg(textbook.spec(720)));
  const marks = svg.places("points-1");
  for (const [i, [, label]] of sieves.entries()) {
    const word = svg.words.find(({ text, y }) => text === label.replace("No. ", "") && y < marks[0]!.y);
    expect(word?.x, label).toBeCloseTo(marks[i]!.x, 0);
  }
  expect(svg.words.map((word) => word.text)).toEqual(
    expect.arrayContaining(["sieve No.", "0.1", "0.2", "0.5"]),
  );
});

test("the direction can be turned, and the axis says which it is", async () => {
  const input = { name: "turned", sands: [sand("Harbour sand", 0.2, 0.35, elevenSieves)] } as const;
  const fine = grainCurve({ ...input, direction: "fine to coarse" });
  const words = async (chart: typeof fine) => readSvg(await chartSvg(chart.spec(720)));
  const turned = await words(fine);
  expect(turned.words.some(({ text }) => text.includes("fine at left, coarse at right"))).toBe(true);
  expect(turned.places("points-1")[0]!.x).toBeGreaterThan(turned.places("points-1").at(-1)!.x);
  const straight = await words(grainCurve(input));
  expect(straight.words.some(({ text }) => text.includes("coarse at left, fine at right"))).toBe(true);
});

test("sands far enough apart are named at their curves, sands that lie together get a key", async () => {
  const named = async (name: string, width: number) => {
    const svg = readSvg(await chartSvg(samples.find((chart) => chart.name === name)!.spec(width)));
    return {
      direct: svg.elements.some(({ classes }) => classes.includes("label")),
      key: svg.elements.some(({ classes }) => classes.includes("key-words")),
    };
  };
  expect(await named("curve-two", 720)).toEqual({ direct: true, key: false });
  expect(await named("curve-two", 340)).toEqual({ direct: true, key: false });
  expect(await named("curve-alike", 720)).toEqual({ direct: false, key: true });
});

test("each sand has its own colour, mark and dash", () => {
  const three = samples.find((chart) => chart.name === "curve-three")!.spec(720);
  const layers = three.layer as { name: string; mark: Record<string, unknown> }[];
  for (const i of [0, 1, 2]) {
    const style = seriesStyle(i);
    expect(layers.find(({ name }) => name === `line-${i + 1}`)!.mark).toMatchObject({
      color: style.colour,
      strokeDash: style.dash,
      interpolate: "linear",
    });
    expect(layers.find(({ name }) => name === `points-${i + 1}`)!.mark).toMatchObject({ shape: style.shape });
  }
  expect(seriesStyle(0).colour).toBe(colours.measured);
  expect(seriesStyle(1).colour).toBe(colours.secondSand);
});

test("the words say what passes where, and what is missing", () => {
  // By hand: 100 − 0.1/0.99 = 99.9; No. 70 and No. 100 stand on either side of the half.
  expect(textbook.alt).toContain(
    "Textbook sand passes 99.9 % at No. 30 (0.6 mm), 64.8 % at No. 70 (0.212 mm), 14.2 % at No. 100 (0.15 mm) and 0.5 % at No. 270 (0.053 mm).",
  );
  const gap = grainCurve({
    name: "gap",
    sands: [
      {
        name: "S",
        points: [
          { openingMm: 0.3, label: "No. 50", passingPercent: Number.NaN },
          { openingMm: 0.15, label: "0.15 mm", passingPercent: 14 },
          { openingMm: 0, label: "pan", passingPercent: 0 },
        ],
      },
    ],
  });
  expect(gap.alt).toContain("S passes 14 % at 0.15 mm. 1 point has no figure and is not drawn.");
  expect(gap.table.rows[0]).toEqual(["S", "No. 50", 0.3, null, null, null, null, null]);
  expect(gap.table.rows).toHaveLength(3);
});

test("equal openings, nothing at all and long names still make a chart; nonsense throws", async () => {
  const one = { label: "No. 70", passingPercent: 40 };
  const chart = (openingMm: number, name = "S") =>
    grainCurve({
      name: "odd",
      sands: [
        {
          name,
          points: [
            { ...one, openingMm },
            { ...one, openingMm },
          ],
        },
      ],
    });
  for (const odd of [chart(0.2), chart(0.2, longName.repeat(6)), chart(0.2, "")])
    expect(readSvg(await chartSvg(odd.spec(340))).places("points-1")).toHaveLength(2);
  const none = readSvg(await chartSvg(grainCurve({ name: "none", sands: [] }).spec(340)));
  expect(none.words.some(({ text }) => text === "No figures to draw.")).toBe(true);
  expect(() => chart(-0.2)).toThrow("opening");
  expect(() => grainCurve({ name: "Not A Name", sands: [] })).toThrow("hyphens");
  const crossed = [{ ...one, openingMm: 0.2, low: 50, high: 30 }];
  expect(() => grainCurve({ name: "x", sands: [{ name: "S", points: crossed }] })).toThrow("low end");
});

test("two lines of an axis title are two words of the drawing", async () => {
  const svg = readSvg(await chartSvg(textbook.spec(340)));
  const lines = svg.words.filter(({ text }) => /coarse at|fine at right/u.test(text));
  expect(lines).toHaveLength(2);
  expect(lines[1]!.y - lines[0]!.y).toBeGreaterThan(11);
});

test("the input is left as it was", () => {
  const given = sand("Harbour sand", 0.2, 0.35, [...elevenSieves].reverse(), true);
  const before = structuredClone(given);
  grainCurve({ name: "kept", sands: [given] }).spec(720);
  expect(given).toEqual(before);
});

test("of more than four sands the first four are drawn, and the words say how many the table has besides", async () => {
  const five = samples.find((chart) => chart.name === "curve-five")!;
  const drawn = readSvg(await chartSvg(five.spec(720)));
  expect([1, 2, 3, 4, 5].map((n) => drawn.paths(`line-${n}`).length)).toEqual([1, 1, 1, 1, 0]);
  for (const words of [five.caption, five.alt])
    expect(words).toMatch(/The first 4 of 5 sands are drawn; one more is in the table\.$/u);
  expect(new Set(five.table.rows.map(([name]) => name)).size).toBe(5);
  const thirty = Array.from({ length: 30 }, (_, i) =>
    sand(`Lot ${i + 1}`, 0.1 + i / 100, 0.35, elevenSieves),
  );
  expect(grainCurve({ name: "lots", sands: thirty, caption: "Thirty lots." }).caption).toBe(
    "Thirty lots. The first 4 of 30 sands are drawn; 26 more are in the table.",
  );
  const two = samples.find((chart) => chart.name === "curve-two")!;
  expect(two.caption).not.toContain("in the table");
});

test("in the table each end of a gap between sieves stands once, at its sieve", () => {
  // What a page gives for one gap: corners of no width at both sieves, and two points a thousandth inside.
  const interval = [
    { openingMm: 0.3, low: 95, high: 95 },
    { openingMm: 0.2997, low: 40, high: 95 },
    { openingMm: 0.15015, low: 40, high: 95 },
    { openingMm: 0.15, low: 40, high: 40 },
  ];
  const points = [
    { openingMm: 0.3, label: "No. 50", passingPercent: 95 },
    { openingMm: 0.15, label: "No. 100", passingPercent: 40 },
  ];
  const { rows } = grainCurve({ name: "gap", sands: [{ name: "S", points, interval }] }).table;
  expect(rows.filter((row) => row[1] === "between sieves")).toEqual([
    ["S", "between sieves", 0.3, null, null, null, 40, 95],
    ["S", "between sieves", 0.15, null, null, null, 40, 95],
  ]);
});

test("a name beside its curve stands on no bar of a ±, at both widths", () => {
  const random = seeded(20261127);
  const openings = [0.6, 0.3, 0.212, 0.15, 0.106, 0.075];
  let named = 0;
  for (let run = 0; run < 40; run++) {
    const sand = (name: string, shift: number) => ({
      name,
      points: openings.map((openingMm) => {
        const passingPercent = 100 / (1 + (0.17 / (openingMm * shift)) ** 5);
        const half = 1 + 6 * random.uniform() * Math.min(1, passingPercent / 20, (100 - passingPercent) / 20);
        const ends = { low: passingPercent - half, high: passingPercent + half };
        return { openingMm, label: `${openingMm} mm`, passingPercent, ...ends };
      }),
    });
    const chart = grainCurve({
      name: "bars",
      sands: [sand("Old bag", 1), sand("New bag", 1.1 + random.uniform())],
    });
    for (const width of [340, 720]) {
      const layers = chart.spec(width).layer as readonly {
        readonly name: string;
        readonly data: {
          readonly values: readonly { x: number; y: number; px: number; py: number; text: string }[];
        };
        readonly encoding: { readonly x: { readonly scale: { readonly domain: readonly [number, number] } } };
      }[];
      const [low, high] = layers.find(({ name }) => name === "axes")!.encoding.x.scale.domain;
      // Coarse at the left; margins of 36 and 16 px.
      const px = (mm: number): number => ((width - 52) * Math.log(high / mm)) / Math.log(high / low);
      const height = Math.round(Math.min(330, Math.max(240, width * 0.46)));
      const caps = layers.flatMap(({ name, data }) =>
        /^doubt-\d-ends$/.test(name)
          ? data.values.map(({ x, y }) => ({ px: px(x), py: height * (1 - y / 100) }))
          : [],
      );
      expect(caps).toHaveLength(4 * openings.length);
      const names = layers.flatMap(({ name, data }) => (/^label-\d$/.test(name) ? data.values : []));
      named += names.length;
      for (const { px: left, py, text } of names) {
        const met = caps.filter(
          (cap) =>
            cap.px + 3.5 > left && cap.px - 3.5 < left + textWidth(text, 12) && Math.abs(cap.py - py) < 6,
        );
        expect(met, `${text} at ${width} px, run ${run}`).toEqual([]);
      }
    }
  }
  expect(named).toBeGreaterThan(80);
});
