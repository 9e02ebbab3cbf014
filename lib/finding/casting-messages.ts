// The sentences beside faults of castings: plain strings in.

import { phraseMessage } from "../message.ts";
import type { FaultResult } from "../trial/fault-questions.ts";
import { findingMessage } from "./finding-message.ts";

const fisher = "R. A. Fisher, The Design of Experiments (1935) II (from memory)";
const hollander = "M. Hollander and D. A. Wolfe, Nonparametric Statistical Methods (1973) 4 (from memory)";
const holmSource = "S. Holm, Scandinavian Journal of Statistics 6 (1979) (from memory)";

type Parts = readonly string[];

export const castingsCounted = phraseMessage("casting/castings", (count: string) =>
  count === "1" ? "one casting" : `${count} castings`,
);

/** Pours with the fault, and without it, on which the cause stood on its side. */
export const causeOnSide = phraseMessage(
  "casting/cause-on-side",
  (cause: string, on: string, tested: string, otherOn: string, otherTested: string) =>
    `${cause} on ${on} of ${tested} tested pours with it, and on ${otherOn} of ${otherTested} without`,
);

export const lookedAtFirst = phraseMessage(
  "casting/looked-at-first",
  (causes: readonly string[]) => `Looked at first, as is common practice: ${causes.join("; ")}.`,
);

export const noCauseSeen = phraseMessage(
  "casting/no-cause-seen",
  () => "No cause in the sand that was read in a source is seen surely on its side on these pours.",
);

export const faultFound = findingMessage(
  "casting/fault",
  ["doubt", "note"],
  (fault: string, share: string, castings: string, pointing: Parts, because: Parts, source: string) => ({
    tone: pointing.length > 0 ? "doubt" : "note",
    text: `${fault}: ${share}, ${castings}.${pointing.length > 0 ? ` In the sand, ${pointing.join("; ")}.` : ""}`,
    because,
    formula: "share = pours with the fault/pours that were looked over; its interval by Clopper and Pearson",
    source,
  }),
);

/** p: "0.036", adjusted: as it counts beside the others, undefined where it is the only question. */
export interface Counted {
  readonly p: string;
  readonly least: string;
  readonly adjusted?: string;
  readonly beside: string;
  /** Given where even the smallest p may count as more than 0.05 beside the others. */
  readonly leastBeside?: string;
  readonly clear: boolean;
}

const worth = ({ p, adjusted, beside }: Counted): string =>
  adjusted === undefined ? `p = ${p}` : `p = ${p}, and ${adjusted} beside the other ${beside}`;

const small = ({ least, leastBeside, beside, clear }: Counted): Parts => [
  `The smallest p that these counts could give is ${least}${leastBeside === undefined ? "" : `, and beside the other ${beside} that may count as up to ${leastBeside}: these pours are too few for so many questions`}.`,
  ...(clear
    ? ["A p of 0.05 or less says that chance alone seldom parts them so; it does not say what parted them."]
    : [
        "This does not tell them apart, and does not show that they have nothing to do with each other: so few prove little either way.",
      ]),
];

export const ranked = findingMessage(
  "casting/ranked",
  ["doubt", "note"],
  (fault: string, what: string, difference: string, groups: string, counted: Counted, because: Parts) => ({
    tone: counted.clear ? "doubt" : "note",
    text: `${what}, pours with ${fault} less those without: ${difference}; ${worth(counted)}.`,
    because: [groups, ...small(counted), ...because],
    formula:
      "p = 2·share of all ways to part the ranks that lie as far out; difference = median of all differences",
    source: `${hollander}${counted.adjusted === undefined ? "" : `; ${holmSource}`}`,
  }),
);

export const sided = findingMessage(
  "casting/sided",
  ["doubt", "note"],
  (fault: string, over: string, under: string, counted: Counted, because: Parts) => ({
    tone: counted.clear ? "doubt" : "note",
    text: `${fault}: ${over}, and ${under}; ${worth(counted)}.`,
    because: [...small(counted), ...because],
    formula: "p = sum of C(a + b, k)·C(c + d, a + c − k)/C(n, a + c) over the tables that are no likelier",
    source: `${fisher}${counted.adjusted === undefined ? "" : `; ${holmSource}`}`,
  }),
);

export const notAnswered = findingMessage(
  "casting/not-answered",
  "note",
  (fault: string, what: string, why: string, because: Parts) => ({
    text: `${fault} against ${what}: no figure, for ${why}.`,
    because,
  }),
);

export const noQuestions = findingMessage("casting/no-questions", "note", () => ({
  text: "No pair of a fault and a test is named in the log, so none is put to a test here.",
  because: [
    "With a dozen faults and a dozen figures some pair goes together by chance in almost any log.",
    "Name what you expect before the next pours: `questions: [ { fault: gas holes, against: moisture } ]`.",
  ],
}));

export const notLookedOver = findingMessage("casting/not-looked-over", "note", (names: string) => ({
  text: `Without a word on faults, or with one that could not be read: ${names}.`,
  because: ["Their pours count as with a fault where another casting shows it, else neither way."],
}));

export const madeUpLeftOut = findingMessage("casting/made-up", "note", (count: string) => ({
  text: `${count} made up by weight and so not taken for the sand of a pour.`,
  because: [
    "A new mix says nothing of the heap that was moulded in; what is taken from the heap has no `made of`.",
  ],
}));

export const goTogether = phraseMessage(
  "casting/go-together",
  (fault: string, others: readonly string[]) =>
    `On pours with ${fault} and without, other things differed as well: ${others.join("; ")}. What goes with them cannot be told from what is asked here.`,
);

export const withAndWithout = phraseMessage(
  "casting/with-and-without",
  (withIt: string, without: string) =>
    `With it: ${withIt}; without: ${without}. The readings' own ± is not in p.`,
);

export const acrossLimit = phraseMessage(
  "casting/across-limit",
  (count: string, of: string) =>
    `The ± of ${count} of ${of} readings runs across the limit: their side is not sure.`,
);

export const onSideOfLimit = phraseMessage(
  "casting/side-share",
  (side: string, share: string) => `${side} on ${share}`,
);
export const aboveEdge = phraseMessage(
  "casting/above-edge",
  (what: string, edge: string) => `${what} above ${edge}`,
);
export const atEdgeOrBelow = phraseMessage("casting/at-edge", (edge: string) => `at ${edge} or below`);
export const degassedOrNot = phraseMessage("casting/degassed", (degassed: boolean) =>
  degassed ? "degassed" : "not degassed",
);

export const besideQuestions = phraseMessage("casting/beside", (others: string) =>
  others === "1" ? "question" : `${others} questions`,
);

type WhyNone = Extract<FaultResult, { kind: "none" }>["why"];
const reasons: { readonly [why in WhyNone]: string } = {
  "no values": "no pour has a figure for it that stands for its day",
  "never found": "no pour with a figure shows the fault",
  "always found": "every pour with a figure shows the fault",
  "one side": "all figures lie on one side of the limit",
  "too many": "there are more than a hundred figures, which this page does not count out",
};
export const whyNoFigure = phraseMessage("casting/why-no-figure", (why: WhyNone) => reasons[why]);

/** Why pours were left out, by the names of LeftOut. */
const whyLeftOut = {
  untold: "where it is not known whether the fault was there",
  unmeasured: "without a figure",
  stale: "tested too long before, or the heap was changed since",
  otherMethod: "tested by another method",
} as const;
export const poursLeftOut = phraseMessage(
  "casting/pours-left-out",
  (names: string, why: keyof typeof whyLeftOut) => `Left out: ${names}, ${whyLeftOut[why]}.`,
);
