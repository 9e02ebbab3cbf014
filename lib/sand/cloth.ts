// Woven cloth bought by count: the opening follows only once the wire is measured too.

import type { Sieve } from "./sieve.ts";
import { plainDigits } from "./sieve-table.ts";

/** A founder counts over one inch under a lens: surely right within half a wire. Our own assumption. */
const countWithin = 0.5;
/** A founder measures wire with a micrometer: surely right within 0.01 mm. Our own assumption. */
const wireWithinMm = 0.01;

export interface ClothWay {
  /** Wires per inch, above 0. */
  readonly countPerInch: number;
  /** Wire diameter, mm, above 0 and below the pitch. */
  readonly wireMm: number;
  /** The wire is surely right within this, mm; wireWithinMm when left out. */
  readonly wirePlusMinusMm?: number;
}

/**
 * Opening of woven cloth, mm: w = p − d, with the pitch p = 25.4 / count per inch and the wire d in mm.
 * Zero or below means that the wires would overlap: no such cloth. A count or wire of zero or less throws.
 * Source: wire-weavers' terminology sheets.
 *
 *     clothOpeningMm({ countPerInch: 40, wireMm: 0.25 })   // 0.385
 */
export function clothOpeningMm({ countPerInch, wireMm }: ClothWay): number {
  if (!(countPerInch > 0) || !(wireMm > 0)) throw new RangeError("Count and wire must be above 0.");
  return 25.4 / countPerInch - wireMm;
}

/** Open area of the cloth, percent of its whole area: 100 (w / p)². Same source. */
export function clothOpenAreaPercent(way: ClothWay): number {
  return 100 * Math.max(0, (clothOpeningMm(way) * way.countPerInch) / 25.4) ** 2;
}

/** ± of the opening, mm: both readings as far off as they surely can be, 25.4 · 0.5 / n² + ± of the wire. */
function clothToleranceMm(way: ClothWay): number {
  return (25.4 * countWithin) / way.countPerInch ** 2 + (way.wirePlusMinusMm ?? wireWithinMm);
}

/**
 * The sieve that a cloth makes, from its warp and its weft.
 *
 * The smaller of the two openings counts: a near-round grain meets both sides of the hole at once and is
 * stopped by the narrower. Long grains can slip through the wider way, so the whole difference goes into the
 * ±. Undefined where the wires would overlap. (Our own choice; a sieve test against a standard set beats it.)
 *
 *     clothSieve({ countPerInch: 40, wireMm: 0.25 })   // 0.385 ± 0.018 mm
 */
export function clothSieve(warp: ClothWay, weft: ClothWay = warp): Sieve | undefined {
  const openings = [clothOpeningMm(warp), clothOpeningMm(weft)] as const;
  const openingMm = Math.min(...openings);
  if (!(openingMm > 0)) return undefined;
  const difference = Math.max(...openings) - openingMm;
  const narrower = openings[0] === openingMm ? warp : weft;
  const toleranceMm = clothToleranceMm(narrower) + difference;
  return Object.freeze({ label: clothLabel(warp, weft), series: "cloth", openingMm, toleranceMm });
}

function clothLabel(warp: ClothWay, weft: ClothWay): string {
  const both = (a: number, b: number, join: string) =>
    a === b ? plainDigits(a) : `${plainDigits(a)}${join}${plainDigits(b)}`;
  const count = both(warp.countPerInch, weft.countPerInch, " × ");
  const said = warp.wirePlusMinusMm;
  const within = said === undefined ? "" : ` ± ${plainDigits(said)}`;
  return `${count} mesh, ${both(warp.wireMm, weft.wireMm, "/")}${within} mm wire`;
}
