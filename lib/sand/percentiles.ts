// Sizes in phi, and the percentiles that graphic measures are made of.

import type { Checked } from "../issue.ts";
import { type Curve, type CurveOptions, sizeAtPassing } from "./curve.ts";

/**
 * Size in phi: φ = −log2(d / 1 mm). 1 mm is 0, 0.5 mm is 1, 0.25 mm is 2: finer sand has the greater phi.
 * sizeMm: > 0, else RangeError. Source: Krumbein 1934.
 * Example: phiOfMm(0.125) is 3.
 */
export function phiOfMm(sizeMm: number): number {
  if (!(sizeMm > 0)) throw new RangeError(`phiOfMm: sizeMm must be above 0, got ${sizeMm}`);
  return -Math.log2(sizeMm);
}

/**
 * Phi percentile: the phi than which a given share of the sand is coarser. φ5 is therefore the coarse end.
 * coarserPercent: 0..100, else RangeError; outside the stack as sizeAtPassing does.
 * Source: Folk, Petrology of Sedimentary Rocks (percentiles cumulative from the coarse end).
 * Example: 5 % of a sand stays on a 0.5 mm sieve and above: its φ5 is 1.
 */
export function phiAtCoarser(
  curve: Curve,
  coarserPercent: number,
  options: CurveOptions = {},
): Checked<number> {
  const { value, issues } = sizeAtPassing(curve, 100 - coarserPercent, options);
  return value === undefined ? { issues } : { value: phiOfMm(value), issues };
}

/** Phi at 5, 16, 25, 50, 75, 84 and 95 % coarser; undefined where the stack does not reach. */
export interface PhiPercentiles {
  readonly phi5: number | undefined;
  readonly phi16: number | undefined;
  readonly phi25: number | undefined;
  readonly phi50: number | undefined;
  readonly phi75: number | undefined;
  readonly phi84: number | undefined;
  readonly phi95: number | undefined;
}

/** The seven phi percentiles of the graphic measures; those beyond the stack are undefined. */
export function phiPercentiles(curve: Curve, options: CurveOptions = {}): PhiPercentiles {
  const at = (coarserPercent: number): number | undefined =>
    phiAtCoarser(curve, coarserPercent, options).value;
  return {
    phi5: at(5),
    phi16: at(16),
    phi25: at(25),
    phi50: at(50),
    phi75: at(75),
    phi84: at(84),
    phi95: at(95),
  };
}
