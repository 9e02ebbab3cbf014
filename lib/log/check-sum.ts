// The sum of a sieving's rows against the start mass, or against the whole.

import type { Place } from "../issue.ts";
import type { Phrase } from "../phrase.ts";
import { amount } from "../quantity/amount.ts";
import {
  digitsSwapped,
  passingShares,
  percentSumAbove,
  percentSumBelow,
  runningTotals,
  sumAboveStart,
  sumFarBelowStart,
} from "./complaints-sieving.ts";
import type { Report } from "./node.ts";
import { withoutPassing, withoutRunningTotals } from "./running-totals.ts";
import { massHint, swapHint } from "./sum-hint.ts";
import type { Measured, RetainedEntry, Scale } from "./types.ts";

/** A sum above the start mass by more than this share cannot be left to the mass balance (our own). */
const aboveShare = 0.01;
/** Neither sieving nor washing loses half of what went on (our own). */
const leastShare = 0.5;
/** Swapped digits explain a loss only where what is left is no loss at all: 0.3 %, ASTM C136. */
const lossShare = 0.003;

/**
 * More than went on, by 1 % and by more than the scale's steps explain (3 sd of all the weighings, each
 * step/√12), is an error. Less by as much is a warning only if swapped digits explain it: other losses are
 * for the mass balance to judge, up to half of what went on, which only a mistake loses.
 */
export function checkStartSum(
  retained: readonly RetainedEntry[],
  total: number,
  start: Measured,
  scale: Scale | undefined,
  report: Report,
): void {
  const readings = 3 * (scale?.stepG ?? 0) * Math.sqrt((retained.length + 1) / 12);
  const excess = total - start.value;
  if (Math.abs(excess) <= Math.max(aboveShare * start.value, readings) + 1e-9) return;
  const each = excess > 0 ? withoutRunningTotals(retained, start.value) : undefined;
  if (each) {
    report(runningTotals(grams(start.value), rowsOf(retained, each)), retained[0]?.place ?? start.place);
    return;
  }
  const allowed = (excess > 0 ? aboveShare : lossShare) * start.value;
  const gross = excess > 0 || total < leastShare * start.value;
  const { hint, place } = (gross ? massHint : swapHint)(start, retained, allowed);
  const [held, went] = [grams(total), grams(start.value)];
  if (excess > 0) report(sumAboveStart(held, went, hint, likePercent(total)), place ?? start.place);
  else if (gross) report(sumFarBelowStart(held, went, hint), place ?? start.place);
  else if (hint !== "") report(digitsSwapped(held, went, hint), place ?? start.place);
}

/** Grams that come to a hundred, and not to what went on, are most likely percent without their sign. */
const likePercent = (totalG: number): boolean => totalG >= 99 && totalG <= 100.5;

/** 99 to 100.5 % is rounding; clay that was washed out leaves less. */
export function checkPercentSum(
  retained: readonly RetainedEntry[],
  total: number,
  rowsPlace: Place,
  report: Report,
  startG?: Measured,
): void {
  const asStart = startG !== undefined && Math.abs(total - startG.value) <= aboveShare * startG.value;
  const each = total > 100.5 ? withoutRunningTotals(retained, 100) : undefined;
  const passed = total > 100.5 ? withoutPassing(retained) : undefined;
  if (each) report(runningTotals("100 %", rowsOf(retained, each, " %")), rowsPlace);
  else if (passed) report(passingShares(rowsOf(retained, passed, " %")), rowsPlace);
  else if (total > 100.5) {
    const { hint, place } = swapHint({ value: 100, text: "", place: rowsPlace }, retained, 1);
    report(percentSumAbove(shown(total), hint), place ?? rowsPlace);
  } else if (total < 99) report(percentSumBelow(shown(total), asStart), rowsPlace);
}

/** "No. 20: 9.5, No. 40: 42.9" */
function rowsOf(retained: readonly RetainedEntry[], each: readonly number[], unit = ""): string {
  return retained.map(({ label }, k) => `${label}: ${shown(each[k]!)}${unit}`).join(", ");
}

/** A mass of a sieving. */
export const grams = (value: number): Phrase => amount(value, "g", 5);

/** Five digits: more than any kitchen scale's share of the whole. */
function shown(value: number): string {
  return String(Number(value.toPrecision(5)));
}
