// One tested property of a trial: its figures batch by batch, the curve through them, and what is wanted of it.

import type { Aim, TestName, TrialAxis } from "../log/batch.ts";
import type { BatchFigure, BatchFigures } from "../log/batch-figures.ts";
import { type ParabolaOptimum, turningPoint } from "../numbers/parabola-optimum.ts";
import type { Spread } from "../quantity/spread.ts";
import { offDensity } from "./density-span.ts";
import { publishedSlope } from "./published-slopes.ts";
import { type ResponseCurve, responseCurve } from "./response-curve.ts";
import { sharedBias } from "./shared-bias.ts";

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
  /** Where a peaked property turns, by the curve alone; with blocks, by the curve that they share. */
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
/** Strengths and permeabilities at densities too far apart are not joined. */
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
  /** The axis of a trial of bentonite sand: then a published slope may help where batches are few. */
  published?: TrialAxis,
): TrialProperty {
  const figures = rows.map(({ tests }) => tests[test]);
  const leftOut = tied.includes(test)
    ? offDensity(rows.map(({ tests }) => tests.density?.value))
    : rows.map(() => false);
  const curve = curveThroughRows({ test, figures, leftOut }, rows, x, published);
  return {
    test,
    unit: figures.find((figure) => figure !== undefined)?.unit ?? "",
    figures,
    leftOut,
    densityUnknown: tied.includes(test) && rows.some(({ tests }) => tests[test] && !tests.density),
    curve,
    bias: sharedBias(figures.flatMap((figure) => figure?.shared ?? [])),
    optimum: curve.form === "curve" && peaked.includes(test) ? optimumOf(curve) : undefined,
    wanted,
  };
}

/** The curve of a property alone, through rows at the places x; NaN leaves a row out. */
export function curveThroughRows(
  { test, figures, leftOut }: Pick<TrialProperty, "test" | "figures" | "leftOut">,
  rows: readonly BatchFigures[],
  x: readonly number[],
  published?: TrialAxis,
): ResponseCurve {
  const y = figures.map((figure, i) => (figure && !leftOut[i] ? figure.value : Number.NaN));
  const prior = published && {
    published: (at: readonly number[], of: readonly number[]) => publishedSlope(test, published, at, of),
  };
  return responseCurve(
    { x, y, blocks: rows.map(({ batch }) => batch.block) },
    { peaked: peaked.includes(test), ...prior },
  );
}

function optimumOf({ fit, from, to, at }: ResponseCurve): ParabolaOptimum {
  const { coefficients, covariance, degreesOfFreedom } = fit!;
  const turn = turningPoint(
    coefficients.slice(1, 3),
    covariance.slice(1, 3).map((line) => line.slice(1, 3)),
    degreesOfFreedom,
  );
  const raw = (u: number): number => (from + to) / 2 + ((to - from) / 2) * u;
  const x = raw(turn.x);
  return { ...turn, x, y: at(x)!.mean, low: raw(turn.low), high: raw(turn.high) };
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
