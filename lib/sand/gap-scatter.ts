// How far a gap's true mean multiplier lies from the curve's: learnt from random sands of known grading.

import type { Gap } from "./gap.ts";
import { type PassingPoint, probitCurve } from "./probit-curve.ts";

/**
 * The scatter is one of ln(u/(1 − u)), where u (0 to 1) says how far the gap's mean multiplier lies from its
 * least towards its greatest possible one: so no draw leaves what is possible. Its score is Student's t.
 * Weights: by maximum likelihood from 15,000 random sands of seven kinds on random home stacks, their sieves off by what
 * the standard lets them be; `npm run calibrate` prints them, and how often other sands are held by several factors.
 * Set by that: the factor, on the careful side of 95 %; the degrees of freedom; the usual roughness; and how far
 * neighbours cancel, so that stacks of the eleven and stacks of other openings hold alike. Status: our own, measured.
 */
export const gapScatterDf = 4;
export const gapScatterFactor = 1.25;

/**
 * How badly each inner sieve would have been foretold by the others, in the same measure; near 0: a smooth curve.
 * Where few sieves can be foretold the usual roughness of sands weighs in.
 */
export function roughness(points: readonly PassingPoint[]): number {
  let weights = 0;
  let squaredWeights = 0;
  let squares = 0;
  for (let k = 1; k < points.length - 1; k++) {
    const [above, here, below] = [points[k - 1]!, points[k]!, points[k + 1]!];
    const held = above.passing - below.passing;
    const curve = probitCurve(points.filter((point) => point !== here));
    if (held < 0.005 || !curve) continue;
    const seen = logit((above.passing - here.passing) / held);
    const foretold = logit((above.passing - curve(here.openingMm)) / held);
    weights += held ** 2;
    squaredWeights += held ** 4;
    squares += held ** 2 * (seen - foretold) ** 2;
  }
  const count = weights > 0 ? weights ** 2 / squaredWeights : 0;
  const own = weights > 0 ? squares / weights : 0;
  return Math.sqrt((count * own + usualCount * usualRoughness ** 2) / (count + usualCount));
}
const usualRoughness = 0.8;
const usualCount = 0.5;

/** ln(u/(1 − u)), held to ±6.9 so that an empty end stays finite. */
export function logit(u: number): number {
  const held = Math.min(0.999, Math.max(0.001, u));
  return Math.log(held / (1 - held));
}

/** Scale of the gap's score. Wider for a rough curve; between two sieves the wider the classes are, in the pan the more. */
export function gapScatter(gap: Gap, rough: number): number {
  const weights = gapWeights[gap.place];
  const log = gapFeatures(gap, rough).reduce((all, feature, i) => all + feature * weights[i]!, 0);
  return gapScatterFactor * Math.exp(log);
}

/** What the logarithm of the scale is a sum of; the first is 1. */
export function gapFeatures(gap: Gap, rough: number): readonly number[] {
  const roughPart = Math.log(rough);
  if (gap.place === "top") return [1, roughPart];
  const classes = Math.log(gap.multipliers.length);
  if (gap.place === "pan") return [1, roughPart, classes];
  const width = Math.log(Math.log(gap.upperMm / gap.lowerMm));
  const small = Math.max(-5, Math.log(Math.max(1e-6, gap.share)));
  return [1, roughPart, classes, width, small];
}
const gapWeights: { readonly [place in Gap["place"]]: readonly number[] } = {
  top: [0.117, 0.805],
  pan: [-0.346, 0.904, 0.423],
  between: [1.093, 0.698, -1.818, 2.12, -0.26],
};

/** The curve's line beyond the top sieve runs too coarse by this much. */
export const topLean = 0.3;

/**
 * Errors of gaps side by side partly cancel, for the sieve between them was weighed; those of gaps apart do not. The
 * scatter of each is taken times (1 + 2 Σ wₖwₖ₊₁ / Σ wₖ²)^−0.9: 1 for gaps apart, 0.54 for two alike side by side.
 * weights: what each fraction could move the number by, coarse to fine, 0 where it holds one class only.
 */
export function neighboursCancel(weights: readonly number[]): number {
  const squares = weights.reduce((sum, w) => sum + w * w, 0);
  const besides = weights.reduce((sum, w, k) => sum + w * (weights[k + 1] ?? 0), 0);
  return squares > 0 ? (1 + (2 * besides) / squares) ** -cancelFall : 1;
}
const cancelFall = 0.9;
