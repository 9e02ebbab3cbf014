// The heap of the log: its mass as written, or counted in buckets, and the figure with its ±.

import { type Figure, figure } from "../quantity/figure.ts";
import type { Source } from "../quantity/source.ts";
import type { Spread } from "../quantity/spread.ts";
import { linear, spreadOfQuantity } from "../quantity/spread-of.ts";
import { heapMassKg } from "../sand/heap-mass.ts";
import type { Measured, Scale } from "./figure-types.ts";

/** Mass of the heap in kg; counted in buckets, value is count × mean net mass, and the buckets stand beside it. */
export interface HeapKg extends Measured {
  readonly buckets?: {
    /** All buckets, filled alike. */
    readonly count: number;
    /** Those that were weighed, gross where emptyKg is given; at least one. */
    readonly weighedKg: readonly Measured[];
    readonly emptyKg?: Measured;
  };
  readonly scale?: Scale;
}

export interface HeapFigure {
  /** kg. */
  readonly figure: Figure;
  /** What the ± does not hold, so that it is "at least": "weighing", "scale check", "other buckets". */
  readonly missing: readonly string[];
}

/**
 * Mass of the log's heap, kg: the mass as written, or buckets × mean net mass (heapMassKg).
 * ±: as written beside the mass; of one bucket with a ± of its own, buckets times that, since it stands for them all;
 * else the steps and the bias of the scale that is named, and the scatter between the buckets that were weighed.
 * Undefined where the log says nothing of a heap.
 * @example
 * heapFigure(readLog("heap: { buckets: 11, bucket: 10.8 kg ± 0.3 kg }", { name: "log.yaml" }).value!)?.figure
 * // { value: 118.8, low: 115.7, high: 121.9 }, 95 % of ± 3.3 surely
 */
export function heapFigure({ heapKg }: { readonly heapKg?: HeapKg }): HeapFigure | undefined {
  if (!heapKg) return undefined;
  const { value, plusMinus, buckets, scale } = heapKg;
  if (!buckets) return plusMinus ? sure(asWritten(value, plusMinus, 1)) : massOnScale(value, scale);
  const { count, weighedKg, emptyKg } = buckets;
  const [first] = weighedKg;
  if (first?.plusMinus && weighedKg.length === 1) {
    return sure(asWritten(first.value - (emptyKg?.value ?? 0), first.plusMinus, count));
  }
  const { figure: mass, missing } = heapMassKg({
    name: "the heap",
    bucketsKg: weighedKg.map((bucket) => bucket.value),
    count,
    emptyKg: emptyKg?.value ?? 0,
    ...(scale ? { stepKg: scale.stepG / 1000, scale: scale.name } : {}),
    ...(scale?.withinG ? { withinKg: scale.withinG / 1000 } : {}),
  });
  const words = { buckets: "other buckets", scale: "scale check", weighing: "weighing" } as const;
  return { figure: mass, missing: missing.map((part) => words[part]) };
}

const sure = (spread: Spread): HeapFigure => ({ figure: figure(spread), missing: [] });

function asWritten(value: number, plusMinus: NonNullable<Measured["plusMinus"]>, times: number): Spread {
  return spreadOfQuantity(
    { value: times * value, plusMinus: { ...plusMinus, size: times * plusMinus.size } },
    { source: "mass of the heap, as written", says: "the mass of the heap as written" },
  );
}

function massOnScale(value: number, scale: Scale | undefined): HeapFigure {
  if (!scale) return { figure: figure(linear(value, [])), missing: ["weighing"] };
  const reading: Source = {
    id: "weighing of the heap",
    kind: "reading",
    shape: { kind: "triangular" },
    says: "the steps of the scale",
  };
  const bias: Source = {
    id: `bias of ${scale.name}`,
    kind: "rig",
    shape: { kind: "rectangular" },
    says: `the bias of the ${scale.name}`,
  };
  const spread = linear(value, [
    { scale: scale.stepG / 1000, source: reading },
    { scale: (scale.withinG ?? 0) / 1000, source: bias },
  ]);
  return { figure: figure(spread), missing: scale.withinG === undefined ? ["scale check"] : [] };
}
