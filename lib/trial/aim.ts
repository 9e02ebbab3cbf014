// Where on the axis to aim, how sure that is, and how wide the window is.

import { invariant } from "../issue.ts";
import { quantilesInPlace } from "../numbers/quantile.ts";
import { type CurveToDraw, type DrawnCurve, drawCurves } from "./curve-draws.ts";

/** One property with the range that the founder wants. */
export interface AimedCurve extends CurveToDraw {
  readonly low: number;
  readonly high: number;
}

export interface ChanceAt {
  readonly x: number;
  /** Each property's own chance that a new batch meets its range, 0 to 1, in the order given. */
  readonly each: readonly number[];
  /** All at once. */
  readonly all: number;
}

export interface AimResult {
  readonly chances: readonly ChanceAt[];
  /** Where the ranges are met with the most to spare. */
  readonly aim: AimPlace;
  readonly chanceAtAim: number;
  /** The unbroken run about the aim where the chance of meeting all is at least a half; null where it is not, there. */
  readonly window: { readonly low: number; readonly high: number } | null;
  /** Further runs, apart from the aim's. */
  readonly otherWindows: readonly { readonly low: number; readonly high: number }[];
  /** What limits each side: the property whose own chance falls first, and whether it gets too low or too high. */
  readonly limits: { readonly left: Limit | null; readonly right: Limit | null };
}
export interface AimPlace {
  readonly x: number;
  /** Ends of the 95 % interval, within what was tried. */
  readonly low: number;
  readonly high: number;
  /** True on a side where the best place may lie beyond what was tried: the interval is no bound there. */
  readonly open: { readonly low: boolean; readonly high: boolean };
}
export interface Limit {
  readonly name: string;
  readonly side: "too low" | "too high";
}

export const gridSteps = 80;

/**
 * Degrees of freedom that a trial's scatter is taken to be known with before it begins. Chosen on simulated founders,
 * so that a promised 70 % comes true in 70 of 100 and the aim's interval covers 95 %: our own, see tests/trial.
 */
const knownForChance = 3;
const knownForAim = 0.5;

/** Places on the axis, from the first batch to the last. */
export function gridOver(from: number, to: number, steps = gridSteps): readonly number[] {
  return Array.from({ length: steps + 1 }, (_, k) => from + ((to - from) * k) / steps);
}

/**
 * Chance of meeting the founder's own aims at each place between the first batch and the last, and the aim: the
 * place x where min over the properties of (distance of the mean to the nearer edge)/(scatter of a batch) is
 * largest. Its 95 % interval comes from the same place worked out for every draw of the curves.
 * It is never the chance of a sound casting. curves: fitted, each with low < high; none throws.
 * Method: our own; draws of curves as in curve-draws.ts.
 */
export function aimFor(curves: readonly AimedCurve[], draws = 4096): AimResult {
  invariant(curves.length > 0, "an aim needs a property with a range");
  const from = Math.max(...curves.map(({ curve }) => curve.from));
  const to = Math.min(...curves.map(({ curve }) => curve.to));
  const grid = gridOver(from, to);
  const drawn = drawCurves(curves, draws, knownForChance);
  const chances = grid.map((x) => chanceAt(curves, drawn, x, draws));
  const places = aimDraws(curves, drawCurves(curves, draws, knownForAim), grid, draws);
  const share = (edge: number): number =>
    places.reduce((all, place) => all + (place === edge ? 1 : 0), 0) / draws;
  const open = { low: share(grid[0]!) > mostAtEdge, high: share(grid.at(-1)!) > mostAtEdge };
  const [low, high] = quantilesInPlace(places, [0.025, 0.975]) as [number, number];
  const x = bestPlace(curves, grid, (k, row) => curves[k]!.curve.at(grid[row]!)!.mean);
  const at = grid.indexOf(x);
  const windows = runs(chances);
  const window = windows.find((run) => run.low <= x && x <= run.high) ?? null;
  return {
    chances,
    aim: { x, low: Math.min(low, x), high: Math.max(high, x), open },
    chanceAtAim: chances[at]!.all,
    window,
    otherWindows: windows.filter((run) => run !== window),
    limits: {
      left: window && window.low > from ? limitAt(curves, chances, window.low, -1) : null,
      right: window && window.high < to ? limitAt(curves, chances, window.high, 1) : null,
    },
  };
}

/** With more of the draws at an end of what was tried, the best place may lie beyond it. */
const mostAtEdge = 0.025;

/** Unbroken runs of places where the chance of meeting all is a half or better. */
function runs(chances: readonly ChanceAt[]): { low: number; high: number }[] {
  const found: { low: number; high: number }[] = [];
  let running = false;
  for (const { x, all } of chances) {
    if (all >= 0.5 && running) found.at(-1)!.high = x;
    else if (all >= 0.5) found.push({ low: x, high: x });
    running = all >= 0.5;
  }
  return found;
}

function chanceAt(
  curves: readonly AimedCurve[],
  drawn: readonly DrawnCurve[],
  x: number,
  draws: number,
): ChanceAt {
  const rows = curves.map(({ curve }) => curve.row(x));
  const met = curves.map(() => 0);
  let all = 0;
  for (let i = 0; i < draws; i++) {
    let together = true;
    for (let k = 0; k < curves.length; k++) {
      const y = drawn[k]!.mean(rows[k]!, i) + drawn[k]!.batch(i);
      if (y >= curves[k]!.low && y <= curves[k]!.high) met[k]!++;
      else together = false;
    }
    if (together) all++;
  }
  return { x, each: met.map((count) => count / draws), all: all / draws };
}

/** The best place for every draw of the mean curves. */
function aimDraws(
  curves: readonly AimedCurve[],
  drawn: readonly DrawnCurve[],
  grid: readonly number[],
  draws: number,
): Float64Array {
  const rows = curves.map(({ curve }) => grid.map((x) => curve.row(x)));
  return Float64Array.from({ length: draws }, (_, i) =>
    bestPlace(curves, grid, (k, row) => drawn[k]!.mean(rows[k]![row]!, i)),
  );
}

/** The middle of the places that do best; the margin of a property is counted in the scatter of its batches. */
export function bestPlace(
  curves: readonly AimedCurve[],
  grid: readonly number[],
  mean: (property: number, row: number) => number,
): number {
  let best = Number.NEGATIVE_INFINITY;
  let at = grid[0]!;
  for (let row = 0; row < grid.length; row++) {
    let margin = Number.POSITIVE_INFINITY;
    for (let k = 0; k < curves.length; k++) {
      const { low, high, curve } = curves[k]!;
      const y = mean(k, row);
      const spare = Math.min(y - low, high - y) / (curve.fit!.residualSd || high - low);
      if (spare < margin) margin = spare;
    }
    if (margin > best) {
      best = margin;
      at = grid[row]!;
    }
  }
  return at;
}

function limitAt(
  curves: readonly AimedCurve[],
  chances: readonly ChanceAt[],
  edge: number,
  outward: 1 | -1,
): Limit | null {
  const at = chances.findIndex(({ x }) => x === edge);
  const beyond = chances[at + outward] ?? chances[at]!;
  const worst = beyond.each.indexOf(Math.min(...beyond.each));
  const { name, curve, low, high } = curves[worst]!;
  const { mean } = curve.at(beyond.x)!;
  return { name, side: mean - low < high - mean ? "too low" : "too high" };
}
