// Where the batches of a trial stand on its axis.

import type { TrialAxis } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import { figure } from "../quantity/figure.ts";
import type { Spread } from "../quantity/spread.ts";

export interface AxisFigure {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What a log varies where it does not say: moisture where two batches or more have it, else compactability. */
export function axisOf(figures: readonly BatchFigures[]): TrialAxis {
  const wet = figures.filter(placer(figures, "moisture")).length;
  return wet >= 2 ? "moisture" : "compactability";
}

/**
 * Where a batch stands. Moisture is one kind for the whole axis: as tested where two batches have that, else as weighed
 * in; clay is as weighed in, % of dry mix.
 */
export function placer(
  figures: readonly BatchFigures[],
  axis: TrialAxis,
): (row: BatchFigures) => Spread | undefined {
  if (axis === "clay") return ({ recipe }) => recipe?.clayOfDryMixPercent;
  const tested = figures.filter(({ tests }) => tests[axis]).length;
  if (axis === "compactability" || tested >= 2) return ({ tests }) => tests[axis]?.spread;
  return ({ recipe }) => recipe?.moistureOfDampPercent;
}

export function axisFigure(place: Spread): AxisFigure {
  const { value, low, high } = figure(place);
  return { value, low, high };
}

/** How closely a place on the axis can be hit: the middle half-width of the figures there. */
export function hitOf(x: readonly AxisFigure[]): number {
  const halves = x.map(({ low, high }) => (high - low) / 2).sort((a, b) => a - b);
  return halves[Math.floor(halves.length / 2)] ?? 0;
}

/** What the ± of figures does not hold though all of them share it; readings and repeats are in a curve's scatter. */
const sharedParts = ["scale check", "blank run", "method", "weighing"];

/** True where the doubt that the figures of a trial share is known only in part. */
export function sharedInPart(figures: readonly { readonly missing: readonly string[] }[]): boolean {
  return figures.some(({ missing }) => missing.some((part) => sharedParts.includes(part)));
}
