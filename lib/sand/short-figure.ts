// Figures as messages print them.

import type { Phrase } from "../phrase.ts";
import { amount } from "../quantity/amount.ts";

/** Three figures, without an exponent for the sizes, masses and shares that occur here. */
export const short = (x: number): string => String(Number(x.toPrecision(3)));
export const grams = (x: number): Phrase => amount(x, "g", 3);
/** Of a sieve, whose standards are in millimetres everywhere. */
export const millimetres = (x: number): string => `${short(x)} mm`;
