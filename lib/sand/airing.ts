// How long damp sand must be spread and turned until it has dried to a wanted moisture.

import { openWaterKgM2H } from "./evaporation.ts";
import { type Air, requireAir, wetBulbCelsius } from "./humid-air.ts";
import { dampToDryPercent } from "./moisture.ts";
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
 * @example
 * dryingHours({ dryKgM2: 20, rateKgM2H: 0.15, fromOfDryPercent: 6, toOfDryPercent: 3.5,
 *   criticalOfDryPercent: 5, balanceOfDryPercent: 0.2 }) // 3.73
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

/** Below this, % of dry mass, sand of 50 to 150 mesh no longer dries at a steady rate: Perry, from memory. */
const CRITICAL_OF_DRY_PERCENT = 5;

/**
 * Hours that an over-wet layer must be spread and turned to come down to a moisture, as a range: low, as open water at the
 * air's own temperature with every grain brought to the top in its turn; high, at the wet bulb and half that rate
 * (such formulas are good to a factor of two), falling below 5 % of dry mass.
 *
 * layerMm: depth of the loose layer, > 0. looseKgM3: damp, loose, > 0; 1100 unless given. from, to: % of damp mass, from
 * above to, to above 0. airC: 0 to 60 °C; relativeHumidityPercent: 0 to 100; airMS: 0 to 10. Else RangeError. ∞ where
 * the air takes nothing up. Without turning the skin dries and the inside does not: test before it is used, never pour
 * on it before that.
 * Source: openWaterKgM2H and dryingHours.
 * @example
 * airingHours({ layerMm: 50, fromOfDampPercent: 5, toOfDampPercent: 4,
 *   airC: 20, relativeHumidityPercent: 50, airMS: 0.5 }) // { low: 2.6, high: 15.9 }
 */
export function airingHours({
  layerMm,
  looseKgM3 = 1100,
  fromOfDampPercent,
  toOfDampPercent,
  airMS = 0,
  ...air
}: Air & {
  readonly layerMm: number;
  readonly looseKgM3?: number;
  readonly fromOfDampPercent: number;
  readonly toOfDampPercent: number;
  readonly airMS?: number;
}): { readonly low: number; readonly high: number } {
  requireAir("airingHours", air);
  requireAboveZero("airingHours", { layerMm, looseKgM3, toOfDampPercent });
  const rate = (waterC: number): number => openWaterKgM2H({ ...air, waterC, airMS });
  const hours = (rateKgM2H: number, criticalOfDryPercent: number): number =>
    rateKgM2H > 0
      ? dryingHours({
          dryKgM2: (looseKgM3 * layerMm * (1 - fromOfDampPercent / 100)) / 1000,
          rateKgM2H,
          fromOfDryPercent: dampToDryPercent(fromOfDampPercent),
          toOfDryPercent: dampToDryPercent(toOfDampPercent),
          criticalOfDryPercent,
        })
      : Number.POSITIVE_INFINITY;
  return {
    low: hours(rate(air.airC), dampToDryPercent(toOfDampPercent)),
    high: hours(rate(wetBulbCelsius(air)) / 2, CRITICAL_OF_DRY_PERCENT),
  };
}
