// What messages on castings may be said with.

import type { Examples } from "../example.ts";

export const castings: Examples = {
  "casting/above-edge": { what: "compactability (rammed)", edge: "48 % of height" },
  "casting/across-limit": { count: "2", of: "8" },
  "casting/at-edge": { edge: "48 % of height" },
  "casting/beside": { others: "3" },
  "casting/castings": { count: "4" },
  "casting/cause-on-side": { cause: "moisture high", on: "1", tested: "1", otherOn: "0", otherTested: "7" },
  "casting/degassed": { degassed: true },
  "casting/fault": {
    fault: "Gas holes",
    share: "3 of 9 pours, 33 % (95 %: 7 to 70 %)",
    castings: "4 castings",
    pointing: ["moisture above the range on 2 of 3 such pours that were tested, and on 1 of 6 without it"],
    because: [
      "Looked at first, as is common practice: metal: wet or dirty charge, overheated, not degassed.",
    ],
    source: "common practice",
  },
  "casting/go-together": {
    fault: "gas holes",
    others: ["scrap share 60 % against 27.5 % (medians of 3 and 6)", "degassed 1 of 3 against 6 of 6"],
  },
  "casting/looked-at-first": {
    causes: ["moulding: rammed unevenly, flask or weights too light", "pouring: high head"],
  },
  "casting/made-up": { count: "One batch is" },
  "casting/not-answered": {
    fault: "Drops",
    what: "live clay",
    why: "no pour has a figure for it that stands for its day",
    because: ["Left out: 2026-05-02, without a figure."],
  },
  "casting/not-looked-over": { names: "a of 2026-05-02" },
  "casting/pours-left-out": { names: "2026-05-02", why: "unmeasured" },
  "casting/ranked": {
    fault: "gas holes",
    what: "Moisture (pan)",
    difference: "0.7 % of damp mass (95 %: 0.2 to 1.9)",
    groups: "With it: 3.9 and 4.3 %; without: 3.2 and 3.4 %. The readings' own ± is not in p.",
    counted: { p: "0.036", least: "0.018", adjusted: "0.072", beside: "question", clear: false },
    because: [],
  },
  "casting/share-of-pours": { hits: "2", of: "2", percent: "100", low: "16", high: "100" },
  "casting/side-share": { side: "at 48 % of height or below", share: "1 of 6 pours, 17 % (95 %: 0 to 64 %)" },
  "casting/sided": {
    fault: "Gas holes",
    over: "not degassed on 2 of 2 pours",
    under: "degassed on 1 of 7 pours",
    counted: { p: "0.083", least: "0.028", beside: "question", clear: false },
    because: [],
  },
  "casting/why-no-figure": { why: "no values" },
  "casting/with-and-without": {
    withIt: "3.9, 4.32, 5.27 % of damp mass",
    without: "3.35, 3.4, 3.6, 3.65, 3.75 % of damp mass",
  },
};
