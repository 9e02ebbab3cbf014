// A batch on the bench: what is true of it, and what its founder reads off his rigs and types.

import { airViscosityUPaS } from "../../lib/sand/air.ts";
import { dryingShiftPercent } from "../../lib/sand/drying-method.ts";
import type { Seeded } from "../seeded.ts";
import { type FoundersScale, foundersBore, foundersScale, readLengthMm } from "./instruments.ts";

/** Rigs of one founder, each with an error that all of its readings share. */
export interface FoundersBench {
  readonly random: Seeded;
  readonly kitchen: FoundersScale;
  readonly bathroom: FoundersScale;
  readonly boreMm: number;
  readonly columnMm: number;
  readonly blankS: number;
  /** What his oven makes of 105 °C. */
  readonly ovenC: number;
  /** Air on the day, °C; typed where he has a thermometer, which may be off by 2. */
  readonly airC: number;
  readonly thermometer: boolean;
  readonly repeats: { readonly [test in Tested]: number };
  /** Scatter of one specimen or sample about its batch, sd. */
  readonly scatter: { readonly [test in Tested]: number };
}

export type Tested = "moisture" | "compactability" | "green compression" | "permeability" | "density";
export type Truths = { readonly [test in Tested]: number };

export function foundersBench(random: Seeded): FoundersBench {
  return {
    random,
    kitchen: foundersScale(random, "kitchen scale", { stepG: 0.1, withinG: 0.2, capacityG: 500 }),
    bathroom: foundersScale(random, "luggage scale", { stepG: 50, withinG: 100, capacityG: 30_000 }),
    boreMm: foundersBore(random, 50),
    columnMm: foundersBore(random, 100),
    blankS: 1 + random.uniform(-0.3, 0.3),
    ovenC: random.uniform(100, 110),
    airC: random.uniform(10, 30),
    thermometer: random.uniform() < 0.5,
    repeats: {
      moisture: random.integer(1, 2),
      compactability: random.integer(2, 3),
      "green compression": 3,
      permeability: random.integer(1, 2),
      density: random.integer(1, 2),
    },
    scatter: {
      moisture: random.uniform(0.02, 0.06),
      compactability: random.uniform(0.7, 1.5),
      "green compression": random.uniform(1, 3),
      permeability: random.uniform(1, 3),
      density: random.uniform(0.004, 0.01),
    },
  };
}

export const benchHead = ({ kitchen, bathroom }: FoundersBench): string => `scales:
${kitchen.line}
${bathroom.line}
rigs:
  drop tube: { bore: 50 mm, tube: 120 mm, rammer: 2.00 kg, drop: 163 mm, blows: 3, ruler: 0.5 mm }
  air column: { bore: 50 mm, column: 100 mm, blank time: 1.0 s ± 0.3 s }
`;

const areaMm2 = (mm: number): number => (Math.PI / 4) * mm * mm;

/** The tests of a batch as lines of its block; clay: true, % of damp mass, for what the oven leaves in it. */
export function testLines(bench: FoundersBench, truth: Truths, clayOfDampPercent: number): string {
  const { random, kitchen, bathroom, boreMm, repeats, scatter } = bench;
  const of = (test: Tested, least: number): number =>
    Math.max(least, truth[test] + scatter[test] * random.normal());
  const each = (test: Tested, line: () => string): string =>
    `    ${test}:\n${Array.from({ length: repeats[test] }, () => `      - { ${line()} }\n`).join("")}`;
  const height = (): { readonly trueMm: number; readonly typed: string } => {
    const trueMm = 50 + random.uniform(-1, 1);
    return { trueMm, typed: readLengthMm(random, trueMm, 0.5).toFixed(1) };
  };
  const oven = ovenShift(bench, clayOfDampPercent);
  const moisture = (): string => {
    const damp = random.uniform(145, 155);
    const read = of("moisture", 0.3) + oven;
    return `method: oven, damp: ${kitchen.weigh(damp)} g, dry: ${kitchen.weigh(damp * (1 - read / 100))} g, scale: kitchen scale`;
  };
  const compactability = (): string => {
    const filled = 120 + random.uniform(-0.25, 0.25) + random.uniform(-0.25, 0.25);
    const rammed = readLengthMm(random, filled * (1 - of("compactability", 1) / 100), 0.5);
    // The tube is filled to its mark: 120 stands in the log whatever it was, as close as a ruler tells.
    return `filled: 120 mm, rammed: ${rammed.toFixed(1)} mm, rig: drop tube`;
  };
  const strength = (): string => {
    const grams = (of("green compression", 5) * areaMm2(boreMm)) / 9.80665;
    return `load: ${(Number(bathroom.weigh(grams)) / 1000).toFixed(2)} kg, rig: drop tube, scale: luggage scale`;
  };
  const density = (): string => {
    const { trueMm, typed } = height();
    const grams = (of("density", 0.5) * areaMm2(boreMm) * trueMm) / 1000;
    return `mass: ${kitchen.weigh(grams)} g, height: ${typed} mm, rig: drop tube, scale: kitchen scale`;
  };
  return [
    each("moisture", moisture),
    each("compactability", compactability),
    each("green compression", strength),
    each("permeability", () => permeabilityLine(bench, of("permeability", 3), height())),
    each("density", density),
  ].join("");
}

/** How much higher his oven reads than one at 105 °C, points. */
export const ovenShift = ({ ovenC }: FoundersBench, clayOfDampPercent: number): number =>
  dryingShiftPercent({ clayPercent: clayOfDampPercent, fromCelsius: 105, toCelsius: ovenC })!;

function permeabilityLine(
  { random, boreMm, columnMm, blankS, airC, thermometer }: FoundersBench,
  at20: number,
  { trueMm, typed }: { readonly trueMm: number; readonly typed: string },
): string {
  const [from, to] = [200 + random.uniform(-1, 1), 100 + random.uniform(-1, 1)];
  const that = (at20 * airViscosityUPaS(20)) / airViscosityUPaS(airC);
  const areas = (columnMm / boreMm) ** 2;
  const alone = (60 * areas * (trueMm / 10) * Math.log(from / to)) / that;
  const seconds = alone + blankS + random.uniform(-0.5, 0.5);
  const air = thermometer ? `, temperature: ${Math.round(airC + random.uniform(-1.5, 1.5))} °C` : "";
  return `method: falling column, from: 200 mm, to: 100 mm, seconds: ${seconds.toFixed(1)}, height: ${typed} mm, rig: air column${air}`;
}

/** What his rigs make of a true mean, over many readings: what stays is the bores, the blank, the scale, the air. */
export function asRead(bench: FoundersBench, test: Tested, truth: number): number {
  const { bathroom, boreMm, columnMm, blankS, airC, thermometer } = bench;
  if (test === "green compression") {
    const grams = (truth * areaMm2(boreMm)) / 9.80665;
    return ((grams + bathroom.errorG(grams)) * 9.80665) / areaMm2(50);
  }
  if (test !== "permeability") return truth;
  const that = (truth * airViscosityUPaS(20)) / airViscosityUPaS(airC);
  const fall = 60 * 5 * Math.log(2);
  const seconds = (fall * (columnMm / boreMm) ** 2) / that + blankS - 1;
  const number = (fall * (100 / 50) ** 2) / seconds;
  return thermometer ? (number * airViscosityUPaS(airC)) / airViscosityUPaS(20) : number;
}
