// The sentences of a comparison of two sands.

import { phraseMessage } from "../message.ts";
import { listed } from "./batch-names.ts";
import { findingMessage } from "./finding-message.ts";

const basis = {
  formula:
    "difference = GFN(second) − GFN(first); a doubt that both share, such as a sieve's opening, cancels",
  source: "Propagation of distributions, JCGM 101:2008",
} as const;

/** widest: where the two curves lie furthest apart; no phrase where they share no opening. */
type Widest = readonly string[];

export const furthestApart = phraseMessage(
  "compare/furthest-apart",
  (sieve: string, first: string, firstPercent: string, second: string, secondPercent: string) =>
    `The curves lie furthest apart at ${sieve}: ${firstPercent} % of ${first} passes it, ${secondPercent} % of ${second}.`,
);

interface Apart {
  readonly finer: string;
  readonly other: string;
  readonly size: string;
  readonly widest: Widest;
}
/** "9.7 ± 2.4 (Birch finer than Alder) and 6.7 ± 1.9 (Alder finer than Cedar)" */
const pairsOf = (pairs: readonly Apart[]): string =>
  listed(pairs.map(({ finer, other, size }) => `${size} (${finer} finer than ${other})`));

export const another = findingMessage("compare/another", "good", (pairs: readonly Apart[]) => ({
  text:
    pairs.length === 1
      ? `${pairs[0]!.size}: ${pairs[0]!.finer} is finer than ${pairs[0]!.other} by this much, more than grabs, sieves and scale explain. They are two sands.`
      : `${pairsOf(pairs)}: more than grabs, sieves and scale explain. Each pair is two sands.`,
  because: [
    "Zero lies outside the 95 % interval of the difference.",
    ...pairs.flatMap(({ widest }) => widest),
  ],
  ...basis,
}));

export const apartButUnrepeated = findingMessage(
  "compare/apart-but-unrepeated",
  "doubt",
  (pairs: readonly Apart[]) => ({
    text:
      pairs.length === 1
        ? `${pairs[0]!.size}: ${pairs[0]!.finer} was finer than ${pairs[0]!.other} by this much. The sieving does not explain it; whether it is the bag or only the handful cannot be told yet.`
        : `${pairsOf(pairs)}: the sieving does not explain it; whether it is the bags or only the handfuls cannot be told yet.`,
    because: [
      "Zero lies outside the interval, but the scatter between grabs of one bag is not in it.",
      "Two fresh grabs from each bag, sieved on the same set, would tell.",
      ...pairs.flatMap(({ widest }) => widest),
    ],
    ...basis,
  }),
);

export const notToldApart = findingMessage(
  "compare/not-told-apart",
  "note",
  (first: string, second: string, size: string, seen: string, widest: Widest) => ({
    text: `${size}: ${first} and ${second} cannot be told apart by their fineness.`,
    because: [
      `That does not prove them the same: a difference of up to ${seen} would go with these sievings.`,
      "Two sands of one fineness can still be spread differently: look at the curves.",
      ...widest,
    ],
    ...basis,
  }),
);

/** pairs: "Bag one and Bag two"; count: of all the comparisons that were made. */
export const neighboursNotToldApart = findingMessage(
  "compare/neighbours-not-told-apart",
  "note",
  (pairs: readonly string[], count: string) => ({
    text: `${pairs.length} of ${count} neighbours in the table cannot be told apart by their fineness: ${pairs.join("; ")}.`,
    because: [
      "That does not prove them the same: the difference and its ± stand in the table.",
      "Each comparison is one of 95 %: among many of them one may well part two bags of one sand.",
    ],
    ...basis,
  }),
);
