// What charts ask of their data: a short name, figures that are figures.

import { invariant } from "../issue.ts";
import type { Box, Layer } from "./frame.ts";
import { words } from "./layers.ts";
import { colours } from "./theme.ts";

/** Throws Misuse unless the name can be a file name: lower case, digits, hyphens. */
export function checkName(name: string): void {
  invariant(
    /^[a-z0-9]+(-[a-z0-9]+)*$/u.test(name),
    `a chart's name is lower case with hyphens, not "${name}"`,
  );
}

export interface Ends {
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

/** Both ends when both are figures, else undefined; throws Misuse when they stand the wrong way round. */
export function ends(of: Ends): { readonly low: number; readonly high: number } | undefined {
  const { low, high } = of;
  if (low === undefined || high === undefined) return undefined;
  if (!Number.isFinite(low) || !Number.isFinite(high)) return undefined;
  invariant(low <= high, `the low end ${low} is above the high end ${high}`);
  return { low, high };
}

/** A figure for the table: null where there is none. */
export function cell(value: number | undefined): number | null {
  return value === undefined || !Number.isFinite(value) ? null : value;
}

/** The value, held inside the limits. */
export function within(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}

/** Said in the middle of a chart that has nothing to draw. */
export function nothing(box: Box): Layer | undefined {
  const at = [{ px: box.width / 2, py: box.height / 2, text: "No figures to draw." }];
  return words("nothing", at, { align: "center", color: colours.quiet });
}
