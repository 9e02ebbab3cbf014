// What messages on figures, units and dates may be said with.

import type { Examples } from "../example.ts";

export const quantity: Examples = {
  "log/bad-date": { text: "2 March 2026", readings: "2 March 2026 (2026-03-02)", example: "2026-03-02" },
  "log/impossible-date": { text: "2026-13-01", why: "the month in the middle goes from 01 to 12" },
  "quantity/ambiguous-unit": { unit: "Fl Oz", first: "US fl oz", second: "imp fl oz" },
  "quantity/amount": { value: 15, unit: "g/cm³", figures: 6 },
  "quantity/amounts": { low: 1.3, high: 1.8, unit: "g/cm³", figures: 2 },
  "quantity/below-absolute-zero": { text: "-300 °C" },
  "quantity/decimal-comma": { text: "1,234", write: "1.234 or 1234" },
  "quantity/mixed-units": { first: "lb", second: "cm" },
  "quantity/negative-plus-minus": { text: "12 ± -1 g" },
  "quantity/no-plus-minus": { text: "31±%6-²40" },
  "quantity/not-a-number": { text: "shop stack of a friend" },
  "quantity/not-finite": { text: "-Infinity" },
  "quantity/other-dimension": { text: "4 psi", from: "psi", to: "g" },
  "quantity/plus-minus-dimension": { figure: "g", plusMinus: "cm" },
  "quantity/plus-minus-meaning": { meaning: "(90 %)" },
  "quantity/range": { text: "9e- 1/2k 0,b²" },
  "quantity/thousands-separator": { text: "1,234,567", write: "1234567" },
  "quantity/too-long": {
    text: "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx",
    limit: 80,
  },
  "quantity/trailing-text": { rest: "- dry mix" },
  "quantity/two-marks": { text: "1'2.00" },
  "quantity/unknown-basis": { unit: "% of damp mas", nearest: "damp mass" },
  "quantity/unknown-unit": { unit: "-", nearest: "g" },
  "quantity/zero-denominator": { text: "5/ 0(279" },
};
