// Compactability against the water: in sand of one recipe it rises.

import { ranks } from "../numbers/ranks.ts";
import { sum } from "../numbers/sum.ts";
import { printNumber } from "../quantity/print.ts";
import type { Batch } from "./batch.ts";
import { compactabilityUnmoved } from "./complaints-agreement.ts";
import type { Report } from "./node.ts";

export interface WaterPoint {
  readonly batch: Batch;
  readonly moisture: number;
  readonly compactability: number;
}

/** Fewer batches, or a narrower range of moisture, tell nothing (our own). */
const leastBatches = 5;
const leastRange = 1;
/** Below this rank correlation water hardly shows (our own; five batches by chance reach ±0.7 in one case of ten). */
const leastRho = 0.3;
/** Clay per sand may differ by this factor within one recipe. */
const sameClay = 1.25;

export function checkWaterResponse(
  points: readonly WaterPoint[],
  reportAbout: (name: string) => Report,
): void {
  if (points.length < leastBatches || !oneRecipe(points)) return;
  const moistures = points.map(({ moisture }) => moisture);
  const [low, high] = [Math.min(...moistures), Math.max(...moistures)];
  if (high - low < leastRange) return;
  const rho = rankCorrelation(
    moistures,
    points.map(({ compactability }) => compactability),
  );
  if (rho >= leastRho) return;
  const { batch } = points[0]!;
  const place = batch.readings.find(({ test }) => test === "compactability")!.place;
  const shown = Number.isNaN(rho) ? "0, all are alike" : printNumber(rho, 2);
  reportAbout(batch.name)(
    compactabilityUnmoved(String(points.length), printNumber(low, 1), printNumber(high, 1), shown),
    place,
  );
}

/** ρ alone: its chance, which takes every order of nine, is not asked for. */
function rankCorrelation(x: readonly number[], y: readonly number[]): number {
  const middle = (x.length + 1) / 2;
  const [a, b] = [ranks(x), ranks(y)].map((list) => list.map((rank) => rank - middle)) as [
    number[],
    number[],
  ];
  const product = sum(a.map((v, i) => v * b[i]!));
  return product / Math.sqrt(sum(a.map((v) => v * v)) * sum(b.map((v) => v * v)));
}

/** False where clay was varied: then water alone does not decide. */
function oneRecipe(points: readonly WaterPoint[]): boolean {
  const shares = points.flatMap(({ batch: { recipe } }) =>
    recipe?.sandKg && recipe.clayKg ? [recipe.clayKg.value / recipe.sandKg.value] : [],
  );
  return shares.length === 0 || Math.max(...shares) <= sameClay * Math.min(...shares);
}
