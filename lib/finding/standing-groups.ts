// The batches of a trial against one usual range, or one typical curve.

import type { BatchFigure } from "../log/batch-figures.ts";
import { type Band, type BandProperty, decides } from "../sand/band.ts";
import { type Placed, placeBatch } from "./placed.ts";
import { taggedSource } from "./tagged-source.ts";
import type { TypicalAtBatch } from "./typical-at-batch.ts";

/** One batch's figure of one property against one range. */
export interface Standing extends Placed {
  readonly property: BandProperty;
  /** "usual range", "strength by clay". */
  readonly against: string;
  readonly low: number;
  readonly high: number;
  /** For a curve: which clay it was asked at, in words. */
  readonly clay?: string;
}

/** All batches against one of them. */
export interface Group {
  readonly placed: readonly Standing[];
  readonly band?: Band;
  readonly curve?: string;
  readonly source: string;
  /** Batches that the curve gives nothing for, and why. */
  readonly without: ReadonlyMap<string, readonly string[]>;
}

export type Figured = Pick<BatchFigure, "value" | "spread" | "missing"> | undefined;

/** What may decide first, hand-rammed practice next; ranges of another fineness or another clay are passed over. */
export function rangesOf(
  property: BandProperty,
  known: readonly Band[],
  gfn: number | undefined,
): readonly Band[] {
  const rank = (band: Band): number =>
    (decides(band) ? 0 : 10) + (band.practice === "hand-rammed" ? 0 : band.practice === undefined ? 1 : 2);
  return known
    .filter((band) => band.property === property)
    .filter(({ clayIs }) => property !== "clay" || clayIs === "bentonite added")
    .filter(
      ({ goesWithFineness: go }) =>
        property !== "permeability" || (go && gfn !== undefined && gfn >= go.low && gfn <= go.high),
    )
    .sort((a, b) => rank(a) - rank(b));
}

export function againstBand(band: Band, figures: readonly Figured[], names: readonly string[]): Group {
  const { low, high, property } = band;
  const placed = figures.flatMap((one, i): Standing[] =>
    one
      ? [
          {
            ...placeBatch(names[i]!, one, low, high),
            property,
            against: "usual range",
            low,
            high,
          },
        ]
      : [],
  );
  return { placed, band, source: taggedSource(band.source, band.tag), without: new Map() };
}

export function curvesOf(
  property: BandProperty,
  curves: readonly (readonly TypicalAtBatch[])[],
): readonly (readonly (TypicalAtBatch | undefined)[])[] {
  const named = new Set(
    curves.flatMap((own) => own.filter(({ test }) => test === property).map(({ curve }) => curve)),
  );
  return [...named].map((name) => curves.map((own) => own.find(({ curve }) => curve === name)));
}

export function againstCurve(
  property: BandProperty,
  curve: readonly (TypicalAtBatch | undefined)[],
  figures: readonly Figured[],
  names: readonly string[],
): Group {
  const without = new Map<string, readonly string[]>();
  const placed = curve.flatMap((one, i): Standing[] => {
    const tested = figures[i];
    if (!one || !tested) return [];
    const { low, high, issues } = one.typical;
    if (low === undefined || high === undefined) {
      const why = issues.map(({ message }) => message).join(" ");
      without.set(why, [...(without.get(why) ?? []), names[i]!]);
      return [];
    }
    return [
      {
        ...placeBatch(names[i]!, tested, low, high),
        property,
        against: one.curve,
        low,
        high,
        clay: one.clay.says,
      },
    ];
  });
  const first = curve.find((one) => one !== undefined)!;
  const { source, tag, holds } = first.typical;
  return {
    placed,
    curve: first.curve,
    source: `${taggedSource(source, tag)}; the range holds: ${holds}`,
    without,
  };
}
