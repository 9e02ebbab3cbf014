// Did a change help? The sentences for a before and an after.

import { printFigure, printNumber } from "../quantity/print.ts";
import type { BeforeAfter } from "../trial/before-after.ts";
import type { BlockDifference } from "../trial/block-difference.ts";
import type { ConditionDifference } from "../trial/like-conditions.ts";
import type { Finding } from "./finding.ts";

/**
 * What can be said of two groups of figures of one test; first and second are the groups' names. Where the groups were
 * tested at unlike clay, moisture or compactability the difference is not called one of the change, and strengths and
 * permeabilities at unlike compactability are not compared at all.
 */
export function comparisonFinding(
  test: string,
  unit: string,
  first: string,
  second: string,
  found: BeforeAfter,
): Finding {
  const { difference, low, high, p, df, drift } = found;
  const size = printFigure({ value: difference, low, high, ...(unit ? { unit } : {}) }).text;
  const { others, notes } = conditionsApart(test, first, second, found);
  const drifted = [drift.before ? first : "", drift.after ? second : ""].filter((name) => name !== "");
  const because = [
    `p ${chanceOf(p)} with ${printNumber(df, 1)} degrees of freedom, for no difference at all.`,
    ...notes,
    ...(drifted.length > 0 ? [`${drifted.join(" and ")} drifted by itself while it was taken.`] : []),
    ...neighbours(found),
    "Whatever else changed between the two is in the difference.",
  ];
  const basis = { formula: "t = difference / √(s₁²/n₁ + s₂²/n₂)", source: "Welch 1947" };
  const compactability = others.find(({ condition }) => condition === "compactability");
  if (compactability && boundToCompactability.includes(test)) {
    return {
      code: "comparison/not-comparable",
      tone: "doubt",
      text: `${pointsOf(compactability)}: so far apart in compactability were ${first} and ${second}. Their ${test} is not compared, for it follows compactability.`,
      because: [...because, "Temper both to one compactability, and test again."],
      ...basis,
    };
  }
  if (others.length > 0) {
    const names = others.map(({ condition }) => condition).join(" and ");
    return {
      code: "comparison/unlike",
      tone: "doubt",
      text: `${size}: ${second} differs from ${first} in ${test} by this much, but they differ in ${names} as well, so the change cannot be told from it.`,
      because: [...because, `Two or three batches of each at like ${names} would part them.`],
      ...basis,
    };
  }
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

/** Tests whose figures say nothing of a change when the compactability changed with it. Common practice. */
const boundToCompactability: readonly string[] = [
  "green compression",
  "green shear",
  "splitting",
  "permeability",
];

type Told = Pick<BeforeAfter, "unlike" | "alike">;

/**
 * others: the conditions that cast doubt on a comparison of a test. Moisture does not where compactability is known to
 * be alike: sand is tempered to that, and the water follows what was changed. notes: a sentence for each that differs.
 */
function conditionsApart(
  test: string,
  first: string,
  second: string,
  { unlike, alike }: Told,
): { readonly others: readonly ConditionDifference[]; readonly notes: readonly string[] } {
  const apart = unlike.filter(({ condition }) => condition !== test);
  const tempered = alike.includes("compactability");
  return {
    others: apart.filter(({ condition }) => !(tempered && condition === "moisture")),
    notes: apart.map(({ condition, ...one }) => {
      const more = one.difference > 0 ? "more" : "less";
      const how = tempered && condition === "moisture" ? ", at like compactability" : "";
      return `${capital(condition)}: ${second} had ${pointsOf(one)} ${more} than ${first}${how}.`;
    }),
  };
}

/** "7.0 ± 2.3 points", without a sign. */
function pointsOf({ difference, low, high }: Omit<ConditionDifference, "condition">): string {
  const [from, to] = difference < 0 ? [-high, -low] : [low, high];
  return printFigure({ value: Math.abs(difference), low: from, high: to, unit: "points" }).text;
}

function neighbours({ widened, effective, autocorrelation }: BeforeAfter): string[] {
  if (!widened) return [];
  const of = (count: number): string => printNumber(count, 1);
  return [
    `Neighbouring figures go together (lag-one autocorrelation ${printNumber(autocorrelation, 2)}), so they count as ${of(effective.before)} and ${of(effective.after)} independent ones, and the interval is that much wider.`,
  ];
}

/**
 * What can be said of two blocks that were fitted with one curve, one above the other. told: what else differs between
 * them and by how much; a difference along the axis is what the curve is for.
 */
export function blockFinding(
  test: string,
  unit: string,
  first: string,
  second: string,
  axis: string,
  found: BlockDifference,
  told: Told = { unlike: [], alike: [] },
): Finding {
  const { difference, low, high, p, df } = found;
  const { others, notes } = conditionsApart(test, first, second, told);
  const doubted = others.filter(({ condition }) => condition !== axis);
  const size = printFigure({ value: difference, low, high, ...(unit ? { unit } : {}) }).text;
  const apart = low > 0 || high < 0;
  const because = [
    `p ${chanceOf(p)} with ${printNumber(df, 0)} degrees of freedom, for no difference at all.`,
    ...notes,
    "Both are taken to follow one curve, one above the other; whatever else changed between them is in the difference.",
  ];
  const basis = {
    formula: "y = curve(axis) + offset of the block",
    source: "Analysis of covariance; Draper & Smith, Applied Regression Analysis",
  };
  if (doubted.length > 0) {
    const names = doubted.map(({ condition }) => condition).join(" and ");
    return {
      code: "comparison/blocks-unlike",
      tone: "doubt",
      text: `${size}: ${second} differs from ${first} in ${test} by this much at like ${axis}, but they differ in ${names} as well, so the change cannot be told from it.`,
      because,
      ...basis,
    };
  }
  return {
    code: apart ? "comparison/blocks-differ" : "comparison/blocks-not-told",
    tone: apart ? "good" : "note",
    text: apart
      ? `${size}: ${second} is ${difference > 0 ? "higher" : "lower"} than ${first} in ${test} by this much at like ${axis}.`
      : `${size}: ${second} and ${first} cannot be told apart in ${test} at like ${axis}.`,
    because,
    ...basis,
  };
}

function chanceOf(p: number): string {
  return p < 0.001 ? "below 0.001" : printNumber(p, 3);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
