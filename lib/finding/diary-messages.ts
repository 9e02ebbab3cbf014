// The sentences of a diary: plain strings in.

import type { Finding } from "./finding.ts";

const handbook = "NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2";
const limitsFormula =
  "limits = mean ± 3·(mean step)/1.128 = mean ± 2.66·(mean step); 3.267·(mean step) for a step";

type Parts = readonly string[];

export const steady = (
  name: string,
  mean: string,
  limits: string,
  count: string,
  because: Parts,
): Finding => ({
  code: "diary/steady",
  tone: "good",
  text: `${name} is steady: mean ${mean}, and the ${count} in hand ${limits}.`,
  because,
  formula: limitsFormula,
  source: handbook,
});

export const moved = (name: string, recent: string, way: string, mean: string, because: Parts): Finding => ({
  code: "diary/moved",
  tone: "doubt",
  text: `${name} has moved: ${recent}, ${way} the baseline's mean of ${mean}.`,
  because,
  formula: limitsFormula,
  source: handbook,
});

export const perhapsMoved = (
  name: string,
  recent: string,
  way: string,
  mean: string,
  because: Parts,
): Finding => ({
  code: "diary/perhaps-moved",
  tone: "doubt",
  text: `${name} may have moved: ${recent}, ${way} the baseline's mean of ${mean}; there is a signal, and not yet more than one would take for chance.`,
  because: [
    ...because,
    "It is called moved where a change of level is suggested too, or a value lies outside by more than the limit is in doubt.",
  ],
  formula: limitsFormula,
  source: handbook,
});

export const signalPassed = (name: string, mean: string, often: string, because: Parts): Finding => ({
  code: "diary/signal-passed",
  tone: "note",
  text: `${name} gave a signal that has passed: none stands at its last value, mean ${mean}. ${often}`,
  because,
  formula: limitsFormula,
  source: handbook,
});

export const restless = (name: string, count: string, because: Parts): Finding => ({
  code: "diary/restless-baseline",
  tone: "doubt",
  text: `${name}: its baseline of ${count} gives signals itself, so its limits may be too wide, or lie about the wrong mean.`,
  because: [
    ...because,
    "A single value whose cause is known, such as rain on the heap, widens the limits; where no cause is known, the heap was not steady yet when they were taken.",
  ],
});

export const unsteady = (name: string, count: string, mean: string, because: Parts): Finding => ({
  code: "diary/unsteady",
  tone: "doubt",
  text: `${name} is not steady yet: its ${count} values, mean ${mean}, give signals against their own limits.`,
  because: [...because, "Limits from values that were not steady are no ground to judge the next ones by."],
  formula: limitsFormula,
  source: handbook,
});

export const baselineOnly = (name: string, count: string, mean: string, limits: string): Finding => ({
  code: "diary/baseline-only",
  tone: "note",
  text: `${name}: mean ${mean}; its ${count} values are all baseline, and none gives a signal ${limits}.`,
  because: ["What comes next is judged by these limits once there are more than 20 values."],
  formula: limitsFormula,
  source: handbook,
});

export const changeSuggested = (
  name: string,
  days: string,
  from: string,
  to: string,
  shift: string,
  because: Parts,
): Finding => ({
  code: "diary/change-suggested",
  tone: "doubt",
  text: `${name}: one change is suggested ${days}, from ${from} to ${to}, a shift of ${shift}.`,
  because: [
    ...because,
    "Two levels are fitted, and one change at a time: a slow drift, or several steps, give such a suggestion too.",
    "That something came at that time does not make it the cause.",
  ],
  formula: "largest of n·(Σ(x − mean) up to k)²/(k·(n − k)) over all splits k, against shuffled rows",
  source: "D. V. Hinkley, Biometrika 57 (1970); A. F. M. Smith, Biometrika 62 (1975); both from memory",
});

export const rigShare = (name: string, percent: string, heavy: boolean): Finding => ({
  code: "diary/rig-share",
  tone: heavy ? "doubt" : "note",
  text: heavy
    ? `${name}: ${percent} of what neighbouring values differ by is measuring: what looks like the heap is the rig.`
    : `${name}: ${percent} of what neighbouring values differ by is measuring.`,
  because: [
    "The variance of the values' own ± against that of the steps; what both readings share cancels.",
    heavy
      ? "Test twice on each day and write both down: the mean of two halves that share."
      : "The rest is the heap, the sampling, and what no ± holds.",
  ],
});

export const together = (name: string, r: string, times: string): Finding => ({
  code: "diary/together",
  tone: "doubt",
  text: `${name}: neighbouring values go together (lag-one autocorrelation about ${r}), so its limits are too narrow, by a factor of about ${times}.`,
  because: [
    "Steps between neighbours that go together are smaller than the scatter of the whole; a slow drift or one step does that as well.",
    "Signals of this chart come too often, and the p of a suggested change is too small.",
  ],
  formula: "limits that hold the whole scatter = limits/√(1 − r)",
  source: "expected step of a first-order autoregressive series, by hand; r: e-Handbook 1.3.5.12",
});

export const fewValues = (name: string, count: string, least: string): Finding => ({
  code: "diary/few",
  tone: "note",
  text: `${name}: ${count} by one method, fewer than ${least}, so the points stand alone.`,
  because: ["Limits from fewer would be wider than anything that they could show."],
});

export const changedSince = (name: string, event: string, count: string, least: string): Finding => ({
  code: "diary/changed-since",
  tone: "note",
  text: `${name}: since ${event} there are ${count}; its limits are from before, until ${least} have their own.`,
  because: [],
});

export const due = (name: string, waited: string, rule: string): Finding => ({
  code: "diary/due",
  tone: "doubt",
  text: `${name} is due: ${waited}; ${rule}.`,
  because: ["Counted to the last day of the log, not to today."],
});

export const undatedBatches = (names: string): Finding => ({
  code: "diary/undated",
  tone: "note",
  text: `Without a date, and so not in the diary: ${names}.`,
  because: ["Write `date: 2026-05-09` at the batch."],
});

export const madeUpBatches = (count: string): Finding => ({
  code: "diary/made-up",
  tone: "note",
  text: `${count} made up by weight and so left out: a new mix says nothing of the heap as it lies.`,
  because: ["Batches with `made of` belong to a trial; what is taken from the heap has none."],
});

export const severalRigs = (name: string, rigs: string): Finding => ({
  code: "diary/several-rigs",
  tone: "note",
  text: `${name} was measured on more than one rig: ${rigs}.`,
  because: ["Where one rig reads higher than another, the chart shows it as a change of the heap."],
});
