// A whole trial: axis, curves, aim, what limits it, what cannot be told apart, and the batch to make next.

import type { Issue } from "../issue.ts";
import type { TestName, TrialAxis } from "../log/batch.ts";
import { type BatchFigures, batchFigures } from "../log/batch-figures.ts";
import type { Log } from "../log/types.ts";
import { type AimResult, aimFor } from "./aim.ts";
import { aimedCurve, type MovedAim, testsOf, withEdges } from "./aimed-curves.ts";
import type { AimedCurve } from "./best-place.ts";
import { type BlockAim, blockAims } from "./block-aims.ts";
import { companionsOf } from "./companions.ts";
import { type Confounded, confounding, type Unchecked, uncheckedCompanions } from "./confounding.ts";
import { misfits, wildBatches } from "./curve-checks.ts";
import { drawCurves } from "./curve-draws.ts";
import { influenceOf } from "./influence.ts";
import { type KeptOut, keptOutOf, withCounted } from "./kept-out.ts";
import type { LackOfFit } from "./lack-of-fit.ts";
import { type NextTrial, nextTrial } from "./next-trial.ts";
import { type ApartAims, apartAims, type Unreachable, unreachableAims } from "./reach.ts";
import { levelCount } from "./response-curve.ts";
import type { TrialSurface } from "./response-surface.ts";
import { type AxisFigure, axisFigure, axisOf, hitOf, placer, sharedInPart } from "./trial-axis.ts";
import { axisTests, ownAim, type TrialProperty, trialProperty, type WantedRange } from "./trial-property.ts";
import { trialSurfaces } from "./trial-surfaces.ts";
import { finenessOfTrial, usualAims } from "./usual-aims.ts";
import type { WildBatch } from "./wild-batch.ts";

export type { MovedAim } from "./aimed-curves.ts";
export type { AxisFigure } from "./trial-axis.ts";

export interface TrialReport {
  readonly axis: TrialAxis;
  /** Batches that stand on the axis, in the log's order; none that the log leaves out. */
  readonly rows: readonly BatchFigures[];
  /** Batches that the log leaves out: shown, and part of nothing else in this report. */
  readonly keptOut: readonly KeptOut[];
  /** Both kinds, in the log's order. */
  readonly shown: readonly BatchFigures[];
  /** The same trial with all of the named batches counted, worked out when it is asked for. */
  counting(names: readonly string[]): TrialReport;
  /** Batches that do not, for want of a figure there. */
  readonly offAxis: readonly string[];
  readonly x: readonly AxisFigure[];
  readonly levels: number;
  readonly properties: readonly TrialProperty[];
  /** The founder's or a usual range for the axis itself. */
  readonly axisWanted: WantedRange | undefined;
  /** Undefined where no aim can be given; why says so. */
  readonly result: AimResult | undefined;
  readonly why: "no batches" | "too few batches" | "no aims" | "no curve" | undefined;
  /** The aim of each of two blocks by itself; result is then that of the mean of the batches, which nobody makes. */
  readonly blockAims: readonly BlockAim[];
  /** The aim and the best chance with every edge a tenth of its range narrower, and wider. */
  readonly moved: { readonly narrower: MovedAim; readonly wider: MovedAim } | undefined;
  readonly next: NextTrial | undefined;
  readonly confounded: readonly Confounded[];
  /** What may have gone along with the axis, and the log does not say it. */
  readonly unchecked: readonly Unchecked[];
  /** The single batch that the aim hangs on most, and how far the aim would move without it. */
  readonly influence: { readonly batch: string; readonly shift: number } | undefined;
  /** The tests that the aim is worked out over: the order of each in result.chances. */
  readonly aimed: readonly TestName[];
  /** Properties over two things at once; only where two were varied. */
  readonly surfaces: readonly TrialSurface[];
  /** At most one a property: a batch that does not belong to its curve. */
  readonly wild: readonly WildBatch[];
  /** One for each property that has repeats at a level; a small p: the form of the curve is in doubt. */
  readonly lackOfFit: readonly LackOfFit[];
  /** Aims that no place tried meets. */
  readonly unreachable: readonly Unreachable[];
  /** Pairs of aims, each met somewhere and never together. */
  readonly apart: readonly ApartAims[];
  /** True where aim, chances and window rest on figures whose shared doubt is known only in part: it may be more. */
  readonly atLeast: boolean;
  /** Fineness that the permeability's usual range goes with: as asked for, else by the log's own sieving. */
  readonly gfn: number | undefined;
  readonly issues: readonly Issue[];
}

const properties: readonly TestName[] = [
  "compactability",
  "green compression",
  "green shear",
  "splitting",
  "permeability",
  "moisture",
  "density",
];

/** Fewer batches, or fewer levels, give no chance of meeting an aim. */
export const leastBatches = 5;
const leastLevels = 3;

