// Volumes: metric, and the two kinds of fluid ounce, cup, pint, quart and gallon.

import type { Dimension } from "./unit.ts";
import type { UnitRow } from "./unit-table-row.ts";

const volume: Dimension = [0, 3, 0, 0];

/** Measures that a US and an imperial gallon are cut into; how many make a gallon. */
export const measures = [
  {
    text: "fl oz",
    names: ["floz", "fl. oz.", "fl. oz", "fluid oz", "fluid ounce", "fluid ounces"],
    us: 128,
    imperial: 160,
  },
  { text: "cup", names: ["cups"], us: 16, imperial: 16 },
  { text: "pint", names: ["pints", "pt"], us: 8, imperial: 8 },
  { text: "quart", names: ["quarts", "qt"], us: 4, imperial: 4 },
  { text: "gal", names: ["gal.", "gallon", "gallons"], us: 1, imperial: 1 },
] as const;

const usWords = ["US", "U.S.", "USA", "American"];
const imperialWords = ["imp", "imp.", "imperial", "UK", "British"];

/** "US gal", "gal US" and "gal (US)", for every name of the measure and of the country. */
function spellings(words: readonly string[], names: readonly string[]): string[] {
  return words.flatMap((word) => names.flatMap((n) => [`${word} ${n}`, `${n} ${word}`, `${n} (${word})`]));
}

/** US: 231 in³ to the gallon, in³ = (127/5000 m)³. Imperial: 4.546 09 l to the gallon. */
const fluidRows: readonly UnitRow[] = measures.flatMap((measure): UnitRow[] => {
  const names = [measure.text, ...measure.names];
  return [
    {
      text: `US ${measure.text}`,
      names: spellings(usWords, names),
      dimension: volume,
      ratio: [231 * 127 ** 3, 5000 ** 3 * measure.us],
      source: "exact: US gallon of 231 cubic inches, NIST Handbook 44 appendix C",
    },
    {
      text: `imp ${measure.text}`,
      names: spellings(imperialWords, names),
      dimension: volume,
      ratio: [454_609, 100_000_000 * measure.imperial],
      source:
        measure.text === "cup"
          ? "common practice: half an imperial pint"
          : "exact: imperial gallon of 4.546 09 litres, NIST SP 811 appendix B",
    },
  ];
});

const si = "exact: SI";

export const volumeRows: readonly UnitRow[] = [
  {
    text: "ml",
    names: ["mL", "millilitre", "milliliter", "millilitres", "milliliters"],
    dimension: volume,
    ratio: [1, 1_000_000],
    source: si,
  },
  {
    text: "l",
    names: ["L", "ltr", "litre", "liter", "litres", "liters"],
    dimension: volume,
    ratio: [1, 1000],
    source: si,
  },
  { text: "cm³", names: ["cc", "ccm"], dimension: volume, ratio: [1, 1_000_000], source: si },
  ...fluidRows,
];
