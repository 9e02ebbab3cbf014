// The sentences on blends, figure first: one function each, plain strings in.

import { findingMessage } from "./finding-message.ts";

const numberForm = "GFN of a blend = Σ share × GFN of each sand, shares of dry mass";
const curveForm = "shares ≥ 0 with sum 1 that make Σ(retained by the blend − retained by the aim)² least";
const nnls = "Lawson & Hanson, Solving Least Squares Problems (1974), chapter 23";

export const blendIs = findingMessage("blend/shares", "good", (shares: string, words: string) => ({
  text: `${shares}, by dry mass, make ${words}.`,
  because: [
    "The ± says how far the shares would move within the doubt of the sievings, not how well they must be weighed.",
    "Shares are of dry sand: damp sand brings water that weighs as sand does, so dry it or take its water off.",
    "Mix until no streak shows: sands of different grain part again when they are poured from a height or shaken dry.",
  ],
  formula: numberForm,
  source: nnls,
}));

export const curveIs = findingMessage(
  "blend/curve",
  "good",
  (shares: string, sand: string, misfit: string) => ({
    text: `${shares}, by dry mass, come nearest to the grain curve of ${sand}; ${misfit}`,
    because: [
      "Each sieve that all stacks have counts alike, and the pan.",
      "Shares are of dry sand: damp sand brings water that weighs as sand does, so dry it or take its water off.",
    ],
    formula: curveForm,
    source: nnls,
  }),
);

export const poorCurve = findingMessage(
  "blend/poor-curve",
  "doubt",
  (sand: string, difference: string, sieve: string) => ({
    text: `${difference} of the sand at ${sieve} is how far the nearest blend stays from ${sand}: these sands do not make its curve.`,
    because: [
      "Another sand, with grains where the aim has them and these have none, would have to be in the blend.",
    ],
    formula: curveForm,
  }),
);

export const mayBeNought = findingMessage("blend/may-be-nought", "doubt", (sand: string, share: string) => ({
  text: `${share} of ${sand}: within the doubt of the sievings it may be none at all.`,
  because: [
    "In more than one of 40 draws of the sievings the best blend has none of it.",
    "Sieve the sands again, from fresh grabs, before it is bought for this blend.",
  ],
  formula: "the blend worked out again in 1024 draws of the sievings",
}));

export const beyondReach = findingMessage(
  "blend/beyond-reach",
  "error",
  (aim: string, low: string, high: string, nearest: string) => ({
    text: `${low} to ${high} is all that these sands reach, and ${aim} lies beyond: ${nearest} alone comes nearest.`,
    because: ["A blend lies between its sands in number: a finer or coarser one is needed."],
    formula: numberForm,
  }),
);

export const windowIs = findingMessage(
  "blend/window",
  "note",
  (low: string, high: string, sand: string, words: string) => ({
    text: `${low} to ${high} % of ${sand} stays within ${words}, at the middle of the sievings.`,
    because: [
      "Near the ends the doubt of the sievings may carry the blend out of it; the middle leaves the most to spare.",
    ],
    formula: numberForm,
  }),
);

export const inRange = findingMessage(
  "blend/in-range",
  ["good", "note"],
  (figure: string, chance: string, words: string, decides: boolean, source: string) => ({
    tone: decides ? "good" : "note",
    text: `${figure} is the blend's fineness number; its chance of lying in ${words} is ${chance} in 100.`,
    because: decides
      ? ["The chance holds the doubt of the sievings that is known."]
      : ["This range is not a recommendation that was read in a source: take it as a hint."],
    formula: numberForm,
    source,
  }),
);

export const screensAre = findingMessage(
  "blend/screens",
  "note",
  (count: string, sieves: string, share: string) => ({
    text: `${count} neighbouring sieves hold a tenth or more of the blend each: ${sieves}, with ${share} %.`,
    because: ["A sand spread over three or four sieves packs closer than one on two (common practice)."],
    source: "Counting sieves with 10 % or more: trade usage, from memory",
  }),
);

export const gapped = findingMessage("blend/gap", "doubt", (sieves: string) => ({
  text: `${sieves} hold a tenth or more apart from the blend's main run of sieves: it has two humps.`,
  because: [
    "A coarse and a fine sand without grains between part easily, and the fine one fills the pores of the coarse (common practice).",
    "Sands that lie closer make the same number with less of a gap.",
  ],
}));

export const finesOf = findingMessage("blend/fines", "note", (percent: string, most: string) => ({
  text: `${percent} % of the blend is finer than 0.106 mm, against ${most}.`,
  because: [
    "2 % is often asked of new washed sand (common practice); fines take up water and clay and close the pores.",
  ],
  source: "Fines as No. 200 + No. 270 + pan: ABIFA 2019 on CEMP-081",
}));

export const costs = findingMessage("blend/cost", "note", (cost: string, each: string) => ({
  text: `${cost} a kilogram is what the blend costs; ${each}.`,
  because: ["Carriage is in it only where the prices of the log have it."],
  formula: "Σ share × price of a kilogram",
}));

export const otherWays = findingMessage("blend/other-ways", "note", (ways: string, rule: string) => ({
  text: `${ways} would reach the number too.`,
  because: [
    `Shown is the pair that is ${rule}; every mixture of such pairs has the number as well.`,
    "To one number three sands have many blends: a wanted curve chooses among them.",
  ],
  formula: numberForm,
}));

export const leftOut = findingMessage("blend/left-out", "error", (sand: string) => ({
  text: `No fineness that can be relied on is known of ${sand}, so it is left out of the blend.`,
  because: [
    "Sieve it, washed if it is used or holds clay, on enough sieves for a number: the page on grain fineness says which.",
  ],
}));

export const lowerBound = findingMessage("blend/at-least", "doubt", () => ({
  text: "At least is what each ± here means: a part of the sievings' doubt is not known.",
  because: [
    "Sieve each sand again from a fresh grab, check the scale, and the ± is whole; the page on grain fineness says what is missing.",
  ],
}));

export const fewSieves = findingMessage("blend/few-sieves", "doubt", () => ({
  text: "No curve of the blend can be drawn: fewer than two sieves are common to all its sands.",
  because: ["Sieve them on one stack; the number of the blend needs no common sieve and stands."],
}));
