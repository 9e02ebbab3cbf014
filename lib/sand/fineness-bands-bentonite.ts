// Fineness of bentonite-bonded sands by metal. Never to be set beside bands for natural sands.

import type { Band } from "./band.ts";

const shared = { property: "fineness", bond: "bentonite", unit: "AFS grain fineness number" } as const;

const list: readonly Band[] = [
  {
    ...shared,
    metal: "aluminium",
    practice: "hand-rammed",
    low: 70,
    high: 130,
    claim: "recommended",
    source:
      "Our own proposal: between papers on sands of 60 to 90 and the far finer natural sands of old tables",
    tag: "our own",
  },
  {
    ...shared,
    metal: "aluminium",
    low: 60,
    high: 110,
    claim: "recommended",
    source: "Common practice for sands of washed silica and bentonite; no source read",
    tag: "common practice",
  },
  {
    ...shared,
    metal: "grey iron",
    low: 55,
    high: 70,
    claim: "recommended",
    source:
      "Against burn-on, China Materials Engineering Canon vol. 19 as quoted in a machine-compiled entry; says green sand without naming the bond, taken as bentonite",
    tag: "read",
    takenAs: "bond",
  },
  {
    ...shared,
    metal: "grey iron",
    practice: "medium, synthetic sand",
    low: 55,
    high: 75,
    claim: "recommended",
    source:
      "Class table of the American sand-control literature, attributed to Dietert (from memory); its one row for synthetic sand",
    tag: "from memory",
  },
];

export const bentoniteFinenessBands: readonly Band[] = Object.freeze(list.map((band) => Object.freeze(band)));
