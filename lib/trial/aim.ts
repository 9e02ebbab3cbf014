// Where on the axis to aim, how sure that is, and how wide the window is.

import { invariant } from "../issue.ts";
import { quantilesInPlace } from "../numbers/quantile.ts";
import { keptDraws } from "../quantity/kept-draws.ts";
import { type AimedCurve, bestPlace, bestRows, placesOn } from "./best-place.ts";
import { chancesAlong } from "./chances-along.ts";
import { keptByCurves } from "./curve-content.ts";
import { type CurveDraws, type DrawnCurve, drawCurves } from "./curve-draws.ts";

export interface ChanceAt {
  readonly x: number;
  /** Each property's own chance that a new batch meets its range, 0 to 1, in the order given. */
  readonly each: readonly number[];
  /** All at once. */
  readonly all: number;
}

export interface AimResult {
  readonly chances: readonly ChanceAt[];
  /** Where a new batch most surely meets all ranges. */
  readonly aim: AimPlace;
  readonly chanceAtAim: number;
  /** The unbroken run about the aim where the chance of meeting all is at least a half; null where it is not, there. */
  readonly window: { readonly low: number; readonly high: number } | null;
  /** Further runs, apart from the aim's. */
  readonly otherWindows: readonly { readonly low: number; readonly high: number }[];
  /** What limits each side: the property whose own chance falls first, and whether it gets too low or too high. */
  readonly limits: { readonly left: Limit | null; readonly right: Limit | null };
  /** Of each property, in the order given. */
  readonly heights: readonly HeightAtAim[];
}
/**
 * 95 % interval of what the founder's own rig reads at the best place, from curve and place of the same draws: a curve
 * that lies higher moves the place the other way, so it is narrower than the two apart.
 */
export interface HeightAtAim {
  readonly name: string;
  readonly low: number;
  readonly high: number;
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

const gridSteps = 80;

/**
 * Degrees of freedom that a trial's scatter is taken to be known with before it begins. Chosen on simulated founders,
 * so that a promised 70 % comes true in 70 of 100 and the aim's interval covers 95 %: our own, see tests/trial. That
 * holds for ranges from anywhere; where a sand meets them over most of the trial, what holds the chance down is the
 * doubt of the curve, and 81 of 100 came true (tests/honesty, 240 batches of 60 founders).
 */
const knownForChance = 3;
const knownForAim = 0.2;

/** Places on the axis, from the first batch to the last. */
export function gridOver(from: number, to: number, steps = gridSteps): readonly number[] {
  return Array.from({ length: steps + 1 }, (_, k) => from + ((to - from) * k) / steps);
}

/**
 * Chance of meeting the founder's own aims at each place between the first batch and the last, and the aim: the
 * place x where the product over the properties of Φ((high − mean)/s) − Φ((low − mean)/s) is largest, s the scatter of
 * a batch. Its 95 % interval comes from the same place worked out for every draw of the curves.
 * It is never the chance of a sound casting. curves: fitted, each with low < high; none throws. draws: how many, or those
 * made of these curves already (their ranges may differ).
 * Method: our own; draws of curves as in curve-draws.ts.
 * @example trialReport(log).result?.aim // what aimFor gives for the curves of a log
 */
export function aimFor(curves: readonly AimedCurve[], draws: number | CurveDraws = 4096): AimResult {
  const drawn = typeof draws === "number" ? drawCurves(curves, draws) : draws;
  return keptAims(curves, [drawn.count], () => aimOf(curves, drawn));
}

const keptAims = keptByCurves<AimResult>(6000);

function aimOf(curves: readonly AimedCurve[], drawn: CurveDraws): AimResult {
  const { grid, from, to } = placesOf(curves);
  const chances = chancesAt(curves, drawn, grid);
  const drawnForAim = drawn.with(knownForAim);
  const rows = bestRows(curves, drawnForAim, grid);
  const places = placesOn(grid, rows);
  const heights = curves.map((one, k) => heightAt(grid, rows, one, drawnForAim[k]!));
  const share = (edge: number): number => {
    let all = 0;
    for (let i = 0; i < places.length; i++) if (places[i] === edge) all++;
    return all / drawn.count;
  };
  const open = { low: share(grid[0]!) > mostAtEdge, high: share(grid.at(-1)!) > mostAtEdge };
  const [low, high] = quantilesInPlace(places, [0.025, 0.975]) as [number, number];
  const x = bestPlaceOf(curves, grid);
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
    heights,
  };
}

/** rows: of each draw, the number of its best place on the grid. */
function heightAt(
  grid: readonly number[],
  rows: Uint16Array,
  { name, curve, bias }: AimedCurve,
  { coefficients: [level, slope, bend] }: DrawnCurve,
): HeightAtAim {
  // The bias of the rig moves the curve to what is true, and the rig goes on reading without it.
  const off = bias && keptDraws(bias, rows.length);
  const powers = grid.map((x) => curve.row(x) as readonly [number, number, number?]);
  const us = Float64Array.from(powers, ([, u]) => u);
  const squares = Float64Array.from(powers, ([, , square = 0]) => square);
  const heights = new Float64Array(rows.length);
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i]!;
    const height = level![i]! - (off ? off[i]! : 0) + us[row]! * slope![i]!;
    heights[i] = height + squares[row]! * (bend ? bend[i]! : 0);
  }
  const [low, high] = quantilesInPlace(heights, [0.025, 0.975]) as [number, number];
  return { name, low, high };
}

/** The aim alone, without its interval, and the chance there. */
export function aimPlace(curves: readonly AimedCurve[], drawn: CurveDraws): { x: number; chance: number } {
  return keptPlaces(curves, [drawn.count], () => {
    const x = bestPlaceOf(curves, placesOf(curves).grid);
    return { x, chance: chancesAt(curves, drawn, [x])[0]!.all };
  });
}

const keptPlaces = keptByCurves<{ x: number; chance: number }>(30);

/** Where all of the curves were tried. */
function placesOf(curves: readonly AimedCurve[]): { from: number; to: number; grid: readonly number[] } {
  invariant(curves.length > 0, "an aim needs a property with a range");
  const from = Math.max(...curves.map(({ curve }) => curve.from));
  const to = Math.min(...curves.map(({ curve }) => curve.to));
  return { from, to, grid: gridOver(from, to) };
}

function bestPlaceOf(curves: readonly AimedCurve[], grid: readonly number[]): number {
  return bestPlace(curves, grid, (k, row) => curves[k]!.curve.at(grid[row]!)!.mean);
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

function chancesAt(
  curves: readonly AimedCurve[],
  { with: drawnWith }: CurveDraws,
  grid: readonly number[],
): readonly ChanceAt[] {
  const drawn = drawnWith(knownForChance);
  const { each, all } = chancesAlong(
    curves.map(({ curve, low, high }, k) => {
      const [level, slope, bend] = drawn[k]!.coefficients as readonly Float64Array[];
      const u = grid.map((x) => curve.row(x)[1]!);
      return { low, high, level: level!, slope: slope!, bend, batch: drawn[k]!.batch, u };
    }),
  );
  return grid.map((x, row) => ({ x, each: each.map((of) => of[row]!), all: all[row]! }));
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
