// What went into the batches as shares, on every basis.

import { endsOf } from "../finding/ends.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import type { RecipeFigures } from "../log/recipe-figures.ts";
import { printFigure } from "../quantity/print.ts";
import type { Spread } from "../quantity/spread.ts";
import type { Block, TableCell, TableColumn } from "./blocks.ts";
import { recipeFormula } from "./recipe-formulas.ts";

const parts: readonly (readonly [Exclude<keyof RecipeFigures, "missing" | "assumed">, TableColumn])[] = [
  ["clayOfSandPercent", { head: "Clay", unit: "per 100 of sand", align: "number" }],
  ["clayOfDryMixPercent", { head: "Clay", unit: "% of dry mix", align: "number" }],
  ["clayOfDampPercent", { head: "Clay", unit: "% of damp mass", align: "number" }],
  ["additiveOfDryMixPercent", { head: "Additive", unit: "% of dry mix", align: "number" }],
  ["moistureOfDampPercent", { head: "Water as weighed", unit: "% of damp mass", align: "number" }],
  ["waterPerClay", { head: "Water per clay", unit: "by mass", align: "number" }],
];

/**
 * A fold with the shares of every batch that was weighed, with their ±; nothing where none was.
 * @example recipeShares(batchFigures(log).figures).length
 */
export function recipeShares(rows: readonly BatchFigures[]): readonly Block[] {
  const weighed = rows.filter(({ recipe }) => recipe);
  if (weighed.length === 0) return [];
  const used = parts.filter(([part]) => weighed.some(({ recipe }) => (recipe?.[part]?.value ?? 0) > 0));
  const assumed = [...new Set(weighed.flatMap(({ recipe }) => recipe!.assumed))];
  const unknown = weighed.some(({ recipe }) => recipe!.missing.length > 0);
  const notes = [
    ...(assumed.length > 0 ? [`Taken: ${assumed.join("; ")}.`] : []),
    ...(unknown ? ["Weighed on a scale that is not named: the ± of the weighings is not known."] : []),
  ];
  return [
    {
      kind: "fold",
      screenOnly: true,
      summary: "What went in, as shares of sand, dry mix and damp mass",
      blocks: [
        {
          kind: "table",
          name: "shares",
          caption:
            "Dry clay as added, and all water, that of sand and bagged clay with it; neither clay by wash nor live clay",
          columns: [
            { head: "Batch", align: "text" },
            ...used.map(([part, column]) => ({ ...column, ...recipeFormula(part, weighed) })),
          ],
          rows: weighed.map(({ batch, recipe }) => [
            batch.name,
            ...used.map(([part]) => cell(recipe?.[part], recipe!.missing.length > 0)),
          ]),
        },
        { kind: "list", items: notes },
      ],
    },
  ];
}

function cell(one: Spread | undefined, atLeast: boolean): TableCell {
  if (!one) return { text: "" };
  const { low, high } = endsOf(one);
  const { value } = one;
  if (low === high) return { text: String(Number(value.toPrecision(3))), number: value };
  return {
    text: printFigure({ value, low: Math.min(low, value), high: Math.max(high, value), min: 0, atLeast })
      .text,
    number: value,
  };
}
