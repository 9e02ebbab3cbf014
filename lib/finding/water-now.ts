// How much water the sand wants now, from the last batch, by moisture and by compactability.

import { type BatchFigure, type BatchFigures, batchFigures } from "../log/batch-figures.ts";
import { heapFigure } from "../log/heap.ts";
import type { Log } from "../log/types.ts";
import { lift } from "../quantity/combine.ts";
import { type Figure, figure } from "../quantity/figure.ts";
import type { Spread } from "../quantity/spread.ts";
import { constant, spread } from "../quantity/spread-of.ts";
import { type FirstDose, firstDoseByCompactabilityKg, firstDoseKg } from "../sand/first-dose.ts";
import { publishedWaterSensitivity } from "../sand/published-water-sensitivity.ts";
import type { ResponseCurve } from "../trial/response-curve.ts";
import { ownAim, type WantedRange } from "../trial/trial-property.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { curveSlope } from "./curve-slope.ts";
import { endsOf } from "./ends.ts";
import { aimSpread, closedAim, heightAtAim } from "./tube-aim.ts";

/** What says how much water moves compactability by how much. */
export type SlopeFrom = "your own curve" | "your batches and a published slope" | "published slopes alone";

export interface WaterNow {
  /** The batch that the heap is taken to be like. */
  readonly batch: string;
  readonly by: "moisture" | "compactability";
  /** % of damp mass, or % of height. */
  readonly from: Figure;
  readonly to: Figure;
  readonly toIs: "the aim of this trial" | "the middle of your own aim" | "the middle of a usual range";
  /** Points of moisture for 10 of compactability, for a dose by compactability. */
  readonly sensitivityPercent?: Figure;
  readonly slopeFrom?: SlopeFrom;
  /** What the instrument's own ± comes to, points of moisture: the finer one is the one to test again with. */
  readonly tellsPoints: number;
  /** For 10 kg of damp heap. */
  readonly per10: FirstDose;
  /** For the log's heap, where its mass is known. */
  readonly heap?: { readonly massKg: Figure; readonly dose: FirstDose };
  /** True where a part of the doubt is not known: the need may lie further off. */
  readonly atLeast: boolean;
}

/**
 * The first dose for sand like the last batch (by date, then order), by moisture and by compactability as far as the
 * log tells, the surer need first. To: the trial's aim where it is bounded, else the middle of the founder's own aim, else
 * of a usual range. By compactability: through the slope of the trial's own curve between here and there (points of
 * moisture for 10 of compactability), else, for bentonite sand, through what others have found (publishedSensitivity):
 * so in a trial of clay, where the water only follows. Empty where there is nothing to aim for.
 * Doses: firstDoseKg, firstDoseByCompactabilityKg.
 * @example waterNow(trialReport(log), log)
 */
export function waterNow(report: TrialReport, log: Log): readonly WaterNow[] {
  // One batch stands on no axis of a trial, and is enough for a dose.
  const last = lastBatch(report.rows.length > 0 ? report.rows : batchFigures(log).figures);
  if (!last) return [];
  const heap = heapFigure(log);
  const found = [
    byMoisture(report, log, last, heap?.figure),
    byCompactability(report, log, last, heap?.figure),
  ];
  const doses = found.filter((one) => one !== undefined);
  const missing = (heap?.missing.length ?? 0) > 0;
  return doses
    .map((one) => ({ ...one, atLeast: one.atLeast || missing }))
    .sort((a, b) => widthOf(a) - widthOf(b));
}

/** Half-width of the whole need for 10 kg, kg. */
function widthOf({ per10 }: WaterNow): number {
  const { low, high } = per10.verdict === "too wet" ? per10.loseKg : per10.inAllKg;
  return (high - low) / 2;
}

/** Half-width; of a figure without a known ± without end, so that it carries no decision. */
function halfOf(one: Spread): number {
  const { low, high } = endsOf(one);
  return low < high ? (high - low) / 2 : Number.POSITIVE_INFINITY;
}

/** The batch made last: the latest date, then the greatest order, then the log's own order. */
export function lastBatch(rows: readonly BatchFigures[]): BatchFigures | undefined {
  return [...rows].reduce<BatchFigures | undefined>((last, row) => {
    if (!last) return row;
    const [a, b] = [last.batch, row.batch];
    if ((a.date ?? "") !== (b.date ?? "")) return (b.date ?? "") > (a.date ?? "") ? row : last;
    if (a.order !== undefined && b.order !== undefined) return b.order > a.order ? row : last;
    return row;
  }, undefined);
}

type To = {
  readonly spread: Spread;
  readonly is: WaterNow["toIs"];
  /** The range that the middle is of. */
  readonly range?: { readonly low: number; readonly high: number };
};

/** Of sand that lies within the range already any place there will do: it is not too wet for lying off the middle. */
function forSandAt(value: number, { spread: middle, is, range }: To): To {
  if (!range || value < range.low || value > range.high || !Number.isFinite(range.high - range.low))
    return { spread: middle, is };
  const halfWidth = (range.high - range.low) / 2;
  const source = "anywhere within the range that is wanted";
  return { is, spread: spread({ mean: middle.value, halfWidth, kind: "rectangular", source }) };
}

