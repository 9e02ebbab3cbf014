// What a drying method leaves in the clay, or drives out of it: one source for all readings of a method.

import type { Source } from "../quantity/source.ts";
import { methodBoundsPercent } from "../sand/drying-method.ts";
import { mixShares } from "../sand/mix-shares.ts";
import type { Batch, TestReading } from "./batch.ts";

export interface MethodDoubt {
  readonly terms: readonly { readonly scale: number; readonly source: Source }[];
  readonly missing: readonly string[];
  readonly assumed: readonly string[];
}

const none: MethodDoubt = { terms: [], missing: [], assumed: [] };
/** Where the recipe says nothing of the clay: the middle of the usual 5 to 11 % (our own). */
const usualClayPercent = 8;

/**
 * Moisture against an oven at 105 °C: half the width of what the method may read higher or lower by. The figure itself
 * is not moved: it keeps its method. Only moisture has such a doubt; for a microwave it is not known.
 */
export function methodDoubt({ test, method }: TestReading, batch: Batch): MethodDoubt {
  if (test !== "moisture") return none;
  if (method !== "oven" && method !== "pan") return { ...none, missing: ["method"] };
  const clay = clayOfDampPercent(batch);
  const bounds = methodBoundsPercent(method, clay ?? usualClayPercent);
  if (!bounds) return { ...none, missing: ["method"] };
  const source: Source = {
    id: `water bound in the clay, dried in the ${method}`,
    kind: "method",
    shape: { kind: "rectangular" },
    says: `water that the clay holds after drying in the ${method}`,
  };
  // An uncertain bias of known sign is spread over both sides: the figure stays as it was read.
  const scale = method === "pan" ? bounds.high : Math.max(Math.abs(bounds.low), Math.abs(bounds.high));
  return {
    terms: [{ scale, source }],
    missing: [],
    assumed: clay === undefined ? [`${usualClayPercent} % clay, for the water that it binds`] : [],
  };
}

function clayOfDampPercent({ recipe }: Batch): number | undefined {
  if (!recipe?.sandKg || !recipe.clayKg) return undefined;
  return mixShares({
    sandKg: recipe.sandKg.value,
    clayKg: recipe.clayKg.value,
    waterKg: recipe.waterKg?.value ?? 0,
    additiveKg: recipe.additiveKg?.value ?? 0,
    sandMoisturePercent: recipe.sandMoisturePercent?.value ?? 0,
    clayMoisturePercent: recipe.clayMoisturePercent?.value ?? 0,
  }).clayOfDampPercent;
}
