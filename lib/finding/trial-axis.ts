// How a place on a trial's axis is named and printed: alike everywhere on a page.

import { printNumber } from "../quantity/print.ts";
import type { TrialReport } from "../trial/trial-report.ts";

/**
 * "% of damp mass", as it stands under a head that names the axis.
 * @example axisUnit({ axis: "moisture" }) // "% of damp mass"
 */
export function axisUnit({ axis }: Pick<TrialReport, "axis">): string {
  return { moisture: "% of damp mass", clay: "% clay of the dry mix", compactability: "% compactability" }[
    axis
  ];
}

/**
 * The unit after a figure in a sentence, where it has to say what is measured as well.
 * @example axisInWords({ axis: "moisture" }) // "% moisture of damp mass"
 */
export function axisInWords(report: Pick<TrialReport, "axis">): string {
  return report.axis === "moisture" ? "% moisture of damp mass" : axisUnit(report);
}

/**
 * What the axis of a trial is called in a sentence.
 * @example axisName({ axis: "moisture" }) // "moisture"
 */
export function axisName({ axis }: Pick<TrialReport, "axis">): string {
  return { moisture: "moisture", clay: "clay", compactability: "compactability" }[axis];
}

/** Decimals of a place on the axis: two figures of the aim's half-width, else about a hundredth of what was tried. */
export function axisPlaces({ result, x }: Pick<TrialReport, "result" | "x">): number {
  const aim = result?.aim;
  const values = x.map(({ value }) => value);
  const size =
    aim && aim.high > aim.low ? (aim.high - aim.low) / 2 : (Math.max(...values) - Math.min(...values)) / 10;
  if (!(size > 0) || !Number.isFinite(size)) return 2;
  // Without an aim a place is a proposal for the scale: hundredths will do.
  return Math.min(aim ? 3 : 2, Math.max(0, 1 - Math.floor(Math.log10(size))));
}

/**
 * "3.33 (95 %: 3.24 to 3.54)"; "or wider" where a part of the doubt is not known.
 */
export function placeText(
  { x, low, high }: { readonly x: number; readonly low: number; readonly high: number },
  report: Pick<TrialReport, "result" | "x">,
  atLeast = false,
): string {
  const places = axisPlaces(report);
  return low < high
    ? `${printNumber(x, places)} (95 %: ${spanText({ low, high }, report)}${atLeast ? " or wider" : ""})`
    : printNumber(x, places);
}

/** "3.27 to 3.68". */
export function spanText(
  { low, high }: { readonly low: number; readonly high: number },
  report: Pick<TrialReport, "result" | "x">,
): string {
  const places = axisPlaces(report);
  return `${printNumber(low, places)} to ${printNumber(high, places)}`;
}
