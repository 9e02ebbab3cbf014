// Did a change help? The sentences for a before and an after.

import type { Phrase } from "../phrase.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import type { BeforeAfter } from "../trial/before-after.ts";
import type { BlockDifference } from "../trial/block-difference.ts";
import type { ConditionDifference } from "../trial/like-conditions.ts";
import * as say from "./comparison-messages.ts";
import type { Finding } from "./finding.ts";

/**
 * What can be said of two groups of figures of one test; first and second are the groups' names. Where the groups were
 * tested at unlike clay, moisture or compactability the difference is not called one of the change, and strengths and
 * permeabilities at unlike compactability are not compared at all.
 * @example
 * comparisonFinding("moisture", "% of damp mass", "old", "new", beforeAfter([3, 3.1, 3], [3.5, 3.6, 3.5])).tone
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
    say.chance(chanceOf(p), printNumber(df, 1)),
    ...notes,
    ...(drifted.length > 0 ? [say.driftedItself(drifted.join(" and "))] : []),
    ...neighbours(found),
    say.whateverElse(),
  ];
  const compactability = others.find(({ condition }) => condition === "compactability");
  if (compactability && boundToCompactability.includes(test)) {
    return say.notComparable(test, pointsOf(compactability), first, second, because);
  }
  if (others.length > 0) {
    const names = others.map(({ condition }) => condition).join(" and ");
    return say.unlike(test, size, first, second, names, because);
  }
  if (drifted.length > 0) return say.drifted(test, size, first, second, because);
  const told = low > 0 || high < 0 ? say.differs : say.notTold;
  return told(test, size, first, second, because);
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
): { readonly others: readonly ConditionDifference[]; readonly notes: readonly Phrase[] } {
  const apart = unlike.filter(({ condition }) => condition !== test);
  const tempered = alike.includes("compactability");
  return {
    others: apart.filter(({ condition }) => !(tempered && condition === "moisture")),
    notes: apart.map(({ condition, ...one }) =>
      say.hadMore(
        capital(condition),
        second,
        pointsOf(one),
        one.difference > 0,
        first,
        tempered && condition === "moisture",
      ),
    ),
  };
}

/** "7.0 ± 2.3 points", without a sign. */
function pointsOf({ difference, low, high }: Omit<ConditionDifference, "condition">): string {
  const [from, to] = difference < 0 ? [-high, -low] : [low, high];
  return printFigure({ value: Math.abs(difference), low: from, high: to, unit: "points" }).text;
}

function neighbours({ widened, effective, autocorrelation }: BeforeAfter): Phrase[] {
  if (!widened) return [];
  const of = (count: number): string => printNumber(count, 1);
  return [say.neighboursTogether(printNumber(autocorrelation, 2), of(effective.before), of(effective.after))];
}

/**
 * What can be said of two blocks that were fitted with one curve, one above the other. told: what else differs between
 * them and by how much; a difference along the axis is what the curve is for.
 * @example blockComparisons(trialReport(log), shownUnits(log))
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
  const because = [say.chance(chanceOf(p), printNumber(df, 0)), ...notes, say.oneCurve()];
  if (doubted.length > 0) {
    const names = doubted.map(({ condition }) => condition).join(" and ");
    return say.blocksUnlike(test, size, first, second, axis, names, because);
  }
  return low > 0 || high < 0
    ? say.blocksDiffer(test, size, first, second, axis, difference > 0, because)
    : say.blocksNotTold(test, size, first, second, axis, because);
}

function chanceOf(p: number): string {
  return p < 0.001 ? "below 0.001" : printNumber(p, 3);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
