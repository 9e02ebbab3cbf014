// A figure of a typical curve: its range, what the range holds, where it comes from.

import type { Issue } from "../issue.ts";
import type { BandTag } from "./band.ts";

/** How far a curve can be trusted and where from. */
export interface TypicalOrigin {
  readonly unit: string;
  /** For a percentage, of what. */
  readonly basis?: string;
  /** What low and high hold: "95 % for one batch, from the residuals of nine points", or "our own: …". */
  readonly holds: string;
  readonly source: string;
  readonly tag: BandTag;
}

/** value, low and high are all undefined where the curve gives no figure; the issues say why. */
export interface TypicalValue extends TypicalOrigin {
  readonly value: number | undefined;
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly issues: readonly Issue[];
}

export function typicalFigure(
  origin: TypicalOrigin,
  { value, low, high }: { readonly value: number; readonly low: number; readonly high: number },
  issues: readonly Issue[] = [],
): TypicalValue {
  return Object.freeze({ ...origin, value, low, high, issues });
}

export function noTypicalFigure(origin: TypicalOrigin, issues: readonly Issue[]): TypicalValue {
  return Object.freeze({ ...origin, value: undefined, low: undefined, high: undefined, issues });
}

/** The ends of a factor made of independent factors: each given as how far the value may fall and rise, multiplied. */
export function combinedFactor(parts: readonly { readonly down: number; readonly up: number }[]): {
  readonly down: number;
  readonly up: number;
} {
  const together = (factors: readonly number[]) =>
    Math.exp(Math.sqrt(factors.reduce((sum, factor) => sum + Math.log(factor) ** 2, 0)));
  return { down: 1 / together(parts.map(({ down }) => down)), up: together(parts.map(({ up }) => up)) };
}
