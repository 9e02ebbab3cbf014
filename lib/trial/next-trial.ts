// Which batch to make next: the one that would narrow the aim most.

import { studentTQuantile } from "../numbers/distributions.ts";
import { sum } from "../numbers/sum.ts";
import { gridOver } from "./aim.ts";
import { type AimedCurve, bestRows, placesOn } from "./best-place.ts";
import { keptByCurves } from "./curve-content.ts";
import { coefficientSteps, scoreColumns } from "./curve-draws.ts";

export interface NextBatch {
  readonly x: number;
  /** Full width of the aim's 95 % interval that this batch is expected to leave. */
  readonly width: number;
}

export interface NextTrial {
  /** Best first. */
  readonly candidates: readonly NextBatch[];
  readonly widthNow: number;
  /** True when no single batch would narrow the aim by a tenth, or it is as narrow as the founder can hit already. */
  readonly enough: boolean;
}

const candidateCount = 12;
const normal95 = 1.959964;
/** Fewer than a page's figures take, enough to rank. */
const drawsToRank = 512;

/**
 * For each place between the first and the last batch, the width that the aim's interval would have with one more
 * batch there: the fit's covariance s²(XᵀX)⁻¹ with one row added, the mean curve and its scatter left as they are,
 * one more degree of freedom. Only places that were tried between are looked at: whether to go beyond is for the
 * caller, who knows where the aim is open.
 * width: the aim's interval as it is printed; the widths are scaled to it. hit: how closely the founder can hit a place on the axis (half-width); the aim needs to be no narrower.
 * Method: expected reduction of the interval, our own.
 * @example trialReport(log).next?.candidates.length // what nextTrial gives for the curves of a log
 */
export function nextTrial(
  curves: readonly AimedCurve[],
  options: { readonly hit?: number; readonly width?: number } = {},
): NextTrial {
  return keptNext(curves, [options.hit, options.width], () => nextOf(curves, options));
}

const keptNext = keptByCurves<NextTrial>(800);

function nextOf(
  curves: readonly AimedCurve[],
  options: { readonly hit?: number; readonly width?: number },
): NextTrial {
  const from = Math.max(...curves.map(({ curve }) => curve.from));
  const to = Math.min(...curves.map(({ curve }) => curve.to));
  const grid = gridOver(from, to, 64);
  const scores = curves.map(({ name, curve }) =>
    scoreColumns(`${name}, next`, curve.row(curve.from).length, drawsToRank),
  );
  const now = bestRows(curves, drawnWith(curves, scores, undefined), grid);
  const plain = widthOf(placesOn(grid, now));
  const scale = options.width !== undefined && plain > 0 ? options.width / plain : 1;
  const widthNow = scale * plain;
  const candidates = gridOver(from, to, candidateCount)
    .map((x) => {
      // One batch more moves the best place of a draw little.
      const rows = bestRows(curves, drawnWith(curves, scores, x), grid, now);
      return { x, width: scale * widthOf(placesOn(grid, rows)) };
    })
    .sort((a, b) => a.width - b.width);
  const [best] = candidates;
  const enough = best === undefined || best.width > 0.9 * widthNow || widthNow <= 2 * (options.hit ?? 0);
  return { candidates, widthNow, enough };
}

/** The mean curves with one more batch at extra. */
function drawnWith(
  curves: readonly AimedCurve[],
  scores: readonly (readonly Float64Array[])[],
  extra: number | undefined,
): readonly { readonly coefficients: readonly Float64Array[] }[] {
  return curves.map(({ curve }, k) => {
    const fit = curve.fit!;
    const size = scores[k]!.length;
    const own = fit.covariance.slice(0, size).map((line) => line.slice(0, size));
    const covariance = extra === undefined ? own : withRow(own, curve.row(extra), fit.residualSd ** 2);
    const df = fit.degreesOfFreedom + (extra === undefined ? 0 : 1);
    // The t's own width, without drawing its χ²: enough to compare places.
    const widen = studentTQuantile(0.975, df) / normal95;
    const coefficients = coefficientSteps(covariance, scores[k]!);
    coefficients.forEach((column, j) => {
      const middle = fit.coefficients[j]!;
      for (let i = 0; i < column.length; i++) column[i] = middle + column[i]! * widen;
    });
    return { coefficients };
  });
}

/** Width of the aim's interval, from the scatter of the places: quantiles of so few draws would step. */
function widthOf(places: Float64Array): number {
  const middle = sum(places) / places.length;
  const squares = places.map((place) => (place - middle) ** 2);
  return 2 * normal95 * Math.sqrt(sum(squares) / places.length);
}

/** Covariance after one more observation at row: V − V r rᵀ V / (s² + rᵀ V r), Sherman and Morrison. */
function withRow(
  covariance: readonly (readonly number[])[],
  row: readonly number[],
  variance: number,
): readonly (readonly number[])[] {
  const moved = covariance.map((line) => line.reduce((all, value, j) => all + value * row[j]!, 0));
  const spread = row.reduce((all, value, j) => all + value * moved[j]!, 0);
  const shrink = 1 / (variance + spread || 1);
  return covariance.map((line, i) => line.map((value, j) => value - moved[i]! * moved[j]! * shrink));
}
