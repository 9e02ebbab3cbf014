// What may be behind a sum that does not agree: swapped digits, a slipped decimal point, another unit, one mass above the whole.

import type { Place } from "../issue.ts";
import { slippedPoint, unitOfAll } from "./slipped-point.ts";
import { swappedDigits } from "./swapped-digits.ts";
import type { Measured, RetainedEntry } from "./types.ts";

export interface SumHint {
  /** "41.25 may be 14.25.", or nothing. */
  readonly hint: string;
  /** Where the first of such figures stands. */
  readonly place?: Place;
}

/** Swapped digits alone, for percentages and for small losses. */
export function swapHint(whole: Measured, retained: readonly RetainedEntry[], allowed: number): SumHint {
  const masses = [whole, ...retained.map((entry) => entry.mass)];
  const swaps = swappedDigits(figuresOf(masses), allowed).slice(0, 3);
  const place = swaps[0] && masses[swaps[0].index]?.place;
  const words = swaps.map(({ typed, swapped }) => `${typed} may be ${swapped}`).join(", or ");
  return place ? { hint: `${words}.`, place } : { hint: "" };
}

/** For masses against a start mass that they are far from. */
export function massHint(start: Measured, retained: readonly RetainedEntry[], allowed: number): SumHint {
  const swapped = swapHint(start, retained, allowed);
  if (swapped.place) return swapped;
  const rows = retained.map(({ mass }) => typedMass(mass));
  const [first] = retained;
  const unit = unitOfAll(typedMass(start), rows);
  const inUnit =
    unit !== undefined && first
      ? { hint: `The masses may be in ${unit}: write ${unit} after each.`, place: first.mass.place }
      : undefined;
  // Nobody sieves a hundredweight: all in grams is likelier than a start of so much.
  if (inUnit && unit === "g") return inUnit;
  const slip = slippedPoint(typedMass(start), rows);
  const at = slip && (slip.index === 0 ? start : retained[slip.index - 1]?.mass)?.place;
  if (slip && at) return { hint: `${slip.typed} may be ${slip.meant}.`, place: at };
  if (inUnit) return inUnit;
  const more = retained.filter(({ mass }) => mass.value > start.value);
  const [only] = more;
  return only && more.length === 1
    ? { hint: `${only.label} alone has ${only.mass.text.trim()}, more than that.`, place: only.mass.place }
    : { hint: "" };
}

const typedMass = ({ text, value }: Measured) => ({ text, valueG: value });

function figuresOf(masses: readonly Measured[]) {
  return masses.map(({ text, value }, index) => ({ text, value, sign: index === 0 ? -1 : 1 }) as const);
}
