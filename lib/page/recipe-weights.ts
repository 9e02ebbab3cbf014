// What to weigh: for the whole heap, for one load, and in buckets.

import { massOf } from "../finding/recipe-findings.ts";
import type { RecipePlan } from "../finding/recipe-plan.ts";
import type { UnitSystem } from "../log/types.ts";
import { inBuckets } from "../sand/recipe-loads.ts";
import type { Block, TableBlock, TableCell } from "./blocks.ts";
import { recipeParts, weightText } from "./recipe-parts.ts";

/**
 * The table of weights, and the buckets where the log weighs some.
 * @example
 * const plan = recipePlan(log);
 * typeof plan === "string" ? [] : recipeWeights(plan, recipeUnits(log))
 */
export function recipeWeights(plan: RecipePlan, system: UnitSystem): readonly Block[] {
  const { loads, masses, waterKg } = plan;
  const cell = (kg: number): TableCell => ({ text: weightText(kg, system), number: kg });
  const perLoad = loads > 1;
  const parts = recipeParts(plan);
  const poured = Math.max(0, waterKg.value);
  const all = masses.sandKg + masses.clayKg + masses.additivesKg.reduce((sum, kg) => sum + kg, 0) + poured;
  const water =
    system === "US"
      ? "Water is weighed: ounces here are of weight, not fluid ounces."
      : "A gram of water is a millilitre.";
  const table: TableBlock = {
    kind: "table",
    name: "weights",
    caption: `What to weigh, in this order: the whole heap${perLoad ? `, and one of ${loads} loads` : ""}${plan.forHundred ? "; for 100 kg of damp heap, since the log does not say how much" : ""}`,
    columns: [
      { head: "Part", align: "text" },
      { head: "Whole", dataUnit: "kg", align: "number" },
      ...(perLoad
        ? [{ head: "Load", dataUnit: "kg", align: "number", formula: `Whole / ${loads}` } as const]
        : []),
      { head: "How", align: "text" },
    ],
    rows: parts.map(({ name, kg, note }) => [name, cell(kg), ...(perLoad ? [cell(kg / loads)] : []), note]),
    foot: [["all together", cell(all), ...(perLoad ? [cell(all / loads)] : []), "damp"]],
  };
  return [
    table,
    {
      kind: "prose",
      text: `Weights are wants, and so carry no ±; the ± stands at the water and at what the mix comes to. ${water}${perLoad ? ` Equal loads are weighed alike and mull alike; the fewest that the pan takes are ${loads}.` : ""}`,
    },
    ...bucketTable(plan, system),
  ];
}

function bucketTable(plan: RecipePlan, system: UnitSystem): Block[] {
  const { recipe, masses, additives, loads } = plan;
  const rows = recipe.buckets.flatMap(({ of, kg }) => {
    const massKg = massOf(of, masses, additives);
    if (massKg === undefined) return [];
    const words = (part: number): TableCell => {
      const { full, restKg, buckets } = inBuckets({ massKg: part, bucketKg: kg.value });
      const rest = restKg < 0.001 * part ? "" : `${full > 0 ? " and " : ""}${weightText(restKg, system)}`;
      const whole = full === 0 ? "" : `${full} full`;
      return { text: `${whole}${rest}`, number: Number(buckets.toPrecision(6)) };
    };
    return [[of, kg.text, words(massKg), ...(loads > 1 ? [words(massKg / loads)] : [])]];
  });
  if (rows.length === 0) return [];
  return [
    {
      kind: "table",
      name: "buckets",
      caption: "The same in weighed buckets, the rest of the last by weight",
      columns: [
        { head: "Part", align: "text" },
        { head: "One bucket holds", align: "text" },
        { head: "Whole", dataUnit: "buckets", align: "number" },
        ...(loads > 1 ? [{ head: "Load", dataUnit: "buckets", align: "number" } as const] : []),
      ],
      rows,
    },
  ];
}
