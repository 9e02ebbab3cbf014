// What a log says of its mulling: a curve for each way of it, ways against each other, and the muller's own figures.

import type { Measured } from "../log/figure-types.ts";
import { type HeapFigure, heapFigure } from "../log/heap.ts";
import type { LoggedMuller, MullingReading, MullingTrial } from "../log/heap-record.ts";
import type { Log } from "../log/types.ts";
import { combine } from "../quantity/combine.ts";
import type { Figure } from "../quantity/figure.ts";
import { figure } from "../quantity/figure.ts";
import { spreadOfQuantity } from "../quantity/spread-of.ts";
import { type SandHeat, sandHeat } from "../sand/hot-sand.ts";
import {
  mullerLoads,
  panRpm,
  rimSpeedMS,
  sandBedMm,
  trackSharePercent,
  wheelPasses,
} from "../sand/muller-arithmetic.ts";
import { type MullingComparison, mullingComparison } from "../trial/mulling-comparison.ts";
import {
  type MullingCurve,
  type MullingInterval,
  type MullingTime,
  mullingCurve,
} from "../trial/mulling-curve.ts";

/** The shares of full bond that are told. */
const mulledShares = [90, 95] as const;

/** Difference of two readings that scatter by 5 % of the greatest strength, twice over: our own. */
const fallen = 2 * Math.SQRT2 * 0.05;

export interface MulledWay {
  readonly trial: MullingTrial;
  /** Undefined: readings at fewer than three different times. */
  readonly curve?: MullingCurve;
  /** To 90 and to 95 % of full bond. */
  readonly times: readonly MullingTime[];
  readonly fullBond?: MullingInterval;
  /** The last reading lies below the best one by more than two readings scatter by, which a fall itself must not widen. */
  readonly fell: boolean;
  /** Last less first moisture, % of damp mass, where both were read. */
  readonly moistureDrift?: number;
}

/** Figures of a muller, each where the log has what it needs. */
export interface MullerFigures {
  readonly rpm?: Figure;
  readonly passes?: Figure;
  readonly ploughMS?: Figure;
  readonly trackPercent?: Figure;
  readonly bedMm?: Figure;
  /** For the heap of the log. */
  readonly loads?: Figure;
  readonly hours?: Figure;
  readonly loadsPerHour?: Figure;
  readonly heat?: SandHeat;
  readonly heap?: HeapFigure;
}

export interface MullingReport {
  readonly ways: readonly MulledWay[];
  /** Each way against the one that is quickest. */
  readonly comparisons: readonly MullingComparison[];
  readonly muller: MullerFigures;
  readonly logged?: LoggedMuller;
}

/**
 * Curves, comparisons and the muller's figures of a log; all of it empty where the log says nothing of mulling.
 * @example mullingReport(log).ways.length
 */
export function mullingReport(log: Log): MullingReport {
  const ways = log.mulling.map(wayOf);
  const curves = ways.flatMap(({ curve }) => (curve && !curve.straight ? [curve] : []));
  const quickest = curves.reduce<MullingCurve | undefined>(
    (best, one) => (best && best.timeTo(95).value <= one.timeTo(95).value ? best : one),
    undefined,
  );
  return {
    ways,
    comparisons: curves.flatMap((one) =>
      quickest && one !== quickest ? [mullingComparison(one, quickest, 95)] : [],
    ),
    muller: mullerFigures(log),
    ...(log.muller ? { logged: log.muller } : {}),
  };
}

function wayOf(trial: MullingTrial): MulledWay {
  const { name, readings } = trial;
  const drift = driftOf(readings);
  const moved = drift === undefined ? {} : { moistureDrift: drift };
  const positive = readings.filter(({ greenCompressionKPa }) => greenCompressionKPa.value > 0);
  if (new Set(positive.map(({ minutes }) => minutes.value)).size < 3)
    return { trial, times: [], fell: false, ...moved };
  const curve = mullingCurve(name, {
    minutes: positive.map(({ minutes }) => minutes.value),
    strengthKPa: positive.map(({ greenCompressionKPa }) => greenCompressionKPa.value),
  });
  const strengths = curve.readings.strengthKPa;
  const drop = Math.max(...strengths) - strengths.at(-1)!;
  return {
    trial,
    curve,
    times: mulledShares.map((share) => curve.timeTo(share)),
    fullBond: curve.strengthAt(Number.POSITIVE_INFINITY),
    fell: drop > fallen * Math.max(...strengths),
    ...moved,
  };
}

