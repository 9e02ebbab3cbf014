// The shares of a batch by what went in, each with the doubt of the weighings.

import { lift } from "../quantity/combine.ts";
import type { Source } from "../quantity/source.ts";
import type { Spread } from "../quantity/spread.ts";
import { linear, spreadOfQuantity } from "../quantity/spread-of.ts";
import { type MixShares, mixSharesUnchecked } from "../sand/mix-shares.ts";
import type { Batch, Recipe } from "./batch.ts";

export interface RecipeFigures {
  /** Dry clay added, % of the dry mix. Clay added, by wash and live are three things. */
  readonly clayOfDryMixPercent: Spread;
  readonly clayOfSandPercent: Spread;
  readonly clayOfDampPercent: Spread;
  readonly moistureOfDampPercent: Spread;
  /** Undefined without additive. */
  readonly additiveOfDryMixPercent?: Spread;
  /** Undefined without clay. */
  readonly waterPerClay?: Spread;
  readonly missing: readonly string[];
  readonly assumed: readonly string[];
}

type Part = Exclude<keyof Recipe, "scale">;
const parts: readonly Part[] = [
  "sandKg",
  "clayKg",
  "waterKg",
  "additiveKg",
  "sandMoisturePercent",
  "clayMoisturePercent",
];

/**
 * mixShares of a batch's recipe. A ± in the log goes before the scale that the recipe names: two roundings to its step
 * (reading), and its bias, one source for all its weighings (rig). Neither: "weighing" is missing.
 * What is not named did not go in; a sand or clay whose water is not said is taken as dry, which `assumed` says.
 * Undefined where no recipe, or no sand in it, is given.
 */
export function recipeFigures(batch: Batch): RecipeFigures | undefined {
  const { recipe } = batch;
  if (!recipe?.sandKg) return undefined;
  // A log that was read never changes, and its recipes are asked for at every edit.
  if (!Object.isFrozen(recipe)) return workedOut(batch, recipe);
  const before = known.get(recipe);
  if (before?.id === batch.id) return before.figures;
  const figures = workedOut(batch, recipe);
  known.set(recipe, { id: batch.id, figures });
  return figures;
}

const known = new WeakMap<Recipe, { readonly id: string; readonly figures: RecipeFigures }>();

/** A batch that only moved in its file has the shares that it had. */
export function carryRecipe(from: Batch, to: Batch): void {
  const before = from.recipe && known.get(from.recipe);
  if (before && to.recipe) known.set(to.recipe, before);
}

function workedOut(batch: Batch, recipe: Recipe): RecipeFigures {
  const missing = new Set<string>();
  const inputs = parts.map((part) => partSpread(part, recipe, batch, missing));
  const shares = (share: keyof MixShares): Spread =>
    lift((values) => sharesAt(values)[share] ?? 0, inputs, `recipe, ${share}`);
  return {
    clayOfDryMixPercent: shares("clayOfDryMixPercent"),
    clayOfSandPercent: shares("clayOfSandPercent"),
    clayOfDampPercent: shares("clayOfDampPercent"),
    moistureOfDampPercent: shares("moistureOfDampPercent"),
    ...(recipe.additiveKg && recipe.additiveKg.value > 0
      ? { additiveOfDryMixPercent: shares("additiveOfDryMixPercent") }
      : {}),
    ...(recipe.clayKg && recipe.clayKg.value > 0 ? { waterPerClay: shares("waterPerClay") } : {}),
    missing: [...missing],
    assumed: [
      ...(recipe.sandMoisturePercent ? [] : ["the sand went in dry"]),
      ...(recipe.clayKg && !recipe.clayMoisturePercent ? ["the bagged clay held no water"] : []),
    ],
  };
}

/** The shares of a recipe without their doubt, for checks of many batches. */
export function recipeMiddle({ recipe }: Pick<Batch, "recipe">): MixShares | undefined {
  if (!recipe?.sandKg) return undefined;
  return sharesAt(parts.map((part) => recipe[part]?.value ?? 0));
}

/** A draw below zero, where a ± is as large as the mass, counts as none. Called for every draw: no closures in it. */
function sharesAt(values: ArrayLike<number>): MixShares {
  return mixSharesUnchecked({
    sandKg: Math.max(1e-9, values[0]!),
    clayKg: Math.max(0, values[1]!),
    waterKg: Math.max(0, values[2]!),
    additiveKg: Math.max(0, values[3]!),
    sandMoisturePercent: Math.min(99, Math.max(0, values[4]!)),
    clayMoisturePercent: Math.min(99, Math.max(0, values[5]!)),
  });
}

function partSpread(
  part: Part,
  { [part]: measured, scale }: Recipe,
  batch: Batch,
  missing: Set<string>,
): Spread {
  if (!measured) return linear(0, []);
  const { value, plusMinus } = measured;
  const words = part.replace(/Kg$|Percent$/, "").replace("Moisture", " moisture");
  const id = `${words} of the recipe, ${batch.id}`;
  const says = `the ${words} that went in`;
  if (plusMinus) return spreadOfQuantity({ value, plusMinus }, { source: id, says });
  if (part.endsWith("Percent")) {
    // Half a point: our own, for a moisture that was looked up or guessed.
    const source: Source = { id, kind: "reading", shape: { kind: "rectangular" }, says };
    return linear(value, [{ scale: Math.min(0.5, value), source }]);
  }
  if (!scale) {
    missing.add("weighing");
    return linear(value, []);
  }
  const reading: Source = { id, kind: "reading", shape: { kind: "triangular" }, says };
  const bias: Source = {
    id: `bias of ${scale.name}`,
    kind: "rig",
    shape: { kind: "rectangular" },
    says: `the bias of the ${scale.name}`,
  };
  return linear(value, [
    { scale: scale.stepG / 1000, source: reading },
    { scale: (scale.withinG ?? 0) / 1000, source: bias },
  ]);
}
