// Sand that comes warm from the last casting, and what a muller makes of it.

import { requireNumber } from "./require.ts";

/** From here on sand mulls inconsistently: 120 °F. Read in Aklinski & Granlund, citing Schumacher; the same in Strobl & Silsby. */
export const HOT_SAND_C = 49;
/** Above this it does not mull to any consistency: 160 °F. Aklinski & Granlund, citing Schumacher; Strobl & Silsby. */
const TOO_HOT_TO_MULL_C = 71;

export type SandHeat = "cool" | "hot" | "too hot to mull";

/**
 * What a muller makes of sand at a temperature: below 49 °C "cool", from there "hot" (mulls unevenly), above 71 °C
 * "too hot to mull" (to no consistency; water leaves it as fast as it is put in).
 * sandC: of the sand in the middle of the heap, °C, any number, else RangeError.
 * Source: hotSandSource, 120 °F and 160 °F, rounded to whole degrees.
 * @example sandHeat(55) // "hot"
 */
export function sandHeat(sandC: number): SandHeat {
  requireNumber("sandHeat", { sandC });
  if (sandC > TOO_HOT_TO_MULL_C) return "too hot to mull";
  return sandC >= HOT_SAND_C ? "hot" : "cool";
}
