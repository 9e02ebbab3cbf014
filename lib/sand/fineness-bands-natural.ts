// Fineness of natural-bonded sands by metal. Never to be set beside bands for bentonite.

import type { Band } from "./band.ts";
import type { Metal } from "./metals.ts";

const shared = { property: "fineness", bond: "natural", unit: "AFS grain fineness number" } as const;

/** Natural-bonded era, with 12 to 18 % clay; far finer than what is cast in today. */
const classTable = "Class table of the American sand-control literature, attributed to Dietert (from memory)";

const classRows: readonly (readonly [Metal, string | undefined, number, number])[] = [
  ["aluminium", undefined, 160, 225],
  ["brass and bronze", undefined, 140, 150],
  ["copper-nickel", undefined, 120, 130],
  ["grey iron", "light, stove plate", 180, 200],
  ["grey iron", "light, squeezer", 87, 120],
  ["grey iron", "medium, floor", 70, 86],
  ["grey iron", "heavy", 50, 61],
  ["malleable iron", "light", 92, 120],
  ["malleable iron", "heavy", 70, 85],
  ["steel", "light, green", 45, 56],
  ["steel", "heavy, green", 38, 62],
];

const fromClassTable = classRows.map(
  ([metal, practice, low, high]): Band => ({
    ...shared,
    metal,
    ...(practice === undefined ? {} : { practice }),
    low,
    high,
    claim: "recommended",
    source: classTable,
    tag: "from memory",
  }),
);

const nonFerrous = (["aluminium", "brass and bronze", "copper-nickel"] as const).map(
  (metal): Band => ({
    ...shared,
    metal,
    low: 35,
    high: 90,
    claim: "recommended",
    source: "Gana et al., FUDMA J. Eng. Tech., Maiduguri natural sands for non-ferrous work (abstract)",
    tag: "read",
  }),
);

const soundAluminium: Band = {
  ...shared,
  metal: "aluminium",
  low: 61,
  high: 88,
  claim: "worked",
  source:
    "Sound aluminium castings in sands of 61.08 to 66.98 (Shuaib-Babata et al., Arid Zone J. Eng. Tech. Env. 13(6), 2017, 718–733) and 88.05 (Ihom et al., Leonardo Electronic J. of Practices and Technologies 19, 2011, 85–96)",
  tag: "derived",
};

export const naturalFinenessBands: readonly Band[] = Object.freeze(
  [...nonFerrous, soundAluminium, ...fromClassTable].map((band) => Object.freeze(band)),
);
