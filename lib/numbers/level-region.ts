// The places where a fitted quadratic surface may be level: Box and Hunter's confidence region.

import { lowerTriangle } from "./cholesky.ts";
import { dot } from "./dot.ts";
import { largestOverAngles } from "./largest-angle.ts";
import type { LinearFit } from "./linear-fit.ts";

export interface RegionLimits {
  readonly bounded: boolean;
  readonly x1: { readonly low: number; readonly high: number };
  readonly x2: { readonly low: number; readonly high: number };
}

type Two = readonly [number, number];
/** The slopes along x₁ and x₂ as combinations of the coefficients 1, x₁, x₂, x₁x₂, x₁², x₂². */
type Rows = readonly [readonly number[], readonly number[]];
/** 11, 12, 22 of a symmetric matrix. */
type Symmetric = readonly [number, number, number];

/** constant 0: only what grows with x. */
const slopeRows = (x1: number, x2: number, constant: 0 | 1): Rows => [
  [0, constant, 0, x2, 2 * x1, 0],
  [0, 0, constant, x1, 0, 2 * x2],
];

export interface LevelRegion {
  statistic(x1: number, x2: number): number;
  readonly bounded: boolean;
  /** How far it reaches, worked out when asked. */
  limits(): RegionLimits;
}

/**
 * The statistic dᵀV⁻¹d/2 and how far {x: statistic ≤ limit} reaches. centre: the stationary point; limit: F(level; 2, df).
 * Bounded where the statistic stays above the limit far out in every direction; a ray from the centre then leaves the
 * region once. No scatter at all: the region is its centre. A limit or fit that is NaN: not bounded.
 */
export function levelRegion(fit: LinearFit, centre: Two, limit: number): LevelRegion {
  const statistic = (x1: number, x2: number): number => {
    const rows = slopeRows(x1, x2, 1);
    return ratio(slope(rows, fit), covariance(rows, rows, fit));
  };
  const here = slopeRows(...centre, 1);
  const V = covariance(here, here, fit);
  if (V.every((v) => v === 0)) {
    return { statistic, bounded: true, limits: () => limitsAbout(centre, () => 0) };
  }
  const axes = roundAxes(V, fit);
  const least = axes
    ? -largestOverAngles((angle) => -ray(fit, here, V, along(axes, angle)).farOut)
    : Number.NaN;
  if (!axes || !(least > limit)) return { statistic, bounded: false, limits: () => everywhere };
  const reach = (towards: Two): number =>
    largestOverAngles((angle) => {
      const direction = along(axes, angle);
      const { at } = ray(fit, here, V, direction);
      return leavingRadius((r) => at(r) - limit) * dot(towards, direction);
    });
  return { statistic, bounded: true, limits: () => limitsAbout(centre, reach) };
}

const unending = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
const everywhere: RegionLimits = { bounded: false, x1: unending, x2: unending };

function limitsAbout([x1, x2]: Two, reach: (towards: Two) => number): RegionLimits {
  return {
    bounded: true,
    x1: { low: x1 - reach([-1, 0]), high: x1 + reach([1, 0]) },
    x2: { low: x2 - reach([0, -1]), high: x2 + reach([0, 1]) },
  };
}

/** The statistic along centre + r·direction: the slope grows as r from 0 there, V(r) = V + r·V₁ + r²·V₂. */
function ray(
  fit: LinearFit,
  here: Rows,
  V: Symmetric,
  direction: Two,
): { farOut: number; at(r: number): number } {
  const growth = slopeRows(...direction, 0);
  const g = slope(growth, fit);
  const crossed = covariance(here, growth, fit);
  const turned = covariance(growth, here, fit);
  const V1 = crossed.map((v, k) => v + turned[k]!);
  const V2 = covariance(growth, growth, fit);
  const at = (r: number): number =>
    ratio(
      [r * g[0], r * g[1]],
      [V[0] + r * (V1[0]! + r * V2[0]), V[1] + r * (V1[1]! + r * V2[1]), V[2] + r * (V1[2]! + r * V2[2])],
    );
  return { farOut: ratio(g, V2), at };
}

/** Two vectors, the columns of (2B)⁻¹L with L·Lᵀ = V: a circle over them is about the shape of the region. */
function roundAxes([v11, v12, v22]: Symmetric, fit: LinearFit): readonly [Two, Two] | undefined {
  const [, , , h12, b11, b22] = fit.coefficients as readonly number[];
  const determinant = 4 * b11! * b22! - h12! ** 2;
  if (!(v11 > 0 && v22 > 0 && determinant !== 0)) return undefined;
  const lower = lowerTriangle([
    [v11, v12],
    [v12, v22],
  ]);
  const axis = (k: number): Two => {
    const [p, q] = [lower[0]![k]!, lower[1]![k]!];
    return [(2 * b22! * p - h12! * q) / determinant, (2 * b11! * q - h12! * p) / determinant];
  };
  return [axis(0), axis(1)];
}

function along([a, b]: readonly [Two, Two], angle: number): Two {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [c * a[0] + s * b[0], c * a[1] + s * b[1]];
}

function ratio([d1, d2]: Two, [v11, v12, v22]: Symmetric): number {
  return (d1 * d1 * v22 - 2 * d1 * d2 * v12 + d2 * d2 * v11) / (2 * (v11 * v22 - v12 * v12));
}

function slope(rows: Rows, fit: LinearFit): Two {
  return [dot(rows[0], fit.coefficients), dot(rows[1], fit.coefficients)];
}

function covariance(a: Rows, b: Rows, fit: LinearFit): Symmetric {
  const between = (i: 0 | 1, j: 0 | 1): number =>
    dot(
      a[i],
      a[i].map((_, k) => dot(b[j], fit.covariance[k]!)),
    );
  return [between(0, 0), between(0, 1), between(1, 1)];
}

/** Where excess turns from below 0 to above it, going outward. */
function leavingRadius(excess: (radius: number) => number): number {
  let inner = 0;
  let outer = 1;
  while (excess(outer) < 0 && outer < 1e12) [inner, outer] = [outer, 2 * outer];
  for (let round = 0; round < 48; round++) {
    const middle = (inner + outer) / 2;
    if (excess(middle) < 0) inner = middle;
    else outer = middle;
  }
  return (inner + outer) / 2;
}