function byMoisture(
  report: TrialReport,
  log: Log,
  { batch, tests }: BatchFigures,
  heapKg: Figure | undefined,
): WaterNow | undefined {
  const wanted =
    report.axis === "moisture" ? (aimOf(report) ?? wantedTo(report.axisWanted)) : ownTo(log, "moisture");
  if (!tests.moisture || !wanted) return undefined;
  const to = forSandAt(tests.moisture.value, wanted);
  const dose = (mass: Figure | number): FirstDose =>
    firstDoseKg({
      heapKg: mass,
      fromOfDampPercent: tests.moisture!.spread,
      toOfDampPercent: to.spread,
    });
  return {
    batch: batch.name,
    by: "moisture",
    from: figure(tests.moisture.spread),
    tellsPoints: halfOf(tests.moisture.spread),
    to: figure(to.spread),
    toIs: to.is,
    per10: dose(10),
    ...(heapKg ? { heap: { massKg: heapKg, dose: dose(heapKg) } } : {}),
    atLeast: tests.moisture.missing.length > 0,
  };
}

function byCompactability(
  report: TrialReport,
  log: Log,
  { batch, tests }: BatchFigures,
  heapKg: Figure | undefined,
): WaterNow | undefined {
  const from = tests.compactability;
  if (!from) return undefined;
  const found =
    report.axis === "compactability" ? overItself(report, log) : overMoisture(report, log, tests.moisture);
  if (!found) return undefined;
  const { sensitivity, slopeFrom } = found;
  const to = forSandAt(from.value, found.to);
  const dose = (mass: Figure | number): FirstDose =>
    firstDoseByCompactabilityKg({
      heapKg: mass,
      fromCompactabilityPercent: from.spread,
      toCompactabilityPercent: to.spread,
      sensitivityPercent: sensitivity,
      ...(tests.moisture ? { moistureOfDampPercent: tests.moisture.spread } : {}),
    });
  return {
    batch: batch.name,
    by: "compactability",
    from: figure(from.spread),
    tellsPoints: (halfOf(from.spread) * sensitivity.value) / 10,
    to: figure(to.spread),
    toIs: to.is,
    sensitivityPercent: figure(sensitivity),
    slopeFrom,
    per10: dose(10),
    ...(heapKg ? { heap: { massKg: heapKg, dose: dose(heapKg) } } : {}),
    atLeast: from.missing.length > 0,
  };
}

interface Sensitivity {
  readonly to: To;
  /** Points of moisture for 10 of compactability. */
  readonly sensitivity: Spread;
  readonly slopeFrom: SlopeFrom;
}

/** Compactability as a curve over moisture: its height at the aim, and ten over its slope. */
function overMoisture(report: TrialReport, log: Log, now: BatchFigure | undefined): Sensitivity | undefined {
  const wet = report.axis === "moisture";
  const property = report.properties.find(({ test }) => test === "compactability");
  const result = wet && report.result?.window && closedAim(report) ? report.result : undefined;
  const aim = result?.aim;
  const height = result && property && heightAtAim(property, result);
  const to: To | undefined = height
    ? { is: "the aim of this trial", spread: height }
    : ownTo(log, "compactability", property?.wanted);
  if (!to) return undefined;
  const middle = now && aim ? (now.value + aim.x) / 2 : (now?.value ?? aim?.x);
  const own = wet && property ? sensitivityOf(property.curve, middle) : undefined;
  if (own && property) return { to, sensitivity: own, slopeFrom: slopeOf(property.curve) };
  if (log.bond !== "bentonite") return undefined;
  return { to, sensitivity: publishedSensitivity(), slopeFrom: "published slopes alone" };
}

const slopeOf = ({ prior }: ResponseCurve): SlopeFrom =>
  prior ? "your batches and a published slope" : "your own curve";

/**
 * What others have found, where a founder's own batches give no slope: publishedWaterSensitivity, with even draws, since
 * a home sand may lie anywhere between. The first dose then follows the low end.
 */
function publishedSensitivity(): Spread {
  const { low, high } = publishedWaterSensitivity;
  const source = "water sensitivity as published";
  return spread({
    mean: (low + high) / 2,
    halfWidth: (high - low) / 2,
    kind: "rectangular",
    doubt: "model",
    source,
  });
}

/** Moisture as a curve over compactability: ten times its slope. */
function overItself(report: TrialReport, log: Log): Sensitivity | undefined {
  const moisture = report.properties.find(({ test }) => test === "moisture");
  const to = aimOf(report) ?? ownTo(log, "compactability", report.axisWanted);
  if (!moisture || !to) return undefined;
  const slope = curveSlope(moisture.curve, to.spread.value);
  if (!slope || !(slope.value > 0)) return undefined;
  const sensitivity = lift((v) => 10 * Math.max(0, v[0]!), [slope]);
  return { to, sensitivity, slopeFrom: slopeOf(moisture.curve) };
}

function sensitivityOf(curve: ResponseCurve, at: number | undefined): Spread | undefined {
  const slope = curveSlope(curve, at);
  // Where the slope cannot be told from none, ten over it may be anything.
  if (!slope || !(figure(slope).low > 0)) return undefined;
  return lift((v) => 10 / Math.max(0.1 * slope.value, v[0]!), [slope]);
}

function aimOf(report: TrialReport): To | undefined {
  const { result } = report;
  if (!result?.window || !closedAim(report)) return undefined;
  return { is: "the aim of this trial", spread: aimSpread(result.aim) };
}

function ownTo(log: Log, test: "moisture" | "compactability", or?: WantedRange): To | undefined {
  return wantedTo(ownAim(log.aims, test) ?? or);
}

function wantedTo(wanted: WantedRange | undefined): To | undefined {
  if (!wanted) return undefined;
  const middle = (wanted.low + wanted.high) / 2;
  return {
    is: wanted.own ? "the middle of your own aim" : "the middle of a usual range",
    spread: constant(middle),
    range: { low: wanted.low, high: wanted.high },
  };
}
