// What the figures of a founder's own sheet say: one message, one function.

import { phraseMessage } from "../message.ts";
import type { Source } from "../quantity/source.ts";
import { findingMessage } from "./finding-message.ts";

const leastSquares = "N. R. Draper and H. Smith, Applied Regression Analysis (from memory)";

export const risesWith = findingMessage(
  "sheet/slope",
  "note",
  (y: string, x: string, slope: string, unit: string, rises: boolean, rows: string) => ({
    text: `${slope} ${unit}: so much does ${y} ${rises ? "rise" : "fall"} for each step of ${x}.`,
    because: [
      `A straight line through ${rows} rows by least squares; the ± is 95 %, from how the rows scatter about it and from what they share.`,
      "That the two go together does not say that one makes the other.",
    ],
    formula: "y = b₀ + b₁x",
    source: leastSquares,
  }),
);

export const noSlope = findingMessage(
  "sheet/no-slope",
  "note",
  (y: string, x: string, range: string, unit: string, rows: string) => ({
    text: `${range} ${unit}: whether ${y} rises or falls with ${x} cannot be told.`,
    because: [
      `A straight line through ${rows} rows by least squares; 95 % of what its slope may be lies on both sides of nothing.`,
    ],
    formula: "y = b₀ + b₁x",
    source: leastSquares,
  }),
);

export const turnsAt = findingMessage(
  "sheet/turning",
  "note",
  (y: string, x: string, place: string, kind: string, rows: string) => ({
    text: `${place}: there the curve through ${y} against ${x} is ${kind}.`,
    because: [`A parabola through ${rows} rows by least squares; the limits are Fieller's, 95 %.`],
    formula: "y = b₀ + b₁x + b₂x², turning at −b₁/(2b₂)",
    source: `${leastSquares}; E. C. Fieller, J. R. Stat. Soc. B 16 (1954) 175`,
  }),
);

export const noTurning = findingMessage("sheet/no-turning", "note", (y: string, x: string, rows: string) => ({
  text: `${rows} rows do not show where ${y} turns over ${x}, or whether it does.`,
  because: ["A parabola by least squares: its turning place is not bounded, or lies outside the rows."],
  formula: "y = b₀ + b₁x + b₂x²",
  source: leastSquares,
}));

export const tooFewForLine = findingMessage(
  "sheet/too-few-for-line",
  "doubt",
  (y: string, x: string, what: string, has: string, needs: string) => ({
    text: `${has}: too few for a ${what} through ${y} against ${x}, so the points stand alone.`,
    because: [`A ${what} is drawn from ${needs} on (our own).`],
  }),
);

export const xInDoubt = findingMessage("sheet/x-in-doubt", "doubt", (x: string, y: string) => ({
  text: `${x} is itself in doubt by more than a tenth of how far its rows lie apart: the line through ${y} is drawn too flat.`,
  because: ["Least squares takes x as known; errors of x that rows do not share flatten the slope."],
  source: leastSquares,
}));

export const doubtFrom = findingMessage(
  "sheet/doubt-carrier",
  "note",
  (foot: string, share: string, source: string, remedy: string) => ({
    text: `${share} of the doubt about ${foot} comes from one source: ${source}.`,
    because: [remedy],
  }),
);

export const doubtSpread = findingMessage(
  "sheet/doubt-spread",
  "note",
  (foot: string, share: string, source: string) => ({
    text: `No single source carries the doubt about ${foot}: the largest, ${source}, brings ${share} of it.`,
    because: ["Weighing or reading any one of them better gains little; more rows gain more."],
  }),
);

/** kind: of the source that carries most of a doubt. */
export const narrowedBy = phraseMessage("sheet/narrowed-by", (kind: Source["kind"]) => remedies[kind]);

const remedies: { readonly [kind in Source["kind"]]: string } = {
  reading: "A finer step, or the mean of several readings, would make it smaller.",
  repeat: "More repeats would make it smaller.",
  rig: "A check of the instrument against something known would make it smaller; more readings on it would not.",
  method: "Another way of doing it would make it smaller; more readings would not.",
  model: "It is the scatter of a relation: only a measurement in its place would make it smaller.",
};
