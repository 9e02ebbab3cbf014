// The standard sieves, found by number or by opening.

import type { Sieve } from "./sieve.ts";
import { type AstmRow, astmSieves } from "./sieve-table-astm.ts";
import { britishSieves } from "./sieve-table-british.ts";
import { isoOpeningsMm } from "./sieve-table-iso.ts";
import { standardToleranceMm } from "./sieve-tolerance.ts";

/** A number in the fewest digits, free of the dust of binary fractions: 0.425, not 0.42500000000000004. */
export function plainDigits(x: number): string {
  const digits = String(Number(x.toPrecision(6)));
  // A label has no power of ten.
  return digits.includes("e")
    ? x.toLocaleString("en", { maximumSignificantDigits: 6, useGrouping: false })
    : digits;
}

/** True where two openings are written alike. */
const written = (a: number, b: number) => Math.abs(a - b) <= 1e-6 * b;

function fromAstmRow(row: AstmRow): Sieve {
  return Object.freeze({
    label: `No. ${row.number}`,
    series: "astm",
    openingMm: row.openingMm,
    toleranceMm: row.toleranceUm / 1000,
    number: row.number,
  });
}

/** The US sieve of that number, e.g. 40. */
export function astmSieve(number: number): Sieve | undefined {
  const row = astmSieves.find((r) => r.number === number);
  return row && fromAstmRow(row);
}

/** The old British sieve of that mesh number. */
export function britishSieve(number: number): Sieve | undefined {
  const row = britishSieves.find((r) => r.number === number);
  return (
    row &&
    Object.freeze({
      label: `BS ${number}`,
      series: "british",
      openingMm: row.openingMm,
      toleranceMm: standardToleranceMm(row.openingMm),
      number,
    })
  );
}

/**
 * The standard sieve with that opening, mm: the US one where there is one, else the ISO 565 one. `older` is
 * true where the opening is an older table's print for the sieve (0.297 mm for No. 50).
 */
export function standardSieve(openingMm: number): { sieve: Sieve; older: boolean } | undefined {
  const today = astmSieves.find((row) => written(openingMm, row.openingMm));
  if (today) return { sieve: fromAstmRow(today), older: false };
  const iso = isoOpeningsMm.find((mm) => written(openingMm, mm));
  if (iso !== undefined) {
    const label = `${plainDigits(iso)} mm`;
    const toleranceMm = standardToleranceMm(iso);
    return { sieve: Object.freeze({ label, series: "iso", openingMm: iso, toleranceMm }), older: false };
  }
  const older = astmSieves.find((row) => row.olderMm.some((mm) => written(openingMm, mm)));
  return older && { sieve: fromAstmRow(older), older: true };
}

/** The US or ISO sieve whose opening is nearest by ratio. */
export function nearestStandardSieve(openingMm: number): Sieve {
  const openings = [...astmSieves.map((row) => row.openingMm), ...isoOpeningsMm];
  const away = (mm: number) => Math.abs(Math.log(mm / openingMm));
  const nearest = openings.reduce((best, mm) => (away(mm) < away(best) ? mm : best));
  return standardSieve(nearest)!.sieve;
}
