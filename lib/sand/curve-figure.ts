// The points of a grain curve and the shares of its sieves, each with its ±.

import { invariant } from "../issue.ts";
import { lift } from "../quantity/combine.ts";
import { type Figure, figure } from "../quantity/figure.ts";
import { isSpread, type Spread } from "../quantity/spread.ts";
import { constant, shifted } from "../quantity/spread-of.ts";
import { gradingCurve } from "./curve.ts";
import { gradingOfPortion, openingId, type SievedPortion } from "./fineness-figure.ts";
import type { Grading } from "./grading.ts";
import { repeatScatter } from "./repeats.ts";

export interface SieveFigure {
  readonly label: string;
  /** 0 for the pan. */
  readonly openingMm: number;
  /** % of the sum retained that lies on this sieve, or in the pan. */
  readonly retained: Figure;
  /** % of the sum retained that passes this sieve; 0 for the pan. */
  readonly passing: Figure;
}

/**
 * Mean over the portions of what passes and what is held, % of the sum retained. The ± holds the weighings (one
 * portion) or the scatter between portions (Student's t), and each sieve's opening anywhere in its tolerance,
 * through the slope of the curve there. All portions must have been sieved on one stack; else throws.
 */
export function curveFigures(name: string, portions: readonly SievedPortion[]): readonly SieveFigure[] {
  const gradings = portions.map(gradingOfPortion);
  const first = gradings[0]!;
  const alike = gradings.every(({ fractions }) =>
    fractions.every(({ openingMm }, k) => openingMm === first.fractions[k]?.openingMm),
  );
  invariant(
    alike && gradings.every(({ fractions }) => fractions.length === first.fractions.length),
    "curve figures need portions of one stack",
  );
  const passing = first.fractions.map((_, k) => figure(passingSpread(name, portions, gradings, k)));
  return first.fractions.map(({ label, openingMm }, k) => {
    const above = k === 0 ? constant(100) : passing[k - 1]!;
    return {
      label,
      openingMm,
      passing: passing[k]!,
      retained: figure(lift((v) => v[0]! - v[1]!, [above, passing[k]!], "first less second")),
    };
  });
}

function passingSpread(
  name: string,
  portions: readonly SievedPortion[],
  gradings: readonly Grading[],
  k: number,
): Spread {
  const fraction = gradings[0]!.fractions[k]!;
  if (!fraction.sieve) return constant(0);
  const shares = gradings.map((grading) => passingPercent(grading, k));
  const scatter = repeatScatter(shares);
  const weighed = scatter
    ? shifted(scatter.mean, scatter.sd / Math.sqrt(shares.length), {
        id: `scatter of what passes ${fraction.label}, ${name}`,
        kind: "repeat",
        shape: { kind: "t", df: scatter.degreesOfFreedom },
      })
    : weighedPassing(portions[0]!, gradings[0]!, k);
  const opening = shifted(0, slopePerTolerance(gradings[0]!, k) / (portions[0]!.setChecked ? 3 : 1), {
    id: openingId(fraction.sieve, portions[0]!, name),
    kind: "rig",
    shape: { kind: "rectangular" },
  });
  return lift((v) => Math.min(100, Math.max(0, v[0]! - v[1]!)), [weighed, opening], "passing an opening");
}

function passingPercent({ fractions, total }: Grading, k: number): number {
  return (100 * fractions.slice(k + 1).reduce((all, { mass }) => all + mass, 0)) / total;
}

function weighedPassing({ held }: SievedPortion, { fractions }: Grading, k: number): Spread {
  const masses = new Map(held.map(({ label, mass }) => [label, mass]));
  const inputs = fractions.map(({ label }) => masses.get(label)!);
  if (!inputs.some(isSpread))
    return constant(passingPercent({ fractions, total: totalOf(fractions), hasPan: true }, k));
  return lift(
    (v) => {
      let finer = 0;
      let total = 0;
      for (let i = 0; i < inputs.length; i++) {
        const mass = Math.max(0, v[i]!);
        total += mass;
        if (i > k) finer += mass;
      }
      return (100 * finer) / total;
    },
    inputs,
    `finer than fraction ${k}`,
  );
}

const totalOf = (fractions: Grading["fractions"]): number =>
  fractions.reduce((all, { mass }) => all + mass, 0);

/** % of the sand that lies within one tolerance of the opening, by the mean slope of the curve's two pieces there. */
function slopePerTolerance(grading: Grading, k: number): number {
  const { points } = gradingCurve(grading);
  const here = points[k]!;
  const sieve = grading.fractions[k]!.sieve!;
  const slopes = [points[k - 1], points[k + 1]].flatMap((beside) =>
    beside
      ? [(beside.passingPercent - here.passingPercent) / Math.log(beside.openingMm / here.openingMm)]
      : [],
  );
  const slope = slopes.reduce((all, one) => all + one, 0) / Math.max(1, slopes.length);
  return slope * (sieve.toleranceMm / sieve.openingMm);
}
