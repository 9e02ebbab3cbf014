// Shares and chances in words.

import { exactShare } from "../numbers/exact-share.ts";

/** "3 of 9 pours, 33 % (95 %: 7 to 70 %)" */
export function shareWords(hits: number, of: number): string {
  const { share, low, high } = exactShare(hits, of);
  const percent = (part: number): string => String(Math.round(100 * part));
  return `${hits} of ${of} ${of === 1 ? "pour" : "pours"}, ${percent(share)} % (95 %: ${percent(low)} to ${percent(high)} %)`;
}

/** Two figures, never 0. */
export function pWords(p: number): string {
  return p < 0.0001 ? "less than 0.0001" : String(Number(p.toPrecision(2)));
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
