// Heat into the mould, freezing, burn-out: against Incropera, Geankoplis, Ghosh & Mallik, Groover, the wear factor.

import { waterBoiledOffKg } from "../../lib/sand/boiled-off.ts";
import { bondLostC, burntSandPerKgMetal, wearFactorDoseKg } from "../../lib/sand/burn-out.ts";
import {
  castingModulusMm,
  freezingByShape,
  freezingConstantSMm2,
  freezingConstants,
  freezingSeconds,
} from "../../lib/sand/freezing.ts";
import { behindGapC, heatedDepthMm } from "../../lib/sand/heated-depth.ts";
import {
  diffusivityM2S,
  effusivity,
  type MetalHeat,
  metalHeats,
  sandHeats,
} from "../../lib/sand/moulding-heat.ts";
import { plateHeatedDepths } from "../../lib/sand/plate-cooling.ts";
import { iron } from "./heat-metals.ts";
import type { Published } from "./published.ts";

const [flemings, ghosh, third] = sandHeats;
const [aluminium, alloy] = metalHeats.aluminium;
const melts: MetalHeat = { ...aluminium!, freezesC: 660 };
const frozen = (modulusMm: number) => freezingByShape({ modulusMm, metal: iron, sand: ghosh!, sandC: 28 });
const ground = {
  bodyC: -17.8,
  startC: 15.6,
  seconds: 5 * 3600,
  diffusivityM2S: 4.65e-7,
  gapWM2K: 11.36,
  conductivityWMK: 0.865,
};
const cube = 155 / (50 / 6) ** 2;
const depth = (faceC: number, targetC: number): number =>
  heatedDepthMm({ faceC, startC: 20, targetC, seconds: 171.5, diffusivityM2S: diffusivityM2S(flemings!) });
const plate = (metal: MetalHeat, targetsC: readonly number[]) =>
  plateHeatedDepths({ metal, sand: flemings!, pouredC: 720, targetsC });
/** Where the temperature under the surface of freezing ground is 0 °C, m. */
function frostM(): number {
  let [dry, deep] = [0, 1000];
  for (let i = 0; i < 60; i++) {
    const middle = (dry + deep) / 2;
    if (behindGapC({ ...ground, depthMm: middle }) < 0) dry = middle;
    else deep = middle;
  }
  return dry / 1000;
}

