// Invented sands and stacks for the tests of charts; no real sand, place or person is meant.

import { doubtBars } from "../../lib/chart/doubt-bars.ts";
import { grainCurve } from "../../lib/chart/grain-curve.ts";
import type { GrainCurveSand } from "../../lib/chart/grain-input.ts";
import { numberStrip } from "../../lib/chart/number-strip.ts";
import { retainedBars } from "../../lib/chart/retained-bars.ts";

type Stack = readonly (readonly [openingMm: number, label: string])[];

// Openings: ASTM E11 and ISO 3310-1 principal sizes.
export const elevenSieves: Stack = [
  [3.35, "No. 6"],
  [1.7, "No. 12"],
  [0.85, "No. 20"],
  [0.6, "No. 30"],
  [0.425, "No. 40"],
  [0.3, "No. 50"],
  [0.212, "No. 70"],
  [0.15, "No. 100"],
  [0.106, "No. 140"],
  [0.075, "No. 200"],
  [0.053, "No. 270"],
];
export const fiveSieves = elevenSieves.filter(([, label]) => /30|50|70|100|200/u.test(label));
const isoSieves: Stack = [1.4, 1, 0.71, 0.5, 0.355, 0.25, 0.18, 0.125, 0.09, 0.063].map((mm) => [
  mm,
  `${mm} mm`,
]);
const cloth: Stack = [
  [0.385, "40 mesh, 0.25 mm wire"],
  [0.233, "60 mesh, 0.19 mm wire"],
  [0.1975, "80 mesh, 0.12 mm wire"],
  [0.154, "100 mesh, 0.10 mm wire"],
];
export const longName = "Grey dune sand from behind the old boat shed, washed twice and dried";

/** Passing of an S-shaped sand: a logistic curve in log opening. */
function passing(openingMm: number, middleMm: number, width: number): number {
  return 100 / (1 + (openingMm / middleMm) ** (-1.7 / width));
}

export function sand(
  name: string,
  middleMm: number,
  width: number,
  stack: Stack,
  filled = false,
): GrainCurveSand {
  const points = stack.map(([openingMm, label]) => {
    const passingPercent = passing(openingMm, middleMm, width);
    return { openingMm, label, passingPercent, low: passingPercent - 1.5, high: passingPercent + 1.5 };
  });
  if (!filled) return { name, points };
  const [coarse, fine] = [stack[0]![0], stack.at(-1)![0]];
  const interval = Array.from({ length: 24 }, (_, i) => {
    const openingMm = fine * (coarse / fine) ** (i / 23);
    return {
      openingMm,
      low: passing(openingMm * 0.92, middleMm, width),
      high: passing(openingMm * 1.08, middleMm, width),
    };
  });
  return { name, points, interval };
}

function barsOf(name: string, middleMm: number, width: number, stack: Stack) {
  let above = 100;
  const bars = stack.map(([openingMm, label]) => {
    const below = passing(openingMm, middleMm, width);
    const percent = above - below;
    above = below;
    return { label, percent, low: Math.max(0, percent - 0.8), high: percent + 0.8, openingMm };
  });
  return { name, bars: [...bars, { label: "pan", percent: above, openingMm: 0 }] };
}

const strip = {
  title: "grain fineness number",
  unit: "",
  marks: [
    { label: "Harbour sand", value: 69.1, low: 68.7, high: 69.5, possible: { low: 66, high: 72 } },
    {
      label: "Dune sand from the five-sieve stack",
      value: 83,
      low: 78,
      high: 88,
      possible: { low: 70, high: 97 },
    },
  ],
  bands: [
    { label: "small castings", low: 60, high: 90, source: "An invented handbook, table 4", tag: "read" },
    { label: "fine detail", low: 90, high: 130, source: "an invented note", tag: "from memory" },
    {
      label: "heavy work",
      low: Number.NEGATIVE_INFINITY,
      high: 60,
      source: "an invented book with a very long title about the many uses of sand, page 114, table 3",
      tag: "our own",
    },
  ],
};

