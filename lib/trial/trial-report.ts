// A whole trial: axis, curves, aim, what limits it, what cannot be told apart, and the batch to make next.

import type { Issue } from "../issue.ts";
import type { TestName, TrialAxis } from "../log/batch.ts";
import { type BatchFigures, batchFigures } from "../log/batch-figures.ts";
import type { Log } from "../log/types.ts";
import { figure } from "../quantity/figure.ts";
import type { Spread } from "../quantity/spread.ts";
import { aimsFromBands } from "../sand/aims-from-bands.ts";
import { type Bond, metalNamed } from "../sand/metals.ts";
import { type AimedCurve, type AimResult, aimFor, aimPlace, bestPlace, gridOver } from "./aim.ts";
import { companionsOf } from "./companions.ts";
import { type Confounded, confounding, type Unchecked, uncheckedCompanions } from "./confounding.ts";
import { type CurveDraws, drawCurves } from "./curve-draws.ts";
import type { LackOfFit } from "./lack-of-fit.ts";
import { type NextTrial, nextTrial } from "./next-trial.ts";
import type { ApartAims, Unreachable } from "./reach.ts";
import { levelCount } from "./response-curve.ts";
import type { TrialSurface } from "./response-surface.ts";
import { axisTests, ownAim, type TrialProperty, trialProperty, type WantedRange } from "./trial-property.ts";
import type { WildBatch } from "./wild-batch.ts";

export interface AxisFigure {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface TrialReport {
  readonly axis: TrialAxis;
  /** Batches that stand on the axis, in the log's order. */
  readonly rows: readonly BatchFigures[];
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
export interface MovedAim {
  readonly x: number;
  readonly chance: number;
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
export const leastLevels = 3;

/**
 * The trial of a log along an axis: what the log says, else moisture where two batches or more have it, else
 * compactability. Aims are the founder's own; a test without one takes the usual range for the log's metal and bond.
 * The aim is worked out over the tests that have both a range and a curve, from five batches at three levels on.
 */
export function trialReport(
  log: Log,
  options: { readonly axis?: TrialAxis; readonly gfn?: number } = {},
): TrialReport {
  const { figures, issues } = batchFigures(log);
  const axis = options.axis ?? log.axis ?? axisOf(figures);
  const placeOf = placer(figures, axis);
  const placed = figures.flatMap((row) => {
    const at = placeOf(row);
    return at ? [{ row, at }] : [];
  });
  const rows = placed.map(({ row }) => row);
  const x = placed.map(({ at }) => {
    const { value, low, high } = figure(at);
    return { value, low, high };
  });
  const places = x.map(({ value }) => value);
  const usual = usualAims(log, options.gfn);
  const wantedOf = (test: TestName): WantedRange | undefined =>
    ownAim(log.aims, test) ?? usual.ranges.get(test);
  const tested = properties.filter(
    (test) => test !== axisTests[axis] && rows.some(({ tests }) => tests[test]),
  );
  const found = tested.map((test) => trialProperty(test, rows, places, wantedOf(test)));
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
    offAxis: figures.filter((row) => !rows.includes(row)).map(({ batch }) => batch.name),
    x,
    levels,
    properties: found,
    axisWanted: axisTest ? wantedOf(axisTest) : undefined,
    result,
    why,
    moved: drawn && { narrower: withEdges(aimed, drawn, -0.1), wider: withEdges(aimed, drawn, 0.1) },
    next: result?.window
      ? nextTrial(aimed, { hit: hitOf(x), width: result.aim.high - result.aim.low })
      : undefined,
    confounded: confounding(companions),
    unchecked: uncheckedCompanions(companions),
    influence: result && rows.length >= 7 ? influenceOf(found, rows, places, result.aim.x) : undefined,
    aimed: aimed.map(({ name }) => name as TestName),
    surfaces: [],
    wild: [],
    lackOfFit: [],
    unreachable: [],
    apart: [],
    atLeast: false,
    gfn: options.gfn,
    issues: [...issues, ...(found.some(({ wanted }) => wanted && !wanted.own) ? usual.issues : [])],
  };
}

function axisOf(figures: readonly BatchFigures[]): TrialAxis {
  const wet = figures.filter(placer(figures, "moisture")).length;
  return wet >= 2 ? "moisture" : "compactability";
}

/**
 * Where a batch stands. Moisture is one kind for the whole axis: as tested where two batches have that, else as weighed
 * in; clay is as weighed in, % of dry mix.
 */
function placer(
  figures: readonly BatchFigures[],
  axis: TrialAxis,
): (row: BatchFigures) => Spread | undefined {
  if (axis === "clay") return ({ recipe }) => recipe?.clayOfDryMixPercent;
  const tested = figures.filter(({ tests }) => tests[axis]).length;
  if (axis === "compactability" || tested >= 2) return ({ tests }) => tests[axis]?.spread;
  return ({ recipe }) => recipe?.moistureOfDampPercent;
}

function usualAims({ metal, bond }: Log, gfn: number | undefined): UsualAims {
  const known = metal === undefined ? undefined : metalNamed(metal);
  if (!known || !bond) return { ranges: new Map(), issues: [] };
  const { aims, issues } = aimsFromBands({
    metal: known,
    bond: bond as Bond,
    ...(gfn === undefined ? {} : { gfn }),
  });
  const ranges = new Map(
    aims.map(({ property, low, high, says }) => [property as TestName, { low, high, says, own: false }]),
  );
  return { ranges, issues };
}

interface UsualAims {
  readonly ranges: ReadonlyMap<TestName, WantedRange>;
  readonly issues: readonly Issue[];
}

function aimedCurve({ test, curve, bias, wanted }: TrialProperty): readonly AimedCurve[] {
  if (!wanted || curve.form === "points only" || test === "moisture" || test === "density") return [];
  return [{ name: test, curve, low: wanted.low, high: wanted.high, ...(bias ? { bias } : {}) }];
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

/** The aim and its chance with every edge moved out by a share of its range, or in for a share below 0. */
function withEdges(aimed: readonly AimedCurve[], drawn: CurveDraws, share: number): MovedAim {
  const moved = aimed.map((one) => {
    const by = share * (one.high - one.low);
    return { ...one, low: one.low - by, high: one.high + by };
  });
  return aimPlace(moved, drawn);
}

/** How closely a place on the axis can be hit: the middle half-width of the figures there. */
function hitOf(x: readonly AxisFigure[]): number {
  const halves = x.map(({ low, high }) => (high - low) / 2).sort((a, b) => a - b);
  return halves[Math.floor(halves.length / 2)] ?? 0;
}

/** Leaves out one batch at a time and looks how far the best place moves. */
function influenceOf(
  found: readonly TrialProperty[],
  rows: readonly BatchFigures[],
  places: readonly number[],
  aim: number,
): TrialReport["influence"] {
  const shifts = rows.map((row, i) => {
    const without = places.map((x, k) => (k === i ? Number.NaN : x));
    const curves = found.flatMap(({ test, wanted }) =>
      aimedCurve(trialProperty(test, rows, without, wanted)),
    );
    if (curves.length === 0) return { batch: row.batch.name, shift: 0 };
    const grid = gridOver(
      Math.max(...curves.map(({ curve }) => curve.from)),
      Math.min(...curves.map(({ curve }) => curve.to)),
    );
    const at = bestPlace(curves, grid, (k, place) => curves[k]!.curve.at(grid[place]!)!.mean);
    return { batch: row.batch.name, shift: at - aim };
  });
  return shifts.sort((a, b) => Math.abs(b.shift) - Math.abs(a.shift))[0];
}
