// Water, settling and the practice of sieving: viscosity tables, limits of load, balances, portions.

import { concentration } from "../../lib/sand/concentration.ts";
import { gradingCurve } from "../../lib/sand/curve.ts";
import { fines } from "../../lib/sand/fines.ts";
import { massBalance } from "../../lib/sand/mass-balance.ts";
import { areaLoadG, fiveLayersG } from "../../lib/sand/overload.ts";
import { portionAdvice } from "../../lib/sand/portion.ts";
import { readGrading } from "../../lib/sand/read-grading.ts";
import { pooledRepeatScatter } from "../../lib/sand/repeats.ts";
import { screens } from "../../lib/sand/screens.ts";
import { settlingCutUm, settlingSeconds, stokesVelocityMmS } from "../../lib/sand/settling.ts";
import { waterDensityKgM3, waterViscosityMPaS } from "../../lib/sand/water.ts";
import { KOREAN_PAGE } from "../sand/curve-sands.ts";
import { sirstv } from "./nist-data.ts";
import type { Published } from "./published.ts";

const korean = () => readGrading(KOREAN_PAGE).value!;
const warm = [10, 15, 20, 25, 30];
const verdict = (retained: number) => massBalance({ startG: 50, retainedG: [retained] }).verdict;

export const practiceRows: readonly Published[] = [
  {
    figure: "viscosity of water, 10 to 30 °C, mPa·s",
    source: "patek",
    theirs: ["1.3059", "1.1375", "1.0016", "0.8900", "0.7972"],
    ours: () => warm.map(waterViscosityMPaS),
    agree: { within: 0.00005 },
    tag: "by hand",
    note: "coefficients read",
  },
  {
    figure: "the same by public water data, 10, 20, 30 °C",
    source: "water data",
    theirs: ["1.307", "1.002", "0.797"],
    ours: () => [10, 20, 30].map(waterViscosityMPaS),
    agree: { within: 0.0012 },
    tag: "read",
  },
  {
    figure: "viscosity of water at 25 °C and 998 kg/m³, mPa·s: first check value of table 4",
    source: "iapws viscosity",
    theirs: ["0.889735100"],
    ours: () => [waterViscosityMPaS(25)],
    agree: { share: 0.0005 },
    tag: "read",
    note: "in a public unit test; ours is at 997.05 kg/m³, 1 atm",
  },
  {
    figure: "the same by tables of 1928, 0.3 to 0.7 % high",
    source: "ict",
    theirs: ["1.3097", "1.1447", "1.0087", "0.8949", "0.8004"],
    ours: () => warm.map(waterViscosityMPaS),
    agree: { share: 0.0075 },
    tag: "read",
  },
  {
    figure: "density of water, 10 to 30 °C, kg/m³",
    source: "kell",
    theirs: ["999.70", "999.10", "998.21", "997.05", "995.65"],
    ours: () => warm.map(waterDensityKgM3),
    agree: { within: 0.01 },
    tag: "from memory",
  },
  {
    figure: "the same by tables of 1928",
    source: "ict",
    theirs: ["999.73", "999.13", "998.23", "997.07", "995.68"],
    ours: () => warm.map(waterDensityKgM3),
    agree: { within: 0.04 },
    tag: "read",
  },
  {
    figure: "fall of 20 µm quartz, 10 to 30 °C, mm/s",
    theirs: ["0.275", "0.316", "0.359", "0.405", "0.452"],
    ours: () => warm.map((celsius) => stokesVelocityMmS({ grainUm: 20, celsius })),
    tag: "by hand",
    note: "Stokes",
  },
  {
    figure: "wash test: seconds for 127 mm, and the cut after 5 minutes, µm, 10 to 30 °C",
    theirs: ["461", "402", "353", "314", "281", "24.8", "23.1", "21.7", "20.5", "19.4"],
    ours: () => [
      ...warm.map((celsius) => settlingSeconds({ grainUm: 20, depthMm: 127, celsius })),
      ...warm.map((celsius) => settlingCutUm({ depthMm: 127, seconds: 300, celsius })),
    ],
    tag: "by hand",
    note: "Stokes, quartz 2650 kg/m³",
  },
  {
    figure: "wash test: five inches at 20 °C, s; 2 µm, h",
    source: "siphon practice",
    theirs: ["354", "9.8"],
    ours: () => [
      settlingSeconds({ grainUm: 20, depthMm: 127, celsius: 20 }),
      settlingSeconds({ grainUm: 2, depthMm: 127, celsius: 20 }) / 3600,
    ],
    agree: { within: 1.5 },
    tag: "by hand",
    note: "354 s with 1.002 mPa·s; depth and time of the siphon read",
  },
  {
    figure:
      "fall of 20 µm clay of 2350 kg/m³ through 127 mm at 20 °C, s; quartz that falls 127 mm in 300 s at 27 °C, µm",
    theirs: ["432", "20.0"],
    ours: () => [
      settlingSeconds({ grainUm: 20, depthMm: 127, celsius: 20, grainKgM3: 2350 }),
      settlingCutUm({ depthMm: 127, seconds: 300, celsius: 27 }),
    ],
    tag: "by hand",
    note: "Stokes; the density from memory",
  },
  {
    figure: "five layers on a 200 mm frame, grains of 0.09, 0.128, 0.25 mm, g",
    source: "mcmanus",
    theirs: ["22", "32", "62"],
    ours: () => [0.09, 0.128, 0.25].map((grainMm) => fiveLayersG(grainMm, 200)),
    agree: { within: 0.55 },
    tag: "by hand",
    note: "layers read; grams at 60 % packing",
  },
  {
    figure: "most sand on an 8 in and a 12 in sieve, g",
    source: "astm c136",
    theirs: ["200", "469"],
    ours: () => [areaLoadG(0.3, 7.5 * 25.4), areaLoadG(0.3, 11.5 * 25.4)],
    agree: { within: 0.6 },
    tag: "from memory",
    note: "limits read; half an inch less than the frame from memory",
  },
  {
    figure: "most on a sieve of 4.75 mm in a 200 mm frame, 2.5 kg/m² for each mm of opening, g",
    source: "astm c136",
    theirs: ["373"],
    ours: () => [areaLoadG(4.75, 200)],
    tag: "by hand",
    note: "limit read",
  },
  {
    figure: "mass balance of 50 g: for acceptance 0.15 g, done again beyond 0.5 g",
    source: ["astm c136", "en 933"],
    theirs: ["good", "look", "look", "redo"],
    ours: () => [49.85, 49.84, 49.5, 49.49].map(verdict),
    tag: "from memory",
    note: "0.3 % read; 1 % from memory",
  },
  {
    figure: "test portion on a 200 mm frame, g",
    source: ["afs text", "sfsa"],
    theirs: ["50"],
    ours: () => [portionAdvice({ frameMm: 200, portionG: 50 }).lowG],
    tag: "read",
  },
  {
    figure: "the same on a 100 mm frame, by area",
    source: ["afs text", "sfsa"],
    theirs: ["12.5", "25"],
    ours: () => {
      const { lowG, highG } = portionAdvice({ frameMm: 100, portionG: 20 });
      return [lowG, highG];
    },
    tag: "by hand",
    note: "scaled from 50 and 100 g",
  },
  {
    figure: "Korean sand: screens; share of three sieves and fines, %",
    source: "korean page",
    theirs: ["3", "95.66", "2.63"],
    ours: () => [
      screens(korean()).count,
      concentration(korean())!.sharePercent,
      fines(gradingCurve(korean())).percent!,
    ],
    tag: "by hand",
    note: "percentages read",
  },
  {
    figure: "pooled scatter of five instruments; its degrees of freedom",
    source: "nist sirstv",
    theirs: ["0.104076068334656", "20"],
    ours: () => {
      const pooled = pooledRepeatScatter(sirstv())!;
      return [pooled.sd, pooled.degreesOfFreedom];
    },
    agree: { digits: 12 },
    tag: "read",
  },
];
