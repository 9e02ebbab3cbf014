// Bores of tubes: cm or inches written as mm.

import { median } from "../numbers/summary.ts";
import { boreUnlikely } from "./complaints-agreement.ts";
import type { Report } from "./node.ts";
import type { Measured } from "./types.ts";

/** Tubes for sand specimens: 50 and 50.8 mm are usual; beyond these nobody rams by hand (our own). */
const likely = { low: 20, high: 150 };
const fits = (mm: number): boolean => mm >= likely.low && mm <= likely.high;
const plain = (mm: number): string => String(Number(mm.toPrecision(4)));

/** known: the bores that are likely as they stand, to choose between readings by. */
export function checkBore(what: string, bore: Measured, known: readonly number[], report: Report): void {
  const { value, text, place } = bore;
  if (fits(value)) return;
  const readings = [
    { mm: value * 10, words: `${plain(value)} cm` },
    { mm: value * 25.4, words: `${plain(value)} in` },
  ].filter(({ mm }) => fits(mm));
  const usual = known.length > 0 ? median(known) : 50;
  const off = (mm: number): number => Math.abs(Math.log(mm / usual));
  readings.sort((a, b) => off(a.mm) - off(b.mm));
  // Another tube that agrees to a tenth settles it; else both are told.
  const told = known.length > 0 && readings[0] && off(readings[0].mm) < 0.1 ? readings.slice(0, 1) : readings;
  const meant = told.map(({ mm, words }) => `${words} (${plain(mm)} mm)`).join(" or ");
  report(boreUnlikely(what, text, meant === "" ? "" : `Did you mean ${meant}?`), place);
}

export function likelyBores(bores: readonly (Measured | undefined)[]): number[] {
  return bores.flatMap((bore) => (bore && fits(bore.value) ? [bore.value] : []));
}
