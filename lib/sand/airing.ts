// How long damp sand must be spread and turned until it has dried to a wanted moisture.

import { requireAboveZero, requireFromZero } from "./require.ts";

/**
 * Hours that a layer takes to dry from one moisture to another: at a steady rate down to the critical moisture,
 * t₁ = (m/A R)(X₁ − Xc), and at a rate that falls in proportion below it,
 * t₂ = (m/A R)(Xc − X*) ln((Xc − X*)/(X₂ − X*)).
 *
 * dryKgM2: dry sand on a square metre, > 0. rateKgM2H: the steady rate, > 0. from, to, critical, balance: moistures, % of
 * DRY mass, from above to above balance, balance 0 or more; else RangeError. A critical moisture above from counts as
 * from: all of it falls.
 * Source: standard texts of drying (from memory). Turned often, a layer dries faster than one that lies.
 * Example: 20 kg/m², 0.15 kg/(m² h), 6 to 3.5 %, critical 5 %, balance 0.2 %: 3.73 h.
 */
export function dryingHours({
  dryKgM2,
  rateKgM2H,
  fromOfDryPercent,
  toOfDryPercent,
  criticalOfDryPercent,
  balanceOfDryPercent = 0,
}: {
  readonly dryKgM2: number;
  readonly rateKgM2H: number;
  readonly fromOfDryPercent: number;
  readonly toOfDryPercent: number;
  readonly criticalOfDryPercent: number;
  readonly balanceOfDryPercent?: number;
}): number {
  requireAboveZero("dryingHours", { dryKgM2, rateKgM2H, criticalOfDryPercent });
  requireFromZero("dryingHours", { balanceOfDryPercent });
  if (!(fromOfDryPercent >= toOfDryPercent && toOfDryPercent > balanceOfDryPercent))
    throw new RangeError(
      `dryingHours: from, to and balance must fall in this order, got ${fromOfDryPercent}, ${toOfDryPercent}, ${balanceOfDryPercent}`,
    );
  const hoursForEach = dryKgM2 / rateKgM2H / 100;
  // The rate falls from here on; above it, it stands still.
  const knee = Math.max(toOfDryPercent, Math.min(fromOfDryPercent, criticalOfDryPercent));
  const steady = fromOfDryPercent - knee;
  const over = criticalOfDryPercent - balanceOfDryPercent;
  if (!(over > 0) || knee === toOfDryPercent) return hoursForEach * steady;
  const falling = over * Math.log((knee - balanceOfDryPercent) / (toOfDryPercent - balanceOfDryPercent));
  return hoursForEach * (steady + falling);
}
