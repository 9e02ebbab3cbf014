// The sentences for a before and an after, figure first: plain strings in.

import { phraseMessage } from "../message.ts";
import { findingMessage } from "./finding-message.ts";

const welch = { formula: "t = difference / √(s₁²/n₁ + s₂²/n₂)", source: "Welch 1947" } as const;
const blocks = {
  formula: "y = curve(axis) + offset of the block",
  source: "Analysis of covariance; Draper & Smith, Applied Regression Analysis",
} as const;

type Parts = readonly string[];

export const notComparable = findingMessage(
  "comparison/not-comparable",
  "doubt",
  (test: string, points: string, first: string, second: string, because: Parts) => ({
    text: `${points}: so far apart in compactability were ${first} and ${second}. Their ${test} is not compared, for it follows compactability.`,
    because: [...because, "Temper both to one compactability, and test again."],
    ...welch,
  }),
);

export const unlike = findingMessage(
  "comparison/unlike",
  "doubt",
  (test: string, size: string, first: string, second: string, names: string, because: Parts) => ({
    text: `${size}: ${second} differs from ${first} in ${test} by this much, but they differ in ${names} as well, so the change cannot be told from it.`,
    because: [...because, `Two or three batches of each at the same ${names} would part them.`],
    ...welch,
  }),
);

export const drifted = findingMessage(
  "comparison/drift",
  "doubt",
  (test: string, size: string, first: string, second: string, because: Parts) => ({
    text: `${size}: ${second} differs from ${first} in ${test} by this much, but there was a drift, so the change cannot be told from it.`,
    because,
    ...welch,
  }),
);

export const differs = findingMessage(
  "comparison/differs",
  "good",
  (test: string, size: string, first: string, second: string, because: Parts) => ({
    text: `${size}: ${second} differs from ${first} in ${test} by this much.`,
    because,
    ...welch,
  }),
);

export const notTold = findingMessage(
  "comparison/not-told",
  "note",
  (test: string, size: string, first: string, second: string, because: Parts) => ({
    text: `${size}: ${second} and ${first} cannot be told apart in ${test} by these batches.`,
    because,
    ...welch,
  }),
);

export const blocksUnlike = findingMessage(
  "comparison/blocks-unlike",
  "doubt",
  (
    test: string,
    size: string,
    first: string,
    second: string,
    axis: string,
    names: string,
    because: Parts,
  ) => ({
    text: `${size}: ${second} differs from ${first} in ${test} by this much at the same ${axis}, but they differ in ${names} as well, so the change cannot be told from it.`,
    because,
    ...blocks,
  }),
);

export const blocksDiffer = findingMessage(
  "comparison/blocks-differ",
  "good",
  (
    test: string,
    size: string,
    first: string,
    second: string,
    axis: string,
    higher: boolean,
    because: Parts,
  ) => ({
    text: `${size}: ${second} is ${higher ? "higher" : "lower"} than ${first} in ${test} by this much at the same ${axis}.`,
    because,
    ...blocks,
  }),
);

export const blocksNotTold = findingMessage(
  "comparison/blocks-not-told",
  "note",
  (test: string, size: string, first: string, second: string, axis: string, because: Parts) => ({
    text: `${size}: ${second} and ${first} cannot be told apart in ${test} at the same ${axis}.`,
    because,
    ...blocks,
  }),
);

export const chance = phraseMessage(
  "comparison/chance",
  (p: string, df: string) =>
    `If there were no difference at all, chance alone would part them this far with p ${p} (${df} ${df === "1" ? "degree" : "degrees"} of freedom).`,
);

export const driftedItself = phraseMessage(
  "comparison/drifted-itself",
  (names: string) => `${names} drifted by itself while it was taken.`,
);

export const whateverElse = phraseMessage(
  "comparison/whatever-else",
  () => "Whatever else changed between the two is in the difference.",
);

export const oneCurve = phraseMessage(
  "comparison/one-curve",
  () =>
    "Both are taken to follow one curve, one above the other; whatever else changed between them is in the difference.",
);

/** tempered: the two were brought to one compactability. */
export const hadMore = phraseMessage(
  "comparison/had-more",
  (condition: string, second: string, points: string, more: boolean, first: string, tempered: boolean) =>
    `${condition}: ${second} had ${points} ${more ? "more" : "less"} than ${first}${tempered ? ", at the same compactability" : ""}.`,
);

export const neighboursTogether = phraseMessage(
  "comparison/neighbours-together",
  (r: string, before: string, after: string) =>
    `Neighbouring figures go together (lag-one autocorrelation ${r}), so they count as ${before} and ${after} independent ones, and the interval is that much wider.`,
);
