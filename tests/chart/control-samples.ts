// Control charts that show everything they can, and as little as they may; invented.

import { type ControlInput, controlChart } from "../../lib/chart/control-chart.ts";

const start = Date.parse("2025-10-04") / 86_400_000;
const numbers = [3.3, 3.5, 3.2, 3.4, 3.3, 3.5, 3.2, 3.4, 3.3, 4.6];
const moisture = { property: "moisture", unit: "%", basis: "damp mass" } as const;

export const whole: ControlInput = {
  ...moisture,
  name: "control-whole",
  points: numbers.map((value, i) => ({
    day: start + 30 * i,
    value,
    low: value - 0.1,
    high: value + 0.1,
    judged: i > 0,
    signal: i === 9,
    stepSignal: i === 9,
  })),
  limits: {
    mean: 3.35,
    upper: 3.9,
    lower: 2.8,
    rangeMean: 0.2,
    rangeUpper: 0.65,
    from: start + 30,
    baselineTo: start + 240,
    to: start + 270,
    count: 8,
  },
  events: [
    { day: start + 40, letter: "A" },
    { day: start + 41, letter: "B" },
  ],
  pours: [start + 3, start + 80],
  change: { low: start + 240, high: start + 270 },
};

export const controlSamples = [
  controlChart(whole),
  controlChart({
    ...moisture,
    name: "control-few",
    points: numbers.slice(0, 4).map((value, i) => ({ day: start + 7 * i, value })),
  }),
];
