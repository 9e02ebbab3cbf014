// A fineness number from whatever sieves a founder owns: what is possible, and what is likely.

import { contentOfCall } from "../quantity/content.ts";
import { type Figure, figure } from "../quantity/figure.ts";
import type { Source } from "../quantity/source.ts";
import type { Spread } from "../quantity/spread.ts";
import { constant, shifted } from "../quantity/spread-of.ts";
import { type Gap, gapsOf } from "./gap.ts";
import { gapScatter, gapScatterDf, logit, neighboursCancel, roughness, topLean } from "./gap-scatter.ts";
import type { Grading } from "./grading.ts";
import { insidePoints, type PassingCurve, type PassingPoint, probitCurve } from "./probit-curve.ts";

/** A gap with its mean multiplier: estimated, with the scatter of the estimate. */
export interface FilledGap extends Gap {
  readonly multiplier: number;
  /** Scale of the scatter of ln(u/(1 − u)); 0 where there is one class only. */
  readonly scatter: number;
}

export interface HomeStack {
  readonly gaps: readonly FilledGap[];
  /** The middle of what is possible where canEstimate is false: not a figure to print. */
  readonly gfn: number;
  /** Nothing assumed beyond the masses: each fraction wholly in its coarsest, or its finest, class. */
  readonly possible: { readonly low: number; readonly high: number };
  /** True when some of the sand lies in a fraction that holds several classes. */
  readonly estimated: boolean;
  /** False when too little of the curve was measured to say what is likely. */
  readonly canEstimate: boolean;
}

/** Up to this share on the top sieve is counted as that sieve's own class, as the trade does. */
const topByConvention = 0.02;
/** More than this share beyond the ends of the stack: nothing likely can be said. */
const mostBeyond = 0.5;

/**
 * Fills the gaps of a grading: GFN = Σ share × mean multiplier, with the mean multiplier of a fraction that
 * holds several classes from the curve on log-probability paper.
 * grading: any stack. Where fewer than two points of the curve lie inside the sand, or more than half of the
 * sand lies on the top sieve or in a pan that holds several classes, canEstimate is false and gfn is the
 * middle of what is possible.
 */
export function homeStack(grading: Grading): HomeStack {
  const { gaps, points, canEstimate, multipliers } = fill(grading);
  const open = gaps.filter(isOpen);
  const scattered = canEstimate && open.length > 0;
  const rough = scattered ? roughness(points) : 0;
  const cancelled = neighboursCancel(gaps.map((gap) => gap.share * (most(gap) - least(gap))));
  const filled = gaps.map((gap, k): FilledGap => {
    const multiplier = multipliers[k]!;
    if (!scattered || !isOpen(gap)) return { ...gap, multiplier, scatter: 0 };
    return { ...gap, multiplier, scatter: cancelled * gapScatter(gap, rough) };
  });
  const total = (value: (gap: FilledGap) => number): number =>
    filled.reduce((all, gap) => all + gap.share * value(gap), 0);
  return {
    gaps: filled,
    gfn: total(({ multiplier }) => multiplier),
    possible: { low: total(least), high: total(most) },
    estimated: open.some(({ place, share }) => !(place === "top" && share <= topByConvention)),
    canEstimate,
  };
}

/** The number of homeStack alone, without the scatter; undefined where it cannot be estimated. */
export function stackNumber(grading: Grading): number | undefined {
  const { gaps, canEstimate, multipliers } = fill(grading);
  return canEstimate ? gaps.reduce((all, { share }, k) => all + share * multipliers[k]!, 0) : undefined;
}

/** Gaps with their mean multipliers, before anything is said of the scatter. */
function fill(grading: Grading) {
  const gaps = gapsOf(grading);
  const points = pointsOf(gaps);
  const open = gaps.filter(isOpen);
  const curve = open.length > 0 ? probitCurve(points) : undefined;
  const canEstimate =
    open.length === 0 ||
    (curve !== undefined &&
      insidePoints(points).length >= 2 &&
      open.every(({ place, share }) => place === "between" || share <= mostBeyond));
  const multipliers = gaps.map((gap) => {
    if (!isOpen(gap)) return most(gap);
    return canEstimate ? meanMultiplier(gap, curve!) : (least(gap) + most(gap)) / 2;
  });
  return { gaps, points, canEstimate, multipliers };
}

