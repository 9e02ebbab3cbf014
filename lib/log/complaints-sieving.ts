// What can be wrong with a sand and its sievings.

import { issueMessage } from "../message.ts";

export const noState = issueMessage("log/no-state", "warning", () => ({
  message:
    "It is not said whether the sand is new or used; it is taken as used, which has no number until it is washed.",
  remedy: "Write `state: new` for sand as bought, `state: used` for sand that has been in a heap with clay.",
}));

export const sandAtMargin = issueMessage("log/sand-at-margin", "error", (name: string) => ({
  message: `"${name}" looks like a sand, but stands at the left margin, so it belongs to no list and is left out.`,
  remedy:
    "Put it below `sands:` with two spaces in front, and two spaces more in front of all that belongs to it.",
}));

export const noSievings = issueMessage("log/no-sievings", "warning", () => ({
  message: "The sand has no sieving, so nothing can be said about its grain.",
  remedy: "Write `sievings:` and under it what each sieve held, or name a CSV file with `sievings file:`.",
}));

export const unitOfSieving = issueMessage("log/unit-of-sieving", "error", (unit: string) => ({
  message: `The rows of a sieving count in g or in percent, so "unit: ${unit}" cannot be followed.`,
  remedy: `Take the line away and write the unit with each mass, such as 0.5 ${unit}.`,
}));

export const noRetained = issueMessage("log/no-retained", "error", () => ({
  message: "The sieving does not say what the sieves held.",
  remedy: "Write `retained:` and under it one line a sieve, e.g. No. 40: 0.15, down to the pan.",
}));

export const emptyMass = issueMessage("log/empty-mass", "error", (label: string) => ({
  message: `It is not said what ${label} held.`,
  remedy:
    "Write 0 if it held nothing; if it was not on the stack, leave the line out (in a CSV file, write -).",
}));

export const repeatedSieve = issueMessage(
  "log/repeated-sieve",
  "error",
  (label: string, first: string, line: string) => ({
    message: `"${label}" is the sieve that already stands on line ${line}${first === label ? "" : ` as "${first}"`}; which mass is right cannot be told.`,
    remedy: "Keep one of the two, or put right the label of the other.",
  }),
);

export const misplacedSieve = issueMessage(
  "log/misplaced-sieve",
  "warning",
  (label: string, before: string) => ({
    message: `"${label}" is coarser than "${before}" but stands below it; the sieves were sorted coarse to fine.`,
    remedy:
      "Check that the two masses stand beside the right sieves; then put the lines in the order of the stack.",
  }),
);

export const sumAmongRows = issueMessage("log/sum-among-rows", "warning", (label: string) => ({
  message: `"${label}" is no sieve, so it is left out; what the rows hold together, and what was lost, is worked out.`,
  remedy: "Take the line away, or put a # before it.",
}));

export const noPan = issueMessage("log/no-pan", "error", (missing: string) => ({
  message: "There is no pan, and the finest grains count most in a fineness number.",
  remedy: `Weigh what lies in the pan and write \`pan:\` as the last line${missing === "" ? "" : ` (${missing} of the start mass is not accounted for; that may be the pan or a loss)`}.`,
}));

export const panOfZero = issueMessage("log/pan-of-zero", "warning", () => ({
  message: "A pan of exactly zero is rare: the fines may have been lost as dust, or not weighed.",
  remedy:
    "Tap the pan out onto paper and weigh it on the finest scale; leave the 0 only if nothing can be seen.",
}));

export const noStart = issueMessage("log/no-start", "warning", () => ({
  message: "The start mass is missing, so sand lost or weighed wrongly cannot be noticed.",
  remedy: "Weigh the dry sand before it goes on the top sieve and write `start: 50.0 g`.",
}));

export const sumAboveStart = issueMessage(
  "log/sum-above-start",
  "error",
  (sum: string, start: string, hint: string, percent: boolean) => ({
    message: `The sieves and the pan hold ${sum} together, more than the ${start} that went on.${hint === "" ? "" : ` ${hint}`}`,
    remedy: percent
      ? "If these are percent of what went on, write % after each, such as No. 40: 6.4 %. Else look for swapped digits, a sieve weighed with its dish, or a start mass of another portion."
      : "Look for swapped digits, a decimal point in the wrong place, a mass in another unit, a sieve weighed with its dish, or a start mass of another portion.",
  }),
);

