// What brings the log's heap to what is wanted, with ±.

import { heapFigure } from "../log/heap.ts";
import type { Log, Measured } from "../log/types.ts";
import type { Input } from "../quantity/combine.ts";
import { combineParts } from "../quantity/combine-parts.ts";
import { type Figure, figure } from "../quantity/figure.ts";
import type { Spread } from "../quantity/spread.ts";
import { constant, spread } from "../quantity/spread-of.ts";
import { liveClayByBondPercent } from "../sand/live-clay-by-bond.ts";
import { type HeapMend, type HeapToMend, mendHeapUnchecked, mendLimits } from "../sand/mend-heap.ts";
import type { OwnBurnOut } from "../trial/own-burn-out.ts";
import { asSpread, clayOfDryMix, usualClayMoisture } from "./heap-history.ts";
import {
  isTooMuchAtOnce,
  type SandApart,
  sandApart,
  takenWithin,
  type WithinDoubt,
  withinTheirDoubt,
} from "./heap-sand-wish.ts";
import { sandReports } from "./sand-report.ts";

export interface HeapMending {
  /** What it rests on, the newest of each: moisture, live clay, fineness, fines; and its date or how it is known. */
  readonly have: readonly {
    readonly what: string;
    readonly figure: Figure;
    readonly unit: string;
    readonly from: string;
  }[];
  readonly clayKg: Figure;
  /** None where more would be asked for than goes in at once: that is sandApart. */
  readonly newSandKg: Figure;
  readonly waterKg: Figure;
  readonly dampAfterKg: Figure;
  readonly keepingMass: {
    readonly throwOutDryKg: Figure;
    readonly clayKg: Figure;
    readonly newSandKg: Figure;
    readonly waterKg: Figure;
  };
  /** What may go in at one mulling, kg. */
  readonly atOnce: { readonly clayKg: number; readonly newSandKg: number; readonly waterKg: number };
  readonly dryMixInsteadKg: number;
  readonly sandHelps: boolean;
  /** Fineness asks for sand, and none of the log was sieved. */
  readonly newSandUnknown: boolean;
  readonly sandApart: SandApart | undefined;
  /** Numbers so near to what is wanted that they ask for no sand. */
  readonly withinDoubt: readonly WithinDoubt[];
  /** Live clay from strength and compactability alone. */
  readonly bounds: { readonly low: number; readonly high: number } | undefined;
  readonly atLeast: boolean;
}

const parts = [
  "clayKg",
  "newSandKg",
  "waterKg",
  "dampAfterKg",
  "throwOutDryKg",
  "clayKeepingMassKg",
  "newSandKeepingMassKg",
  "waterKeepingMassKg",
] as const;

const partsOf = (mend: HeapMend): { readonly [part in (typeof parts)[number]]: number } => ({
  clayKg: mend.clayKg,
  newSandKg: mend.newSandKg,
  waterKg: mend.waterKg,
  dampAfterKg: mend.dampAfterKg,
  throwOutDryKg: mend.keepingMass.throwOutDryKg,
  clayKeepingMassKg: mend.keepingMass.clayKg,
  newSandKeepingMassKg: mend.keepingMass.newSandKg,
  waterKeepingMassKg: mend.keepingMass.waterKg,
});

