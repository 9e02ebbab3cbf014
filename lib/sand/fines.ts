// Fines: what is finer than a No. 140 sieve.

import type { Issue } from "../issue.ts";
import { type Curve, passingAtPercent } from "./curve.ts";
import { finesBetweenSieves, noPan } from "./grain-issues.ts";
import { sameSieve } from "./same-sieve.ts";
import { short } from "./short-figure.ts";

export interface Fines {
  /** % of the sand finer than 0.106 mm; undefined where the stack only bounds it. */
  readonly percent: number | undefined;
  /** Surely at least and at most this, whatever the grains between two sieves are; equal with a No. 140 sieve. */
  readonly low: number;
  readonly high: number;
  /** True if read off between two sieves. */
  readonly interpolated: boolean;
  readonly issues: readonly Issue[];
}

/** Opening of No. 140, mm. */
const FINES_MM = 0.106;

/**
 * Fines, % of the sand retained: what passes No. 140, that is No. 200 + No. 270 + pan of the AFS stack.
 * Without No. 140 the next sieves bound it, and the curve between them (straight over ln d) gives the figure;
 * without a sieve on either side there are bounds only.
 * With no pan weighed the figure is % of what the sieves held, and low, an issue says so.
 * Source: ABIFA 2019, Fundição & Matérias-Primas, on recommendation CEMP-081.
 * @example
 * fines(gradingCurve(readGrading({ "No. 30": 0.1, "No. 40": 0.3, "No. 50": 1.3, "No. 70": 33.1,
 *  "No. 100": 50.1, "No. 140": 11.5, "No. 200": 1.7, "No. 270": 0.4, pan: 0.5 }).value!)).percent // 2.63
 */
export function fines(curve: Curve): Fines {
  const unpanned = curve.panPercent === undefined ? [noPan("the figure for fines")] : [];
  const exact = curve.points.find((point) => sameSieve(point.openingMm, FINES_MM));
  if (exact)
    return {
      percent: exact.passingPercent,
      low: exact.passingPercent,
      high: exact.passingPercent,
      interpolated: false,
      issues: unpanned,
    };
  const coarser = curve.points.findLast((point) => point.openingMm > FINES_MM);
  const finer = curve.points.find((point) => point.openingMm < FINES_MM);
  const low = finer?.passingPercent ?? 0;
  const high = coarser?.passingPercent ?? 100;
  return {
    percent: coarser && finer ? passingAtPercent(curve, FINES_MM).value : undefined,
    low,
    high,
    interpolated: coarser !== undefined && finer !== undefined,
    issues: [finesBetweenSieves(short(low), short(high)), ...unpanned],
  };
}
