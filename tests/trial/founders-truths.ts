// What the sands of simulated founders truly do over moisture: parabolas, and shapes that no parabola follows.

import type { Seeded } from "../seeded.ts";

export interface Truth {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly peaked: boolean;
  readonly batchSd: number;
  at(x: number): number;
}

/**
 * parabola: every property is one, so that the fitted curve can be right. lopsided: strength falls three times as fast
 * on the dry side. plateau: strength is level, then falls. tent: permeability rises and falls along two
 * straights. With the last three, compactability levels off as it rises.
 */
export type TruthKind = "parabola" | "lopsided" | "plateau" | "tent";
export const truthKinds: readonly TruthKind[] = ["parabola", "lopsided", "plateau", "tent"];

type Shape = (x: number) => number;
const unequal =
  (top: number, at: number, dry: number, wet: number): Shape =>
  (x) =>
    top - (x < at ? dry : wet) * (x - at) ** 2;

/**
 * Strength that peaks, permeability that peaks at about 1.5 × that water, compactability that rises. The aims know
 * nothing of the sand: they come from usual ranges, and some sands cannot meet them. All figures invented.
 */
export function truthsFor(random: Seeded, kind: TruthKind = "parabola"): readonly Truth[] {
  const peak = random.uniform(2.9, 3.6);
  const top = random.uniform(40, 95);
  const fall = random.uniform(6, 16);
  const airTop = random.uniform(30, 95);
  const airFall = random.uniform(3, 9);
  const slope = random.uniform(9, 13);
  const bend = random.uniform(-1.5, 0.5);
  const middle = random.uniform(44, 48);
  const strength: { readonly [kind in TruthKind]: Shape } = {
    parabola: unequal(top, peak, fall, fall),
    lopsided: unequal(top, peak, 1.8 * fall, 0.6 * fall),
    plateau: unequal(top, peak + 0.3, 0, 2 * fall),
    tent: unequal(top, peak, fall, fall),
  };
  const levelling = 2.2 + bend / 2;
  return [
    {
      name: "compactability",
      low: 42,
      high: 50,
      peaked: false,
      batchSd: random.uniform(0.8, 2),
      at:
        kind === "parabola"
          ? (x) => middle + slope * (x - 3.6) + bend * (x - 3.6) ** 2
          : (x) => middle + slope * levelling * (1 - Math.exp((3.6 - x) / levelling)),
    },
    {
      name: "green compression",
      low: random.uniform(40, 60),
      high: 110,
      peaked: true,
      batchSd: random.uniform(1.5, 4),
      at: strength[kind],
    },
    {
      name: "permeability",
      low: random.uniform(20, 45),
      high: 120,
      peaked: true,
      batchSd: random.uniform(2, 5),
      at:
        kind === "tent"
          ? tent(airTop, peak + 0.6, 3 * airFall)
          : unequal(airTop, 1.5 * peak, airFall, airFall),
    },
  ];
}

/** Two straights with a corner rounded over a tenth of a point of moisture. */
const tent =
  (top: number, at: number, slope: number): Shape =>
  (x) =>
    top - slope * (Math.hypot(x - at, 0.1) - 0.1);