/** Undefined where the log says too little: it needs the heap's mass, moisture measured and wanted, and clay of both. */
export function heapMending(log: Log, burnOut: OwnBurnOut | undefined): HeapMending | undefined {
  const { wanted, measured } = log;
  const mass = heapFigure(log);
  const wet = measured.findLast(({ moisturePercent }) => moisturePercent);
  const toMoisture = wanted?.moisturePercent?.value;
  if (!mass || !wanted || !wet?.moisturePercent || toMoisture === undefined || !wanted.liveClay)
    return undefined;
  const moisture = asSpread(wet.moisturePercent, `moisture, ${wet.date}`);
  const clay = liveClayNow(log, burnOut);
  if (!clay) return undefined;
  const sized = measured.findLast(({ gfn }) => gfn);
  const fine = measured.findLast(({ finesPercent }) => finesPercent);
  const sand = sandReports(log).find(({ sand: one, trusted }) => one.state === "new" && trusted);
  const asked = wanted.gfn !== undefined && sized?.gfn !== undefined;
  const unknown = (one: Measured | undefined, name: string, within: number): Spread =>
    one ? asSpread(one, name, within) : constant(Number.NaN);
  const withinDoubt = withinTheirDoubt(log);
  const asks = (what: WithinDoubt["what"]): boolean => !withinDoubt.some((one) => one.what === what);
  const bag = log.recipe?.clayMoisturePercent;
  const inputs = {
    heapKg: mass.figure,
    moistureOfDampPercent: moisture,
    liveClayOfDryMixPercent: clay.figure,
    deadClayOfDryMixPercent: deadClayNow(burnOut),
    gfn: asked && sand ? unknown(sized?.gfn, `gfn, ${sized?.date}`, takenWithin.gfn) : constant(Number.NaN),
    finesOfGrainPercent: unknown(fine?.finesPercent, `fines, ${fine?.date}`, takenWithin.finesPercent),
    toMoistureOfDampPercent: toMoisture,
    toLiveClayOfDryMixPercent: clayOfDryMix(wanted.liveClay, toMoisture),
    toGfn: asks("grain fineness number") ? (wanted.gfn?.value ?? Number.NaN) : Number.NaN,
    toFinesOfGrainPercent: asks("fines") ? (wanted.finesPercent?.value ?? Number.NaN) : Number.NaN,
    clayMoisturePercent: bag ? asSpread(bag, "water of the bagged clay") : usualClayMoisture(),
    clayLivePercent: 100,
    newSandMoisturePercent: log.recipe?.sandMoisturePercent?.value ?? 0,
    newSandGfn: sand?.fineness.figure ?? Number.NaN,
    newSandFinesPercent: sand?.fines.percent ?? 0.75,
  };
  const over = (from: { readonly [name: string]: Input }) =>
    combineParts(
      (values) => partsOf(mendHeapUnchecked(values as unknown as HeapToMend)),
      from,
      parts,
      "heap mended",
    );
  const withSand = over(inputs);
  const middle = Object.fromEntries(
    Object.entries(inputs).map(([name, input]) => [name, typeof input === "number" ? input : input.value]),
  ) as unknown as HeapToMend;
  const dryKg = mass.figure.value * (1 - moisture.value / 100);
  const withAll = mendHeapUnchecked(middle);
  const apart = isTooMuchAtOnce(withAll.newSandKg, dryKg);
  const noSand = { toGfn: Number.NaN, toFinesOfGrainPercent: Number.NaN };
  const of = apart ? over({ ...inputs, ...noSand }) : withSand;
  return {
    have: [
      { what: "mass, damp", figure: mass.figure, unit: "kg", from: "the log's heap" },
      { what: "moisture", figure: figure(moisture), unit: "% of damp mass", from: `measured ${wet.date}` },
      { what: "live clay", figure: clay.figure, unit: "% of dry mix", from: clay.from },
      ...(sized?.gfn
        ? [
            {
              what: "grain fineness number",
              figure: figure(asSpread(sized.gfn, `gfn, ${sized.date}`)),
              unit: "",
              from: `measured ${sized.date}`,
            },
          ]
        : []),
      ...(fine?.finesPercent
        ? [
            {
              what: "fines",
              figure: figure(asSpread(fine.finesPercent, `fines, ${fine.date}`)),
              unit: "% of grain",
              from: `measured ${fine.date}`,
            },
          ]
        : []),
    ],
    clayKg: of.clayKg,
    newSandKg: of.newSandKg,
    waterKg: of.waterKg,
    dampAfterKg: of.dampAfterKg,
    keepingMass: {
      throwOutDryKg: of.throwOutDryKg,
      clayKg: of.clayKeepingMassKg,
      newSandKg: of.newSandKeepingMassKg,
      waterKg: of.waterKeepingMassKg,
    },
    atOnce: {
      clayKg: (dryKg * mendLimits.clayOfHeapPercent) / 100,
      newSandKg: (dryKg * mendLimits.sandOfHeapPercent) / 100,
      waterKg: Math.max(0, of.waterKg.quantile(0.1)),
    },
    dryMixInsteadKg: mendHeapUnchecked(apart ? { ...middle, ...noSand } : middle).dryMixInsteadKg,
    sandHelps: withAll.sandHelps,
    newSandUnknown: asked && asks("grain fineness number") && !sand,
    sandApart: apart
      ? sandApart(
          {
            allKg: withSand.newSandKg,
            throwOutDryKg: withSand.throwOutDryKg,
          },
          mendHeapUnchecked({ ...middle, ...noSand }),
          mendHeapUnchecked({ ...middle, mostNewSandOfHeapPercent: mendLimits.sandOfHeapPercent }),
          { have: middle.gfn, wanted: middle.toGfn },
        )
      : undefined,
    withinDoubt,
    bounds: clay.bounds,
    atLeast: mass.missing.length > 0 || wet.moisturePercent.plusMinus === undefined,
  };
}

/** Newest measured; else by strength and compactability; else as the record leaves it. */
function liveClayNow(log: Log, burnOut: OwnBurnOut | undefined) {
  const direct = log.measured.findLast(({ liveClay }) => liveClay);
  if (direct?.liveClay) {
    const percent = clayOfDryMix(direct.liveClay, direct.moisturePercent?.value ?? 3.3);
    const { plusMinus } = direct.liveClay;
    const source = `live clay, ${direct.date}`;
    const own = plusMinus ? { value: percent, plusMinus } : { value: percent };
    return {
      figure: figure(asSpread({ ...direct.liveClay, ...own }, source, 0.5)),
      from: `measured ${direct.date}`,
      bounds: undefined,
    };
  }
  const bench = log.measured.findLast(
    ({ greenCompressionKPa, compactabilityPercent, moisturePercent }) =>
      greenCompressionKPa && compactabilityPercent && moisturePercent,
  );
  const bounds =
    bench &&
    liveClayByBondPercent({
      strengthKPa: bench.greenCompressionKPa!.value,
      compactabilityPercent: bench.compactabilityPercent!.value,
      moistureOfDampPercent: bench.moisturePercent!.value,
    });
  if (bounds) {
    const [mean, halfWidth] = [(bounds.low + bounds.high) / 2, (bounds.high - bounds.low) / 2];
    const of = spread({ mean, halfWidth, source: `live clay by bond, ${bench.date}`, doubt: "model" });
    return { figure: figure(of), from: `between working and available bond, ${bench.date}`, bounds };
  }
  const last = burnOut?.course().at(-1)?.liveClayOfDryMixPercent;
  if (!last) return undefined;
  const of = spread({
    mean: last.value,
    halfWidth: (last.high - last.low) / 2,
    kind: "normal",
    source: "live clay by the record",
    doubt: "model",
  });
  return { figure: figure(of), from: "by your record", bounds: undefined };
}

function deadClayNow(burnOut: OwnBurnOut | undefined): Spread {
  const last = burnOut?.course().at(-1)?.deadClayOfDryMixPercent;
  if (!last) return constant(0);
  // Skewed: drawn between its ends, for it only shifts the grain by a little.
  const [mean, halfWidth] = [(last.low + last.high) / 2, (last.high - last.low) / 2];
  return spread({ mean, halfWidth, source: "dead clay by the record", doubt: "model" });
}
