// The state of a batch's bond by the published relations, with the doubt of readings and of the relations themselves.

import type { BatchFigure, BatchFigures } from "../log/batch-figures.ts";
import { combine, lift } from "../quantity/combine.ts";
import { type Figure, figure } from "../quantity/figure.ts";
import type { Spread } from "../quantity/spread.ts";
import { spread } from "../quantity/spread-of.ts";
import { bondRelations, bondState } from "../sand/bond-state.ts";
import { equilibriumMoistureIssues, equilibriumRelation } from "../sand/equilibrium-moisture.ts";
import { type ClayMeant, clayMeant } from "./clay-meant.ts";

/** A figure, or why there is none. */
export type OrWhy = { readonly figure: Figure; readonly atLeast: boolean } | { readonly why: string };

export interface BondFigures {
  readonly batch: string;
  readonly clay: ClayMeant | undefined;
  /** Water ÷ that clay, by mass. */
  readonly waterPerClay: OrWhy;
  /** Clay that could bind and clay that does, %; the second as a share of the first, %. */
  readonly available: OrWhy;
  readonly working: OrWhy;
  readonly mulling: OrWhy;
  /** Moisture that this clay and compactability would have fully mulled, and how much more the batch holds. */
  readonly equilibrium: OrWhy;
  readonly moistureAbove: OrWhy;
}

/** Half-width of a relation's own doubt at 95 %, as a share of its figure: our own, since none was printed. */
export const modelShare = 0.15;

/** Enough for two digits of a ± that is mostly the relation's own. */
const plan = { draws: 1024 } as const;

const notTested = (what: string): OrWhy => ({ why: `${what} was not tested` });

/**
 * Water per clay, available and working bond, mulling by the two, equilibrium moisture, and what the batch holds above
 * it, each with the ± of the readings and, but for the bare ratio, ± 15 % of its own for the relation.
 * Outside the range of a relation there is no figure, and why. bond: the relations are for bentonite; natural sands get
 * none. Ranges, equations and sources: bondState, equilibriumMoisturePercent, waterPerClay.
 * @example bondFigures(batchFigures(log).figures[0]!, log.bond)
 */
export function bondFigures(row: BatchFigures, bond: string | undefined): BondFigures {
  // A row is the same object while nothing in it changed; of a hundred batches an edit changes one.
  if (!Object.isFrozen(row.batch)) return workedOut(row, bond);
  const before = known.get(row);
  if (before && before.bond === bond) return before.made;
  const made = workedOut(row, bond);
  known.set(row, { bond, made });
  return made;
}

const known = new WeakMap<BatchFigures, { readonly bond: string | undefined; readonly made: BondFigures }>();

function workedOut(row: BatchFigures, bond: string | undefined): BondFigures {
  const { tests, batch } = row;
  const clay = clayMeant(row);
  const { moisture, compactability } = tests;
  const strength = tests["green compression"];
  const common = { batch: batch.name, clay, waterPerClay: ratio(row, clay) };
  if (bond !== "bentonite") {
    const none: OrWhy = {
      why:
        bond === undefined
          ? "the log does not say the bond; the relations are for bentonite"
          : "the relations are for bentonite",
    };
    return {
      ...common,
      available: none,
      working: none,
      mulling: none,
      equilibrium: none,
      moistureAbove: none,
    };
  }
  return {
    ...common,
    ...states(strength, moisture, compactability),
    ...equilibriumOf(clay, moisture, compactability),
  };
}

function ratio({ tests, recipe }: BatchFigures, clay: ClayMeant | undefined): OrWhy {
  if (!clay) return { why: "its clay is not known" };
  const water = tests.moisture?.spread ?? recipe?.moistureOfDampPercent;
  if (!water) return { why: "its water is not known" };
  return {
    figure: combine(
      ({ m, c }) => m / Math.max(1e-9, c * (1 - m / 100)),
      {
        m: water,
        c: clay.ofDryMixPercent,
      },
      { ...plan, as: "water over clay" },
    ),
    atLeast: (tests.moisture?.missing.length ?? recipe?.missing.length ?? 0) > 0,
  };
}

type Tested = BatchFigure | undefined;

function states(
  strength: Tested,
  moisture: Tested,
  compactability: Tested,
): Pick<BondFigures, "available" | "working" | "mulling"> {
  const lacking = [
    ...(strength ? [] : ["green compression"]),
    ...(moisture ? [] : ["moisture"]),
    ...(compactability ? [] : ["compactability"]),
  ];
  if (!strength || !moisture || !compactability) {
    const none = notTested(lacking.join(", "));
    return { available: none, working: none, mulling: none };
  }
  const { inRange, issues } = bondState({
    strengthKPa: strength.value,
    moistureOfDampPercent: moisture.value,
    compactabilityPercent: compactability.value,
  });
  if (!inRange) {
    const none: OrWhy = { why: issues.map(({ message }) => message).join(" ") };
    return { available: none, working: none, mulling: none };
  }
  const read = { s: strength.spread, m: moisture.spread, c: compactability.spread };
  const of = (bond: keyof ReturnType<typeof bondRelations>): Spread =>
    lift(
      ({ s, m, c }) =>
        bondRelations({ strengthKPa: s, moistureOfDampPercent: m, compactabilityPercent: c })[bond],
      read,
      bond,
    );
  const available = withModel(of("availableBondPercent"), "available bond");
  const working = withModel(of("workingBondPercent"), "working bond");
  const atLeast = [strength, moisture, compactability].some(({ missing }) => missing.length > 0);
  return {
    available: { figure: figure(available, plan), atLeast },
    working: { figure: figure(working, plan), atLeast },
    mulling: {
      figure: combine(({ a, w }) => (100 * w) / a, { a: available, w: working }, { ...plan, as: "mulling" }),
      atLeast,
    },
  };
}

function equilibriumOf(
  clay: ClayMeant | undefined,
  moisture: Tested,
  compactability: Tested,
): Pick<BondFigures, "equilibrium" | "moistureAbove"> {
  const none = (why: string) => ({ equilibrium: { why }, moistureAbove: { why } });
  if (!clay) return none("its clay is not known");
  if (!compactability) return none("compactability was not tested");
  if (!(compactability.value > 0)) return none("its compactability is zero");
  const issues = equilibriumMoistureIssues({
    liveClayPercent: clay.ofDryMixPercent.value,
    compactabilityPercent: compactability.value,
  });
  if (issues.length > 0) return none(issues.map(({ message }) => message).join(" "));
  const relation = withModel(
    lift(
      ({ clay: live, c }) => equilibriumRelation({ liveClayPercent: live, compactabilityPercent: c }),
      { clay: clay.ofDryMixPercent, c: compactability.spread },
      "equilibrium moisture",
    ),
    "equilibrium moisture",
  );
  const atLeast = compactability.missing.length > 0;
  return {
    equilibrium: { figure: figure(relation, plan), atLeast },
    moistureAbove: moisture
      ? {
          figure: combine(
            ({ m, e }) => m - e,
            { m: moisture.spread, e: relation },
            { ...plan, as: "moisture above" },
          ),
          atLeast: atLeast || moisture.missing.length > 0,
        }
      : notTested("moisture"),
  };
}

function withModel(one: Spread, name: string): Spread {
  const model = spread({
    mean: 1,
    halfWidth: modelShare,
    kind: "normal",
    doubt: "model",
    source: `the relation of ${name}`,
    says: `the relation of ${name} itself`,
  });
  return lift(({ one: value, model: factor }) => value * factor, { one, model }, "product of two");
}
