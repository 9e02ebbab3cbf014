// What a sieving says about size, width and shape of the curve.

import type { Issue } from "../issue.ts";
import { type Curve, type CurveOptions, gradingCurve, sizeAtPassing } from "./curve.ts";
import { folkWard, type GrainMeasures } from "./folk-ward.ts";
import type { Grading } from "./grading.ts";
import { beyondCoarsestSieve, beyondFinestSieve, curveExtended, tooFewSieves } from "./grain-issues.ts";
import { type MomentOptions, phiMoments } from "./moments.ts";
import { phiPercentiles } from "./percentiles.ts";
import { readGrading } from "./read-grading.ts";
import { millimetres, short } from "./short-figure.ts";

export interface GrainStatistics {
  /** Sizes that 10, 30, 50, 60, 90 % of the sand pass, mm; undefined beyond the stack. */
  readonly d10Mm: number | undefined;
  readonly d30Mm: number | undefined;
  readonly d50Mm: number | undefined;
  readonly d60Mm: number | undefined;
  readonly d90Mm: number | undefined;
  /** Cu = D60 / D10. */
  readonly uniformity: number | undefined;
  /** Cc = D30² / (D60 × D10). */
  readonly curvature: number | undefined;
  /** Folk and Ward's graphic measures; kurtosis is 1 for a normal curve. */
  readonly graphic: GrainMeasures;
  /** By moments over phi; kurtosis is 3 for a normal curve. */
  readonly moment: GrainMeasures;
  /** What the moments took the pan for; undefined where it played no part. */
  readonly panMidPhi: number | undefined;
  readonly issues: readonly Issue[];
}

export type GrainStatisticsOptions = CurveOptions & MomentOptions;

const NO_MEASURES: GrainMeasures = {
  meanPhi: undefined,
  sortingPhi: undefined,
  skewness: undefined,
  kurtosis: undefined,
};

/**
 * Grain statistics of a sieving: D-values, Cu and Cc, Folk and Ward's graphic measures, moments.
 *
 * retained: mass on each sieve by its label, and in the pan, g or % (any one unit): { "No. 40": 0.15, …, pan: 0.25 }.
 * panMidPhi: phi that grains in the pan count as, for the moments only (see phiMoments for what stands in).
 * extendEnds: carry the curve past the stack where a percentile lies beyond it. Default: no figure and an issue.
 * Faulty labels or masses: every figure undefined and the issues say why. Without a pan the figures hold for what
 * stayed on the sieves.
 * Sources: curve straight over ln d, common practice; Cu, Cc as in ASTM D2487 (from memory); Folk & Ward 1957.
 * @example
 * grainStatistics({ retained: { "No. 30": 0.05, "No. 40": 0.15, "No. 50": 0.65, "No. 70": 16.55,
 *  "No. 100": 25.05, "No. 140": 5.75, "No. 200": 0.85, "No. 270": 0.2, pan: 0.25 } })
 * // { d50Mm: 0.192, uniformity: 1.55 }
 */
export function grainStatistics(
  input: { readonly retained: Readonly<Record<string, number>> } & GrainStatisticsOptions,
): GrainStatistics {
  const { value, issues } = readGrading(input.retained);
  if (!value) return { ...statisticsOfNothing, issues };
  const statistics = gradingStatistics(value, input);
  return { ...statistics, issues: [...issues, ...statistics.issues] };
}

const statisticsOfNothing = {
  d10Mm: undefined,
  d30Mm: undefined,
  d50Mm: undefined,
  d60Mm: undefined,
  d90Mm: undefined,
  uniformity: undefined,
  curvature: undefined,
  graphic: NO_MEASURES,
  moment: NO_MEASURES,
  panMidPhi: undefined,
};

/**
 * The same for a grading that was read already.
 * Source: that of grainStatistics.
 * @example gradingStatistics(readGrading({ "No. 50": 1, "No. 70": 2, pan: 1 }).value!).d50Mm // 0.252
 */
