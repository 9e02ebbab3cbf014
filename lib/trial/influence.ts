// How far the aim of a trial hangs on one batch: each is left out in turn, without fitting every curve anew.

import type { BatchFigures } from "../log/batch-figures.ts";
import { gridOver } from "./aim.ts";
import { aimedCurve, isAimedFor } from "./aimed-curves.ts";
import { bestPlace } from "./best-place.ts";
import { type CurveMean, leaveOneOut } from "./leave-one-out.ts";
import { curveThroughRows, type TrialProperty } from "./trial-property.ts";

export interface Influence {
  readonly batch: string;
  readonly shift: number;
}

interface Aimed {
  readonly curve: CurveMean;
  readonly low: number;
  readonly high: number;
}

/**
 * The batch without which the best place moves furthest, and how far; of two alike the first. Where a curve is a plain
 * parabola the one without a batch follows from its leverage and residual (leave-one-out.ts); the batches that come out
 * furthest, and all batches of other curves, are left out by fits of their own.
 */
export function influenceOf(
  found: readonly TrialProperty[],
  rows: readonly BatchFigures[],
  places: readonly number[],
  aim: number,
): Influence | undefined {
  const aimedFor = found.filter(isAimedFor);
  const quick = aimedFor.map(({ curve }) => leaveOneOut(curve, places));
  const shifts = rows.map((_, i) => {
    const curves = quick.map((without) => without?.(i));
    const known = curves.every((curve) => curve !== undefined);
    const aimed = known
      ? aimedFor.map(({ wanted }, k): Aimed => ({ ...wanted!, curve: curves[k]! }))
      : refitted(aimedFor, rows, places, i);
    return { i, known, shift: shiftOf(aimed, aim) };
  });
  shifts.sort((a, b) => Math.abs(b.shift) - Math.abs(a.shift));
  let furthest: (typeof shifts)[number] | undefined;
  for (const one of shifts) {
    // Places come from a grid: what rounding may do to a shift is nothing or a step of it, which the fit tells.
    if (furthest && Math.abs(one.shift) <= Math.abs(furthest.shift)) break;
    const exact = one.known ? shiftOf(refitted(aimedFor, rows, places, one.i), aim) : one.shift;
    if (!furthest || Math.abs(exact) > Math.abs(furthest.shift)) furthest = { ...one, shift: exact };
  }
  return furthest && { batch: rows[furthest.i]!.batch.name, shift: furthest.shift };
}

function refitted(
  aimedFor: readonly TrialProperty[],
  rows: readonly BatchFigures[],
  places: readonly number[],
  i: number,
): readonly Aimed[] {
  const without = places.map((x, k) => (k === i ? Number.NaN : x));
  return aimedFor.flatMap((property) =>
    aimedCurve({ ...property, curve: curveThroughRows(property, rows, without) }).map(
      ({ curve, low, high }) => ({
        curve: { from: curve.from, to: curve.to, fit: curve.fit!, mean: (x: number) => curve.at(x)!.mean },
        low,
        high,
      }),
    ),
  );
}

/** None where no curve is left. */
function shiftOf(curves: readonly Aimed[], aim: number): number {
  if (curves.length === 0) return 0;
  const grid = gridOver(
    Math.max(...curves.map(({ curve }) => curve.from)),
    Math.min(...curves.map(({ curve }) => curve.to)),
  );
  return bestPlace(curves, grid, (k, place) => curves[k]!.curve.mean(grid[place]!)) - aim;
}
