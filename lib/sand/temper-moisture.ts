// Where a clay content tempers: the ways that were found in print, side by side, because no one law was.

import type { Issue } from "../issue.ts";
import { type ClayKind, clayKinds, type TemperWay, temperWays } from "./temper-ways.ts";
import { temperWaysDisagree } from "./typical-issues.ts";

export interface TemperMoisture {
  /** Each way with its figure, or without one and why. */
  readonly ways: readonly TemperWay[];
  /** From the lowest to the highest middle of the ways that give a figure, % of damp mass; undefined when none does. */
  readonly between: { readonly low: number; readonly high: number } | undefined;
  readonly issues: readonly Issue[];
}

/**
 * Moisture at which a clay content tempers, % of damp mass, in four ways side by side:
 *
 * 1. equilibrium moisture of a fully mulled sand at a compactability (7 to 11 % live clay): clay/(3.213 − 0.02525 C)
 *    from C = 47.5 up, clay/(2.583 − 0.01185 C) below;
 * 2. a bare ratio, water per clay by mass: 0.4 at strength's peak, 0.6 at permeability's; hand temper lies between;
 * 3. an offset and a slope through the working windows of 4 and 8 % clay (4 to 8 % only);
 * 4. the common rule, an offset and a slope from memory, which alone tells sodium (0.3 part of water per part of clay) from calcium (0.25).
 *
 * clayPercent: live bentonite, % of dry sand and clay, above 0 to 20; clayKind: "sodium", "calcium" or "not known"
 * (then way 4 spans both). compactabilityPercent: 30 to 55, default 45, hand moulding. Else RangeError.
 * A way outside its own range has no figure and says why. Ways that lie more than 1 % of water apart: a warning.
 * Source: each way's own. The spread of the answer is what is known: it is not narrowed by averaging.
 *
 *     temperMoisture({ clayPercent: 8, clayKind: "sodium" }).ways[0]   // 3.90 % of damp mass by equilibrium
 */
export function temperMoisture({
  clayPercent,
  clayKind,
  compactabilityPercent = 45,
}: {
  clayPercent: number;
  clayKind: ClayKind;
  compactabilityPercent?: number;
}): TemperMoisture {
  if (!(clayPercent > 0 && clayPercent <= 20))
    throw new RangeError(`temperMoisture: clay must be above 0 and at most 20 %, got ${clayPercent}`);
  if (!clayKinds.includes(clayKind))
    throw new RangeError(
      `temperMoisture: the kind of clay is one of ${clayKinds.join(", ")}, not "${clayKind}"`,
    );
  if (!(compactabilityPercent >= 30 && compactabilityPercent <= 55))
    throw new RangeError(`temperMoisture: compactability must be 30 to 55 %, got ${compactabilityPercent}`);
  const ways = temperWays(clayPercent, clayKind, compactabilityPercent);
  const middles = ways.flatMap(({ value }) => (value === undefined ? [] : [value]));
  const between =
    middles.length === 0 ? undefined : { low: Math.min(...middles), high: Math.max(...middles) };
  const apart = between !== undefined && between.high - between.low > 1;
  return Object.freeze({
    ways,
    between,
    issues: [
      ...ways.flatMap(({ issues }) => issues),
      ...(apart ? [temperWaysDisagree(between.low.toFixed(1), between.high.toFixed(1))] : []),
    ],
  });
}
