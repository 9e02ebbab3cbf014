// The sentences of water to add and of the next batch, figure first: plain strings in.

import { phraseMessage } from "../message.ts";
import type { SpokenOne } from "../phrase.ts";
import { findingMessage } from "./finding-message.ts";

/** What a dose is told with; amounts carry their units. */
interface DoseWords {
  readonly batch: string;
  /** "3.01 ± 0.08", and with its unit. */
  readonly from: string;
  readonly fromInUnit: string;
  readonly to: string;
  readonly toIs: string;
  /** "10 kg", "10 lb". */
  readonly per: string;
  readonly because: readonly string[];
}

/** As they are given: a sentence may be a phrase. */
export type DoseSpoken = SpokenOne<DoseWords>;

/** The same for the whole heap. */
interface HeapDose {
  readonly mass: string;
  readonly now: string;
  readonly inAll: string;
}

const formula = "water = heap (to − from)/(100 − to); first dose: the 10 % quantile of its draws";
const source = "Mass balance; the 10 % quantile is our own";
const likeIt = (batch: string): string =>
  `For a heap like ${batch}; test the heap itself before you pour water on it.`;

export const addNow = findingMessage(
  "water/first-dose",
  "note",
  (words: DoseWords, now: string, inAll: string, heap: HeapDose | undefined) => ({
    text: `${now} of water for each ${words.per} of sand like ${words.batch}: add that now, mull, test again; about ${inAll} in all would bring it from ${words.from} to ${words.to}, ${words.toIs}.${heap ? ` For the heap of ${heap.mass}: ${heap.now} now, about ${heap.inAll} in all.` : ""}`,
    because: ["The first dose is too much once in ten.", ...words.because, likeIt(words.batch)],
    formula,
    source,
  }),
);

export const waitFirst = findingMessage("water/hold", "note", (words: DoseWords, inAll: string) => ({
  text: `No water yet for sand like ${words.batch}, at ${words.fromInUnit}: it cannot be told from ${words.to}, ${words.toIs}. Mull and test again; the need is ${inAll} for each ${words.per}.`,
  because: [...words.because, likeIt(words.batch)],
  formula,
  source,
}));

export const tooWet = findingMessage(
  "water/too-wet",
  "doubt",
  (words: DoseWords, lose: string, dryMix: string, ways: readonly string[]) => ({
    text: `No water for sand like ${words.batch}: at ${words.fromInUnit} it is wetter than ${words.to}, ${words.toIs}, and about ${lose} must dry off each ${words.per}. Spread it, turn it, let it dry; never pour on it as it is.`,
    because: [
      ...ways,
      `In place of drying: about ${dryMix} of dry sand with its share of dry clay to each ${words.per}.`,
      ...words.because,
      likeIt(words.batch),
    ],
    formula,
    source,
  }),
);

export const otherWay = phraseMessage(
  "water/other-way",
  (by: string, other: string, need: string) =>
    `The need is surest by ${by}; by ${other} it would be ${need}.`,
);

/** What an instrument asks for, in short. first: "" where none is to be poured yet. */
export const needInShort = phraseMessage("water/need-in-short", (first: string, inAll: string) =>
  first === "" ? `none yet, ${inAll} in all` : `${first} now, about ${inAll} in all`,
);
export const tooWetInShort = phraseMessage("water/too-wet-in-short", () => "too wet");

export const testAgainBy = phraseMessage(
  "water/test-again-by",
  (finer: string, tells: string, other: string, otherTells: string) =>
    `When you test again, go by ${finer}: it tells ${tells} points of water apart, your ${other} ${otherTells}.`,
);

/** from: "your own curve", "your batches and a published slope", "published slopes alone". */
export const throughSlope = phraseMessage(
  "water/through-slope",
  (from: string, sensitivity: string) =>
    `Through ${from}: ${sensitivity} points of moisture move compactability by 10.`,
);

export const publishedAlone = phraseMessage(
  "water/published-alone",
  () =>
    "Two published figures, far apart: fully mulled foundry sand, and a shop's ratio. Three batches of your own give a slope of your own.",
);

export const doseAtLeast = phraseMessage(
  "water/dose-at-least",
  () => "A part of the doubt is not known, so the need may lie further off.",
);

/** "Make the next batch at 3.45 % …: with 5.00 kg of this sand and 445 g of bentonite that is 152 ± 6 g of water." */
export const nextBatchInGrams = (
  at: string,
  which: string,
  sand: string,
  clay: string,
  additive: string,
  water: string,
): string =>
  `Make ${which}: at ${at} that is ${[sand, clay, additive].filter((part) => part !== "").join(", ")}, and ${water}.`;