function driftOf(readings: readonly MullingReading[]): number | undefined {
  const read = readings.flatMap(({ moisturePercent }) => (moisturePercent ? [moisturePercent.value] : []));
  return read.length < 2 ? undefined : read.at(-1)! - read[0]!;
}

function mullerFigures(log: Log): MullerFigures {
  const { muller } = log;
  const heap = heapFigure(log);
  if (!muller) return heap ? { heap } : {};
  const { sandC } = muller;
  return {
    ...given("rpm", muller, ["motorRpm", "reduction"], panRpm),
    ...given(
      "passes",
      muller,
      ["motorRpm", "reduction", "wheels", "minutes"],
      ({ wheels, minutes, ...drive }) => wheelPasses({ rpm: panRpm(drive), wheels, minutes }),
    ),
    ...given("ploughMS", muller, ["motorRpm", "reduction", "panDiameterMm"], ({ panDiameterMm, ...drive }) =>
      rimSpeedMS({ diameterMm: panDiameterMm, rpm: panRpm(drive) }),
    ),
    ...(fits(muller)
      ? given("trackPercent", muller, ["panDiameterMm", "wheelWidthMm"], trackSharePercent)
      : {}),
    ...given("bedMm", muller, ["loadKg", "panDiameterMm"], sandBedMm),
    ...given(
      "loadsPerHour",
      muller,
      ["minutes"],
      ({ minutes }) => mullerLoads({ heapKg: 1, loadKg: 1, minutes }).loadsPerHour,
    ),
    ...loadsOf(muller, heap),
    ...(sandC ? { heat: sandHeat(sandC.value) } : {}),
    ...(heap ? { heap } : {}),
  };
}

/** A track wider than the pan's half is no track. */
const fits = ({ panDiameterMm, wheelWidthMm }: LoggedMuller): boolean =>
  panDiameterMm !== undefined && wheelWidthMm !== undefined && wheelWidthMm.value <= panDiameterMm.value / 2;

type MullerField = Exclude<keyof LoggedMuller, "place">;

/** The figure of these fields, with their ± as written; nothing where one is not in the log. */
function given<Name extends string, Field extends MullerField>(
  name: Name,
  muller: LoggedMuller,
  fields: readonly Field[],
  fn: (values: { readonly [field in Field]: number }) => number,
): { readonly [name in Name]?: Figure } {
  const read = fields.map((field) => muller[field] as Measured | undefined);
  if (read.some((one) => one === undefined)) return {};
  const inputs = Object.fromEntries(fields.map((field, k) => [field, writtenSpread(read[k]!, field)]));
  return { [name]: combine((values) => fn(values as { readonly [field in Field]: number }), inputs) } as {
    readonly [name in Name]?: Figure;
  };
}

function writtenSpread({ value, plusMinus }: Measured, field: string) {
  return spreadOfQuantity(
    { value, ...(plusMinus ? { plusMinus } : {}) },
    { source: `${field} of the muller, as written`, says: `the muller's ${field}` },
  );
}

function loadsOf(muller: LoggedMuller, heap: HeapFigure | undefined): Pick<MullerFigures, "loads" | "hours"> {
  const { loadKg, minutes } = muller;
  if (!heap || !loadKg || loadKg.value <= 0) return {};
  const inputs = {
    heapKg: heap.figure,
    loadKg: writtenSpread(loadKg, "loadKg"),
    minutes: minutes ? writtenSpread(minutes, "minutes") : 1,
  };
  const loads = figure(combine((given) => mullerLoads(given).loads, inputs));
  return { loads, ...(minutes ? { hours: combine((given) => mullerLoads(given).hours, inputs) } : {}) };
}
