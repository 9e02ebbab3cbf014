// Texts as numbers, so that they go through the same loops.

import { mixed } from "../numbers/mixing.ts";

/**
 * A number that stands for a text when formulas compare texts: 53 bits of a mixing hash of the text, trimmed and in
 * Unicode form C; the empty text gives NaN, for nothing was written. Capitals count.
 * Two of 10,000 different texts share a number by chance in one sheet of about 180 million (birthday bound).
 * Example: textCode("Alder") === textCode(" Alder ") is true.
 */
export function textCode(text: string): number {
  const plain = text.normalize("NFC").trim();
  if (plain === "") return Number.NaN;
  let low = 0x9e3779b9 ^ plain.length;
  let high = 0x85ebca6b;
  for (let i = 0; i < plain.length; i++) {
    const unit = plain.charCodeAt(i);
    low = Math.imul(low ^ unit, 0x01000193) ^ (low >>> 15);
    high = Math.imul(high ^ unit, 0x2c1b3c6d) + ((high << 7) | (high >>> 25));
  }
  return (mixed(high ^ low) & 0x1fffff) * 2 ** 32 + mixed(low + Math.imul(high, 5));
}