export function gradingStatistics(grading: Grading, options: GrainStatisticsOptions = {}): GrainStatistics {
  const curve = gradingCurve(grading);
  const size = (percent: number): number | undefined => sizeAtPassing(curve, percent, options).value;
  const [d10Mm, d30Mm, d50Mm, d60Mm, d90Mm] = [size(10), size(30), size(50), size(60), size(90)];
  const graphic = folkWard(phiPercentiles(curve, options));
  const { issues: momentIssues, panMidPhi, panPercent: _, ...moment } = phiMoments(grading, options);
  return {
    d10Mm,
    d30Mm,
    d50Mm,
    d60Mm,
    d90Mm,
    uniformity: coefficientOfUniformity(d10Mm, d60Mm),
    curvature: coefficientOfCurvature(d10Mm, d30Mm, d60Mm),
    graphic,
    moment,
    panMidPhi,
    issues: [...reachIssues(curve, options.extendEnds === true), ...momentIssues],
  };
}

/** Cu = D60 / D10, ≥ 1; undefined where either is. Example: 0.51 and 0.082 mm: 6.22. */
export function coefficientOfUniformity(
  d10Mm: number | undefined,
  d60Mm: number | undefined,
): number | undefined {
  return d10Mm === undefined || d60Mm === undefined ? undefined : d60Mm / d10Mm;
}

/** Cc = D30² / (D60 × D10); undefined where any is. Example: 0.082, 0.29, 0.51 mm: 2.01. */
export function coefficientOfCurvature(
  d10Mm: number | undefined,
  d30Mm: number | undefined,
  d60Mm: number | undefined,
): number | undefined {
  return d10Mm === undefined || d30Mm === undefined || d60Mm === undefined
    ? undefined
    : d30Mm ** 2 / (d60Mm * d10Mm);
}

/** Each percentile by % passing, and what is lost without it. */
const NEEDS: readonly (readonly [passing: number, figure: string])[] = [
  [95, "φ5 (graphic sorting, skewness, kurtosis)"],
  [90, "D90"],
  [84, "φ16 (all graphic measures)"],
  [75, "φ25 (graphic kurtosis)"],
  [60, "D60 (Cu, Cc)"],
  [50, "D50 (φ50)"],
  [30, "D30 (Cc)"],
  [25, "φ75 (graphic kurtosis)"],
  [16, "φ84 (all graphic measures)"],
  [10, "D10 (Cu, Cc)"],
  [5, "φ95 (graphic sorting, skewness, kurtosis)"],
];

/** One issue for each end of the stack, with everything that the end costs. */
function reachIssues(curve: Curve, extend: boolean): Issue[] {
  const lost = { coarse: [] as string[], fine: [] as string[], extended: [] as string[] };
  for (const [passing, figure] of NEEDS) {
    if (sizeAtPassing(curve, passing).value !== undefined) continue;
    const carried = extend && sizeAtPassing(curve, passing, { extendEnds: true }).value !== undefined;
    const beyondCoarse = passing > (curve.points[0]?.passingPercent ?? 100);
    lost[carried ? "extended" : beyondCoarse ? "coarse" : "fine"].push(figure);
  }
  const issues: Issue[] = [];
  const first = curve.points[0];
  const last = curve.points.at(-1);
  if (!first) return [tooFewSieves("sizes and graphic measures")];
  if (lost.coarse.length > 0)
    issues.push(
      beyondCoarsestSieve(
        first.label,
        millimetres(first.openingMm),
        short(first.coarserPercent),
        lost.coarse.join(", "),
      ),
    );
  if (last && lost.fine.length > 0)
    issues.push(
      beyondFinestSieve(
        last.label,
        millimetres(last.openingMm),
        short(last.passingPercent),
        lost.fine.join(", "),
      ),
    );
  if (lost.extended.length > 0) issues.push(curveExtended(lost.extended.join(", ")));
  return issues;
}
