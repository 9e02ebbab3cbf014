// A strength among its neighbours: psi read as kPa, or kPa written as psi.

import { median } from "../numbers/summary.ts";
import { printNumber } from "../quantity/print.ts";
import { readQuantity } from "../quantity/read-quantity.ts";
import type { Batch, TestName, TestReading } from "./batch.ts";
import { convertedTwice, fitsAsPsi, kPaAmongPsi, psiAmongKPa } from "./complaints-agreement.ts";
import type { Report } from "./node.ts";
import { plainNumber } from "./plain-number.ts";
import { kPaPerPsi, psiDoubt } from "./psi-doubt.ts";

/** As typed it is off by more than this factor ... (our own) */
const farOff = 3;
/** ... and in the other unit within this share of the others (our own). */
const near = 0.25;

/** The batches without the strengths that cannot be trusted; those and the doubtful ones are reported. */
export function checkStrengthUnits(
  batches: readonly Batch[],
  reportAbout: (name: string) => Report,
): readonly Batch[] {
  const wrong = new Set<TestReading>();
  for (const test of ["green compression", "green shear", "splitting"] as const) {
    const others = middleOfOthers(batches, test);
    for (const batch of batches) {
      for (const reading of batch.readings) {
        if (reading.test !== test || !reading.worked) continue;
        const said = doubt(test, reading.worked, others(batch));
        if (!said) continue;
        reportAbout(batch.name)(said, reading.place);
        if (said.severity === "error") wrong.add(reading);
      }
    }
  }
  if (wrong.size === 0) return batches;
  return batches.map((batch) => {
    const readings = batch.readings.filter((reading) => !wrong.has(reading));
    if (readings.length === batch.readings.length) return batch;
    const lost = batch.readings.filter((reading) => wrong.has(reading)).map(({ test }) => test);
    return { ...batch, readings, leftOut: [...new Set([...(batch.leftOut ?? []), ...lost])] };
  });
}

function doubt(
  test: TestName,
  { value, text }: NonNullable<TestReading["worked"]>,
  others: number | undefined,
) {
  const unit = readQuantity(text).value?.unit?.text;
  const shown = (kPa: number) => printNumber(kPa, kPa < 20 ? 1 : 0);
  const fits = (kPa: number) => others !== undefined && Math.abs(kPa / others - 1) <= near;
  if (others !== undefined && value < others / farOff && fits(value * kPaPerPsi)) {
    const words = [test, text, shown(others), shown(value * kPaPerPsi)] as const;
    return unit === undefined ? psiAmongKPa(...words) : fitsAsPsi(...words);
  }
  if (others !== undefined && value > others * farOff && fits(value / kPaPerPsi)) {
    return unit === "psi"
      ? kPaAmongPsi(test, text, shown(value), shown(others))
      : convertedTwice(test, text, shown(others), shown(value / kPaPerPsi));
  }
  return unit === undefined ? psiDoubt(test, text, value) : undefined;
}

/** The median of the other batches' figures, each the median of its repeats; undefined where fewer than two have one. */
function middleOfOthers(batches: readonly Batch[], test: TestName): (batch: Batch) => number | undefined {
  const own = new Map<Batch, number>();
  for (const batch of batches) {
    const numbers = batch.readings.flatMap((one) => (one.test === test ? (plainNumber(one) ?? []) : []));
    if (numbers.length > 0) own.set(batch, median(numbers));
  }
  const sorted = [...own.values()].sort((a, b) => a - b);
  return (batch) => {
    const mine = own.get(batch);
    const skip = mine === undefined ? sorted.length : sorted.indexOf(mine);
    const rest = sorted.length - (skip < sorted.length ? 1 : 0);
    if (rest < 2) return undefined;
    const at = (k: number) => sorted[k < skip ? k : k + 1]!;
    return (at((rest - 1) >> 1) + at(rest >> 1)) / 2;
  };
}
