// Moisture of a sand from two weighings, and the two bases that it is given on.

import { isAboveZero, isFromZero, requireAboveZero, requireBelow100, requireFromZero } from "./require.ts";

/**
 * Moisture, % of the damp mass: 100 (damp − dry) / damp.
 *
 * dampG: mass before drying, > 0, g. dryG: mass after drying, 0 or more, g; both without the pan. Else RangeError.
 * A dry mass above the damp one gives a negative figure, not a throw, so that draws about a nearly dry sample can be
 * worked through; moistureIssues tells the founder.
 * What "dry" means is the method's: see drying-method.ts. Two methods never share a curve.
 * Source: TJFS-201 (Japanese foundry societies' green sand moisture test): 50 g, 105 ± 5 °C to constant mass, mean of
 * two or more, to 0.1 %. Soil standards divide by the dry mass instead (ASTM D4643).
 * Example: moistureOfDampPercent({ dampG: 25, dryG: 23.414 }) is 6.344.
 */
export function moistureOfDampPercent({
  dampG,
  dryG,
}: {
  readonly dampG: number;
  readonly dryG: number;
}): number {
  if (!isAboveZero(dampG)) requireAboveZero("moistureOfDampPercent", { dampG });
  if (!isFromZero(dryG)) requireFromZero("moistureOfDampPercent", { dryG });
  return (100 * (dampG - dryG)) / dampG;
}

/**
 * Water per dry mass turned into water per damp mass: p / (1 + p / 100).
 * percentOfDry: % of the dry mass, above −100 to below 100 here, else RangeError: wetter than that is slurry.
 * Source: algebra. Example: dryToDampPercent(4.5) is 4.306.
 */
export function dryToDampPercent(percentOfDry: number): number {
  requireBelow100("dryToDampPercent", { percentOfDry });
  return percentOfDry / (1 + percentOfDry / 100);
}

/**
 * Water per damp mass turned into water per dry mass: p / (1 − p / 100).
 * percentOfDamp: % of the damp mass, above −100 to below 100, else RangeError.
 * Source: algebra. Example: dampToDryPercent(3.5) is 3.627.
 */
export function dampToDryPercent(percentOfDamp: number): number {
  requireBelow100("dampToDryPercent", { percentOfDamp });
  return percentOfDamp / (1 - percentOfDamp / 100);
}

/**
 * How far the steps of the scale alone may put a moisture off, worst case, ± % of the damp mass: 100 step / damp, for
 * each of the two weighings is off by up to half a step.
 * stepG: smallest step of the scale; dampG: sample. Both > 0, g, else RangeError.
 * Source: arithmetic.
 * @example moistureStepPercent({ stepG: 1, dampG: 200 }) // 0.5, no use for control
 */
export function moistureStepPercent({
  stepG,
  dampG,
}: {
  readonly stepG: number;
  readonly dampG: number;
}): number {
  requireAboveZero("moistureStepPercent", { stepG, dampG });
  return (100 * stepG) / dampG;
}
