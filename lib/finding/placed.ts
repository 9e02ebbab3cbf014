// On which side of a range a batch lies, and how sure that is by its own ±.

import { normalCumulative } from "../numbers/normal.ts";
import type { Spread } from "../quantity/spread.ts";
import { endsOf } from "./ends.ts";

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

/** Half of a 95 % interval in standard deviations. */
const halfInSd = 1.959964;

/**
 * Where a figure lies against from to to. Chances: Φ((edge − value)/sd), sd half of the 95 % interval over 1.96.
 * Example: 75 ± 10 against 40 to 80 is not told; its chance of lying within is Φ(0.98), 0.84.
 */
export function placeBatch(
  batch: string,
  one: { readonly value: number; readonly spread: Spread; readonly missing: readonly string[] },
  from: number,
  to: number,
): Placed {
  const { value } = one;
  const { low, high } = endsOf(one.spread);
  const common = { batch, value, atLeast: one.missing.length > 0 };
  if (!(low < high) || !Number.isFinite(high - low)) {
    return { ...common, where: value > to ? "above" : value < from ? "below" : "within", chance: undefined };
  }
  const under = (edge: number): number => normalCumulative((edge - value) / ((high - low) / 2 / halfInSd));
  const [below, above] = [under(from), 1 - under(to)];
  if (low > to) return { ...common, where: "above", chance: above };
  if (high < from) return { ...common, where: "below", chance: below };
  const within = Math.max(0, 1 - below - above);
  return { ...common, where: low >= from && high <= to ? "within" : "not told", chance: within };
}