export const sumFarBelowStart = issueMessage(
  "log/sum-far-below-start",
  "error",
  (sum: string, start: string, hint: string) => ({
    message: `The sieves and the pan hold only ${sum} together, less than half of the ${start} that went on.${hint === "" ? "" : ` ${hint}`}`,
    remedy:
      "Look for a mass in another unit, a decimal point in the wrong place, a row that is missing, or a start mass of another portion.",
  }),
);

export const runningTotals = issueMessage("log/running-totals", "error", (start: string, rows: string) => ({
  message: `The masses rise from sieve to sieve up to the ${start} that went on: are they running totals?`,
  remedy: `Write what each sieve held by itself, its figure less the one above it: ${rows}.`,
}));

export const passingShares = issueMessage("log/passing-shares", "error", (rows: string) => ({
  message:
    "The percentages fall from sieve to sieve and add up to far more than the whole: do they say what passed?",
  remedy: `Write what each sieve held by itself: ${rows}.`,
}));

export const digitsSwapped = issueMessage(
  "log/digits-swapped",
  "warning",
  (sum: string, start: string, hint: string) => ({
    message: `The sieves and the pan hold ${sum} of the ${start} that went on. ${hint}`,
    remedy: "Look the figure up in your notes and put it right if its digits are swapped.",
  }),
);

export const percentSumAbove = issueMessage(
  "log/percent-sum-above",
  "error",
  (sum: string, hint: string) => ({
    message: `The percentages add up to ${sum} %, more than the whole.${hint === "" ? "" : ` ${hint}`}`,
    remedy: "Look for swapped digits or a row of another sieving.",
  }),
);

export const percentSumBelow = issueMessage(
  "log/percent-sum-below",
  "warning",
  (sum: string, asStart: boolean) => ({
    message: `The percentages add up to only ${sum} %; the rest may be clay that was washed out, sand lost, or a row left out.`,
    remedy: asStart
      ? "They come to what went on in grams: if they are grams, take `unit: percent` away."
      : "Check the rows against where they come from.",
  }),
);

export const mixedUnits = issueMessage(
  "log/mixed-units",
  "error",
  (label: string, text: string, others: string) => ({
    message: `"${text}" on ${label} is not in ${others}, as the rest of the sieving is.`,
    remedy: "Write all rows of one sieving in grams, or all in percent with % after each.",
  }),
);

export const oneSieveOnly = issueMessage("log/one-sieve-only", "error", () => ({
  message: "Only one sieve was used: this tells coarse from fine, but no fineness number.",
  remedy: "Use at least three or four sieves that span the sand, and the pan.",
}));

export const allOnOne = issueMessage("log/all-on-one", "warning", (label: string) => ({
  message: `All the sand lies on ${label}, so its fineness cannot be told within that step.`,
  remedy:
    "Shake longer, look whether the sieve is clogged, and put sieves between this one and the next coarser.",
}));

export const noSand = issueMessage("log/no-sand", "error", () => ({
  message: "No sieve and no pan holds any sand.",
  remedy: "Write what each held; 0 stands only where nothing was found.",
}));

export const noScale = issueMessage("log/no-scale", "note", () => ({
  message: "No scale is named for this sieving, so the ± of its weighings is unknown.",
  remedy:
    "Declare it at the top, `scales: { kitchen scale: { reads to: 0.1 g } }`, and write `scale: kitchen scale` here.",
}));

export const noSieveSet = issueMessage("log/no-sieve-set", "note", () => ({
  message:
    "No sieve set is named for this sieving, so an overloaded sieve cannot be noticed, nor that two sievings share a stack.",
  remedy:
    "Declare it at the top, `sieve sets: { home stack: { frame: 200 mm } }`, and write `sieve set: home stack` here.",
}));

export const finerThanScale = issueMessage(
  "log/finer-than-scale",
  "note",
  (text: string, label: string, scale: string, step: string) => ({
    message: `"${text}" on ${label} is finer than "${scale}" reads (${step}).`,
    remedy: "Name the scale that was used, or write what its display showed.",
  }),
);

export const noPortion = issueMessage("log/same-name", "warning", () => ({
  message:
    "Another sieving of this sand has the same date and portion, so the two cannot be told apart by name.",
  remedy: "Give each its own letter: `portion: A`, `portion: B`.",
}));

export const sameTwice = issueMessage("log/same-twice", "error", (line: string) => ({
  message: `This sieving is the same as the one on line ${line} in every figure; it counts once.`,
  remedy: "Take one out if it was copied; give each its own `portion:` if both were really weighed.",
}));
