// One test of one batch: the mean of its repeats, with what they share and how they scatter.

import { mean, median } from "../numbers/summary.ts";
import { lift } from "../quantity/combine.ts";
import type { Spread } from "../quantity/spread.ts";
import { constant, shifted } from "../quantity/spread-of.ts";
import { repeatScatter } from "../sand/repeats.ts";
import type { Batch, TestName } from "./batch.ts";
import type { TestFigure } from "./test-figure.ts";

export interface Scatter {
  /** Of one test, in the test's unit. */
  readonly sd: number;
  readonly degreesOfFreedom: number;
}

/** One test of one batch, by one method: a single reading, or the mean of its repeats. */
export interface BatchFigure extends TestFigure {
  /** The number of each reading. */
  readonly each: readonly number[];
  /** Scatter of one reading; pooled: learnt from the repeats of other batches too. Undefined: nothing was repeated. */
  readonly repeat?: Scatter & { readonly pooled: boolean };
}

/** Readings of one test of one batch by one method. */
export interface Group {
  readonly test: TestName;
  readonly batch: Batch;
  readonly kind: string | undefined;
  readonly figures: readonly TestFigure[];
}

/**
 * The figure of a group, the same object as last time where its readings' figures and the pooled scatter are: the parts of
 * a page that were worked out from it stand then as well. Figures of readings name their batch.
 */
export function batchFigure(group: Group, pooled: Scatter | undefined): BatchFigure {
  const first = group.figures[0]!;
  const before = known.get(first);
  if (before && sameGroup(before.group, group) && sameScatter(before.pooled, pooled)) return before.made;
  const made = workedFigure(group, pooled);
  known.set(first, { group, pooled, made });
  return made;
}

const known = new WeakMap<
  TestFigure,
  { readonly group: Group; readonly pooled: Scatter | undefined; readonly made: BatchFigure }
>();

function sameGroup(a: Group, b: Group): boolean {
  return (
    a.batch.id === b.batch.id &&
    a.kind === b.kind &&
    a.figures.length === b.figures.length &&
    a.figures.every((figure, i) => figure === b.figures[i])
  );
}

function sameScatter(a: Scatter | undefined, b: Scatter | undefined): boolean {
  return a?.sd === b?.sd && a?.degreesOfFreedom === b?.degreesOfFreedom;
}

function workedFigure({ test, kind, figures, batch }: Group, pooled: Scatter | undefined): BatchFigure {
  const first = figures[0]!;
  const each = figures.map(({ value }) => value);
  if (test === "squeeze") {
    const middle = constant(median(each));
    return { ...first, value: middle.value, spread: middle, shared: middle, each };
  }
  const repeat = scatterOf(each, pooled);
  const method = figures.find((figure) => figure.method !== undefined)?.method;
  const shared = sharedOf(figures);
  const told = (part: "missing" | "assumed") => [...new Set(figures.flatMap((figure) => figure[part]))];
  const common = {
    ...first,
    ...(method === undefined ? {} : { method }),
    value: mean(each),
    shared,
    each,
    assumed: told("assumed"),
  };
  if (!repeat) {
    // Also where repeats agree to the last digit: then the readings are too coarse to show their scatter.
    const spread = meanOf(figures.map((figure) => figure.spread));
    const missing = [...told("missing"), ...(figures.length > 1 ? [] : ["repeats"])];
    return { ...common, spread, missing };
  }
  const between = shifted(0, repeat.sd / Math.sqrt(each.length), {
    id: `scatter of ${test}, ${batch.id}${kind === undefined ? "" : `, ${kind}`}`,
    kind: "repeat",
    shape: { kind: "t", df: repeat.degreesOfFreedom },
    says: `scatter between repeats of ${test}`,
  });
  const spread = lift((values) => values[0]! + values[1]!, [shared, between], "sum of two");
  // The scatter holds what a single reading may be off by, known or not.
  const missing = told("missing").filter((part) => part !== "reading" && part !== "weighing");
  return { ...common, spread, missing, repeat };
}

/** Fewer degrees of freedom than this teach too little to stand in for a test that was done once. */
const leastPooled = 3;

function scatterOf(each: readonly number[], pooled: Scatter | undefined): BatchFigure["repeat"] {
  const own = repeatScatter(each);
  const learnt = pooled && pooled.degreesOfFreedom >= leastPooled ? pooled : undefined;
  if (learnt && (own?.degreesOfFreedom ?? 0) <= 2) return { ...learnt, pooled: true };
  return own && own.sd > 0
    ? { sd: own.sd, degreesOfFreedom: own.degreesOfFreedom, pooled: false }
    : undefined;
}

/** Also where the pooled scatter is another: what is drawn over all batches asks for this part alone. */
function sharedOf(figures: readonly TestFigure[]): Spread {
  const first = figures[0]!;
  const before = knownShared.get(first);
  const same =
    before?.figures.length === figures.length && figures.every((one, i) => one === before.figures[i]);
  if (before && same) return before.shared;
  const shared = meanOf(figures.map((figure) => figure.shared));
  knownShared.set(first, { figures, shared });
  return shared;
}

const knownShared = new WeakMap<
  TestFigure,
  { readonly figures: readonly TestFigure[]; readonly shared: Spread }
>();

function meanOf(spreads: readonly Spread[]): Spread {
  if (spreads.length === 1) return spreads[0]!;
  return lift(
    (values) => {
      let all = 0;
      for (let i = 0; i < spreads.length; i++) all += values[i]!;
      return all / spreads.length;
    },
    spreads,
    "mean of all",
  );
}
