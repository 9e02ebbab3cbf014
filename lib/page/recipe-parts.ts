// The parts of a recipe in the order in which they go in, in the founder's units.

import type { MassWords } from "../finding/recipe-findings.ts";
import type { RecipePlan } from "../finding/recipe-plan.ts";
import type { LoggedRecipe } from "../log/heap-record.ts";
import type { Log, UnitSystem } from "../log/types.ts";
import { printNumber } from "../quantity/print.ts";
import { readQuantity } from "../quantity/read-quantity.ts";
import { inShownUnit, shownUnits } from "./shown-units.ts";
import { massFigureText, massText } from "./trial-print.ts";

export interface RecipePart {
  readonly name: string;
  /** Of the whole, kg; per load it is that divided by the loads. */
  readonly kg: number;
  readonly note: string;
}

/**
 * As the log asks for; else as the recipe's own amounts were typed; else as its batches were.
 * @example recipeUnits(log)
 */
export function recipeUnits(log: Log): UnitSystem {
  const { units, recipe } = log;
  if (units) return units;
  const typed = amountsOf(recipe).flatMap((text) => readQuantity(text).value?.unit?.text ?? []);
  if (typed.length === 0) return shownUnits(log).recipe;
  return typed.filter((unit) => unit === "lb" || unit === "oz").length * 2 > typed.length ? "US" : "metric";
}

function amountsOf(recipe: LoggedRecipe | undefined): string[] {
  const { makeKg, sandKg, mullerPanKg } = recipe ?? {};
  return [makeKg, sandKg, mullerPanKg].flatMap((one) => one?.text ?? []);
}

/** As a scale of that size shows it: "107 kg" at most to a tenth from 20 on, below as massText. */
export function weightText(kg: number, system: UnitSystem): string {
  const { value, unit } = inShownUnit(kg, "kg", system);
  const text = value < 20 ? massText(kg, system) : `${printNumber(value, 1)} ${unit}`;
  return text.replace(/\.0+(?= )/, "");
}

export const massWords = (system: UnitSystem): MassWords => ({
  mass: (kg) => weightText(kg, system),
  figure: (kg, atLeast) => massFigureText(kg, system, atLeast),
});

/** Sand, first water, clay, additives, trim: damp first, so that the clay makes less dust. */
export function recipeParts({ masses, additives, split, waterKg, recipe }: RecipePlan): RecipePart[] {
  const held = (percent: number | undefined) =>
    percent === undefined ? "taken as dry" : `as it lies, with ${percent} % of water in it`;
  const water: RecipePart[] =
    waterKg.value > 0 ? [{ name: "first water", kg: split.firstKg, note: "all at once, over the sand" }] : [];
  const trim: RecipePart[] =
    waterKg.value > 0
      ? [{ name: "trim water", kg: split.trimKg, note: "kept back: a little at a time, by test" }]
      : [];
  return [
    { name: "sand", kg: masses.sandKg, note: held(recipe.sandMoisturePercent?.value) },
    ...water,
    {
      name: "clay",
      kg: masses.clayKg,
      note: recipe.clayMoisturePercent
        ? `from the bag, with ${recipe.clayMoisturePercent.value} % of water in it`
        : "from the bag, taken as dry",
    },
    ...additives.map((name, i) => ({ name, kg: masses.additivesKg[i]!, note: "taken as dry" })),
    ...trim,
  ];
}
