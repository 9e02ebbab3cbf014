// Grain measures by the method of moments, in phi.

import type { Issue } from "../issue.ts";
import type { GrainMeasures } from "./folk-ward.ts";
import type { Grading } from "./grading.ts";
import { oneSize, panMidAssumed, panMidNeeded, tooFewSieves, topMidAssumed } from "./grain-issues.ts";
import { grainClasses } from "./mean-size.ts";
import { phiOfMm } from "./percentiles.ts";
import { millimetres, short } from "./short-figure.ts";

export interface MomentOptions {
  /** Phi that grains in the pan count as. */
  readonly panMidPhi?: number;
}

export interface Moments extends GrainMeasures {
  /** Phi that the pan counted as; undefined where it played no part. */
  readonly panMidPhi: number | undefined;
  readonly panPercent: number;
  readonly issues: readonly Issue[];
}

/** A pan under a coarser sieve than No. 200 (0.075 mm; 0.074 in old tables) is too open a class to assume a middle for. */
const FINEST_FOR_DEFAULT_MM = 0.0765;
/** From this share in the pan on, % of the sand, we call the moments doubtful: our own limit. */
const DOUBTFUL_PAN_PERCENT = 5;

/**
 * Moments of the grading by mass, with class middles m in phi and shares f:
 *   mean x̄ = Σfm / Σf; sorting s = √(Σf(m − x̄)² / Σf); skewness Σf(m − x̄)³ / (s³Σf); kurtosis Σf(m − x̄)⁴ / (s⁴Σf)
 * The divisor is N, not N − 1, and kurtosis is 3 for a normal curve (not the excess).
 *
 * panMidPhi: finite, else RangeError. Without it the middle in phi of 0.020 mm and the finest sieve
 * (4.94 under No. 270); where the finest sieve is coarser than No. 200 and the pan holds sand there are no moments.
 * The coarsest class is taken to end at twice its opening.
 * All sand in one class: skewness and kurtosis undefined.
 * Source: mean, sorting and divisor: Folk, Petrology of Sedimentary Rocks; skewness and kurtosis from memory.
 * Folk: with much material in the pan the method is "probably not justified".
 * Example: 5, 10, 30, 20, 5 g in 0–1, 1–2, 2–3, 3–4 phi and a pan of 5 phi: 2.679, 1.063, 0.064, 3.209.
 */
export function phiMoments(grading: Grading, options: MomentOptions = {}): Moments {
  const given = options.panMidPhi;
  if (given !== undefined && !Number.isFinite(given))
    throw new RangeError(`phiMoments: panMidPhi must be a number, got ${given}`);
  const issues: Issue[] = [];
  const classes = grainClasses(grading);
  const pan = grading.fractions.find((fraction) => fraction.openingMm === 0);
  const panPercent = pan && grading.total > 0 ? (100 * pan.mass) / grading.total : 0;
  const none = (issue: Issue): Moments => ({
    meanPhi: undefined,
    sortingPhi: undefined,
    skewness: undefined,
    kurtosis: undefined,
    panMidPhi: undefined,
    panPercent,
    issues: [issue],
  });
  const finest = grading.fractions.findLast((fraction) => fraction.openingMm > 0);
  if (!finest || !(grading.total > 0)) return none(tooFewSieves("moments"));
  if (panPercent > 0 && given === undefined && finest.openingMm > FINEST_FOR_DEFAULT_MM)
    return none(panMidNeeded(short(panPercent), millimetres(finest.openingMm)));

  let panMidPhi: number | undefined;
  const held: { f: number; m: number }[] = [];
  for (const { label, lowerMm, upperMm, mass, openEnd } of classes) {
    if (!(mass > 0)) continue;
    let m = (phiOfMm(lowerMm) + phiOfMm(upperMm)) / 2;
    if (openEnd === "lower") {
      m = given ?? m;
      panMidPhi = m;
      issues.push(panMidAssumed(short(panPercent), short(m), panPercent > DOUBTFUL_PAN_PERCENT));
    }
    if (openEnd === "upper")
      issues.push(
        topMidAssumed(
          short((100 * mass) / grading.total),
          label,
          mass > 0.01 * grading.total ? "warning" : "note",
        ),
      );
    held.push({ f: mass / grading.total, m });
  }
  const mean = held.reduce((sum, { f, m }) => sum + f * m, 0);
  const central = (power: number): number => held.reduce((sum, { f, m }) => sum + f * (m - mean) ** power, 0);
  const spread = Math.sqrt(central(2));
  const sorting = spread < 1e-9 ? 0 : spread;
  if (sorting === 0) issues.push(oneSize("skewness and kurtosis by moments"));
  return {
    meanPhi: mean,
    sortingPhi: sorting,
    skewness: sorting > 0 ? central(3) / sorting ** 3 : undefined,
    kurtosis: sorting > 0 ? central(4) / sorting ** 4 : undefined,
    panMidPhi,
    panPercent,
    issues,
  };
}
