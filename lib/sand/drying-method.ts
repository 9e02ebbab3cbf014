// What "dry" means: clay holds water that one method drives off and another leaves.

import { linearAt } from "../numbers/interpolate.ts";
import { requireFromZero, requireNumber } from "./require.ts";

export type DryingMethod = "oven" | "pan" | "microwave";

/** °C and % of its mass that a calcium bentonite still held: Önal & Sarıkaya, J. Therm. Anal. Calorim. 90(1), 2007. */
const HELD_AT_C = [25, 105, 150];
const HELD_PERCENT = [8.8, 5, 2.5];

/**
 * Water that bentonite still holds after drying, % of the clay's mass: straight between the three published points.
 * celsius: 25 to 150 °C; outside it nothing was published there, so null. Not a number: RangeError.
 * Source: Önal & Sarıkaya 2007 (a calcium bentonite); a sodium bentonite differs.
 * Example: boundWaterOfClayPercent(105) is 5.0.
 */
export function boundWaterOfClayPercent(celsius: number): number | null {
  requireNumber("boundWaterOfClayPercent", { celsius });
  const held = linearAt(HELD_AT_C, HELD_PERCENT, celsius);
  return Number.isNaN(held) ? null : held;
}

/**
 * How much higher moisture reads when the same sand is dried hotter, points of %: clay % × (held at from − held at to)
 * / 100. Null where a temperature lies outside 25 to 150 °C.
 * clayPercent: bentonite, % of the sample, 0 or more. Else RangeError. Source: as boundWaterOfClayPercent; a model.
 * Example: dryingShiftPercent({ clayPercent: 8, fromCelsius: 105, toCelsius: 150 }) is 0.2.
 */
export function dryingShiftPercent(question: {
  readonly clayPercent: number;
  readonly fromCelsius: number;
  readonly toCelsius: number;
}): number | null {
  const { clayPercent, fromCelsius, toCelsius } = question;
  requireFromZero("dryingShiftPercent", { clayPercent });
  const from = boundWaterOfClayPercent(fromCelsius);
  const to = boundWaterOfClayPercent(toCelsius);
  return from === null || to === null ? null : (clayPercent * (from - to)) / 100;
}

/**
 * How far a method may read above (high) or below (low, negative) an oven at 105 °C, points of % moisture:
 * oven: 105 ± 5 °C by the slopes on each side; pan: from nothing to all that the clay still held at 105 °C;
 * microwave: null, since ASTM D4643 warns that it may not be reliable with montmorillonite: compare it with the oven.
 * clayPercent: bentonite, % of the sample, 0 or more, else RangeError. Organics (cereal, coal) that scorch come on top.
 * Source: Önal & Sarıkaya 2007; TJFS-201 for ± 5 °C; ASTM D4643.
 * Example: methodBoundsPercent("pan", 8) is { low: 0, high: 0.4 }.
 */
export function methodBoundsPercent(
  method: DryingMethod,
  clayPercent: number,
): { readonly low: number; readonly high: number } | null {
  requireFromZero("methodBoundsPercent", { clayPercent });
  if (method === "microwave") return null;
  if (method === "pan") return { low: 0, high: (clayPercent * HELD_PERCENT[1]!) / 100 };
  const shift = (toCelsius: number): number =>
    dryingShiftPercent({ clayPercent, fromCelsius: 105, toCelsius })!;
  return { low: shift(100), high: shift(110) };
}
