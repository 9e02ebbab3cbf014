// Where a quadratic surface is level, what kind of place that is, and how well the trials hold it.

import { invariant } from "../issue.ts";
import { fQuantile } from "./f-distribution.ts";
import { levelRegion, type RegionLimits } from "./level-region.ts";
import type { QuadraticSurface } from "./quadratic-surface.ts";

export interface StationaryPoint {
  readonly x: readonly [number, number];
  /** The surface there, in the first block. */
  readonly y: number;
  /** A ridge: the region is not bounded, so the trials do not hold the place, whatever the sign of the eigenvalues. */
  readonly kind: "maximum" | "minimum" | "saddle" | "ridge";
  /** Of the matrix of second-order coefficients, the larger first. */
  readonly eigenvalues: readonly [number, number];
  /** Directions of the eigenvalues, of length 1. */
  readonly eigenvectors: readonly [readonly [number, number], readonly [number, number]];
  /** True where the mean is less sure there than at any of the trials: the place lies outside them. */
  readonly outside: boolean;
  /** dᵀV⁻¹d/2, with d the slope of the surface at a place and V its covariance. */
  statistic(x1: number, x2: number): number;
  /** Whether the level place may be here: statistic ≤ F(level; 2, df). */
  inRegion(x1: number, x2: number): boolean;
  /** How far the region reaches along each factor; −∞ to ∞ where it is not bounded. Worked out when first read. */
  readonly region: RegionLimits;
}

/**
 * Stationary point −B⁻¹b/2 of y = b₀ + bᵀx + xᵀBx, with the confidence region of Box and Hunter.
 * surface: from fitQuadraticSurface. level: of the region, 0.95 for 95 %, between 0 and 1, else throws. No degree of freedom,
 * or a fit that is NaN: kind "ridge" and nothing in the region, since nothing is known.
 * A saddle or a ridge is not an optimum, nor is a place outside the trials.
 * Source: G. E. P. Box and J. S. Hunter, Biometrika 41 (1954) 190–199; NIST/SEMATECH e-Handbook 5.5.3.1.5.
 * The rule that an unbounded region makes a ridge is ours; it does not depend on how the factors are coded.
 * @example stationaryPoint(fitQuadraticSurface(x1, x2, y)).kind // "maximum"
 */
export function stationaryPoint(surface: QuadraticSurface, level = 0.95): StationaryPoint {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, as 0.95, not ${level}`);
  const { coefficients, degreesOfFreedom, leverages, residualSd } = surface.fit;
  invariant(coefficients.length >= 6, "a stationary point needs a full quadratic surface");
  const [, b1, b2, b12, b11, b22] = coefficients as readonly number[] as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const determinant = 4 * b11 * b22 - b12 * b12;
  const x: [number, number] = [
    (b12 * b2 - 2 * b22 * b1) / determinant,
    (b12 * b1 - 2 * b11 * b2) / determinant,
  ];
  const there = surface.at(...x);
  const limit = fQuantile(level, 2, degreesOfFreedom);
  const { statistic, bounded, limits } = levelRegion(surface.fit, x, limit);
  let reached: RegionLimits | undefined;
  const { eigenvalues, eigenvectors } = symmetricEigen(b11, b12 / 2, b22);
  return {
    x,
    y: there.value,
    kind: bounded ? kindOf(eigenvalues) : "ridge",
    eigenvalues,
    eigenvectors,
    outside: !(there.meanSe <= residualSd * Math.sqrt(Math.max(...leverages)) * (1 + 1e-12)),
    statistic,
    inRegion: (x1, x2) => statistic(x1, x2) <= limit,
    get region() {
      reached ??= limits();
      return reached;
    },
  };
}

function kindOf([larger, smaller]: readonly [number, number]): StationaryPoint["kind"] {
  if (larger < 0) return "maximum";
  return smaller > 0 ? "minimum" : "saddle";
}

/** Of the symmetric matrix a c; c b, as (a, c, b). */
function symmetricEigen(
  a: number,
  c: number,
  b: number,
): Pick<StationaryPoint, "eigenvalues" | "eigenvectors"> {
  const middle = (a + b) / 2;
  const reach = Math.hypot((a - b) / 2, c);
  const angle = Math.atan2(2 * c, a - b) / 2;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return {
    eigenvalues: [middle + reach, middle - reach],
    eigenvectors: [
      [cos, sin],
      [-sin, cos],
    ],
  };
}
