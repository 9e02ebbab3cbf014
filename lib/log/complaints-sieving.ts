// What can be wrong with a sand and its sievings.

import type { Issue, Severity } from "../issue.ts";

const issue = (severity: Severity, code: string, message: string, remedy: string): Issue => ({
  code: `log/${code}`,
  severity,
  message,
  remedy,
});

export const noState = (): Issue =>
  issue(
    "warning",
    "no-state",
    "It is not said whether the sand is new or used; it is taken as used, which has no number until it is washed.",
    "Write `state: new` for sand as bought, `state: used` for sand that has been in a heap with clay.",
  );

export const noSievings = (): Issue =>
  issue(
    "warning",
    "no-sievings",
    "The sand has no sieving, so nothing can be said about its grain.",
    "Write `sievings:` and under it what each sieve held, or name a CSV file with `sievings file:`.",
  );

export const noRetained = (): Issue =>
  issue(
    "error",
    "no-retained",
    "The sieving does not say what the sieves held.",
    "Write `retained:` and under it one line a sieve, e.g. No. 40: 0.15, down to the pan.",
  );

export const emptyMass = (label: string): Issue =>
  issue(
    "error",
    "empty-mass",
    `It is not said what ${label} held.`,
    "Write 0 if it held nothing; if it was not on the stack, leave the line out (in a CSV file, write -).",
  );

export const repeatedSieve = (label: string, first: string, line: string): Issue =>
  issue(
    "error",
    "repeated-sieve",
    `"${label}" is the sieve that already stands on line ${line}${first === label ? "" : ` as "${first}"`}; which mass is right cannot be told.`,
    "Keep one of the two, or put right the label of the other.",
  );

export const misplacedSieve = (label: string, before: string): Issue =>
  issue(
    "warning",
    "misplaced-sieve",
    `"${label}" is coarser than "${before}" but stands below it; the sieves were sorted coarse to fine.`,
    "Check that the two masses stand beside the right sieves; then put the lines in the order of the stack.",
  );

export const noPan = (missing: string): Issue =>
  issue(
    "error",
    "no-pan",
    "There is no pan, and the finest grains count most in a fineness number.",
    `Weigh what lies in the pan and write \`pan:\` as the last line${missing === "" ? "" : ` (${missing} of the start mass is not accounted for; that may be the pan or a loss)`}.`,
  );

export const panOfZero = (): Issue =>
  issue(
    "warning",
    "pan-of-zero",
    "A pan of exactly zero is rare: the fines may have been lost as dust, or not weighed.",
    "Tap the pan out onto paper and weigh it on the finest scale; leave the 0 only if nothing can be seen.",
  );

export const noStart = (): Issue =>
  issue(
    "warning",
    "no-start",
    "The start mass is missing, so sand lost or weighed wrongly cannot be noticed.",
    "Weigh the dry sand before it goes on the top sieve and write `start: 50.0 g`.",
  );

export const sumAboveStart = (sum: string, start: string, hint: string): Issue =>
  issue(
    "error",
    "sum-above-start",
    `The sieves and the pan hold ${sum} together, more than the ${start} that went on.${hint === "" ? "" : ` ${hint}`}`,
    "Look for swapped digits, a sieve weighed with its dish, or a start mass of another portion.",
  );

export const runningTotals = (start: string, rows: string): Issue =>
  issue(
    "error",
    "running-totals",
    `The masses rise from sieve to sieve up to the ${start} that went on: are they running totals?`,
    `Write what each sieve held by itself, its figure less the one above it: ${rows}.`,
  );

export const passingShares = (rows: string): Issue =>
  issue(
    "error",
    "passing-shares",
    "The percentages fall from sieve to sieve and add up to far more than the whole: do they say what passed?",
    `Write what each sieve held by itself: ${rows}.`,
  );

export const digitsSwapped = (sum: string, start: string, hint: string): Issue =>
  issue(
    "warning",
    "digits-swapped",
    `The sieves and the pan hold ${sum} of the ${start} that went on. ${hint}`,
    "Look the figure up in your notes and put it right if its digits are swapped.",
  );

export const percentSumAbove = (sum: string, hint: string): Issue =>
  issue(
    "error",
    "percent-sum-above",
    `The percentages add up to ${sum} %, more than the whole.${hint === "" ? "" : ` ${hint}`}`,
    "Look for swapped digits or a row of another sieving.",
  );

export const percentSumBelow = (sum: string): Issue =>
  issue(
    "warning",
    "percent-sum-below",
    `The percentages add up to only ${sum} %; the rest may be clay that was washed out, sand lost, or a row left out.`,
    "Check the rows against where they come from.",
  );

export const mixedUnits = (label: string, text: string, others: string): Issue =>
  issue(
    "error",
    "mixed-units",
    `"${text}" on ${label} is not in ${others}, as the rest of the sieving is.`,
    "Write all rows of one sieving in grams, or all in percent with % after each.",
  );

export const oneSieveOnly = (): Issue =>
  issue(
    "error",
    "one-sieve-only",
    "Only one sieve was used: this tells coarse from fine, but no fineness number.",
    "Use at least three or four sieves that span the sand, and the pan.",
  );

export const allOnOne = (label: string): Issue =>
  issue(
    "warning",
    "all-on-one",
    `All the sand lies on ${label}, so its fineness cannot be told within that step.`,
    "Shake longer, look whether the sieve is clogged, and put sieves between this one and the next coarser.",
  );

export const noSand = (): Issue =>
  issue(
    "error",
    "no-sand",
    "No sieve and no pan holds any sand.",
    "Write what each held; 0 stands only where nothing was found.",
  );

export const noScale = (): Issue =>
  issue(
    "note",
    "no-scale",
    "No scale is named for this sieving, so the ± of its weighings is unknown.",
    "Declare it at the top, `scales: { kitchen scale: { reads to: 0.1 g } }`, and write `scale: kitchen scale` here.",
  );

export const noSieveSet = (): Issue =>
  issue(
    "note",
    "no-sieve-set",
    "No sieve set is named for this sieving, so an overloaded sieve cannot be noticed, nor that two sievings share a stack.",
    "Declare it at the top, `sieve sets: { home stack: { frame: 200 mm } }`, and write `sieve set: home stack` here.",
  );

export const finerThanScale = (text: string, label: string, scale: string, step: string): Issue =>
  issue(
    "note",
    "finer-than-scale",
    `"${text}" on ${label} is finer than "${scale}" reads (${step} g).`,
    "Name the scale that was used, or write what its display showed.",
  );

export const noPortion = (): Issue =>
  issue(
    "warning",
    "same-name",
    "Another sieving of this sand has the same date and portion, so the two cannot be told apart by name.",
    "Give each its own letter: `portion: A`, `portion: B`.",
  );

export const sameTwice = (line: string): Issue =>
  issue(
    "error",
    "same-twice",
    `This sieving is the same as the one on line ${line} in every figure; it counts once.`,
    "Take one out if it was copied; give each its own `portion:` if both were really weighed.",
  );
