// A recipe's shares, on whatever basis, turned into what to weigh.

import { invariant } from "../issue.ts";
import { requireAboveZero, requireBelow100, requireFromZero } from "./require.ts";

/** Of what the shares of a recipe are: of 100 dry sand, of the dry mix, of the whole damp mass. */
export const recipeBases = Object.freeze(["sand", "dry mix", "damp mass"] as const);
export type RecipeBasis = (typeof recipeBases)[number];

export interface RecipeShares {
  readonly basis: RecipeBasis;
  /** Dry clay, % of the basis. */
  readonly clayPercent: number;
  /** Dry additives, % of the basis each. */
  readonly additivePercents?: readonly number[];
  /** All water, % of damp mass whatever the basis. */
  readonly moistureOfDampPercent: number;
  /** Water held already, % of their own damp mass; 0 unless given. */
  readonly sandMoisturePercent?: number;
  readonly clayMoisturePercent?: number;
}

export interface RecipeMasses {
  /** As weighed, with the water that they hold. */
  readonly sandKg: number;
  readonly clayKg: number;
  readonly additivesKg: readonly number[];
  /** To pour; below zero where sand and clay bring more than is wanted: so much must dry off. */
  readonly waterKg: number;
  /** Water that sand and clay bring, kg. */
  readonly broughtKg: number;
  readonly allWaterKg: number;
  readonly drySandKg: number;
  readonly dryClayKg: number;
  readonly dryKg: number;
  /** The whole heap. */
  readonly dampKg: number;
}

/**
 * Masses of a recipe, kg. On 100 of sand: S = 1, B = c, A = a; of dry mix: S = 1 − c − a; of damp mass: S = 1 − w − c − a
 * (all as fractions). Water W = w D/(1 − w), D = S + B + A. All is scaled to the damp heap D + W, or to the sand as weighed
 * S/(1 − m). As weighed: S/(1 − m) and B/(1 − k), m and k the waters that sand and bagged clay hold; water to pour is W less those.
 *
 * Shares: 0 or more, below 100, and sand must be left over. makeKg (damp, all together) or sandKg (as weighed): one of
 * the two, > 0. Else RangeError; both or neither is misuse.
 * Source: mass balance; bagged bentonite holds up to 10 to 15 % of water (supplier sheets).
 * @example
 * recipeMassesKg({ basis: "dry mix", clayPercent: 8, moistureOfDampPercent: 3.5, clayMoisturePercent: 10 },
 *   { makeKg: 100 }) // { sandKg: 88.78, clayKg: 8.578, waterKg: 2.642 }
 */
export function recipeMassesKg(
  shares: RecipeShares,
  amount: { readonly makeKg?: number; readonly sandKg?: number },
): RecipeMasses {
  const { clayPercent, additivePercents = [], moistureOfDampPercent } = shares;
  const { sandMoisturePercent = 0, clayMoisturePercent = 0 } = shares;
  const percents = { clayPercent, moistureOfDampPercent, sandMoisturePercent, clayMoisturePercent };
  requireFromZero("recipeMassesKg", percents);
  for (const additivePercent of additivePercents) requireFromZero("recipeMassesKg", { additivePercent });
  requireBelow100("recipeMassesKg", { moistureOfDampPercent, sandMoisturePercent, clayMoisturePercent });
  const { makeKg, sandKg } = amount;
  invariant(
    (makeKg === undefined) !== (sandKg === undefined),
    "recipeMassesKg takes makeKg or sandKg, one of them",
  );
  requireAboveZero("recipeMassesKg", { amountKg: (makeKg ?? sandKg)! });
  requireAboveZero("recipeMassesKg", { shareOfSandPercent: sandPercent(shares) });
  return recipeMassesUnchecked(shares, amount);
}

/** Sand's own share of the basis, %: what clay, additives and, of damp mass, water leave; 100 where sand is the basis. */
function sandPercent({
  basis,
  clayPercent,
  additivePercents = [],
  moistureOfDampPercent,
}: RecipeShares): number {
  if (basis === "sand") return 100;
  let rest = 100 - clayPercent - (basis === "damp mass" ? moistureOfDampPercent : 0);
  for (const percent of additivePercents) rest -= percent;
  return rest;
}

/** recipeMassesKg without a look at its arguments: for draws about a recipe that was checked. */
function recipeMassesUnchecked(
  shares: RecipeShares,
  { makeKg, sandKg }: { readonly makeKg?: number; readonly sandKg?: number },
): RecipeMasses {
  const { clayPercent, additivePercents = [], moistureOfDampPercent } = shares;
  const { sandMoisturePercent = 0, clayMoisturePercent = 0 } = shares;
  const sand = sandPercent(shares);
  let dry = sand + clayPercent;
  for (const percent of additivePercents) dry += percent;
  const water = (dry * moistureOfDampPercent) / (100 - moistureOfDampPercent);
  const scale =
    makeKg === undefined ? (sandKg! * (1 - sandMoisturePercent / 100)) / sand : makeKg / (dry + water);
  const [drySandKg, dryClayKg] = [scale * sand, scale * clayPercent];
  const weighedSandKg = drySandKg / (1 - sandMoisturePercent / 100);
  const clayKg = dryClayKg / (1 - clayMoisturePercent / 100);
  const broughtKg = weighedSandKg - drySandKg + (clayKg - dryClayKg);
  return {
    sandKg: weighedSandKg,
    clayKg,
    additivesKg: additivePercents.map((percent) => scale * percent),
    waterKg: scale * water - broughtKg,
    broughtKg,
    allWaterKg: scale * water,
    drySandKg,
    dryClayKg,
    dryKg: scale * dry,
    dampKg: scale * (dry + water),
  };
}
