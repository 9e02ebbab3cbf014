// Does the sand that came off the sieves add up to what went on?

import type { Issue } from "../issue.ts";
import { sum } from "../numbers/sum.ts";
import { type Grading, gradingOf, type Held } from "./grading.ts";
import { grams, short } from "./short-figure.ts";
import { massGained, massLost } from "./weighing-issues.ts";

export interface MassBalance {
  /** Start mass − sum retained, g; negative for a gain. */
  readonly lossG: number;
  /** % of the start mass; negative for a gain. */
  readonly lossPercent: number;
  /** good: within 0.3 %; look: within 1 %; redo: beyond. */
  readonly verdict: "good" | "look" | "redo";
  /** True if the steps of the scale alone may make a difference as large as this; undefined without stepG. */
  readonly withinScale: boolean | undefined;
  readonly issues: readonly Issue[];
}

/** ASTM C136: beyond this the result is not for acceptance. */
const GOOD_PERCENT = 0.3;
/** EN 933-1, from memory. Others, from memory: ISO 2591-1 2 %, ASTM D6913 0.5 %. */
const REDO_PERCENT = 1;

/**
 * Balance of a sieving: loss = start − Σ retained, as % of the start mass.
 *
 * startG: dry mass put on, > 0, g. retainedG: each sieve and the pan, finite and ≥ 0. stepG: smallest step of the
 * scale, > 0. Else RangeError: what a founder typed is checked before.
 * A gain is judged by the same limits. Grain figures are worked out on the sum retained, as if the loss were spread
 * like the rest; what if it were not, lossIntoPan shows.
 * withinScale: every reading is off by up to half a step (rectangular, sd step/√12), so the difference of n + 1
 * readings has a 95 % half-width of 1.96 √(n + 1) step/√12.
 * Source: 0.3 % ASTM C136/C136M; 1 % EN 933-1 (from memory).
 * @example
 * massBalance({ startG: 50, retainedG: [24.9, 20, 4.9] }) // { lossG: 0.2, lossPercent: 0.4, verdict: "look" }
 */
export function massBalance(weighing: {
  readonly startG: number;
  readonly retainedG: readonly number[];
  readonly stepG?: number;
}): MassBalance {
  const { startG, retainedG, stepG } = weighing;
  if (!(startG > 0 && Number.isFinite(startG)))
    throw new RangeError(`massBalance: startG must be above 0, got ${startG}`);
  if (!retainedG.every((mass) => Number.isFinite(mass) && mass >= 0))
    throw new RangeError(`massBalance: retainedG must be numbers from 0, got ${retainedG.join(", ")}`);
  if (stepG !== undefined && !(stepG > 0))
    throw new RangeError(`massBalance: stepG must be above 0, got ${stepG}`);
  const lossG = startG - sum(retainedG);
  const lossPercent = (100 * lossG) / startG;
  const off = Math.abs(lossPercent);
  const verdict = off <= GOOD_PERCENT + 1e-9 ? "good" : off <= REDO_PERCENT + 1e-9 ? "look" : "redo";
  const withinScale =
    stepG === undefined
      ? undefined
      : Math.abs(lossG) <= 1.96 * Math.sqrt((retainedG.length + 1) / 12) * stepG + 1e-9;
  const issues: Issue[] = [];
  if (verdict !== "good") {
    const say = lossG > 0 ? massLost : massGained;
    issues.push(say(grams(Math.abs(lossG)), short(off), withinScale === true));
  }
  return { lossG, lossPercent, verdict, withinScale, issues };
}

/**
 * The grading if the whole loss had been dust that belonged in the pan: the bound on what a loss can do to a fine
 * figure. The figure on the sum retained and the figure on this grading are the two ends.
 * lossG: g, finite, in the unit of the grading, else RangeError. A gain (negative) is taken out of the pan, as far as
 * the pan holds it. A stack without a pan gets one.
 * Source: mass balance; that the loss was dust is a bound, our own.
 * @example
 * lossIntoPan(readGrading({ "No. 70": 49, pan: 1 }).value!, 0.5).fractions.map(({ mass }) => mass)
 * // [49, 1.5]
 */
export function lossIntoPan(grading: Grading, lossG: number): Grading {
  if (!Number.isFinite(lossG)) throw new RangeError(`lossIntoPan: lossG must be a number, got ${lossG}`);
  const pan = grading.fractions.find(({ openingMm }) => openingMm === 0);
  const held: Held[] = grading.fractions
    .filter((fraction) => fraction !== pan)
    .map(({ label, sieve, mass }) => (sieve ? { label, sieve, mass } : { label, mass }));
  const mass = Math.max(0, (pan?.mass ?? 0) + lossG);
  return gradingOf([...held, { label: pan?.label ?? "pan", mass }]);
}
