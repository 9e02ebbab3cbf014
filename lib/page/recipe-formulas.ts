// How the shares of a recipe are worked out, as formulas of a sheet over what went in.

import type { Recipe } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import type { RecipeFigures } from "../log/recipe-figures.ts";

export type RecipeShare = Exclude<keyof RecipeFigures, "missing" | "assumed">;

interface Ingredient {
  readonly name: string;
  readonly part: Exclude<keyof Recipe, "scale">;
  readonly unit: string;
}

/** In the names of the table of batches, where it has them. tests/page/shown-formulas.test.ts works each out as a sheet. */
export const ingredients: readonly Ingredient[] = [
  { name: "Sand", part: "sandKg", unit: "kg" },
  { name: "Clay", part: "clayKg", unit: "kg" },
  { name: "Water", part: "waterKg", unit: "kg" },
  { name: "Additive", part: "additiveKg", unit: "kg" },
  { name: "water in sand", part: "sandMoisturePercent", unit: "% of damp mass" },
  { name: "water in clay", part: "clayMoisturePercent", unit: "% of damp mass" },
];

/** formula and source of a column: with the terms that these batches have, as their recipes leave out the same. */
export function recipeFormula(
  share: RecipeShare,
  rows: readonly BatchFigures[],
): { readonly formula: string; readonly source: string } {
  const has = (part: Ingredient["part"]): boolean => rows.some(({ batch }) => batch.recipe?.[part]);
  const dry = (name: string, water: string, known: boolean): string =>
    known ? `${name} * (1 - ${water} / 100)` : name;
  const held = (name: string, water: string, known: boolean): string[] =>
    known ? [`${name} * ${water} / 100`] : [];
  const [damp, dampClay] = [has("sandMoisturePercent"), has("clayMoisturePercent")];
  const sand = dry("Sand", "water in sand", damp);
  const clay = has("clayKg") ? [dry("Clay", "water in clay", dampClay)] : [];
  const additive = has("additiveKg") ? ["Additive"] : [];
  const water = [
    ...(has("waterKg") ? ["Water"] : []),
    ...held("Sand", "water in sand", damp),
    ...held("Clay", "water in clay", dampClay && has("clayKg")),
  ];
  const sum = (terms: readonly string[]): string => (terms.length === 0 ? "0 kg" : terms.join(" + "));
  const allDry = [sand, ...clay, ...additive];
  const formulas: { readonly [share in RecipeShare]: string } = {
    clayOfSandPercent: `percentOf(${sum(clay)}, ${sand})`,
    clayOfDryMixPercent: `percentOf(${sum(clay)}, ${sum(allDry)})`,
    clayOfDampPercent: `percentOf(${sum(clay)}, ${sum([...allDry, ...water])})`,
    moistureOfDampPercent: `percentOf(${sum(water)}, ${sum([...allDry, ...water])})`,
    additiveOfDryMixPercent: `percentOf(${sum(additive)}, ${sum(allDry)})`,
    waterPerClay: `(${sum(water)}) / (${sum(clay)})`,
  };
  const formula = formulas[share];
  const used = ingredients.filter(({ name }) => new RegExp(`(?<![\\w ])${name}(?! in)`).test(formula));
  const told = used.map(({ name }) => name).join(", ");
  return { formula, source: `what went in: ${told}; nothing for what a recipe does not name` };
}