/**
 * The trial of a log along an axis: what the log says, else moisture where two batches or more have it, else
 * compactability. Aims are the founder's own; a test without one takes the usual range for the log's metal and bond.
 * The aim is worked out over the tests that have both a range and a curve, from five batches at three levels on.
 * @example trialReport(log).properties.map(({ test }) => test)
 */
export function trialReport(
  log: Log,
  options: { readonly axis?: TrialAxis; readonly gfn?: number } = {},
): TrialReport {
  const { figures: all, issues } = batchFigures(log);
  const figures = all.filter(({ batch }) => !batch.keptOut);
  const axis = options.axis ?? log.axis ?? axisOf(figures);
  const placeOf = placer(figures, axis);
  const placed = figures.flatMap((row) => {
    const at = placeOf(row);
    return at ? [{ row, at }] : [];
  });
  const rows = placed.map(({ row }) => row);
  const onAxis = new Set(rows);
  const x = placed.map(({ at }) => {
    return axisFigure(at);
  });
  const places = x.map(({ value }) => value);
  const gfn =
    options.gfn ??
    finenessOfTrial(
      log,
      rows.map(({ batch }) => batch),
    );
  const made = properties.filter((test) => rows.some(({ tests }) => tests[test]));
  const usual = usualAims(log, gfn, made);
  const wantedOf = (test: TestName): WantedRange | undefined =>
    ownAim(log.aims, test) ?? usual.ranges.get(test);
  const tested = made.filter((test) => test !== axisTests[axis]);
  const published = log.bond === "bentonite" ? axis : undefined;
  const found = tested.map((test) => trialProperty(test, rows, places, wantedOf(test), published));
  const levels = levelCount(places);
  const aimed = found.flatMap(aimedCurve);
  const why = whyNone(rows.length, levels, found, aimed);
  const drawn = why ? undefined : drawCurves(aimed, 4096);
  const result = drawn && aimFor(aimed, drawn);
  const axisTest = axisTests[axis];
  const companions = companionsOf(axis, rows, places);
  return {
    axis,
    rows,
    keptOut: keptOutOf(all, placeOf),
    shown: rows.length === figures.length ? all : all.filter((row) => row.batch.keptOut || onAxis.has(row)),
    counting: (names) => trialReport(withCounted(log, names), { ...options, axis }),
    offAxis: figures.filter((row) => !onAxis.has(row)).map(({ batch }) => batch.name),
    x,
    levels,
    properties: found,
    axisWanted: axisTest ? wantedOf(axisTest) : undefined,
    result,
    why,
    blockAims: result
      ? blockAims(
          found,
          places,
          rows.map(({ batch }) => batch.block),
        )
      : [],
    moved: drawn && { narrower: withEdges(aimed, drawn, -0.1), wider: withEdges(aimed, drawn, 0.1) },
    next: result?.window
      ? nextTrial(aimed, { hit: hitOf(x), width: result.aim.high - result.aim.low })
      : undefined,
    confounded: confounding(companions),
    unchecked: uncheckedCompanions(companions),
    influence: result && rows.length >= 7 ? influenceOf(found, rows, places, result.aim.x) : undefined,
    aimed: testsOf(aimed),
    surfaces: trialSurfaces(axis, rows, x, found),
    wild: wildBatches(found, rows),
    lackOfFit: misfits(found, rows, places),
    unreachable: unreachableAims(aimed),
    apart: apartAims(aimed),
    atLeast: result !== undefined && inPart(found, aimed, rows, axis),
    gfn,
    issues: [...issues, ...(found.some(({ wanted }) => wanted && !wanted.own) ? usual.issues : [])],
  };
}

function whyNone(
  batches: number,
  levels: number,
  found: readonly TrialProperty[],
  aimed: readonly AimedCurve[],
): TrialReport["why"] {
  if (batches === 0) return "no batches";
  if (batches < leastBatches || levels < leastLevels) return "too few batches";
  if (!found.some(({ wanted }) => wanted)) return "no aims";
  return aimed.length === 0 ? "no curve" : undefined;
}

/** Of the figures that the aim rests on, and of the places of the batches. */
function inPart(
  found: readonly TrialProperty[],
  aimed: readonly { readonly test: TestName }[],
  rows: readonly BatchFigures[],
  axis: TrialAxis,
): boolean {
  const resting = found.filter(({ test }) => aimed.some((one) => one.test === test));
  const figures = resting.flatMap((property) =>
    property.curve.used.flatMap((i) => property.figures[i] ?? []),
  );
  const axisTest = axisTests[axis];
  const tested = axisTest === undefined ? [] : rows.flatMap(({ tests }) => tests[axisTest] ?? []);
  const places = tested.length >= 2 ? tested : rows.flatMap(({ recipe }) => recipe ?? []);
  return sharedInPart([...figures, ...places]);
}
