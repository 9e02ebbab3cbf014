// Everything that the sievings of one sand say, worked out once for findings, charts and tables.

import type { Issue } from "../issue.ts";
import { practiceIssues } from "../log/practice-issues.ts";
import { sievedPortion, sievingBalance } from "../log/sieved-portion.ts";
import type { Log, Sand, Sieving } from "../log/types.ts";
import { mean } from "../numbers/summary.ts";
import { type PrintedFigure, printFigure } from "../quantity/print.ts";
import { type Concentration, concentration } from "../sand/concentration.ts";
import { type Curve, gradingCurve } from "../sand/curve.ts";
import { curveFigures, type SieveFigure } from "../sand/curve-figure.ts";
import {
  type FinenessFigure,
  type FinenessQuestion,
  finenessFigure,
  gradingOfPortion,
} from "../sand/fineness-figure.ts";
import { type Fines, fines } from "../sand/fines.ts";
import { type Gap, gapGraded } from "../sand/gap-graded.ts";
import { type Grading, gradingOf } from "../sand/grading.ts";
import { type GrainStatistics, gradingStatistics } from "../sand/grain-statistics.ts";
import { homeStack } from "../sand/home-stack.ts";
import type { MassBalance } from "../sand/mass-balance.ts";
import { type NextSieve, nextSieves } from "../sand/next-sieve.ts";
import { pooledRepeatScatter } from "../sand/repeats.ts";
import { type Screens, screens } from "../sand/screens.ts";
import { type SpecificSurface, specificSurface } from "../sand/specific-surface.ts";
import { type Uniformity, uniformity } from "../sand/uniformity.ts";

export interface SandReport {
  readonly sand: Sand;
  /** Those that can be worked out; the log's issues tell of the others. */
  readonly sievings: readonly Sieving[];
  readonly fineness: FinenessFigure;
  /** Undefined where the stack is too poor to say what is likely. */
  readonly printed: PrintedFigure | undefined;
  /** What nothing but the masses allow, over all portions. */
  readonly possible: { readonly low: number; readonly high: number };
  /** False for used or natural sand sieved with its clay: what the sieves held is shown, and is no fineness. */
  readonly trusted: boolean;
  /** Mean of the portions in % where they were sieved on one stack, else the first portion. */
  readonly grading: Grading;
  readonly curve: Curve;
  /** Points of the curve and shares of the sieves, with their ±: of the portions that grading is the mean of. */
  readonly sieves: readonly SieveFigure[];
  readonly statistics: GrainStatistics;
  readonly fines: Fines;
  readonly screens: Screens;
  readonly three: Concentration | undefined;
  readonly four: Concentration | undefined;
  readonly uniformity: Uniformity;
  readonly surface: SpecificSurface;
  readonly gaps: readonly Gap[];
  readonly nextSieves: readonly NextSieve[];
  readonly balances: readonly { readonly sieving: Sieving; readonly balance: MassBalance }[];
  /** Crowded sieves, portions that do not suit the frame or the scale, losses; each about this sand. */
  readonly issues: readonly Issue[];
}

/** The smallest and the largest number that the classes allow. */
export const finenessLimits = { min: 3, max: 300 } as const;

/**
 * A report for each sand of the log that has a usable sieving, in the log's order.
 * @example sandReports(log)[0]?.fineness.figure.value
 */
export function sandReports(log: Log): readonly SandReport[] {
  const sieved = log.sands.filter((sand) => usable(sand).length > 0);
  const pooled = [pooledScatter(sieved, "grab"), pooledScatter(sieved, "split")].find(
    (one) => one !== undefined,
  );
  return sieved.map((sand) => sandReport(sand, log.bond, pooled));
}

function usable({ sievings }: Sand): readonly Sieving[] {
  return sievings.filter((sieving) => sieving.usable);
}

/** What one kind of repeat teaches of the scatter of one sieving, over all sands of the log: kinds are never mixed. */
function pooledScatter(sands: readonly Sand[], of: "split" | "grab"): FinenessQuestion["pooled"] {
  const groups = sands
    .filter((sand) => repeatKind(sand) === of)
    .map((sand) => usable(sand).map((sieving) => homeStack(gradingOfPortion(sievedPortion(sieving))).gfn));
  const pooled = pooledRepeatScatter(groups);
  return pooled && { ...pooled, of };
}

/** grab only where every sieving of the sand is one; undefined for a single sieving. */
function repeatKind(sand: Sand): "split" | "grab" | undefined {
  const sievings = usable(sand);
  if (sievings.length < 2) return undefined;
  return sievings.every((sieving) => sieving.repeatOf === "grab") ? "grab" : "split";
}

function sandReport(sand: Sand, bond: string | undefined, known: FinenessQuestion["pooled"]): SandReport {
  const sievings = usable(sand);
  const portions = sievings.map(sievedPortion);
  const repeatOf = repeatKind(sand);
  // A sand with repeats of its own takes only the same kind of repeat from others.
  const pooled = repeatOf === undefined || known?.of === repeatOf ? known : undefined;
  const fineness = finenessFigure({
    name: sand.name,
    portions,
    ...(repeatOf ? { repeatOf } : {}),
    ...(pooled ? { pooled } : {}),
  });
  const { figure, missing, stacks } = fineness;
  const estimated = stacks.every(({ canEstimate }) => canEstimate);
  const gradings = portions.map(gradingOfPortion);
  const together = gradings.every((grading) => openings(grading) === openings(gradings[0]!))
    ? portions
    : portions.slice(0, 1);
  const grading = meanGrading(gradings.slice(0, together.length));
  const curve = gradingCurve(grading);
  return {
    sand,
    sievings,
    fineness,
    printed: estimated
      ? printFigure({
          value: figure.value,
          low: figure.low,
          high: figure.high,
          atLeast: missing.length > 0,
          ...finenessLimits,
        })
      : undefined,
    possible: {
      low: mean(stacks.map(({ possible }) => possible.low)),
      high: mean(stacks.map(({ possible }) => possible.high)),
    },
    trusted: !(
      (sand.state === "used" || bond === "natural") &&
      sievings.some(({ washed }) => washed !== true)
    ),
    grading,
    curve,
    sieves: curveFigures(sand.name, together),
    statistics: gradingStatistics(grading),
    fines: fines(curve),
    screens: screens(grading),
    three: concentration(grading, 3),
    four: concentration(grading, 4),
    uniformity: uniformity(curve),
    surface: specificSurface(grading),
    gaps: gapGraded(grading).gaps,
    nextSieves: nextSieves(grading),
    balances: sievings.flatMap((sieving) => {
      const balance = sievingBalance(sieving);
      return balance ? [{ sieving, balance }] : [];
    }),
    issues: sievings.flatMap((sieving) => practiceIssues(sand, sieving)),
  };
}

const openings = ({ fractions }: Grading): string => fractions.map(({ openingMm }) => openingMm).join("|");

/** Mean shares in %, of gradings on one stack. */
function meanGrading(gradings: readonly Grading[]): Grading {
  const first = gradings[0]!;
  if (gradings.length === 1) return first;
  return gradingOf(
    first.fractions.map((fraction, k) => ({
      ...fraction,
      mass: mean(gradings.map(({ fractions, total }) => (100 * fractions[k]!.mass) / total)),
    })),
  );
}
