// One tested property of a trial: its figures batch by batch, the curve through them, and what is wanted of it.

import type { Aim, TestName, TrialAxis } from "../log/batch.ts";
import type { BatchFigure, BatchFigures } from "../log/batch-figures.ts";
import { type ParabolaOptimum, parabolaOptimum } from "../numbers/parabola-optimum.ts";
import { fitPolynomial } from "../numbers/polynomial-fit.ts";
import { median } from "../numbers/summary.ts";
import { lift } from "../quantity/combine.ts";
import type { Spread } from "../quantity/spread.ts";
import { type ResponseCurve, responseCurve } from "./response-curve.ts";

export interface WantedRange {
  readonly low: number;
  readonly high: number;
  /** Whose range it is, in words. */
  readonly says: string;
  /** The founder's own, from the log; else from a usual range. */
  readonly own: boolean;
}

export interface TrialProperty {
  readonly test: TestName;
  readonly unit: string;
  /** One for each batch of the trial; undefined where it was not tested. */
  readonly figures: readonly (BatchFigure | undefined)[];
  /** Batches whose density lies too far off for their figure to stand on one curve with the rest. */
  readonly leftOut: readonly boolean[];
  /** True where the figures go with density, and that of some batches is not known. */
  readonly densityUnknown: boolean;
  readonly curve: ResponseCurve;
  /** A bias about 0 that all readings share. */
  readonly bias: Spread | undefined;
  /** Where a peaked property turns, by the curve alone; not with blocks, whose offsets it does not know. */
  readonly optimum: ParabolaOptimum | undefined;
  readonly wanted: WantedRange | undefined;
}

/** Properties that rise and fall over moisture or clay; the others only rise or only fall. */
const peaked: readonly TestName[] = [
  "green compression",
  "green shear",
  "splitting",
  "permeability",
  "density",
];
/** Strengths and permeabilities at densities further apart than this are not joined, % of the middle one. */
const densityApartPercent = 3;
const tied: readonly TestName[] = ["green compression", "green shear", "splitting", "permeability"];

/**
 * Every batch counts once, however often it was tested: the scatter about the curve is then that of a batch tested as
 * these were, which is what a new batch has. Weights by repeats would take all scatter for the test's.
 */
export function trialProperty(
  test: TestName,
  rows: readonly BatchFigures[],
  x: readonly number[],
  wanted: WantedRange | undefined,
): TrialProperty {
  const figures = rows.map(({ tests }) => tests[test]);
  const leftOut = tied.includes(test) ? offDensity(rows) : rows.map(() => false);
  const y = figures.map((figure, i) => (figure && !leftOut[i] ? figure.value : Number.NaN));
  const curve = responseCurve(
    {
      x,
      y,
      blocks: rows.map(({ batch }) => batch.block),
    },
    { peaked: peaked.includes(test) },
  );
  return {
    test,
    unit: figures.find((figure) => figure !== undefined)?.unit ?? "",
    figures,
    leftOut,
    densityUnknown: tied.includes(test) && rows.some(({ tests }) => tests[test] && !tests.density),
    curve,
    bias: biasOf(figures),
    optimum:
      curve.form === "curve" && peaked.includes(test) && curve.blocks.length === 0
        ? optimumOf(curve, x, y)
        : undefined,
    wanted,
  };
}

/** True where a batch's specimens were more than 3 % lighter or heavier than the trial's middle one. */
function offDensity(rows: readonly BatchFigures[]): readonly boolean[] {
  const densities = rows.map(({ tests }) => tests.density?.value);
  const known = densities.filter((density) => density !== undefined);
  if (known.length < 3) return rows.map(() => false);
  const middle = median(known);
  return densities.map(
    (density) => density !== undefined && Math.abs(density / middle - 1) > densityApartPercent / 100,
  );
}

/** What all readings share, about 0: the mean over the batches of the shared part less its middle. */
function biasOf(figures: readonly (BatchFigure | undefined)[]): Spread | undefined {
  const shared = figures.flatMap((figure) =>
    figure && figure.shared.sources.length > 0 ? [figure.shared] : [],
  );
  if (shared.length === 0) return undefined;
  const middle = shared.reduce((all, { value }) => all + value, 0);
  return lift((values) => {
    let all = 0;
    for (let i = 0; i < shared.length; i++) all += values[i]!;
    return (all - middle) / shared.length;
  }, shared);
}

function optimumOf(curve: ResponseCurve, x: readonly number[], y: readonly number[]): ParabolaOptimum {
  return parabolaOptimum(
    fitPolynomial(
      curve.used.map((i) => x[i]!),
      curve.used.map((i) => y[i]!),
      2,
    ),
  );
}

/** The founder's own aim for a test. */
export function ownAim(aims: readonly Aim[], test: TestName): WantedRange | undefined {
  const aim = aims.find((one) => one.test === test);
  return aim ? { low: aim.low, high: aim.high, says: "your own aim", own: true } : undefined;
}

export const axisTests: { readonly [axis in TrialAxis]?: TestName } = {
  moisture: "moisture",
  compactability: "compactability",
};
