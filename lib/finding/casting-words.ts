// Shares and chances in words.

import { phraseMessage } from "../message.ts";
import { exactShare } from "../numbers/exact-share.ts";
import type { Phrase } from "../phrase.ts";

/** "3 of 9 pours, 33 % (95 %: 7 to 70 %)" */
export function shareWords(hits: number, of: number): Phrase {
  const { share, low, high } = exactShare(hits, of);
  const percent = (part: number): string => String(Math.round(100 * part));
  return shareOfPours(String(hits), String(of), percent(share), percent(low), percent(high));
}

/** Two figures, never 0. */
export function pWords(p: number): string {
  return p < 0.0001 ? "less than 0.0001" : String(Number(p.toPrecision(2)));
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const shareOfPours = phraseMessage(
  "casting/share-of-pours",
  (hits: string, of: string, percent: string, low: string, high: string) =>
    `${hits} of ${of} ${of === "1" ? "pour" : "pours"}, ${percent} % (95 %: ${low} to ${high} %)`,
);
