// How well a batch is mulled, against the same sand mulled until nothing more changes.

import type { Issue } from "../issue.ts";
import { issueMessage } from "../message.ts";
import { requireAboveZero, requireFromZero } from "./require.ts";

export interface MulledState {
  readonly strengthKPa: number;
  readonly compactabilityPercent: number;
  readonly moistureOfDampPercent: number;
}

/**
 * Mulling efficiency, %: 100 × [strength × compactability / moisture] of the batch ÷ the same of the reference.
 *
 * batch: sand as used; reference: the same sand mulled more than ten minutes in a wheel muller until compactability
 * changes by less than 5 %, five minutes more after any water. Green compression strength in one unit, compactability
 * in % of height, moisture in % of damp mass; all > 0, else RangeError. mullingReferenceIssues checks the reference.
 * Not for mixes of new sand and clay: their clay is still taking up water. Above 100 the reference was not the better.
 * Source: TJFS-108.
 * @example
 * mullingEfficiencyPercent({
 *   batch: { strengthKPa: 150, compactabilityPercent: 40, moistureOfDampPercent: 3.2 },
 *   reference: { strengthKPa: 180, compactabilityPercent: 42, moistureOfDampPercent: 3.3 } }) // 81.8
 */
export function mullingEfficiencyPercent({
  batch,
  reference,
}: {
  readonly batch: MulledState;
  readonly reference: MulledState;
}): number {
  return (100 * indexOf(batch)) / indexOf(reference);
}

function indexOf({ strengthKPa, compactabilityPercent, moistureOfDampPercent }: MulledState): number {
  requireAboveZero("mullingEfficiencyPercent", { strengthKPa, compactabilityPercent, moistureOfDampPercent });
  return (strengthKPa * compactabilityPercent) / moistureOfDampPercent;
}

/**
 * Why a reference is no reference; empty where it is one.
 * mulledMin: minutes it was mulled, 0 or more; compactabilityChangePercent: what the last minutes changed, % of it, 0 or more; minutesSinceWater: if
 * water was added; newMix: true for new sand with new clay. Else RangeError.
 * Source: TJFS-108. Example: mulled 6 minutes gives "sand/reference-not-mulled".
 */
export function mullingReferenceIssues(reference: {
  readonly mulledMin: number;
  readonly compactabilityChangePercent?: number;
  readonly minutesSinceWater?: number;
  readonly newMix: boolean;
}): readonly Issue[] {
  const { mulledMin, compactabilityChangePercent, minutesSinceWater, newMix } = reference;
  requireFromZero("mullingReferenceIssues", {
    mulledMin,
    compactabilityChangePercent: compactabilityChangePercent ?? 0,
    minutesSinceWater: minutesSinceWater ?? 0,
  });
  const issues: Issue[] = [];
  if (!(mulledMin > 10)) issues.push(referenceMulledShort(String(mulledMin)));
  if (compactabilityChangePercent !== undefined && compactabilityChangePercent >= 5)
    issues.push(referenceStillChanged());
  if (minutesSinceWater !== undefined && minutesSinceWater < 5) issues.push(referenceJustWetted());
  if (newMix) issues.push(referenceNewMix());
  return issues;
}

const mullReference =
  "Mull the reference more than ten minutes, five more after any water, until compactability stands still. Take samples from a stopped, unplugged muller only.";

export const referenceMulledShort = issueMessage(
  "sand/reference-not-mulled",
  "warning",
  (minutes: string) => ({
    message: `The reference was mulled ${minutes} minutes; more than ten make a reference.`,
    remedy: mullReference,
  }),
);

export const referenceStillChanged = issueMessage("sand/reference-still-changed", "warning", () => ({
  message: "The reference's compactability still changed by 5 % or more.",
  remedy: mullReference,
}));

export const referenceJustWetted = issueMessage("sand/reference-just-wetted", "warning", () => ({
  message: "The reference was mulled less than five minutes after water was added.",
  remedy: mullReference,
}));

export const referenceNewMix = issueMessage("sand/reference-new-mix", "error", () => ({
  message:
    "Mulling efficiency is not for a mix of new sand and new clay, whose clay is still taking up water.",
  remedy: "Use it on sand that has been through the heap.",
}));
