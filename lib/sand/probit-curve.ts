// The grading as a curve on log-probability paper: what stands in for the sieves that a stack lacks.

import { normalCumulative, normalQuantile } from "../numbers/distributions.ts";
import { monotoneCubic } from "../numbers/monotone-cubic.ts";

/** A measured point: share of the sand finer than the opening, 0 to 1. */
export interface PassingPoint {
  readonly openingMm: number;
  readonly passing: number;
}

/** Share finer than an opening, 0 to 1. */
export type PassingCurve = (openingMm: number) => number;

/** Beyond these shares a point says only that the sand has ended. */
const ended = 1e-4;

/** Points that lie inside the sand, coarse to fine. */
export function insidePoints(points: readonly PassingPoint[]): readonly PassingPoint[] {
  return points.filter(({ passing }) => passing > ended && passing < 1 - ended);
}

/**
 * Curve through measured points (coarse to fine): the share's normal quantile against ln(opening), joined by a
 * monotone cubic, and by the straight line of the last two points beyond the ends. A log-normal sand is met
 * exactly. Points at which the sand has ended are left out, unless fewer than two would remain.
 * Undefined with fewer than two points, or where two do not differ.
 * Source: log-probability paper, common practice; monotone cubic on ln d: Shang 2013, Sci. World J. 579460.
 */
export function probitCurve(points: readonly PassingPoint[]): PassingCurve | undefined {
  const inside = insidePoints(points);
  const used = inside.length >= 2 ? inside : nearlyInside(points);
  if (used.length < 2) return undefined;
  const xs = used.map(({ openingMm }) => Math.log(openingMm)).reverse();
  const zs = used.map(({ passing }) => normalQuantile(clamp(passing, ended, 1 - ended))).reverse();
  const last = xs.length - 1;
  if (zs[last]! - zs[0]! <= 0) return undefined;
  const middle = monotoneCubic(xs, zs);
  const line = (a: number, b: number, x: number): number =>
    zs[a]! + ((zs[b]! - zs[a]!) / (xs[b]! - xs[a]!)) * (x - xs[a]!);
  return (openingMm) => {
    const x = Math.log(openingMm);
    const z = x < xs[0]! ? line(0, 1, x) : x > xs[last]! ? line(last - 1, last, x) : middle(x);
    return normalCumulative(z);
  };
}

/** The points inside with the nearest ended one on each side. */
function nearlyInside(points: readonly PassingPoint[]): readonly PassingPoint[] {
  const coarse = points.findLast(({ passing }) => passing >= 1 - ended);
  const fine = points.find(({ passing }) => passing <= ended);
  return [...(coarse ? [coarse] : []), ...insidePoints(points), ...(fine ? [fine] : [])];
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
