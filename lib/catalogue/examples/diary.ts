// What messages on a diary may be said with.

import type { Examples } from "../example.ts";

export const diary: Examples = {
  "diary/after-baseline": { count: "16" },
  "diary/asked-every": { asked: true, every: "60" },
  "diary/baseline": {
    count: "20",
    from: "2025-10-11",
    to: "2026-04-11",
    since: "2025-10-05",
    kind: "new sand",
    limit: "0.33 % of damp mass",
  },
  "diary/baseline-only": {
    name: "Permeability (falling column)",
    count: "10",
    mean: "41.0 ± 2.0",
    limits: "between 33.3 and 48.7",
  },
  "diary/change-suggested": {
    name: "Green compression",
    days: "after 2026-06-13 and by 2026-06-20 (95 %)",
    from: "9.14",
    to: "5.85 psi",
    shift: "−3.3 ± 0.4 psi",
    because: [
      "Of shuffled rows of these values fewer than 1 in 1000 split as clearly (p at most 0.001; 0.001 over all charts of this page).",
      "Nothing is marked in those days.",
    ],
  },
  "diary/changed-between": { low: "2026-04-25", high: "2026-05-16" },
  "diary/changed-since": {
    name: "Moisture (oven)",
    event: "the rebond of 2026-06-07",
    count: "3 values",
    least: "8",
  },
  "diary/due": {
    name: "Permeability",
    waited: "the log holds no such test",
    rule: "the log asks for it every 7 days",
  },
  "diary/false-alarms": { any: "28", values: "16", standing: "6", baseline: "20" },
  "diary/few": { name: "Fineness (GFN) (as written down)", count: "4 values", least: "8" },
  "diary/last-tested": { date: "2026-05-09", ago: "105" },
  "diary/last-value": { value: "3.6 ± 0.1 % of damp mass" },
  "diary/last-values": { count: "8", mean: "64.3 ± 1.2 kPa" },
  "diary/limits": { low: "2.67", high: "4.04 % of damp mass" },
  "diary/made-up": { count: "2 batches were" },
  "diary/marked": { marks: [{ date: "2026-06-18", kind: "lost", note: "storm" }] },
  "diary/moved": {
    name: "Green compression",
    recent: "its last 8 values have a mean of 64.3 ± 1.2 kPa",
    way: "below",
    mean: "73.5 ± 1.8 kPa",
    because: ["A value outside the limits, on 2026-08-01."],
  },
  "diary/nothing-marked": { before: { date: "2026-04-11", kind: "block", note: "second bag" } },
  "diary/often-by-now": { count: "16" },
  "diary/perhaps-moved": {
    name: "Green compression",
    recent: "its last value is 61.0 ± 1.9 kPa",
    way: "below",
    mean: "73.5 ± 1.8 kPa",
    because: ["A value outside the limits, on 2026-08-01."],
  },
  "diary/restless-baseline": {
    name: "Moisture (oven)",
    count: "20 values",
    because: [
      "A value outside the limits, on 2026-01-31. The rule of three standard deviations: values that only scatter give it once in 370.",
      "8 values in a row, 2025-10-11 to 2025-12-06, lie below the mean. The rule of 8 on one side (Western Electric 1956): values that only scatter give it once in 255.",
    ],
  },
  "diary/rig-share": { name: "Clay by wash", percent: "at least 82 %", heavy: true },
  "diary/run": { count: "17", from: "2026-04-11", to: "2026-08-22", side: "below" },
  "diary/several-rigs": {
    name: "Permeability",
    rigs: "drop tube from 2026-03-01 and shed tube from 2026-07-12",
  },
  "diary/shuffled-rows": { share: "", p: "0.0005", overAll: "0.0025" },
  "diary/signal-passed": {
    name: "Green compression",
    mean: "63.0 ± 1.8 kPa",
    often: "Of 100 heaps that have not moved, about 16 show one by now.",
    because: ["A value outside the limits, on 2026-05-09."],
  },
  "diary/steady": {
    name: "Moisture (oven)",
    mean: "3.35 ± 0.11 % of damp mass",
    limits: "between 2.67 and 4.04 % of damp mass",
    count: "16 values after its baseline lie",
    because: [
      "Baseline: 8 values, 2026-03-01 to 2026-04-19, the first of the log; each limit is known to ± 0.3 (95 %).",
    ],
  },
  "diary/step-above-limit": { dates: ["2026-05-23", "2026-05-30"] },
  "diary/together": { name: "Clay by wash", r: "0.9", times: "3.2" },
  "diary/trend": { count: "7", from: "2026-03-28", to: "2026-05-23", rises: false },
  "diary/undated": { names: "W3 and W4" },
  "diary/unsteady": {
    name: "Clay by wash",
    count: "9",
    mean: "10.20 ± 0.22 % of dry mix",
    because: [
      "A value outside the limits, on 2025-10-18, 2025-11-15 and 2026-07-25. The rule of three standard deviations: values that only scatter give it once in 370.",
      "Baseline: 9 values, 2025-10-18 to 2026-08-22, the first since the heap was changed on 2025-10-05 (new sand); each limit is known to ± 0.66 % of dry mix (95 %).",
    ],
  },
  "diary/values-outside": { dates: ["2025-10-18", "2025-11-15", "2026-07-25"] },
  "diary/weighted-mean-out": { side: "below", on: "2026-05-02", since: "2026-04-18" },
};
