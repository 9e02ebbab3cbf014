// A unit, read once; numbers after. Texts are read by read-unit.ts.

import { invariant } from "../issue.ts";

/** Exponents of mass, length, time, temperature. */
export type Dimension = readonly [mass: number, length: number, time: number, temperature: number];

export interface Unit {
  /** In the library's spelling: "g", "kg/m³", "°F", "% of dry mix". */
  readonly text: string;
  readonly dimension: Dimension;
  /** Value in SI = value × factor + offset. */
  readonly factor: number;
  /** Only for absolute temperatures. */
  readonly offset: number;
  /** A temperature difference is not a temperature; percent is a label, not algebra. */
  readonly kind: "plain" | "temperature" | "temperature difference" | "percent";
  /** For percent: of what ("damp mass", "dry mix", "sand", "height", "sample"); undefined: not said. */
  readonly of?: string;
}

/**
 * True when one unit can be turned into the other: the same exponents, the same kind, and for percent the same basis,
 * where a basis that is not said fits every one. A temperature and a temperature difference are not the same.
 * @example sameDimension(unitNamed("psi")!, unitNamed("N/cm²")!) // true
 */
export function sameDimension(a: Unit, b: Unit): boolean {
  return (
    a.kind === b.kind &&
    a.dimension.every((exponent, i) => exponent === b.dimension[i]) &&
    (a.of === undefined || b.of === undefined || a.of === b.of)
  );
}

/**
 * The value in another unit: (value·f₁ + o₁ − o₂)/f₂. Any value; NaN stays NaN.
 * Relative error below 1e-15 where there is no offset; temperatures are rounded to 1e-10 degree, for the offsets leave dust.
 * Units that cannot be turned into one another (sameDimension is false) throw.
 * @example convert(1, unitNamed("psi")!, unitNamed("kPa")!) // 6.8947572931...
 */
export function convert(value: number, from: Unit, to: Unit): number {
  invariant(sameDimension(from, to), `${from.text} cannot be turned into ${to.text}`);
  if (from.factor === to.factor && from.offset === to.offset) return value;
  const scaled = rescale(value, from, to);
  if (from.offset === to.offset) return scaled;
  const there = scaled + (from.offset - to.offset) / to.factor;
  return Number.isFinite(there) ? Number(there.toFixed(10)) : there;
}

/**
 * A difference, such as a ±, in another unit: offsets play no part, so ± 18 °F is ± 10 °C. A temperature difference
 * may be given in units of temperature. Otherwise as convert.
 * @example convertDifference(18, unitNamed("°F")!, unitNamed("°C")!) // 10
 */
export function convertDifference(value: number, from: Unit, to: Unit): number {
  invariant(sameDifference(from, to), `a difference in ${from.text} cannot be turned into ${to.text}`);
  return rescale(value, from, to);
}

/** sameDimension, but temperatures and temperature differences go together. */
export function sameDifference(a: Unit, b: Unit): boolean {
  return sameDimension(differenceOf(a), differenceOf(b));
}

function differenceOf(unit: Unit): Unit {
  return unit.kind === "temperature" ? { ...unit, kind: "temperature difference", offset: 0 } : unit;
}

function rescale(value: number, from: Unit, to: Unit): number {
  if (from.factor === to.factor) return value;
  return from.factor > to.factor
    ? value * timesLarger(from.factor, to.factor)
    : value / timesLarger(to.factor, from.factor);
}

/** Most pairs have a ratio of few digits, such as 1000 or 1.8: the dust of the division is taken off it. */
function timesLarger(large: number, small: number): number {
  const ratio = large / small;
  const tidy = Number(ratio.toPrecision(15));
  return Math.abs(tidy - ratio) <= 4e-16 * ratio ? tidy : ratio;
}
