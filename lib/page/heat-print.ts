// Ranges of heat as a page prints them: two digits, since a model is known no better.

import type { Ends } from "../finding/heat-figures.ts";
import type { TableCell } from "./blocks.ts";
import { inShownUnit, type ShownUnits, shownUnit } from "./shown-units.ts";

type System = ShownUnits["recipe"];

/** Rounded to ten degrees Fahrenheit, as such limits are printed. */
export function hotText(celsius: number, system: System): string {
  const { value, unit } = inShownUnit(celsius, "°C", system);
  return `${system === "US" ? 10 * Math.round(value / 10) : value} ${unit}`;
}

export const inUnit = ({ low, high }: Ends, system: System): Ends => ({
  low: inShownUnit(low, "mm", system).value,
  high: inShownUnit(high, "mm", system).value,
});
export const lengthRange = (ends: Ends, system: System): string =>
  `${two(inUnit(ends, system))} ${shownUnit("mm", system)}`;
export const lengthText = (mm: number, system: System): string =>
  `${length(mm, system)} ${shownUnit("mm", system)}`;
/** A section as a founder measures it: three digits. */
const length = (mm: number, system: System): string =>
  String(Number(inShownUnit(mm, "mm", system).value.toPrecision(3)));
/** Its number stays in mm. */
export function lengthCell(mm: number, system: System): TableCell {
  return { text: length(mm, system), number: mm };
}

/** Two digits: a range of a model is known no better. */
export const digits = (x: number): string => String(Number(x.toPrecision(2)));
export const two = ({ low, high }: Ends): string => `${digits(low)} to ${digits(high)}`;
