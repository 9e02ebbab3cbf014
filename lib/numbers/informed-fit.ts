// Least squares through very few points, helped by what is known of the coefficients beforehand.

import { invariant } from "../issue.ts";
import { lowerTriangle } from "./cholesky.ts";
import { normalCumulative } from "./distributions.ts";
import { dot, rowProducts } from "./dot.ts";
import { fitLinear } from "./least-squares.ts";
import { sum } from "./sum.ts";

/** rowᵀb is taken, before any point, as normal about mean with this sd. */
export interface NormalPrior {
  readonly row: readonly number[];
  readonly mean: number;
  readonly sd: number;
}

export interface InformedPrediction {
  readonly mean: number;
  /** Ends of the interval for the mean, and for one new observation. */
  readonly low: number;
  readonly high: number;
  readonly newLow: number;
  readonly newHigh: number;
}

export interface InformedFit {
  /** Posterior mean of the coefficients. */
  readonly coefficients: readonly number[];
  /** At a row of the design; level: 0.95 for 95 %. */
  at(row: readonly number[], level?: number): InformedPrediction;
}

/** σ is taken as if so many degrees of freedom had found this sd before: s₀²ν₀/σ² is χ² of ν₀. */
export interface ScatterPrior {
  readonly sd: number;
  readonly df: number;
}

/** Scatters looked at, evenly on a log scale from so far below what points and prior say to so far above. */
const scatters = 49;
const outTo = 200;

/**
 * y = Xb + scatter σ, with b flat but for the priors, and σ wholly unknown (flat in log σ) or, with scatter, as if
 * df degrees of freedom (up to ten) had found it before. For one σ the priors are
 * further rows of the least squares, weighted 1/sd² against 1/σ² for a point; σ is then averaged over by the
 * posterior p(σ | y) ∝ p(σ)·σ⁻ⁿ·|V|^½·exp(−Q/2), with Q the least sum of squares and V the covariance of b. Intervals are
 * quantiles of that mixture of normals, so that three points against what is known still give a wide one.
 * design, y: as for fitLinear. Without scatter there must be more points than columns, else nothing keeps σ from 0:
 * throws; so does a prior without an sd above 0, and columns that neither points nor priors tell apart.
 * Source: A. Gelman et al., Bayesian Data Analysis, chapter on regression (from memory); against a plain numerical
 * integration in tests/numbers.
 * @example informedFit([[1, 0], [1, 1], [1, 2]], [1, 2, 4], []).coefficients
 */
export function informedFit(
  design: readonly (readonly number[])[],
  y: readonly number[],
  priors: readonly NormalPrior[],
  scatter?: ScatterPrior,
): InformedFit {
  invariant(
    priors.every(({ sd }) => sd > 0 && Number.isFinite(sd)),
    "a prior has a finite sd above 0",
  );
  const rows = [...design, ...priors.map(({ row }) => row)];
  const values = [...y, ...priors.map(({ mean }) => mean)];
  invariant(scatter || y.length > rows[0]!.length, "so few points need a prior of their scatter");
  const start = scatterOf(design, y);
  const before = scatter ?? { sd: start, df: 0 };
  const least = Math.min(start, before.sd) / outTo;
  const reach = Math.log((Math.max(start, before.sd) * outTo) / least);
  const parts = Array.from({ length: scatters }, (_, k) => {
    const sigma = least * Math.exp((reach * k) / (scatters - 1));
    const weights = [...y.map(() => sigma ** -2), ...priors.map(({ sd }) => sd ** -2)];
    const fit = fitLinear(rows, values, { weights });
    invariant(fit.rank === rows[0]!.length, "points and priors cannot tell the coefficients apart");
    const covariance = rowProducts(fit.local.axes.rawColumns(fit.local.root), 1);
    const logRoot = sum(lowerTriangle(covariance).map((line, j) => Math.log(line[j]!)));
    const known = -before.df * (Math.log(sigma) + (before.sd / sigma) ** 2 / 2);
    const logWeight = known - y.length * Math.log(sigma) + logRoot - fit.residualSumOfSquares / 2;
    return { sigma, coefficients: fit.coefficients, covariance, logWeight };
  });
  const largest = Math.max(...parts.map(({ logWeight }) => logWeight));
  const raw = parts.map(({ logWeight }) => Math.exp(logWeight - largest));
  const total = sum(raw);
  const shares = raw.map((one) => (one < 1e-9 * total ? 0 : one / total));
  const coefficients = rows[0]!.map((_, j) =>
    sum(parts.map((part, k) => shares[k]! * part.coefficients[j]!)),
  );
  return {
    coefficients,
    at(row, level = 0.95) {
      const means = parts.map((part) => dot(row, part.coefficients));
      const variances = parts.map(({ covariance }) =>
        dot(
          row,
          covariance.map((line) => dot(line, row)),
        ),
      );
      const sds = variances.map(Math.sqrt);
      const newSds = variances.map((variance, k) => Math.hypot(Math.sqrt(variance), parts[k]!.sigma));
      const end = (p: number, of: readonly number[]): number => mixtureQuantile(p, shares, means, of);
      const tail = (1 - level) / 2;
      return {
        mean: dot(row, coefficients),
        low: end(tail, sds),
        high: end(1 - tail, sds),
        newLow: end(tail, newSds),
        newHigh: end(1 - tail, newSds),
      };
    },
  };
}

/** A scatter to start from: that about the fit without priors where the points have one, else of y. */
function scatterOf(design: readonly (readonly number[])[], y: readonly number[]): number {
  const own = y.length > design[0]!.length ? fitLinear(design, y).residualSd : Number.NaN;
  const whole = fitLinear(
    y.map(() => [1]),
    y,
  ).residualSd;
  const least = 1e-3 * whole;
  return own > least ? own : Math.max(least, Number.MIN_VALUE * 1e10) || 1;
}

function mixtureQuantile(
  p: number,
  shares: readonly number[],
  means: readonly number[],
  sds: readonly number[],
): number {
  const counted = shares.map((_, k) => k).filter((k) => shares[k]! > 0);
  let low = Math.min(...counted.map((k) => means[k]! - 7 * sds[k]!));
  let high = Math.max(...counted.map((k) => means[k]! + 7 * sds[k]!));
  for (let round = 0; round < 40; round++) {
    const middle = (low + high) / 2;
    let below = 0;
    for (let k = 0; k < shares.length; k++) {
      if (shares[k]! > 0) below += shares[k]! * normalCumulative((middle - means[k]!) / sds[k]!);
    }
    if (below < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
