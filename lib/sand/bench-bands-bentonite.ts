// What bentonite-bonded sands are tempered and tested to, by metal. Never to be set beside bands for natural sands.

import type { Band } from "./band.ts";
import { asBands } from "./rows-bands.ts";

const bond = "bentonite";
const ours = "Our own proposal for hand-rammed work, each end tied to published rows";

/** Aluminium in hand-rammed sand: what this library proposes where no handbook row could be read. */
const proposed = asBands(
  { metal: "aluminium", bond, practice: "hand-rammed", claim: "recommended", tag: "our own" },
  [
    [
      "clay",
      7,
      10,
      `${ours}: 7.5 to 9 and 10 % in two Indonesian works, 5 to 13 in general texts`,
      { clayIs: "live bentonite", basis: "dry sand and clay" },
    ],
    ["moisture", 3, 4.5, `${ours}: general texts 2 to 5 %; best of 4, 6 and 8 % was 4`],
    ["compactability", 42, 48, `${ours}: hand moulding about 45 %`],
    ["green compression", 50, 100, `${ours}: 30 to 160 kPa in all, papers 48 to 120`],
    [
      "permeability",
      25,
      110,
      `${ours}: between very fine natural sands and 104`,
      { goesWithFineness: { low: 70, high: 130 } },
    ],
  ],
);

/** A judgement from several rows and practice: no single handbook row was read. */
const composite = asBands(
  { metal: "aluminium", bond, practice: "synthetic sand", claim: "recommended", tag: "common practice" },
  [
    [
      "clay",
      6,
      10,
      "Common practice for washed silica and bentonite; no handbook row read",
      { clayIs: "bentonite added", basis: "the mix, dry or damp not said" },
    ],
    ["moisture", 3, 5, "Common practice for washed silica and bentonite; no handbook row read"],
    ["compactability", 42, 50, "Common practice for washed silica and bentonite; no handbook row read"],
    ["green compression", 50, 100, "Common practice for washed silica and bentonite; no handbook row read"],
    [
      "permeability",
      20,
      60,
      "Common practice for washed silica and bentonite; no handbook row read",
      { goesWithFineness: { low: 90, high: 140 } },
    ],
  ],
);

const composition =
  "Composition of iron-foundry green sand, Recycled Materials Resource Center, Univ. Wisconsin; an older edition of the same text (FHWA-RD-97-148) says about 10 % bentonite";
const iron = asBands({ metal: "grey iron", bond, claim: "worked", tag: "read" }, [
  ["clay", 5, 10, composition, { clayIs: "bentonite added", basis: "the mix, dry or damp not said" }],
  ["moisture", 2, 5, composition],
]);

const ironHandbook = "Brown (ed.), Foseco Ferrous Foundryman's Handbook (from memory)";
const ironByMemory = (practice: string, rows: Parameters<typeof asBands>[1]) =>
  asBands(
    { metal: "grey iron", bond, practice, claim: "recommended", tag: "from memory" },
    rows.map(([property, low, high, , more]) => [property, low, high, ironHandbook, more] as const),
  );
const live = { clayIs: "live bentonite", basis: "dry sand and clay" } as const;
const joltSqueeze = ironByMemory("machine, jolt and squeeze", [
  ["clay", 5, 5.5, "", live],
  ["moisture", 3, 4, ""],
  ["compactability", 45, 52, ""],
  ["green compression", 70, 100, ""],
]);
const highPressure = ironByMemory("machine, high pressure", [
  ["clay", 6, 10, "", live],
  ["moisture", 2.5, 3.2, ""],
  ["compactability", 38, 40, ""],
  ["green compression", 150, 200, ""],
]);

export const benchBandsBentonite: readonly Band[] = Object.freeze([
  ...proposed,
  ...composite,
  ...iron,
  ...joltSqueeze,
  ...highPressure,
]);
