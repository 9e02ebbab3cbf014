// Mass of a heap that no scale can hold: buckets counted, some or all of them weighed.

import { invariant } from "../issue.ts";
import { mean, sampleStandardDeviation } from "../numbers/summary.ts";
import { type Figure, figure } from "../quantity/figure.ts";
import { linear } from "../quantity/spread-of.ts";
import { requireAboveZero, requireFromZero } from "./require.ts";

export interface HeapMass {
  /** kg, with its ±. */
  readonly figure: Figure;
  /** Parts of the doubt that nothing is known of; the ± is then "at least". */
  readonly missing: readonly ("buckets" | "scale" | "weighing")[];
}

/**
 * Mass of a heap in kg: buckets × mean net mass of those that were weighed.
 *
 * name: of the heap, keeps its doubts apart from those of others. bucketsKg: gross masses of the weighed buckets, each
 * above emptyKg, at least one. count: all buckets of like filling, a whole number, no fewer than were weighed.
 * emptyKg: 0 or more. stepKg: smallest step of the scale, if known. withinKg: how surely right it is at such a load, if checked;
 * scale: its name, so that its bias is one source on the whole page. Else RangeError.
 * ±: between buckets, with k of N weighed, sd N √((1 − k/N) / k) s, Student's t with k − 1 degrees of freedom; half a
 * step for each reading, that of the empty bucket counting N times; the bias of the scale, in proportion to the load.
 * Volume is no measure: damp sand bulks by a fifth or more with its water (Neville, from memory).
 * Source: finite population (Cochran, Sampling Techniques, from memory); mass balance.
 * @example
 * heapMassKg({ name: "heap", bucketsKg: [14.2, 14.6, 14.4], count: 8, emptyKg: 0.9 }).figure.value // 108
 */
export function heapMassKg(
  heap: {
    readonly name: string;
    readonly bucketsKg: readonly number[];
    readonly count: number;
    readonly emptyKg: number;
    readonly stepKg?: number;
    readonly withinKg?: number;
    readonly scale?: string;
  },
  options: { readonly draws?: number } = {},
): HeapMass {
  const { name, bucketsKg, count, emptyKg, stepKg, withinKg, scale = "the scale" } = heap;
  const weighed = bucketsKg.length;
  if (!(weighed > 0 && Number.isInteger(count) && count >= weighed))
    throw new RangeError(`heapMassKg: ${count} buckets in all, ${weighed} weighed: one or more, and no more`);
  requireFromZero("heapMassKg", { emptyKg });
  if (stepKg !== undefined) requireAboveZero("heapMassKg", { stepKg });
  if (withinKg !== undefined) requireAboveZero("heapMassKg", { withinKg });
  for (const grossKg of bucketsKg) requireAboveZero("heapMassKg", { netKg: grossKg - emptyKg });
  const netKg = mean(bucketsKg) - emptyKg;
  const reading = { kind: "reading", shape: { kind: "rectangular" } } as const;
  const id = (what: string): string => `${what}, ${name}`;
  const terms = bucketsKg.map((_, i) => ({
    scale: ((count / weighed) * (stepKg ?? 0)) / 2,
    source: { ...reading, id: id(`weighing of bucket ${i + 1}`), says: "the steps of the scale" },
  }));
  if (emptyKg > 0)
    terms.push({
      scale: (count * (stepKg ?? 0)) / 2,
      source: { ...reading, id: id("weighing of the empty bucket"), says: "the empty bucket" },
    });
  const between =
    weighed > 1 && weighed < count
      ? [
          {
            scale: count * Math.sqrt((1 - weighed / count) / weighed) * sampleStandardDeviation(bucketsKg),
            source: {
              id: id("scatter between buckets"),
              kind: "repeat",
              shape: { kind: "t", df: weighed - 1 },
              says: "buckets are not filled alike",
            },
          } as const,
        ]
      : [];
  const bias =
    withinKg === undefined
      ? []
      : [
          {
            scale: (count * withinKg * netKg) / mean(bucketsKg),
            source: {
              id: `bias of ${scale}`,
              kind: "rig",
              shape: { kind: "rectangular" },
              says: `${scale} may read high or low`,
            },
          } as const,
        ];
  const whole = linear(count * netKg, [...terms, ...between, ...bias]);
  invariant(Number.isFinite(whole.value), "the mass of a heap is a number");
  return {
    figure: figure(whole, options),
    missing: [
      ...(weighed === 1 && count > 1 ? (["buckets"] as const) : []),
      ...(withinKg === undefined ? (["scale"] as const) : []),
      ...(stepKg === undefined ? (["weighing"] as const) : []),
    ],
  };
}
