// How much water the sand wants now, from the last batch, by moisture and by compactability.

import { type BatchFigure, type BatchFigures, batchFigures } from "../log/batch-figures.ts";
import { heapFigure } from "../log/heap.ts";
import type { Log } from "../log/types.ts";
import { lift } from "../quantity/combine.ts";
import { type Figure, figure } from "../quantity/figure.ts";
import type { Spread } from "../quantity/spread.ts";
import { constant, spread } from "../quantity/spread-of.ts";
import { type FirstDose, firstDoseByCompactabilityKg, firstDoseKg } from "../sand/first-dose.ts";
import type { ResponseCurve } from "../trial/response-curve.ts";
import { ownAim, type WantedRange } from "../trial/trial-property.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { curveSlope } from "./curve-slope.ts";
import { endsOf } from "./ends.ts";

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
 * moisture for 10 of compactability). Empty for a trial of clay, and where there is nothing to aim for.
 * Doses: firstDoseKg, firstDoseByCompactabilityKg.
 */
export function waterNow(report: TrialReport, log: Log): readonly WaterNow[] {
  // One batch stands on no axis of a trial, and is enough for a dose.
  const last = lastBatch(report.rows.length > 0 ? report.rows : batchFigures(log).figures);
  if (!last || report.axis === "clay") return [];
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

type To = { readonly spread: Spread; readonly is: WaterNow["toIs"] };

function byMoisture(
  report: TrialReport,
  log: Log,
  { batch, tests }: BatchFigures,
  heapKg: Figure | undefined,
): WaterNow | undefined {
  const to =
    report.axis === "moisture" ? (aimOf(report) ?? wantedTo(report.axisWanted)) : ownTo(log, "moisture");
  if (!tests.moisture || !to) return undefined;
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
    report.axis === "moisture" ? overMoisture(report, log, tests.moisture) : overItself(report, log);
  if (!found) return undefined;
  const { to, sensitivity } = found;
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
    per10: dose(10),
    ...(heapKg ? { heap: { massKg: heapKg, dose: dose(heapKg) } } : {}),
    atLeast: from.missing.length > 0,
  };
}

/** Compactability as a curve over moisture: its height at the aim, and ten over its slope. */
function overMoisture(
  report: TrialReport,
  log: Log,
  now: BatchFigure | undefined,
): { readonly to: To; readonly sensitivity: Spread } | undefined {
  const property = report.properties.find(({ test }) => test === "compactability");
  if (!property) return undefined;
  const aim = report.result?.window && closed(report) ? report.result.aim : undefined;
  const value = aim && property.curve.at(aim.x);
  const to: To | undefined =
    aim && value
      ? {
          is: "the aim of this trial",
          spread: heightAtAim(property.curve, aim.x, value, aimSpread(aim)),
        }
      : ownTo(log, "compactability", property.wanted);
  if (!to) return undefined;
  const middle = now && aim ? (now.value + aim.x) / 2 : (now?.value ?? aim?.x);
  const sensitivity = sensitivityOf(property.curve, middle);
  return sensitivity && { to, sensitivity };
}

/** Moisture as a curve over compactability: ten times its slope. */
function overItself(
  report: TrialReport,
  log: Log,
): { readonly to: To; readonly sensitivity: Spread } | undefined {
  const moisture = report.properties.find(({ test }) => test === "moisture");
  const to = aimOf(report) ?? ownTo(log, "compactability", report.axisWanted);
  if (!moisture || !to) return undefined;
  const slope = curveSlope(moisture.curve, to.spread.value);
  if (!slope || !(slope.value > 0)) return undefined;
  return { to, sensitivity: lift((v) => 10 * Math.max(0, v[0]!), [slope]) };
}

function sensitivityOf(curve: ResponseCurve, at: number | undefined): Spread | undefined {
  const slope = curveSlope(curve, at);
  // Where the slope cannot be told from none, ten over it may be anything.
  if (!slope || !(figure(slope).low > 0)) return undefined;
  return lift((v) => 10 / Math.max(0.1 * slope.value, v[0]!), [slope]);
}

/** The curve's height at the aim: its own interval, and the aim's along the slope. */
function heightAtAim(
  curve: ResponseCurve,
  x: number,
  { mean, low, high }: { readonly mean: number; readonly low: number; readonly high: number },
  aim: Spread,
): Spread {
  const source = "compactability at the aim of this trial";
  const height = spread({ mean, halfWidth: (high - low) / 2, kind: "normal", source });
  const slope = curveSlope(curve, x)?.value ?? 0;
  return lift((v) => v[0]! + slope * (v[1]! - x), [height, aim]);
}

function aimSpread({
  x,
  low,
  high,
}: {
  readonly x: number;
  readonly low: number;
  readonly high: number;
}): Spread {
  return spread({ mean: x, halfWidth: (high - low) / 2, kind: "normal", source: "the aim of this trial" });
}

const closed = ({ result }: TrialReport): boolean => !(result?.aim.open.low || result?.aim.open.high);

function aimOf(report: TrialReport): To | undefined {
  const { result } = report;
  if (!result?.window || !closed(report)) return undefined;
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
  };
}
