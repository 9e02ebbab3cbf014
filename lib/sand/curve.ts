// The cumulative curve of a sieving: what share of the sand passes each opening.

import { type Checked, invariant } from "../issue.ts";
import type { Grading } from "./grading.ts";
import {
  beyondCoarsestSieve,
  beyondFinestSieve,
  curveExtended,
  outsideStack,
  tooFewSieves,
} from "./grain-issues.ts";
import { millimetres, short } from "./short-figure.ts";

export interface CurvePoint {
  readonly label: string;
  readonly openingMm: number;
  /** % of the sand on this sieve. */
  readonly retainedPercent: number;
  /** % of the sand on this sieve and all above it. */
  readonly coarserPercent: number;
  /** % of the sand that goes through this sieve. */
  readonly passingPercent: number;
}

export interface Curve {
  /** One for each sieve, coarse to fine; the pan has no opening and no point. */
  readonly points: readonly CurvePoint[];
  /** % of the sand in the pan; undefined if no pan was weighed. */
  readonly panPercent: number | undefined;
}

export interface CurveOptions {
  /** Carry the first and last straight piece on past the stack. Nothing was measured there: off unless asked for. */
  readonly extendEnds?: boolean;
}

/** Two shares of the sand, in %, that differ by less than this are the same share. */
const SAME = 1e-9;

/**
 * Cumulative curve. Passing at sieve i = 100 × (mass below i) / (mass below i + mass on i and above).
 * Both masses are added from their own end, so an empty end gives 0 or 100 exactly.
 * Shares are % of the sum of the masses, never of the start mass.
 *
 * grading: from readGrading; a total of 0 throws Misuse.
 * Source: definition, ISO 9276-1 (cumulative undersize Q3, here in %).
 * @example
 * gradingCurve(readGrading({ "No. 50": 1, "No. 70": 2, pan: 1 }).value!).points.map((one) => one.passingPercent)
 * // [75, 25]
 */
export function gradingCurve(grading: Grading): Curve {
  invariant(grading.total > 0, "a grading without sand has no curve");
  const { fractions } = grading;
  const below: number[] = new Array<number>(fractions.length).fill(0);
  for (let i = fractions.length - 2; i >= 0; i--) below[i] = below[i + 1]! + fractions[i + 1]!.mass;
  const points: CurvePoint[] = [];
  let above = 0;
  let panPercent: number | undefined;
  for (const [i, { label, openingMm, mass }] of fractions.entries()) {
    above += mass;
    const sum = above + below[i]!;
    if (openingMm === 0) panPercent = (100 * mass) / sum;
    else
      points.push({
        label,
        openingMm,
        retainedPercent: (100 * mass) / sum,
        coarserPercent: (100 * above) / sum,
        passingPercent: (100 * below[i]!) / sum,
      });
  }
  return { points, panPercent };
}

/**
 * Share of the sand that passes an opening, %: straight between the measured points over ln(opening).
 *
 * openingMm: > 0, mm; else RangeError. Outside the sieves used: no value, and an issue that says so,
 * except above a coarsest sieve that holds nothing (100) and below a finest one that passes nothing (0)
 * while a pan was weighed.
 * Source: common practice for a home stack; a smooth curve would promise more than four points hold.
 * @example
 * passingAtPercent(gradingCurve(readGrading({ "No. 50": 1, "No. 70": 2, pan: 1 }).value!), 0.2522).value
 * // 50.0
 */
export function passingAtPercent(curve: Curve, openingMm: number): Checked<number> {
  if (!(openingMm > 0)) throw new RangeError(`passingAtPercent: openingMm must be above 0, got ${openingMm}`);
  const { points } = curve;
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last) return { issues: [tooFewSieves("a share that passes an opening")] };
  if (openingMm > first.openingMm && first.coarserPercent === 0) return { value: 100, issues: [] };
  if (openingMm < last.openingMm && curve.panPercent === 0) return { value: 0, issues: [] };
  if (openingMm > first.openingMm || openingMm < last.openingMm)
    return {
      issues: [outsideStack(millimetres(openingMm), short(first.openingMm), millimetres(last.openingMm))],
    };
  const i = points.findIndex((point) => point.openingMm <= openingMm);
  const fine = points[i]!;
  const coarse = points[i - 1];
  if (!coarse || fine.openingMm === openingMm) return { value: fine.passingPercent, issues: [] };
  const share = Math.log(openingMm / fine.openingMm) / Math.log(coarse.openingMm / fine.openingMm);
  return { value: fine.passingPercent + share * (coarse.passingPercent - fine.passingPercent), issues: [] };
}

/**
 * Size that a given share of the sand passes, mm (D10 is the size at 10): the curve read the other way,
 * straight between the measured points over ln(opening).
 *
 * percent: 0..100, else RangeError. Where the coarsest sieve holds sand, or the finest passes more than asked,
 * there is no value and an issue says why; extendEnds carries the end pieces on instead, with an issue.
 * Where the curve is level (empty sieves) every size between fits: the middle in ln d is given; at 100 the finest
 * opening that passes all, at 0 the coarsest that passes none.
 * Source: reading a grading curve, straight in ln d (common practice).
 * @example
 * sizeAtPassing(gradingCurve(readGrading({ "No. 50": 1, "No. 70": 2, pan: 1 }).value!), 50).value // 0.2522
 */
export function sizeAtPassing(curve: Curve, percent: number, options: CurveOptions = {}): Checked<number> {
  if (!(percent >= 0 && percent <= 100))
    throw new RangeError(`sizeAtPassing: percent must be 0 to 100, got ${percent}`);
  const { points } = curve;
  const first = points[0];
  const last = points.at(-1);
  const asked = `the size that ${percent} % passes`;
  if (!first || !last) return { issues: [tooFewSieves(asked)] };
  const beyond =
    percent > first.passingPercent + SAME
      ? "coarse"
      : percent < last.passingPercent - SAME
        ? "fine"
        : undefined;
  if (beyond) {
    const [a, b] = beyond === "coarse" ? [points[0], points[1]] : [points.at(-2), points.at(-1)];
    if (options.extendEnds && a && b && a.passingPercent - b.passingPercent > SAME)
      return { value: sizeOnLine(a, b, percent), issues: [curveExtended(asked)] };
    return {
      issues: [
        beyond === "coarse"
          ? beyondCoarsestSieve(first.label, millimetres(first.openingMm), short(first.coarserPercent), asked)
          : beyondFinestSieve(last.label, millimetres(last.openingMm), short(last.passingPercent), asked),
      ],
    };
  }
  const level = points.filter((point) => Math.abs(point.passingPercent - percent) <= SAME);
  if (level.length > 0) return { value: sizeOnLevel(level, percent), issues: [] };
  const i = points.findIndex((point) => point.passingPercent < percent);
  return { value: sizeOnLine(points[i - 1]!, points[i]!, percent), issues: [] };
}

function sizeOnLine(coarse: CurvePoint, fine: CurvePoint, percent: number): number {
  const share = (percent - fine.passingPercent) / (coarse.passingPercent - fine.passingPercent);
  return fine.openingMm * (coarse.openingMm / fine.openingMm) ** share;
}

function sizeOnLevel(level: readonly CurvePoint[], percent: number): number {
  const coarse = level[0]!.openingMm;
  const fine = level.at(-1)!.openingMm;
  if (percent >= 100 - SAME) return fine;
  if (percent <= SAME) return coarse;
  return coarse === fine ? fine : Math.sqrt(coarse * fine);
}
