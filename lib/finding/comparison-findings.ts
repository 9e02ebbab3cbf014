// Did a change help? The sentences for a before and an after.

import { printFigure, printNumber } from "../quantity/print.ts";
import type { BeforeAfter } from "../trial/before-after.ts";
import type { BlockDifference } from "../trial/block-difference.ts";
import type { Finding } from "./finding.ts";

/** What can be said of two groups of figures of one test; first and second are the groups' names. */
export function comparisonFinding(
  test: string,
  unit: string,
  first: string,
  second: string,
  found: BeforeAfter,
): Finding {
  const { difference, low, high, p, df, drift, autocorrelation } = found;
  const size = printFigure({ value: difference, low, high, ...(unit ? { unit } : {}) }).text;
  const drifted = [drift.before ? first : "", drift.after ? second : ""].filter((name) => name !== "");
  const because = [
    `p ${chanceOf(p)} with ${printNumber(df, 1)} degrees of freedom, for no difference at all.`,
    ...(drifted.length > 0 ? [`${drifted.join(" and ")} drifted by itself while it was taken.`] : []),
    ...(autocorrelation > 0.5 ? ["Neighbouring figures go together, so the interval is too narrow."] : []),
    "Whatever else changed between the two is in the difference.",
  ];
  const basis = { formula: "t = difference / √(s₁²/n₁ + s₂²/n₂)", source: "Welch 1947" };
  if (drifted.length > 0) {
    return {
      code: "comparison/drift",
      tone: "doubt",
      text: `${size}: ${second} differs from ${first} in ${test} by this much, but there was a drift, so the change cannot be told from it.`,
      because,
      ...basis,
    };
  }
  const apart = low > 0 || high < 0;
  return {
    code: apart ? "comparison/differs" : "comparison/not-told",
    tone: apart ? "good" : "note",
    text: apart
      ? `${size}: ${second} differs from ${first} in ${test} by this much.`
      : `${size}: ${second} and ${first} cannot be told apart in ${test} by these batches.`,
    because,
    ...basis,
  };
}

/** What can be said of two blocks that were fitted with one curve, one above the other. */
export function blockFinding(
  test: string,
  unit: string,
  first: string,
  second: string,
  axis: string,
  found: BlockDifference,
): Finding {
  const { difference, low, high, p, df } = found;
  const size = printFigure({ value: difference, low, high, ...(unit ? { unit } : {}) }).text;
  const apart = low > 0 || high < 0;
  return {
    code: apart ? "comparison/blocks-differ" : "comparison/blocks-not-told",
    tone: apart ? "good" : "note",
    text: apart
      ? `${size}: ${second} is ${difference > 0 ? "higher" : "lower"} than ${first} in ${test} by this much at like ${axis}.`
      : `${size}: ${second} and ${first} cannot be told apart in ${test} at like ${axis}.`,
    because: [
      `p ${chanceOf(p)} with ${printNumber(df, 0)} degrees of freedom, for no difference at all.`,
      "Both are taken to follow one curve, one above the other; whatever else changed between them is in the difference.",
    ],
    formula: "y = curve(axis) + offset of the block",
    source: "Analysis of covariance; Draper & Smith, Applied Regression Analysis",
  };
}

function chanceOf(p: number): string {
  return p < 0.001 ? "below 0.001" : printNumber(p, 3);
}
