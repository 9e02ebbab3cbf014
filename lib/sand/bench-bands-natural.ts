// What natural-bonded sands were tested to, by metal. Never to be set beside bands for bentonite: the moisture of a
// natural sand is a steam hazard in bentonite sand.

import type { Band } from "./band.ts";
import type { Metal } from "./metals.ts";
import { asBands, type BandRow } from "./rows-bands.ts";

const bond = "natural";
const afs = { clayIs: "AFS clay", basis: "dry sand" } as const;

const maiduguri =
  "Five natural sands of Maiduguri judged adequate, Gana et al., FUDMA J. Eng. Tech. (abstract)";
const maiduguriRows: readonly BandRow[] = [
  ["clay", 11, 44.5, maiduguri, afs],
  ["moisture", 1.9, 5.6, maiduguri],
  ["permeability", 80.1, 89.1, maiduguri, { goesWithFineness: { low: 60.55, high: 90.5 } }],
  ["green compression", 60.2, 71.5, maiduguri],
];

const ilorin =
  "Sands of Ilorin and Ilesha at their best water, Aweda & Jimoh, J. Res. Inf. Civ. Eng. 6(2) 2009";
const ilorinRows: readonly BandRow[] = [
  ["moisture", 8, 9, ilorin],
  ["permeability", 47.5, 50, ilorin],
  ["green compression", 50, 52, ilorin],
];

const oyun = "Oyun river sand, Shuaib-Babata et al., Univ. Ilorin repository (abstract)";
const oyunRows: readonly BandRow[] = [
  ["clay", 14.96, 15.79, oyun, afs],
  ["moisture", 8.15, 8.48, oyun],
  ["green compression", 77.31, 79.73, oyun],
];

const nonFerrous: readonly Metal[] = ["aluminium", "brass and bronze", "copper-nickel"];
const served = { bond, claim: "worked", tag: "read" } as const;
const read = [
  ...nonFerrous.flatMap((metal) => asBands({ ...served, metal }, [...maiduguriRows, ...ilorinRows])),
  ...[...nonFerrous, "grey iron" as const].flatMap((metal) => asBands({ ...served, metal }, oyunRows)),
];

// A second remembered table, of 1966, which disagrees with the class table. It names no bond; it stands here because
// it is for natural sands that it is quoted as a yardstick.
const later =
  "Satisfactory ranges attributed to Dietert 1966 as quoted in papers on natural sands (from memory); names no bond, no fineness";
const laterRows: readonly (readonly [Metal, string | undefined, number, number, number, number])[] = [
  ["aluminium", undefined, 50, 70, 10, 30],
  ["brass and bronze", undefined, 55, 85, 15, 40],
  ["grey iron", "light", 50, 85, 20, 50],
  ["grey iron", "medium", 70, 105, 40, 80],
  ["grey iron", "heavy", 70, 105, 70, 120],
  ["malleable iron", undefined, 45, 55, 20, 60],
  ["steel", "light, green", 70, 85, 125, 200],
  ["steel", "heavy, green", 70, 85, 130, 300],
];
const remembered = laterRows.flatMap(([metal, practice, low, high, lowNumber, highNumber]) =>
  asBands(
    {
      metal,
      bond,
      claim: "recommended",
      tag: "from memory",
      ...(practice === undefined ? {} : { practice }),
    },
    [
      ["green compression", low, high, later],
      ["permeability", lowNumber, highNumber, later],
    ],
  ),
);

export const benchBandsNatural: readonly Band[] = Object.freeze([...read, ...remembered]);