export const heatRows: readonly Published[] = [
  {
    figure: "frost over a water main, m",
    source: "incropera",
    theirs: ["0.68"],
    ours: () => [
      heatedDepthMm({ faceC: -15, startC: 20, targetC: 0, seconds: 60 * 86_400, diffusivityM2S: 0.138e-6 }) /
        1000,
    ],
    tag: "read",
  },
  {
    figure: "freezing ground behind moving air: surface, K",
    source: "geankoplis",
    theirs: ["267.98"],
    ours: () => [behindGapC({ ...ground, depthMm: 0 }) + 273.15],
    tag: "read",
    note: "in a unit test",
  },
  {
    figure: "its frost, m",
    source: "geankoplis",
    theirs: ["0.0331"],
    ours: () => [frostM()],
    tag: "by hand",
  },
  {
    figure: "three published sands: diffusivity, m²/s; effusivity, W√s/(m² K)",
    source: ["flemings", "ghosh"],
    theirs: ["4.62e-7", "3.60e-7", "2.67e-7", "1273", "1017", "967"],
    ours: () => {
      const sands = [ghosh!, flemings!, third!];
      return [...sands.map(diffusivityM2S), ...sands.map(effusivity)];
    },
    tag: "by hand",
    note: "properties read or from memory, as the library says",
  },
  {
    figure: "iron slab of 100 mm in sand, h",
    source: "ghosh",
    theirs: ["0.671"],
    ours: () => [frozen(50).plateSeconds / 3600],
    tag: "read",
  },
  {
    figure: "iron sphere of 100 mm, h: the book rounds β up to 1.75",
    source: "ghosh",
    theirs: ["0.0545"],
    ours: () => [frozen(100 / 6).sphereSeconds / 3600],
    agree: { share: 0.003 },
    tag: "read",
    note: "β is 1.7485 by hand",
  },
  {
    figure: "Chvorinov: disc, s; constant from a cube, s/mm²; cylinder, s; steel plate, min",
    source: "groover",
    theirs: ["171.5", "2.232", "74.3", "2.49"],
    ours: () => [
      freezingSeconds({
        modulusMm: castingModulusMm({ volumeMm3: 3_926_991, surfaceMm2: 424_115 }),
        constantSMm2: 2,
      }),
      cube,
      freezingSeconds({
        modulusMm: castingModulusMm({ volumeMm3: 35_343, surfaceMm2: 6126 }),
        constantSMm2: cube,
      }),
      freezingSeconds({ modulusMm: 6000 / 760, constantSMm2: 2.4 }) / 60,
    ],
    tag: "from memory",
    note: "figures read on a solution sheet; attribution from memory",
  },
  {
    figure: "Chvorinov's constant of aluminium in exercises, s/mm²",
    source: "groover",
    theirs: ["2.0", "2.23"],
    ours: () => {
      const { low, high } = freezingConstants("aluminium");
      return [low, high];
    },
    agree: { between: "ours" },
    tag: "from memory",
  },
  {
    figure: "the same by theory on three sands, without and with 60 K of superheat",
    source: "flemings",
    theirs: ["1.68", "1.07", "1.86", "2.28", "1.45", "2.52"],
    ours: () =>
      [660, 720].flatMap((pouredC) =>
        [flemings!, ghosh!, third!].map((sand) => freezingConstantSMm2({ metal: melts, sand, pouredC })),
      ),
    agree: { within: 0.012 },
    tag: "by hand",
  },
  {
    figure: "depth heated in 171.5 s to 600, 500, 300 °C by 660 °C; to 500, 300 °C by 577 °C, mm",
    theirs: ["1.31", "3.54", "8.63", "1.93", "7.45"],
    ours: () => [depth(660, 600), depth(660, 500), depth(660, 300), depth(577, 500), depth(577, 300)],
    tag: "by hand",
  },
  {
    figure: "sand heated by a plate of aluminium, half thicknesses at 300 to 600 °C",
    theirs: ["1.48", "0.80", "0.43", "0.28", "0.153"],
    ours: () => plate(melts, [300, 400, 500, 550, 600]).map(({ perHalf }) => perHalf),
    agree: { share: 0.035 },
    tag: "apart",
    note: "explicit differences",
  },
  {
    figure: "the same by a plate of Al–Si, at 300 to 550 °C",
    theirs: ["1.47", "0.78", "0.35", "0.16"],
    ours: () => plate(alloy!, [300, 400, 500, 550]).map(({ perHalf }) => perHalf),
    agree: { share: 0.035 },
    tag: "apart",
  },
  {
    figure: "wear factor of iron, sand past 700 and 600 °C, kg/kg",
    source: "giesserei lexikon",
    theirs: ["0.25", "0.40"],
    ours: () =>
      plateHeatedDepths({
        metal: metalHeats["grey iron"][0]!,
        sand: flemings!,
        targetsC: [700, 600],
      }).map(({ sandKgPerKg }) => sandKgPerKg),
    agree: { between: "theirs" },
    tag: "from memory",
    note: "factor read; properties of iron from memory",
  },
  {
    figure: "the range that we take for iron on sodium bentonite",
    source: "giesserei lexikon",
    theirs: ["0.25", "0.40"],
    ours: () => {
      const { low, high } = burntSandPerKgMetal({ metal: "grey iron", clayKind: "sodium bentonite" });
      return [low, high];
    },
    tag: "read",
  },
  {
    figure: 'dose by the wear factor, "approx. 11 kg"',
    source: "giesserei lexikon",
    theirs: ["11"],
    ours: () => [wearFactorDoseKg({ wearFactor: 0.4, clayPercent: 8, batchKg: 1000, sandToMetal: 3 })],
    tag: "read",
  },
  {
    figure: "bond lost, °F: sodium, calcium bentonite",
    source: "vingas",
    theirs: ["1180", "600"],
    ours: () =>
      (["sodium bentonite", "calcium bentonite"] as const).map((kind) => bondLostC[kind] * 1.8 + 32),
    agree: { within: 1 },
    tag: "read",
    note: "held as 638 and 316 °C",
  },
  {
    figure: "water boiled off by hot sand, lb a minute",
    source: "cooling article",
    theirs: ["32.2"],
    ours: () => [
      waterBoiledOffKg({
        sandKg: 2000,
        fromC: (302 - 32) / 1.8,
        waterC: (70 - 32) / 1.8,
        sandKJKgK: 0.2 * 4.19,
        latentKJKg: (974 * 4.19) / 1.8,
      }),
    ],
    agree: { within: 0.07 },
    tag: "read",
    note: "cut short there: 36 000 / 1116 is 32.26",
  },
];
