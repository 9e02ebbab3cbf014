// A figure with its unit within a message: the page may print it in the other system.

import { phraseMessage } from "../message.ts";

/** figures: significant ones; "12.4 g". In a page of US measures it is said anew from the same three. */
export const amount = phraseMessage(
  "quantity/amount",
  (value: number, unit: string, figures: number) => `${Number(value.toPrecision(figures))} ${unit}`,
);

/** Two ends with one unit: "10 to 250 kPa". */
export const amounts = phraseMessage(
  "quantity/amounts",
  (low: number, high: number, unit: string, figures: number) =>
    `${Number(low.toPrecision(figures))} to ${Number(high.toPrecision(figures))} ${unit}`,
);
