// Invented trials for the tests of charts; no real founder, clay or place is meant.

import { chancePanel } from "../../lib/chart/chance-panel.ts";
import { differencePlot } from "../../lib/chart/difference-plot.ts";
import { nextTrialChart } from "../../lib/chart/next-trial-chart.ts";
import type { ResponsePanel } from "../../lib/chart/response-input.ts";
import { responsePanels } from "../../lib/chart/response-panels.ts";
import { squeezeChart } from "../../lib/chart/squeeze-chart.ts";
import { longName } from "./samples.ts";

export const moisture = { title: "moisture", unit: "%", basis: "damp mass" };
export const waters = [2.3, 2.8, 3.3, 3.8, 4.4, 4.9];

/** A course of the water, with intervals that open towards both sides. */
export function curveOf(course: (x: number) => number, sd: number, from = 2.2, to = 5) {
  return Array.from({ length: 41 }, (_, i) => {
    const x = from + ((to - from) * i) / 40;
    const half = sd * (0.9 + 0.5 * (x - 3.6) ** 2);
    const mean = course(x);
    return {
      x,
      mean,
      low: mean - half,
      high: mean + half,
      newLow: mean - 3 * half,
      newHigh: mean + 3 * half,
    };
  });
}
const strength = (x: number) => 62 - 9 * (x - 3.1) ** 2;
const permeability = (x: number) => 96 - 12 * (x - 4.2) ** 2;
const compactability = (x: number) => 12 + 11.5 * x;

function panel(property: string, unit: string, course: (x: number) => number, sd: number): ResponsePanel {
  const off = [0.6, -0.8, 0.3, 0.9, -1.1, 0.2];
  return {
    property,
    unit,
    points: waters.map((x, i) => {
      const y = course(x) + sd * off[i]!;
      return { x, y, xLow: x - 0.12, xHigh: x + 0.12, yLow: y - sd, yHigh: y + sd, label: `batch ${i + 1}` };
    }),
    curve: curveOf(course, sd),
  };
}

const band = { low: 40, high: 70, label: "aluminium, hand moulding", tag: "common practice" };
export const fullPanels: readonly ResponsePanel[] = [
  {
    ...panel("green compression strength", "kPa", strength, 3),
    band,
    aim: { low: 50, high: 75 },
    optimum: { x: 3.1, low: 2.8, high: 3.36, bounded: true },
  },
  {
    ...panel("permeability number", "", permeability, 5),
    band: { low: 60, high: 120, label: "sands of this fineness", tag: "our own" },
    aim: { low: 70, high: Number.POSITIVE_INFINITY },
    optimum: { x: 4.2, low: Number.NaN, high: Number.NaN, bounded: false },
  },
  {
    ...panel("compactability", "%", compactability, 1.6),
    basis: "height",
    aim: { low: 42, high: 52 },
  },
];

const inClay = { title: "clay added", unit: "%", basis: "dry mix" };
const everyChance = (peak: number, wide: number) =>
  Array.from({ length: 29 }, (_, i) => ({
    x: 2.2 + i * 0.1,
    chance: 100 / (1 + ((2.2 + i * 0.1 - peak) / wide) ** 4),
  }));
const all = everyChance(3.4, 0.42).map(({ x, chance }) => ({
  x,
  chance: chance * 0.86,
  low: chance * 0.7,
  high: Math.min(100, chance),
}));
export const squeezeSteps = [
  { step: 1, words: "will not hold, runs through the fingers" },
  { step: 2, words: "holds for a moment, breaks at a touch" },
  { step: 3, words: "holds the print of every finger, breaks with sharp edges" },
  { step: 4, words: "bends a little before it breaks" },
  { step: 5, words: "sticks to the hand, leaves it wet" },
];
const felt = [
  [1, 27],
  [2, 35],
  [2, 38],
  [3, 44],
  [3, 45],
  [3, 45.5],
  [3, 49],
  [4, 48],
  [4, 56],
] as const;

