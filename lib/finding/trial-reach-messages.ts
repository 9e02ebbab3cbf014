// The sentences of aims out of reach, figure first: plain strings in.

import { findingMessage } from "./finding-message.ts";

interface Shortfall {
  readonly test: string;
  readonly best: string;
  readonly at: string;
  readonly axis: string;
  readonly side: "too low" | "too high";
  readonly wanted: string;
  readonly short: string;
  /** The interval of the shortfall reaches the range. */
  readonly perhapsMet: boolean;
  /** The end of what was tried at which it comes nearest; undefined within. */
  readonly end: string | undefined;
  readonly onlyThis: boolean;
}

export const unreachable = findingMessage("trial/unreachable", "doubt", (one: Shortfall) => {
  const water = one.axis === "moisture" ? "more or less water" : `another ${one.axis}`;
  const mend = mends[`${one.test}, ${one.side}`];
  return {
    text: `${one.best} at ${one.at} is as near as ${one.test} comes to the ${one.wanted} that is wanted: ${one.side} by ${one.short}${one.end ? ` at the ${one.end} end of what was tried` : `, and ${water} will not mend it`}.`,
    because: [
      ...(one.perhapsMet ? ["By its interval it may just be met: repeat the batch nearest to it."] : []),
      ...(one.end ? [`It may still be met beyond the ${one.end} end, which was not tried.`] : []),
      ...(mend && !one.end
        ? [`What usually does: ${mend} (common practice). That is a trial of its own.`]
        : []),
      one.onlyThis
        ? "All other ranges can be met together: only this one stands in the way."
        : "It is not the only one that stands in the way.",
    ],
    source: "Our own: the mean of the curve against the range, over all that was tried",
  };
});

export const onlyApart = findingMessage(
  "trial/only-apart",
  "doubt",
  (a: string, aAt: string, b: string, bAt: string, unit: string) => ({
    text: `${a} is met at ${aAt} and ${b} at ${bAt} ${unit}: each for itself, never together.`,
    because: [
      "Move the one range that matters less, or change the sand: clay, mulling or fineness (common practice).",
    ],
    source: "Our own: the means of the curves against the ranges",
  }),
);

const strength = {
  low: "longer mulling first, then more clay",
  high: "less clay, or new sand mulled in",
} as const;
const mends: { readonly [what: string]: string } = {
  "green compression, too low": strength.low,
  "green compression, too high": strength.high,
  "green shear, too low": strength.low,
  "green shear, too high": strength.high,
  "splitting, too low": strength.low,
  "splitting, too high": strength.high,
  "permeability, too low": "coarser sand, fewer fines, or less clay",
  "permeability, too high": "finer sand, or sand of a wider grading",
  "compactability, too low": "longer mulling, or more clay with its water",
  "compactability, too high": "less clay, or fewer fines",
};
