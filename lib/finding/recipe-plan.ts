// The log's recipe worked out: what to weigh, the water with its ±, what the mix comes to.

import type { Measured } from "../log/figure-types.ts";
import type { LoggedRecipe } from "../log/heap-record.ts";
import type { Log } from "../log/types.ts";
import { combine, lift } from "../quantity/combine.ts";
import { type Figure, figure } from "../quantity/figure.ts";
import type { Spread } from "../quantity/spread.ts";
import { linear, spreadOfQuantity } from "../quantity/spread-of.ts";
import { type MixShares, mixSharesUnchecked } from "../sand/mix-shares.ts";
import { recipeLoads } from "../sand/recipe-loads.ts";
import { type RecipeMasses, recipeMassesKg } from "../sand/recipe-masses.ts";
import { type WaterSplit, waterSplit } from "../sand/recipe-water.ts";

export interface RecipePlan {
  readonly recipe: LoggedRecipe;
  /** What is wanted, weighed with sand and clay at the moistures that are written. */
  readonly masses: RecipeMasses;
  /** Names of the additives, in the order of masses.additivesKg. */
  readonly additives: readonly string[];
  /** Where the log does not say how much: all is for 100 kg of damp heap. */
  readonly forHundred: boolean;
  /** Water to pour, kg; below zero: so much too much is there already. */
  readonly waterKg: Figure;
  readonly split: WaterSplit;
  readonly loads: number;
  /** Damp, kg. */
  readonly loadKg: number;
  /** What the mix comes to when it is weighed so, the middle water poured. */
  readonly comesTo: { readonly [share in ComesTo]: Figure };
  /** What was taken because the log does not say it: "the sand is dry". */
  readonly taken: readonly string[];
}

export const comesToShares = [
  "clayOfSandPercent",
  "clayOfDryMixPercent",
  "clayOfDampPercent",
  "moistureOfDampPercent",
  "waterPerClay",
] as const;
export type ComesTo = (typeof comesToShares)[number];

/** Why nothing can be worked out, as the name of what is missing in the log. */
export type RecipeLack = "recipe" | "basis" | "clay" | "moisture" | "sand left over";

/**
 * The recipe of a log, worked out: recipeMassesKg for what to weigh, then the water and the shares again over the ± of
 * the waters that sand and clay hold (as written, else half a point, our own; where none is written they are taken as
 * dry, which `taken` says). The masses to weigh are wants and carry no ±. Gives what is missing where something is.
 * @example recipePlan(log)
 */
export function recipePlan({ recipe }: Pick<Log, "recipe">): RecipePlan | RecipeLack {
  if (!recipe) return "recipe";
  const { basis, clayPercent, moisturePercent, additives } = recipe;
  if (!clayPercent) return basis ? "clay" : "basis";
  if (!basis) return "basis";
  if (!moisturePercent) return "moisture";
  const percent = (measured: Measured | undefined) => measured?.value ?? 0;
  const shares = {
    basis,
    clayPercent: clayPercent.value,
    additivePercents: additives.map((one) => one.percent.value),
    moistureOfDampPercent: moisturePercent.value,
    sandMoisturePercent: percent(recipe.sandMoisturePercent),
    clayMoisturePercent: percent(recipe.clayMoisturePercent),
  };
  const taken = shares.additivePercents.reduce((sum, share) => sum + share, shares.clayPercent);
  const water = basis === "damp mass" ? shares.moistureOfDampPercent : 0;
  if (basis !== "sand" && taken + water >= 99) return "sand left over";
  const { makeKg, sandKg } = recipe;
  const amount = makeKg ? { makeKg: makeKg.value } : sandKg ? { sandKg: sandKg.value } : { makeKg: 100 };
  const masses = recipeMassesKg(shares, amount);
  const sand = moistureSpread(recipe.sandMoisturePercent, "sand");
  const clay = moistureSpread(recipe.clayMoisturePercent, "bagged clay");
  const wanted = moistureSpread(moisturePercent, "wanted", 0);
  const additiveKg = masses.additivesKg.reduce((sum, kg) => sum + kg, 0);
  const waterKg = combine(
    (at) => {
      const [drySand, dryClay] = [masses.sandKg * (1 - at[0]! / 100), masses.clayKg * (1 - at[1]! / 100)];
      const brought = masses.sandKg - drySand + (masses.clayKg - dryClay);
      return ((drySand + dryClay + additiveKg) * at[2]!) / (100 - at[2]!) - brought;
    },
    [sand, clay, wanted],
  );
  const mix = (pick: (shares: MixShares) => number): Figure =>
    figure(lift((at) => pick(mixAt(masses, additiveKg, at[0]!, at[1]!)), [sand, clay]));
  // Where too much water is there already, the pan has to take that as well.
  const heapKg = masses.dampKg + Math.max(0, -masses.waterKg);
  const { loads, loadKg } = recipe.mullerPanKg
    ? recipeLoads({ heapKg, panKg: recipe.mullerPanKg.value })
    : { loads: 1, loadKg: heapKg };
  return {
    recipe,
    masses,
    additives: additives.map(({ name }) => name),
    forHundred: !makeKg && !sandKg,
    waterKg,
    split: waterSplit(waterKg),
    loads,
    loadKg,
    comesTo: {
      clayOfSandPercent: mix((one) => one.clayOfSandPercent),
      clayOfDryMixPercent: mix((one) => one.clayOfDryMixPercent),
      clayOfDampPercent: mix((one) => one.clayOfDampPercent),
      moistureOfDampPercent: mix((one) => one.moistureOfDampPercent),
      waterPerClay: mix((one) => one.waterPerClay ?? 0),
    },
    taken: [
      ...(recipe.sandMoisturePercent ? [] : ["the sand is dry"]),
      ...(recipe.clayMoisturePercent ? [] : ["the bagged clay holds no water"]),
    ],
  };
}

function mixAt(
  masses: RecipeMasses,
  additiveKg: number,
  sandPercent: number,
  clayPercent: number,
): MixShares {
  return mixSharesUnchecked({
    sandKg: masses.sandKg,
    clayKg: masses.clayKg,
    waterKg: Math.max(0, masses.waterKg),
    additiveKg,
    sandMoisturePercent: sandPercent,
    clayMoisturePercent: clayPercent,
  });
}

/** Points that a moisture without a ± may be off by: our own, for one that was looked up or guessed. */
const guessedPoints = 0.5;

/** Held to 0 to 99 % in every draw. */
function moistureSpread(measured: Measured | undefined, of: string, points = guessedPoints): Spread {
  if (!measured) return linear(0, []);
  const { value, plusMinus } = measured;
  const says = `the moisture of the ${of}`;
  const source = `moisture of the ${of}, recipe`;
  const spread = plusMinus
    ? spreadOfQuantity({ value, plusMinus }, { source, says })
    : linear(value, [
        {
          scale: Math.min(points, value),
          source: { id: source, kind: "reading", shape: { kind: "rectangular" }, says },
        },
      ]);
  return lift((at) => Math.min(99, Math.max(0, at[0]!)), [spread]);
}
