// On which side of a range a batch lies, and how sure that is by its own ±.

import type { Spread } from "../quantity/spread.ts";
import { endsOf } from "./ends.ts";
import { sideOf } from "./typical-findings.ts";

export type Where = "below" | "within" | "above" | "not told";

export interface Placed {
  readonly batch: string;
  readonly value: number;
  /** Where all of the 95 % interval lies; "not told" where it runs across an edge. By the value alone without a ±. */
  readonly where: Where;
  /** Chance of lying on that side, or within where it is not told; undefined without a ±. 0 to 1. */
  readonly chance: number | undefined;
  /** True where the ± is a lower bound: it is less sure than it says. */
  readonly atLeast: boolean;
}

export function placeBatch(
  batch: string,
  one: { readonly value: number; readonly spread: Spread; readonly missing: readonly string[] },
  from: number,
  to: number,
): Placed {
  const { low, high } = endsOf(one.spread);
  const known = low < high ? { low, high } : {};
  const side = sideOf({ value: one.value, ...known }, from, to);
  const atLeast = one.missing.length > 0;
  const common = { batch, value: one.value, atLeast };
  if (side.interval === undefined) {
    return { ...common, where: side.where === "inside" ? "within" : side.where, chance: undefined };
  }
  const { interval, inside, below, above } = side;
  if (interval === "across") return { ...common, where: "not told", chance: inside };
  if (interval === "inside") return { ...common, where: "within", chance: inside };
  return { ...common, where: interval, chance: interval === "below" ? below : above };
}
