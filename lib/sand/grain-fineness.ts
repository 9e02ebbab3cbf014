// The grain fineness number of one sieving, whatever the stack.

import { type Issue, invariant } from "../issue.ts";
import { tenDigits } from "../quantity/print-number.ts";
import { britishFineness } from "./british-fineness.ts";
import { gradingCurve } from "./curve.ts";
import { likelyUnknown, numberEstimated } from "./fineness-issues.ts";
import { fines } from "./fines.ts";
import type { Grading } from "./grading.ts";
import { homeStack, likelyFineness } from "./home-stack.ts";
import { afsClasses } from "./multipliers.ts";
import { readGrading } from "./read-grading.ts";
import { type Screens, screens } from "./screens.ts";

export interface GrainFineness {
  /** Undefined where nothing can be given; the issues say why. */
  readonly gfn: number | undefined;
  readonly scheme: "us" | "british mesh";
  /** Nothing assumed beyond the masses, and every opening taken at its name. Up to 300 where no pan was weighed. */
  readonly possible: { readonly low: number; readonly high: number } | null;
  /**
   * 95 % for how the grains lie between the sieves, and for nothing else: weighings, openings and repeats are in
   * finenessFigure. null where too little of the curve was measured, or no pan.
   */
  readonly likely: { readonly low: number; readonly high: number } | null;
  /** True when some sand lies in a fraction that holds several classes of the scheme. */
  readonly estimated: boolean;
  /** % of the sum retained finer than 0.106 mm (on Nos. 200 and 270 and in the pan); its middle if between sieves. */
  readonly finesPercent: number | undefined;
  readonly screens: Screens | undefined;
  /** Each sieve's share, % of the sum retained, coarse to fine; label as given. */
  readonly shares: readonly { readonly label: string; readonly percent: number }[];
  readonly issues: readonly Issue[];
}

/**
 * Grain fineness number: Σ mass × multiplier / Σ mass, the sum being what was retained, pan included.
 *
 * retained: sieve label → mass, in grams or in percent, one unit for all; 0 or above. Labels as readSieveLabel
 * takes them. scheme "us" (default): the AFS multipliers of Nos. 6 to 270 and the pan; on any other stack the
 * number is an estimate with a possible and a likely range. scheme "british mesh": only on its own stack.
 * The sand must be free of clay: washed and dried, or new sand with under about 0.5 % (common practice).
 * Bad labels or masses give issues and no number. An argument that is no record throws.
 * Source: AFS multipliers as printed in Univ. Técnica Estatal de Quevedo sheets 2019; estimate: home-stack.ts.
 *
 * Example: grainFineness({ retained: { "No. 30": 0.05, "No. 40": 0.15, "No. 50": 0.65, "No. 70": 16.55,
 *   "No. 100": 25.05, "No. 140": 5.75, "No. 200": 0.85, "No. 270": 0.2, pan: 0.25 } }).gfn → 69.12
 */
export function grainFineness(options: {
  readonly retained: Readonly<Record<string, number>>;
  readonly scheme?: "us" | "british mesh";
}): GrainFineness {
  const scheme = options.scheme ?? "us";
  invariant(
    scheme === "us" || scheme === "british mesh",
    `scheme is "us" or "british mesh", not "${scheme}"`,
  );
  const { value: grading, issues } = readGrading(options.retained);
  if (!grading) return { ...nothing, scheme, issues };
  return scheme === "us" ? usFineness(grading, issues) : byBritishMesh(grading, issues);
}

/** The multiplier of the pan. */
const most = afsClasses.at(-1)!.multiplier;

const nothing: Omit<GrainFineness, "scheme" | "issues"> = {
  gfn: undefined,
  possible: null,
  likely: null,
  estimated: false,
  finesPercent: undefined,
  screens: undefined,
  shares: [],
};

/** The same from a grading that is read already. */
export function usFineness(grading: Grading, issues: readonly Issue[] = []): GrainFineness {
  const stack = homeStack(grading);
  const likely = grading.hasPan ? likelyFineness(stack) : undefined;
  const { low, high } = likely ?? {};
  const found = [...issues];
  if (stack.estimated)
    found.push(numberEstimated(stack.possible.low.toFixed(1), stack.possible.high.toFixed(1)));
  if (!likely && grading.hasPan) found.push(likelyUnknown());
  return {
    ...grainsOf(grading),
    gfn: stack.canEstimate ? tenDigits(stack.gfn) : undefined,
    scheme: "us",
    possible: { low: stack.possible.low, high: grading.hasPan ? stack.possible.high : most },
    likely: low === undefined || high === undefined ? null : { low, high },
    estimated: stack.estimated,
    issues: found,
  };
}

function byBritishMesh(grading: Grading, issues: readonly Issue[]): GrainFineness {
  const { value, issues: own } = britishFineness(grading);
  return {
    ...grainsOf(grading),
    gfn: value?.gfn,
    scheme: "british mesh",
    possible: value ? { low: value.gfn, high: value.gfn } : null,
    likely: null,
    estimated: false,
    issues: [...issues, ...own],
  };
}

function grainsOf(grading: Grading): Pick<GrainFineness, "finesPercent" | "screens" | "shares"> {
  const found = fines(gradingCurve(grading));
  return {
    finesPercent: found.percent === undefined ? undefined : tenDigits(found.percent),
    screens: screens(grading),
    shares: grading.fractions.map(({ label, mass }) => ({ label, percent: (100 * mass) / grading.total })),
  };
}
