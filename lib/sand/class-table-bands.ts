// The class table of the old American literature, whole: natural-bonded sands, and its one row for synthetic sand.
// From memory, not read again. Its moistures of 6 to 9 % belong to natural sands and to nothing else: in bentonite
// sand that much water is a steam hazard.

import type { Band } from "./band.ts";
import { KPA_PER_PSI } from "./bond-state.ts";
import type { Metal } from "./metals.ts";
import { asBands } from "./rows-bands.ts";

const source = "Class table of the American sand-control literature, attributed to Dietert (from memory)";
type Range = readonly [low: number, high: number];

interface ClassRow {
  readonly metal: Metal;
  readonly practice?: string;
  readonly moisture: Range;
  readonly permeability: Range;
  readonly strengthPsi: Range;
  readonly clay: Range;
  readonly fineness: Range;
}
const row = (
  metal: Metal,
  practice: string | undefined,
  moisture: Range,
  permeability: Range,
  strengthPsi: Range,
  clay: Range,
  fineness: Range,
): ClassRow => ({
  metal,
  ...(practice === undefined ? {} : { practice }),
  moisture,
  permeability,
  strengthPsi,
  clay,
  fineness,
});

const naturalRows = [
  row("aluminium", undefined, [6.5, 8.5], [7, 13], [6.5, 7.5], [12, 18], [160, 225]),
  row("brass and bronze", undefined, [6, 8], [13, 20], [7, 8], [12, 14], [140, 150]),
  row("copper-nickel", undefined, [6, 7.5], [37, 50], [6.5, 8], [12, 14], [120, 130]),
  row("grey iron", "light, stove plate", [6.5, 8.5], [10, 15], [6, 7.5], [10, 12], [180, 200]),
  row("grey iron", "light, squeezer", [6, 7.5], [18, 25], [6.2, 7.5], [12, 14], [87, 120]),
  row("grey iron", "medium, floor", [5.5, 7], [40, 60], [7.5, 8], [11, 14], [70, 86]),
  row("grey iron", "heavy", [4, 6.5], [80, 120], [5, 7.5], [8, 13], [50, 61]),
  row("malleable iron", "light", [6, 8], [20, 30], [6.5, 7.5], [8, 13], [92, 120]),
  row("malleable iron", "heavy", [5.5, 7.5], [40, 60], [6.5, 7.5], [8, 13], [70, 85]),
  row("steel", "light, green", [2, 4], [125, 200], [6.5, 7.5], [4, 10], [45, 56]),
  row("steel", "heavy, green", [2, 4], [130, 300], [6.5, 7.5], [4, 10], [38, 62]),
];
const syntheticRow = row(
  "grey iron",
  "medium, synthetic sand",
  [4, 6],
  [50, 80],
  [7.5, 8.5],
  [4, 10],
  [55, 75],
);

function bandsOf(bond: Band["bond"], line: ClassRow): readonly Band[] {
  const { metal, practice, moisture, permeability, strengthPsi, clay, fineness } = line;
  const kPa = strengthPsi.map((psi) => Math.round(psi * KPA_PER_PSI)) as [number, number];
  const shared = { metal, bond, claim: "recommended", tag: "from memory" } as const;
  return asBands({ ...shared, ...(practice === undefined ? {} : { practice }) }, [
    ["moisture", ...moisture, source],
    ["clay", ...clay, source, { clayIs: "AFS clay", basis: "dry sand" }],
    ["green compression", ...kPa, source],
    ["permeability", ...permeability, source, { goesWithFineness: { low: fineness[0], high: fineness[1] } }],
  ]);
}

export const classTableBandsNatural: readonly Band[] = Object.freeze(
  naturalRows.flatMap((line) => bandsOf("natural", line)),
);
export const classTableBandsBentonite: readonly Band[] = Object.freeze(bandsOf("bentonite", syntheticRow));
