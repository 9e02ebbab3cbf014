// The sentences of a diary: plain strings in.

import { findingMessage } from "./finding-message.ts";

const handbook = "NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2";
const limitsFormula =
  "limits = mean ± 3·(mean step)/1.128 = mean ± 2.66·(mean step); 3.267·(mean step) for a step";

type Parts = readonly string[];

export const steady = findingMessage(
  "diary/steady",
  "good",
  (name: string, mean: string, limits: string, count: string, because: Parts) => ({
    text: `${name} is steady: mean ${mean}, and the ${count} in hand ${limits}.`,
    because,
    formula: limitsFormula,
    source: handbook,
  }),
);

export const moved = findingMessage(
  "diary/moved",
  "doubt",
  (name: string, recent: string, way: string, mean: string, because: Parts) => ({
    text: `${name} has moved: ${recent}, ${way} the baseline's mean of ${mean}.`,
    because,
    formula: limitsFormula,
    source: handbook,
  }),
);

export const perhapsMoved = findingMessage(
  "diary/perhaps-moved",
  "doubt",
  (name: string, recent: string, way: string, mean: string, because: Parts) => ({
    text: `${name} may have moved: ${recent}, ${way} the baseline's mean of ${mean}; there is a signal, and not yet more than one would take for chance.`,
    because: [
      ...because,
      "It is called moved where a change of level is suggested too, or a value lies outside by more than the limit is in doubt.",
    ],
    formula: limitsFormula,
    source: handbook,
  }),
);

export const signalPassed = findingMessage(
  "diary/signal-passed",
  "note",
  (name: string, mean: string, often: string, because: Parts) => ({
    text: `${name} gave a signal that has passed: none stands at its last value, mean ${mean}. ${often}`,
    because,
    formula: limitsFormula,
    source: handbook,
  }),
);

export const restless = findingMessage(
  "diary/restless-baseline",
  "doubt",
  (name: string, count: string, because: Parts) => ({
    text: `${name}: its baseline of ${count} gives signals itself, so its limits may be too wide, or lie about the wrong mean.`,
    because: [
      ...because,
      "A single value whose cause is known, such as rain on the heap, widens the limits; where no cause is known, the heap was not steady yet when they were taken.",
    ],
  }),
);

export const unsteady = findingMessage(
  "diary/unsteady",
  "doubt",
  (name: string, count: string, mean: string, because: Parts) => ({
    text: `${name} is not steady yet: its ${count} values, mean ${mean}, give signals against their own limits.`,
    because: [...because, "Limits from values that were not steady are no ground to judge the next ones by."],
    formula: limitsFormula,
    source: handbook,
  }),
);

export const baselineOnly = findingMessage(
  "diary/baseline-only",
  "note",
  (name: string, count: string, mean: string, limits: string) => ({
    text: `${name}: mean ${mean}; its ${count} values are all baseline, and none gives a signal ${limits}.`,
    because: ["What comes next is judged by these limits once there are more than 20 values."],
    formula: limitsFormula,
    source: handbook,
  }),
);

export const changeSuggested = findingMessage(
  "diary/change-suggested",
  "doubt",
  (name: string, days: string, from: string, to: string, shift: string, because: Parts) => ({
    text: `${name}: one change is suggested ${days}, from ${from} to ${to}, a shift of ${shift}.`,
    because: [
      ...because,
      "Two levels are fitted, and one change at a time: a slow drift, or several steps, give such a suggestion too.",
      "That something came at that time does not make it the cause.",
    ],
    formula: "largest of n·(Σ(x − mean) up to k)²/(k·(n − k)) over all splits k, against shuffled rows",
    source: "D. V. Hinkley, Biometrika 57 (1970); A. F. M. Smith, Biometrika 62 (1975); both from memory",
  }),
);

export const rigShare = findingMessage(
  "diary/rig-share",
  ["doubt", "note"],
  (name: string, percent: string, heavy: boolean) => ({
    tone: heavy ? "doubt" : "note",
    text: heavy
      ? `${name}: ${percent} of what neighbouring values differ by is measuring: what looks like the heap is the rig.`
      : `${name}: ${percent} of what neighbouring values differ by is measuring.`,
    because: [
      "Squares of the values' own ± are held against squares of the steps; what both readings share cancels.",
      heavy
        ? "Test twice on each day and write both down: the mean of two halves that share."
        : "The rest is the heap, the sampling, and what no ± holds.",
    ],
  }),
);

export const together = findingMessage(
  "diary/together",
  "doubt",
  (name: string, r: string, times: string) => ({
    text: `${name}: neighbouring values go together (lag-one autocorrelation about ${r}), so its limits are too narrow, by a factor of about ${times}.`,
    because: [
      "Steps between neighbours that go together are smaller than the scatter of the whole; a slow drift or one step does that as well.",
      "Signals of this chart come too often, and the p of a suggested change is too small.",
    ],
    formula: "limits that hold the whole scatter = limits/√(1 − r)",
    source: "Expected step of a first-order autoregressive series, by hand; r: e-Handbook 1.3.5.12",
  }),
);

export const fewValues = findingMessage(
  "diary/few",
  "note",
  (name: string, count: string, least: string) => ({
    text: `${name}: ${count} by one method, fewer than ${least}, so the points stand alone.`,
    because: ["Limits from fewer would be wider than anything that they could show."],
  }),
);

export const changedSince = findingMessage(
  "diary/changed-since",
  "note",
  (name: string, event: string, count: string, least: string) => ({
    text: `${name}: since ${event} there are ${count}; its limits are from before, until ${least} have their own.`,
    because: [],
  }),
);

export const due = findingMessage("diary/due", "doubt", (name: string, waited: string, rule: string) => ({
  text: `${name} is due: ${waited}; ${rule}.`,
  because: ["Counted to the last day of the log, not to today."],
}));

export const onlyLeftOut = findingMessage(
  "diary/only-left-out",
  "note",
  (name: string, count: string, because: Parts) => ({
    text: `${name}: ${count}, of batches that the log leaves out and of no other, so it stands in no table and no chart.`,
    because,
  }),
);

export const undatedBatches = findingMessage("diary/undated", "note", (names: string) => ({
  text: `Without a date, and so not in the diary: ${names}.`,
  because: ["Write `date: 2026-05-09` at the batch."],
}));

export const madeUpBatches = findingMessage("diary/made-up", "note", (count: string) => ({
  text: `${count} made up by weight and so left out: a new mix says nothing of the heap as it lies.`,
  because: ["Batches with `made of` belong to a trial; what is taken from the heap has none."],
}));

export const severalRigs = findingMessage("diary/several-rigs", "note", (name: string, rigs: string) => ({
  text: `${name} was measured on more than one rig: ${rigs}.`,
  because: ["Where one rig reads higher than another, the chart shows it as a change of the heap."],
}));