/** What is likely (95 %), from the scatter of the gaps alone; undefined where nothing likely can be said. */
export function likelyFineness(stack: HomeStack, draws = 4096): Figure | undefined {
  if (!stack.canEstimate) return undefined;
  const parts = stack.gaps.map((gap) => ({ share: gap.share, spread: multiplierSpread(gap, "") }));
  return figure(
    {
      value: stack.gfn,
      sources: parts.flatMap(({ spread }) => spread.sources),
      fill(out, start, drawing) {
        const part = new Float64Array(out.length);
        out.fill(0);
        for (const { share, spread } of parts) {
          spread.fill(part, start, drawing);
          for (let j = 0; j < out.length; j++) out[j]! += share * part[j]!;
        }
      },
    },
    { draws },
  );
}

/** The mean multiplier of one fraction, with the scatter of the gap. about: whose sieving it is. */
export function multiplierSpread(gap: FilledGap, about: string): Spread {
  const { multiplier, scatter } = gap;
  const [low, range] = [least(gap), most(gap) - least(gap)];
  if (scatter === 0 || range === 0) {
    return constant(multiplier);
  }
  const middle = logit((multiplier - low) / range);
  const source: Source = {
    id: `grains between sieves, ${gap.fraction.label}, ${about}`,
    kind: "model",
    shape: { kind: "t", df: gapScatterDf },
    says: gapWords(gap),
  };
  return {
    value: multiplier,
    sources: [source],
    get content() {
      return contentOfCall("multiplier between", undefined, [low, range, shifted(middle, scatter, source)]);
    },
    fill(out, start, drawing) {
      out.fill(middle);
      drawing.add(source, scatter, out, start);
      for (let j = 0; j < out.length; j++) out[j] = low + range / (1 + Math.exp(-out[j]!));
    },
  };
}

/** "how the sand on No. 50 is spread" */
function gapWords({ place, fraction }: Gap): string {
  return place === "pan" ? "how fine the sand in the pan is" : `how the sand on ${fraction.label} is spread`;
}

/** Share finer than each opening, coarse to fine. */
export function pointsOf(gaps: readonly Gap[]): readonly PassingPoint[] {
  let coarser = 0;
  const points: PassingPoint[] = [];
  for (const { lowerMm, share } of gaps) {
    coarser += share;
    if (lowerMm > 0) points.push({ openingMm: lowerMm, passing: Math.max(0, 1 - coarser) });
  }
  return points;
}

function isOpen({ multipliers, share }: Gap): boolean {
  return multipliers.length > 1 && share > 0;
}
export function least({ multipliers }: Gap): number {
  return multipliers[0]!;
}
export function most({ multipliers }: Gap): number {
  return multipliers.at(-1)!;
}

/** Mean multiplier of a fraction by the curve, which is held to the fraction's own ends. */
function meanMultiplier(gap: Gap, curve: PassingCurve): number {
  if (gap.place === "top" && gap.share <= topByConvention) return most(gap);
  const roof = gap.upperMm === Number.POSITIVE_INFINITY ? 1 : curve(gap.upperMm);
  const floor = gap.lowerMm === 0 ? 0 : curve(gap.lowerMm);
  const ends = [roof, ...gap.cutsMm.map((mm) => Math.min(roof, Math.max(floor, curve(mm)))), floor];
  const parts = gap.multipliers.map((_, i) => Math.max(0, ends[i]! - ends[i + 1]!));
  const held = parts.reduce((all, part) => all + part, 0);
  const [low, range] = [least(gap), most(gap) - least(gap)];
  if (held <= 0) return low + range / 2;
  const mean = parts.reduce((all, part, i) => all + part * gap.multipliers[i]!, 0) / held;
  if (gap.place !== "top") return mean;
  return low + range / (1 + Math.exp(-(logit((mean - low) / range) + topLean)));
}
