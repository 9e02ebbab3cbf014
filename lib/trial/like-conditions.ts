// Whether two groups of batches were tested alike: clay, moisture and compactability.

import type { BatchFigures } from "../log/batch-figures.ts";
import { welch } from "../numbers/welch.ts";
import { combine, type Input } from "../quantity/combine.ts";
import { figure } from "../quantity/figure.ts";
import { isSpread, type Spread } from "../quantity/spread.ts";

/** % clay of the dry mix, % moisture of damp mass, % compactability of height. */
export type Condition = "clay" | "moisture" | "compactability";

/** What the batches of each group were tested at: spreads, or plain numbers; a batch without one is left out. */
export type Conditions = {
  readonly [condition in Condition]?: { readonly before: readonly Input[]; readonly after: readonly Input[] };
};

export interface ConditionDifference {
  readonly condition: Condition;
  /** After less before, and its 95 % interval, in points. */
  readonly difference: number;
  readonly low: number;
  readonly high: number;
}

/** Points by which a condition may differ, however well it is known, before figures stop being like with like: our own. */
const negligible: { readonly [condition in Condition]: number } = {
  clay: 0.2,
  moisture: 0.1,
  compactability: 1,
};

/**
 * The conditions whose means differ between the groups by more than their doubt: the 95 % interval of the difference
 * leaves out zero, and the difference is more than 0.2 points of clay, 0.1 of moisture, 1 of compactability. With
 * spreads the doubt is that of the readings, a shared rig's bias cancelling; with plain numbers that of the scatter
 * between batches (Welch), for which two in each group are needed. A group without a figure: nothing is said, see
 * knownConditions.
 * Source: common practice (strength and permeability are compared at like compactability); the limits our own.
 * @example
 * unlikeConditions({ compactability: { before: [44, 45, 46], after: [51, 52, 53] } })[0]
 * // { difference: 7, low: 4.7, high: 9.3 }
 */
export function unlikeConditions(conditions: Conditions): readonly ConditionDifference[] {
  return known(conditions).flatMap(([condition, groups]) => {
    const found = differenceOf(groups.before, groups.after);
    const apart = found.low > 0 || found.high < 0;
    return apart && Math.abs(found.difference) > negligible[condition] ? [{ condition, ...found }] : [];
  });
}

/**
 * The conditions that are known in both groups; of the others nothing can be said.
 * @example knownConditions({ compactability: { before: [44, 45], after: [51, 52] } }) // ["compactability"]
 */
export function knownConditions(conditions: Conditions): readonly Condition[] {
  return known(conditions).map(([condition]) => condition);
}

/**
 * What the batches of two blocks were made of and tested at.
 * @example blockConditions(batchFigures(log).figures, "Alder", "Birch")
 */
export function blockConditions(rows: readonly BatchFigures[], first: string, second: string): Conditions {
  const of = (pick: (row: BatchFigures) => Spread | undefined) => {
    const figures = (block: string): readonly Spread[] =>
      rows.filter(({ batch }) => batch.block === block).flatMap((row) => pick(row) ?? []);
    return { before: figures(first), after: figures(second) };
  };
  return {
    clay: of(({ recipe }) => recipe?.clayOfDryMixPercent),
    moisture: of(({ tests, recipe }) => tests.moisture?.spread ?? recipe?.moistureOfDampPercent),
    compactability: of(({ tests }) => tests.compactability?.spread),
  };
}

type Groups = NonNullable<Conditions[Condition]>;

function known(conditions: Conditions): [Condition, Groups][] {
  return (Object.keys(negligible) as Condition[]).flatMap((condition): [Condition, Groups][] => {
    const groups = conditions[condition];
    if (!groups || groups.before.length === 0 || groups.after.length === 0) return [];
    const plain = [...groups.before, ...groups.after].every((one) => !isSpread(one));
    // Plain numbers know their doubt from their scatter alone.
    return plain && (groups.before.length < 2 || groups.after.length < 2) ? [] : [[condition, groups]];
  });
}

function differenceOf(
  before: readonly Input[],
  after: readonly Input[],
): Omit<ConditionDifference, "condition"> {
  if ([...before, ...after].every((one) => typeof one === "number")) {
    const { difference, low, high } = welch(after as readonly number[], before as readonly number[]);
    // No scatter at all in either: they differ by what they differ.
    return Number.isNaN(low) ? { difference, low: difference, high: difference } : { difference, low, high };
  }
  const { value, low, high } = combine(
    (values) => {
      let [first, second] = [0, 0];
      for (let i = 0; i < before.length; i++) first += values[i]!;
      for (let i = 0; i < after.length; i++) second += values[before.length + i]!;
      return second / after.length - first / before.length;
    },
    // Figures, so that what a batch's readings said is read again for the next condition and the next run.
    [...before, ...after].map((one) => (isSpread(one) ? figure(one) : one)),
    { as: `mean of ${after.length} less mean of ${before.length}` },
  );
  return { difference: value, low, high };
}
