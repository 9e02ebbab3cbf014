// What the recipe comes to on every basis, with the ± of the waters that sand and clay hold.

import { shareText } from "../finding/recipe-findings.ts";
import { type ComesTo, comesToShares, type RecipePlan } from "../finding/recipe-plan.ts";
import type { TableBlock } from "./blocks.ts";

const rows: { readonly [share in ComesTo]: readonly [what: string, unit: string] } = {
  clayOfSandPercent: ["dry clay", "per 100 of dry sand"],
  clayOfDryMixPercent: ["dry clay", "% of dry mix"],
  clayOfDampPercent: ["dry clay", "% of damp mass"],
  moistureOfDampPercent: ["all water", "% of damp mass"],
  waterPerClay: ["all water", "to one of dry clay, by mass"],
};

/**
 * What a recipe comes to as shares, on each basis.
 * @example
 * const plan = recipePlan(log);
 * typeof plan === "string" ? undefined : recipeComesTo(plan).caption
 */
export function recipeComesTo({ comesTo, taken }: RecipePlan): TableBlock {
  return {
    kind: "table",
    name: "comes-to",
    caption: "What the mix comes to; the ± is that of the water in sand and clay",
    columns: [
      { head: "Part", align: "text" },
      { head: "Share", align: "number" },
      { head: "Of what", align: "text" },
    ],
    rows: comesToShares.map((share) => {
      const [what, unit] = rows[share];
      const figure = comesTo[share];
      return [what, { text: shareText(figure, "", taken.length > 0), number: figure.value }, unit];
    }),
  };
}
