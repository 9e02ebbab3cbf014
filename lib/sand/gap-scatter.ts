// How far a gap's true mean multiplier lies from the curve's: learnt from random sands of known grading.

import type { Gap } from "./gap.ts";
import { type PassingPoint, probitCurve } from "./probit-curve.ts";

/**
 * The scatter is one of ln(u/(1 − u)), where u (0 to 1) says how far the gap's mean multiplier lies from its
 * least towards its greatest possible one: so no draw leaves what is possible. Its score is Student's t.
 * Fitted by maximum likelihood to 15,000 random sands of seven kinds on random home stacks, then widened or
 * narrowed by one factor to cover 95 %; `npm run calibrate` prints the weights of that fit; the factor, the degrees of freedom and the usual roughness were set by the coverage. Status: our own, measured.
 */
export const gapScatterDf = 2.5;
const overall = 1.75;

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

/**
 * Scale of the gap's score. Wider for a wide gap, a rough curve, and a valley between two fuller neighbours.
 * neighbours: the lesser share of the two fractions beside it.
 */
export function gapScatter(gap: Gap, rough: number, neighbours: number): number {
  const features = gapFeatures(gap, rough, neighbours);
  const weights = gapWeights[gap.place];
  return overall * Math.exp(features.reduce((all, feature, i) => all + feature * weights[i]!, 0));
}

/** What the logarithm of the scale is a sum of; the first is 1. */
export function gapFeatures(gap: Gap, rough: number, neighbours: number): readonly number[] {
  const roughPart = Math.log(rough);
  if (gap.place === "top") return [1, roughPart];
  if (gap.place === "pan") return [1, roughPart, Math.log(gap.multipliers.length)];
  const width = Math.log(Math.log(gap.upperMm / gap.lowerMm));
  const small = Math.max(-5, Math.log(Math.max(1e-6, gap.share)));
  return [1, roughPart, width, neighbours > gap.share ? 1 : 0, small];
}
const gapWeights: { readonly [place in Gap["place"]]: readonly number[] } = {
  top: [-0.078, 0.858],
  pan: [-0.812, 1.046, 0.617],
  between: [-1.133, 0.899, 1.145, 0.789, -0.17],
};

/** The curve's line beyond the top sieve runs too coarse by this much. */
export const topLean = 0.3;

/**
 * Errors of neighbouring gaps partly cancel, which single gaps cannot: a factor that falls with the number of
 * gaps that count, (Σw)²/Σw². weights: what each gap could move the number by.
 */
export function gapsAlone(weights: readonly number[]): number {
  const all = weights.reduce((sum, w) => sum + w, 0);
  const squares = weights.reduce((sum, w) => sum + w * w, 0);
  return squares > 0 ? (all ** 2 / squares) ** -aloneFall : 1;
}
const aloneFall = 0.8;
