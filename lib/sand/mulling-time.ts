// Strength against minutes of mulling: it rises fast, then less and less, towards the full bond.

import { requireAboveZero, requireFromZero } from "./require.ts";

/**
 * Strength after some minutes of mulling, in the unit of the strengths: S = S∞ − (S∞ − S0)·e^(−t/τ).
 *
 * minutes: t, 0 or more, ∞ allowed; startKPa: S0, of sand that is wetted and not yet mulled, 0 or more; fullKPa: S∞, the full bond
 * of this mix at this water, above 0; tauMin: τ, above 0. Else RangeError. S0 above S∞ falls towards S∞.
 * Source: form of an exponential approach, that of NIST StRD Misra1a and BoxBOD; that mulling follows it is common
 * practice, no published curve with numbers was found. τ is the founder's own: a figure of one muller, load and mix.
 * @example mulledStrengthKPa({ minutes: 6, startKPa: 20, fullKPa: 80, tauMin: 3 }) // 71.9
 */
export function mulledStrengthKPa({
  minutes,
  startKPa,
  fullKPa,
  tauMin,
}: {
  readonly minutes: number;
  readonly startKPa: number;
  readonly fullKPa: number;
  readonly tauMin: number;
}): number {
  if (!(minutes >= 0)) throw new RangeError(`mulledStrengthKPa: minutes must be 0 or more, got ${minutes}`);
  requireFromZero("mulledStrengthKPa", { startKPa });
  requireAboveZero("mulledStrengthKPa", { fullKPa, tauMin });
  return fullKPa - (fullKPa - startKPa) * Math.exp(-minutes / tauMin);
}

/**
 * Minutes until the strength is a share q of the full bond: t = τ·ln((S∞ − S0) / ((1 − q)·S∞)); 0 where S0 is there already.
 * With S0 = 0 this is −τ·ln(1 − q): 95 % is 3.00 τ.
 *
 * sharePercent: above 0 and below 100; the others as for mulledStrengthKPa. Else RangeError.
 * Source: mulledStrengthKPa, solved for t.
 * @example mullingMinutes({ sharePercent: 95, startKPa: 20, fullKPa: 80, tauMin: 3 }) // 8.12
 */
export function mullingMinutes({
  sharePercent,
  startKPa,
  fullKPa,
  tauMin,
}: {
  readonly sharePercent: number;
  readonly startKPa: number;
  readonly fullKPa: number;
  readonly tauMin: number;
}): number {
  if (!(sharePercent > 0 && sharePercent < 100))
    throw new RangeError(`mullingMinutes: sharePercent must be above 0 and below 100, got ${sharePercent}`);
  requireFromZero("mullingMinutes", { startKPa });
  requireAboveZero("mullingMinutes", { fullKPa, tauMin });
  const left = (fullKPa - startKPa) / ((1 - sharePercent / 100) * fullKPa);
  return left <= 1 ? 0 : tauMin * Math.log(left);
}
