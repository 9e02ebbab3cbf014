// What messages on the fineness of sands and blends may be said with.

import type { Examples } from "../example.ts";

export const grain: Examples = {
  "blend/beyond-reach": {
    aim: "a fineness number of 120",
    low: "56.9",
    high: "89.2",
    nearest: "Brickfield sand",
  },
  "blend/cost": { cost: "0.333 ± 0.010 crowns", each: "0.26 Coppice Lane sand, 0.44 Brickfield sand" },
  "blend/curve": {
    shares: "52 % (46 to 55) Quarry coarse, 8 % (0 to 24) Dune middling and 40 % (29 to 46) Glasshouse fine",
    sand: "The old sand",
    misfit: "what passes No. 140 differs most, by −0.2 ± 1.0 % of the sand.",
  },
  "blend/fines": { percent: "6.9 ± 1.7", most: "1.4 % of Coppice Lane sand and 14.9 % of Brickfield sand" },
  "blend/gap": { sieves: "No. 30 and No. 140" },
  "blend/in-range": {
    figure: "63.5 ± 1.6",
    chance: "99 or more",
    words: "the usual 55 to 70 for grey iron, in bentonite sand",
    decides: false,
    source:
      "Against burn-on, China Materials Engineering Canon vol. 19 as quoted in a machine-compiled entry; says green sand without naming the bond, taken as bentonite",
  },
  "blend/left-out": { sand: "Coppice Lane sand" },
  "blend/may-be-nought": { sand: "Dune middling", share: "8 % (0 to 24)" },
  "blend/other-ways": {
    ways: "75 % Dune middling with 25 % Glasshouse fine (0.31 a kilogram)",
    rule: "cheapest",
  },
  "blend/poor-curve": { sand: "the old sand", difference: "12 ± 3 %", sieve: "No. 70" },
  "blend/screens": { count: "4", sieves: "No. 70, No. 100, No. 140, No. 200", share: "96" },
  "blend/shares": {
    shares: "44 ± 5 % Quarry coarse and 56 ± 5 % Glasshouse fine",
    words: "75.0 ± 1.9 for a fineness number of 75",
  },
  "blend/window": {
    low: "0",
    high: "41",
    sand: "Brickfield sand",
    words: "the usual 55 to 70 for grey iron, in bentonite sand",
  },
  "compare/another": {
    pairs: [
      {
        finer: "New bag, June",
        other: "Old bag, March",
        size: "9.9 ± 1.5",
        widest: [
          "The curves lie furthest apart at No. 100: 29 % of Old bag, March passes it, 43 % of New bag, June.",
        ],
      },
    ],
  },
  "compare/apart-but-unrepeated": {
    pairs: [
      { finer: "Millrace sand", other: "Gorse Hill sand", size: "17.5 to 22.8 or wider", widest: [] },
      { finer: "Quarry sand", other: "Gorse Hill sand", size: "9.8 ± at least 2.1", widest: [] },
    ],
  },
  "compare/furthest-apart": {
    sieve: "No. 100",
    first: "Old bag, March",
    firstPercent: "29",
    second: "New bag, June",
    secondPercent: "43",
  },
  "compare/neighbours-not-told-apart": { pairs: ["Heap sand and Coppice Lane sand"], count: "9" },
  "compare/not-told-apart": {
    first: "Old bag, March",
    second: "New bag, June",
    size: "0.4 ± 1.2",
    seen: "1.6",
    widest: [
      "The curves lie furthest apart at No. 70: 83 % of Old bag, March passes it, 85 % of New bag, June.",
    ],
  },
  "grain/across-band": {
    figures: [{ sand: "Sand", figure: "59 to 96 or wider" }],
    edge: "60",
    band: "60 to 110 (common practice), given for aluminium in bentonite sand",
    decides: false,
    source: "Common practice for sands of washed silica and bentonite; no source read",
  },
  "grain/cannot-estimate": {
    sand: "Sand",
    low: "40.0",
    high: "70.0",
    help: "100 % stayed on No. 100: No. 50 or No. 70 would part it.",
  },
  "grain/crowded": {
    crowds: [
      {
        sand: "Coppice Lane sand",
        message:
          "No. 70: 62 g lie about 6 grains deep on this sieve; five layers are 52 g. Fine grains may be held back.",
      },
    ],
  },
  "grain/doubt-carrier": {
    shares: [{ sand: "Harrow Beck sand", percent: "48" }],
    carrier: "scatter between repeated sievings",
    what: "More repeats would narrow it.",
  },
  "grain/fines": { sand: "Lime Kiln sand (invented)", figure: "2.3" },
  "grain/gap": { sand: "Coppice Lane sand", empty: "No. 70 is", coarse: "No. 40", fine: "No. 140" },
  "grain/grabs-unknown": { sand: "Lime Kiln sand (invented)", sd: "0.089" },
  "grain/inside-band": {
    figures: [{ sand: "Sand", figure: "70.6 ± at least 1.8" }],
    band: "60 to 110 (common practice), given for aluminium in bentonite sand",
    decides: false,
    source: "Common practice for sands of washed silica and bentonite; no source read",
  },
  "grain/mass-gained": { sand: "Coppice Lane sand", portion: "", percent: "0.7" },
  "grain/mass-lost": { sand: "Coppice Lane sand", portion: " (portion B)", percent: "1.8", allowed: false },
  "grain/narrowed-by": { kind: "repeat" },
  "grain/no-band": { metal: "zinc", bond: "natural" },
  "grain/not-washed-new": { sands: ["Lime Kiln sand (invented)", "Heap sand"] },
  "grain/outside-band": {
    figures: [{ sand: "Sand", figure: "70.6 ± at least 1.8" }],
    side: "coarser",
    band: "160 to 225 (from memory), given for aluminium in natural sand",
    decides: false,
    source: "Class table of the American sand-control literature, attributed to Dietert (from memory)",
  },
  "grain/repeats": { sand: "Coppice Lane sand", sd: "0.6", count: "3" },
  "grain/scale-unchecked": { sands: ["Heap sand"] },
  "grain/screens": {
    shares: [{ sand: "Harrow Beck sand", percent: "97" }],
    count: "Four",
    sieves: "No. 70, No. 100, No. 140, No. 200",
  },
  "grain/sieve-would-narrow": { sand: "Coppice Lane sand", sieve: "No. 70", now: "1.4", after: "0.8" },
  "grain/unrepeated": { sands: ["Coppice Lane sand"] },
  "grain/unwashed": {
    sand: "Heap sand",
    figure: "70.6 ± at least 1.8",
    kind: "used",
    washing: "not washed",
  },
  "grain/weighing-unknown": { sands: ["Coppice Lane sand"] },
};