/** Everything that a chart may have to bear: one to five sands, many and few sieves, long names, nothing at all. */
export const samples = [
  grainCurve({
    name: "curve-one",
    sands: [sand("Harbour sand", 0.18, 0.35, elevenSieves, true)],
    band: { label: "a middle that suits small castings", lowMm: 0.15, highMm: 0.25 },
  }),
  grainCurve({
    name: "curve-two",
    sands: [
      sand("Harbour sand", 0.2, 0.35, elevenSieves, true),
      sand("Dune sand", 0.12, 0.3, elevenSieves, true),
    ],
  }),
  grainCurve({
    name: "curve-three",
    sands: [
      sand("Harbour sand", 0.2, 0.35, fiveSieves),
      sand("Dune sand", 0.12, 0.3, fiveSieves),
      sand("Quarry sand", 0.42, 0.4, fiveSieves),
    ],
  }),
  grainCurve({
    name: "curve-alike",
    sands: [
      sand("A", 0.2, 0.35, fiveSieves),
      sand(longName, 0.195, 0.3, fiveSieves),
      sand("B", 0.205, 0.4, fiveSieves),
    ],
  }),
  grainCurve({
    name: "curve-mixed-stacks",
    direction: "fine to coarse",
    sands: [sand("Harbour sand", 0.2, 0.35, isoSieves), sand("Dune sand", 0.13, 0.3, fiveSieves)],
  }),
  grainCurve({ name: "curve-cloth", sands: [sand("Cloth", 0.2, 0.35, cloth, true)] }),
  grainCurve({
    name: "curve-five",
    sands: [0.1, 0.15, 0.22, 0.32, 0.5].map((mm, i) => sand(`Sand ${i + 1}`, mm, 0.35, elevenSieves)),
  }),
  grainCurve({ name: "curve-none", sands: [] }),
  grainCurve({
    name: "curve-point",
    sands: [{ name: "One point", points: [{ openingMm: 0.2, label: "No. 70", passingPercent: 40 }] }],
  }),
  retainedBars({ name: "bars-one", sands: [barsOf("Harbour sand", 0.18, 0.35, elevenSieves)] }),
  retainedBars({
    name: "bars-two",
    sands: [barsOf("Harbour sand", 0.18, 0.35, elevenSieves), barsOf("Dune sand", 0.13, 0.3, elevenSieves)],
  }),
  retainedBars({
    name: "bars-three",
    sands: [
      barsOf("Harbour sand", 0.18, 0.35, fiveSieves),
      barsOf(longName, 0.13, 0.3, fiveSieves),
      barsOf("Q", 0.3, 0.3, isoSieves),
    ],
  }),
  retainedBars({ name: "bars-cloth", sands: [barsOf("Cloth", 0.2, 0.35, cloth)] }),
  retainedBars({ name: "bars-none", sands: [] }),
  numberStrip({ name: "strip", ...strip }),
  numberStrip({
    name: "strip-bare",
    title: "moisture",
    unit: "% of damp mass",
    marks: [
      { label: "no test", value: Number.NaN },
      { label: "one", value: 3.2 },
    ],
    bands: [],
  }),
  doubtBars({
    name: "doubt",
    of: "the grain fineness number",
    shares: [
      { label: "split", sharePercent: 20 },
      { label: "weighing of No. 70 on the kitchen scale", sharePercent: 41 },
      { label: "opening of No. 100 (tolerance of a set that was never checked)", sharePercent: 33 },
      { label: "pan", sharePercent: 5.7 },
      { label: "start mass", sharePercent: 0.3 },
    ],
  }),
  doubtBars({
    name: "doubt-many",
    shares: Array.from({ length: 12 }, (_, i) => ({ label: `source ${i + 1}`, sharePercent: 100 / 12 })),
  }),
  doubtBars({ name: "doubt-none", shares: [] }),
] as const;
