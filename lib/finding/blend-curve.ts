// The grain curve of a blend on the sieves that its sands have in common, with its ±.

import { combine } from "../quantity/combine.ts";
import type { Figure } from "../quantity/figure.ts";
import { blended } from "../sand/blend.ts";
import type { Held } from "../sand/grading.ts";
import { sameSieve } from "../sand/same-sieve.ts";
import type { Sieve } from "../sand/sieve.ts";
import type { BlendTarget } from "./blend-aim.ts";
import type { SandReport } from "./sand-report.ts";

export interface BlendCurvePoint {
  readonly label: string;
  readonly openingMm: number;
  /** % of the dry blend. */
  readonly passing: Figure;
  /** % of the sand whose curve is wanted. */
  readonly wanted?: Figure;
}

export interface BlendCurve {
  /** Coarse to fine. */
  readonly points: readonly BlendCurvePoint[];
  /** Percents on each sieve and in the pan, as a grading takes them. */
  readonly fractions: readonly Held[];
  /** Where the blend lies furthest from what is wanted, blend less wanted, points of what passes. */
  readonly widest?: { readonly label: string; readonly difference: Figure };
}

/** Openings, mm, coarse to fine, of the sieves that every stack has; by the first stack's name for them. */
export function commonSieves(reports: readonly SandReport[]): readonly number[] {
  const [first, ...others] = reports;
  return (first?.sieves ?? [])
    .map(({ openingMm }) => openingMm)
    .filter(
      (mm) => mm > 0 && others.every(({ sieves }) => sieves.some((one) => sameSieve(one.openingMm, mm))),
    );
}

/** What passes the sieve of that opening, which the stack must have. */
export function passingOf({ sieves }: SandReport, mm: number): Figure {
  return sieves.find(({ openingMm }) => sameSieve(openingMm, mm))!.passing;
}

export function blendCurve(
  reports: readonly SandReport[],
  shares: readonly number[],
  sievesMm: readonly number[],
  target: BlendTarget,
): BlendCurve {
  const first = reports[0]!;
  const points = sievesMm.map((mm): BlendCurvePoint => {
    const { label } = first.sieves.find(({ openingMm }) => openingMm === mm)!;
    const passing = combine(
      (values) => blended(shares, values),
      reports.map((report) => passingOf(report, mm)),
      { as: `passing of the blend ${shares.join()}` },
    );
    return {
      label,
      openingMm: mm,
      passing,
      ...(target.kind === "curve" ? { wanted: passingOf(target.report, mm) } : {}),
    };
  });
  const sieveAt = (mm: number): Sieve =>
    first.grading.fractions.find(({ openingMm }) => openingMm === mm)!.sieve!;
  const fractions: Held[] = points.map(({ label, openingMm, passing }, k) => ({
    label,
    sieve: sieveAt(openingMm),
    mass: Math.max(0, (points[k - 1]?.passing.value ?? 100) - passing.value),
  }));
  fractions.push({ label: "pan", mass: Math.max(0, points.at(-1)!.passing.value) });
  const widest = widestOf(points);
  return { points, fractions, ...(widest ? { widest } : {}) };
}

function widestOf(points: readonly BlendCurvePoint[]): BlendCurve["widest"] {
  const apart = points.flatMap(({ label, passing, wanted }) =>
    wanted
      ? [{ label, difference: combine((v) => v[0]! - v[1]!, [passing, wanted], { as: "blend less wanted" }) }]
      : [],
  );
  return apart.reduce<BlendCurve["widest"]>(
    (most, one) => (most && Math.abs(most.difference.value) >= Math.abs(one.difference.value) ? most : one),
    undefined,
  );
}
