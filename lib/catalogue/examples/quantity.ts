// What messages on figures, units and dates may be said with.

import type { Examples } from "../example.ts";

export const quantity: Examples = {
  "log/bad-date": { text: "2 March 2026", readings: "2 March 2026 (2026-03-02)", example: "2026-03-02" },
  "log/impossible-date": { text: "2026-13-01", why: "the month in the middle goes from 01 to 12" },
  "quantity/ambiguous-unit": { unit: "Fl Oz", first: "US fl oz", second: "imp fl oz" },
  "quantity/amount": { value: 15, unit: "g/cm³", figures: 6 },
  "quantity/amounts": { low: 1.3, high: 1.8, unit: "g/cm³", figures: 2 },
  "quantity/below-absolute-zero": { text: "-300 °C" },
  "quantity/colon": { text: "1:45", first: "1", second: "45" },
  "quantity/decimal-comma": { text: "1,234", write: "1.234 or 1234" },
  "quantity/fraction-dash": { text: "1-1/2 in", write: "1 1/2" },
  "quantity/mixed-units": { first: "lb", second: "cm" },
  "quantity/negative-plus-minus": { text: "12 ± -1 g" },
  "quantity/no-plus-minus": { text: "12.4 ±" },
  "quantity/not-a-number": { text: "shop stack of a friend" },
  "quantity/not-finite": { text: "-Infinity" },
  "quantity/other-dimension": { text: "4 psi", from: "psi", to: "g" },
  "quantity/plus-minus-at-least": { text: "69.1 ± at least 0.4 kPa" },
  "quantity/plus-minus-dimension": { figure: "g", plusMinus: "cm" },
  "quantity/plus-minus-meaning": { meaning: "(90 %)" },
  "quantity/range": { text: "12 to 13 g" },
  "quantity/thousands-separator": { text: "1,234,567", write: "1234567" },
  "quantity/too-long": { text: "12.4 g, weighed twice, the second time with the lid on", limit: 80 },
  "quantity/trailing-text": { rest: "damp" },
  "quantity/two-marks": { text: "12.4.1" },
  "quantity/unknown-basis": { unit: "% of damp mas", nearest: "damp mass" },
  "quantity/unknown-unit": { unit: "gramms", nearest: "g" },
  "quantity/zero-denominator": { text: "3/0 in" },
};
