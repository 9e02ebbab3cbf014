// What new sand the wanted fineness and fines ask for: none within their own ±, never more at once than a limit.

import type { Log, Measured } from "../log/types.ts";
import type { Figure } from "../quantity/figure.ts";
import { type HeapMend, mendLimits } from "../sand/mend-heap.ts";

/** Taken where the log writes no ±: our own. A grain fineness number, and fines in % of the grain. */
export const takenWithin = Object.freeze({ gfn: 2, finesPercent: 0.5 });

/** A number as measured and as wanted; ± as written, else as taken. */
export interface WithinDoubt {
  readonly what: "grain fineness number" | "fines";
  readonly have: number;
  readonly wanted: number;
  readonly plusMinus: number;
  readonly taken: boolean;
}

/** New sand that takes more than one mending: what one brings, and what all of it would come to. */
export interface SandApart {
  readonly allKg: Figure;
  readonly throwOutDryKg: Figure;
  /** As weighed: the most at one mending, and the clay that it takes more of. */
  readonly mostKg: number;
  readonly clayMoreKg: number;
  /** Fineness before, after the most at one mending, wanted; undefined where fines alone ask. */
  readonly gfn: { readonly have: number; readonly after: number; readonly wanted: number } | undefined;
}

/** The numbers whose difference from what is wanted is within their own ±, so that it asks for nothing. */
export function withinTheirDoubt({
  measured,
  wanted,
}: Pick<Log, "measured" | "wanted">): readonly WithinDoubt[] {
  const one = (
    what: WithinDoubt["what"],
    have: Measured | undefined,
    aim: Measured | undefined,
    taken: number,
  ): readonly WithinDoubt[] => {
    if (!have || !aim || have.value === aim.value) return [];
    const plusMinus = have.plusMinus ? halfOf(have) : taken;
    // A decimal's last digit must not decide: 69.5 and 69 are 0.5 apart.
    if (Math.abs(have.value - aim.value) > plusMinus * (1 + 1e-9)) return [];
    return [{ what, have: have.value, wanted: aim.value, plusMinus, taken: !have.plusMinus }];
  };
  const sized = measured.findLast(({ gfn }) => gfn);
  const fine = measured.findLast(({ finesPercent }) => finesPercent);
  const { gfn, finesPercent } = takenWithin;
  return [
    ...one("grain fineness number", sized?.gfn, wanted?.gfn, gfn),
    ...((fine?.finesPercent?.value ?? 0) > (wanted?.finesPercent?.value ?? 0)
      ? one("fines", fine?.finesPercent, wanted?.finesPercent, finesPercent)
      : []),
  ];
}

/** Half of the 95 % interval where it is written as an sd; else as written. */
function halfOf({ plusMinus }: Measured): number {
  const { size, meaning } = plusMinus!;
  return meaning === "sd" ? 1.96 * size : size;
}

/** More new sand, dry, than may go in at once. */
export const isTooMuchAtOnce = (newSandDryKg: number, dryKg: number): boolean =>
  newSandDryKg > (dryKg * mendLimits.sandOfHeapPercent) / 100;

/** What stands beside a mending without new sand, from the same heap with all of it and with the most at once. */
export function sandApart(
  all: Pick<SandApart, "allKg" | "throwOutDryKg">,
  without: HeapMend,
  most: HeapMend,
  gfn: { readonly have: number; readonly wanted: number },
): SandApart {
  const known = [gfn.have, gfn.wanted, most.gfnAfter].every(Number.isFinite);
  return {
    ...all,
    mostKg: most.newSandKg,
    clayMoreKg: Math.max(0, most.clayKg - without.clayKg),
    gfn: known ? { ...gfn, after: most.gfnAfter } : undefined,
  };
}