/** Everything that a trial may bring: the whole, three batches, one, none, long names, what is left out. */
export const trialSamples = [
  responsePanels({
    name: "trial-whole",
    axis: moisture,
    panels: fullPanels,
    window: { low: 3.0, high: 3.6, label: "temper window" },
    aimAt: { x: 3.3, low: 3.12, high: 3.47 },
  }),
  responsePanels({
    name: "trial-three-batches",
    axis: moisture,
    panels: fullPanels.map(({ property, unit, basis, points }) => ({
      property,
      unit,
      ...(basis === undefined ? {} : { basis }),
      points: points.slice(1, 4),
    })),
  }),
  responsePanels({
    name: "trial-left-out",
    axis: moisture,
    panels: [
      {
        ...fullPanels[0]!,
        points: fullPanels[0]!.points.map((point, i) =>
          i === 4 ? { ...point, y: 30, yLow: 27, yHigh: 33, leftOut: true } : point,
        ),
        curve: curveOf(strength, 9),
      },
    ],
    window: { low: Number.NEGATIVE_INFINITY, high: 3.6 },
    aimAt: { x: 2.4, low: Number.NEGATIVE_INFINITY, high: 3.4 },
  }),
  responsePanels({
    name: "trial-clay",
    axis: inClay,
    panels: [
      {
        property: "green compression strength",
        unit: "kPa",
        points: [6, 6, 8, 8, 10].map((x, i) => ({
          x,
          y: 34 + 4.1 * x + [2, -2, 1, -3, 0][i]!,
          label: longName,
        })),
        typical: [
          {
            label: "an invented series of bentonite sands, fully mulled, at 45 % compactability",
            tag: "read",
            points: [4, 6, 8, 10, 12].map((x) => ({ x, low: 20 + 3.6 * x, high: 44 + 4.4 * x })),
          },
          {
            label: "half mulled",
            tag: "our own",
            points: [4, 8, 12].map((x) => ({ x, low: 15 + 3 * x, high: 15 + 3 * x })),
          },
        ],
      },
      { property: "permeability number", unit: "", points: [{ x: 6, y: Number.NaN }] },
    ],
  }),
  responsePanels({
    name: "trial-one-batch",
    axis: moisture,
    panels: [{ property: longName, unit: "g/cm³", points: [{ x: 3.2, y: 1.52, label: "the only one" }] }],
  }),
  responsePanels({ name: "trial-none", axis: moisture, panels: [] }),
  chancePanel({
    name: "chance-whole",
    axis: moisture,
    each: [
      { property: "green compression strength", points: everyChance(2.9, 1.1) },
      { property: "permeability", points: everyChance(4.1, 1.0) },
      { property: "compactability", points: everyChance(3.4, 0.62) },
    ],
    all,
    rangeMeans: "range when each edge of an aim moves by a tenth",
    window: { low: 3.1, high: 3.7, label: "temper window" },
    aimAt: { x: 3.4, low: 3.2, high: 3.58 },
  }),
  chancePanel({
    name: "chance-crowded",
    axis: moisture,
    each: [3.3, 3.35, 3.4, 3.45].map((peak, i) => ({
      property: `${longName} ${i + 1}`,
      points: everyChance(peak, 0.6),
    })),
    all,
  }),
  chancePanel({ name: "chance-none", axis: moisture, each: [], all: [{ x: 3, chance: Number.NaN }] }),
  squeezeChart({
    name: "squeeze-whole",
    steps: squeezeSteps,
    points: felt.map(([step, value], i) => ({
      step,
      compactability: value,
      low: value - 1.8,
      high: value + 1.8,
      label: `batch ${i + 1}`,
    })),
    aim: { low: 42, high: 50 },
  }),
  squeezeChart({ name: "squeeze-none", steps: squeezeSteps, points: [] }),
  differencePlot({
    name: "difference-whole",
    property: "green compression strength",
    unit: "kPa",
    groups: [
      { label: "Coppice bag", values: [48, 51, 47, 50.5, 48.3] },
      { label: "Harbour bag", values: [55, 58, 54, 54.2] },
    ],
    difference: { value: 6.3, low: 3.6, high: 9.1 },
  }),
  differencePlot({
    name: "difference-bare",
    property: "moisture",
    unit: "%",
    basis: "damp mass",
    groups: [
      { label: longName, values: [3.1] },
      { label: "after", values: [] },
    ],
    difference: { value: Number.NaN, low: Number.NaN, high: Number.NaN },
  }),
  nextTrialChart({
    name: "next-whole",
    axis: moisture,
    candidates: Array.from({ length: 15 }, (_, i) => {
      const x = 2.2 + i * 0.2;
      return {
        x,
        width: 0.72 - 0.28 * Math.exp(-(((x - 2.6) / 0.4) ** 2)) - 0.2 * Math.exp(-(((x - 4.4) / 0.5) ** 2)),
      };
    }),
    now: 0.74,
  }),
  nextTrialChart({
    name: "next-no-help",
    axis: moisture,
    candidates: [
      { x: 3, width: 0.5 },
      { x: 4, width: 0.6 },
    ],
    now: 0.4,
  }),
  nextTrialChart({ name: "next-none", axis: moisture, candidates: [], now: Number.NaN }),
] as const;
