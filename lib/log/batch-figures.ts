// Every batch of a log with its figures: repeats averaged, methods kept apart, scatter learnt from every replicate.

import type { Issue } from "../issue.ts";
import { pooledRepeatScatter } from "../sand/repeats.ts";
import type { Batch, TestName } from "./batch.ts";
import { type BatchFigure, batchFigure, type Group, type Scatter } from "./batch-figure.ts";
import { kindOf, mainKinds } from "./main-methods.ts";
import { type RecipeFigures, recipeFigures } from "./recipe-figures.ts";
import { type TestFigure, testFigure } from "./test-figure.ts";
import { testNames } from "./test-forms.ts";
import type { Log } from "./types.ts";

export type { BatchFigure, Scatter } from "./batch-figure.ts";

export interface BatchFigures {
  readonly batch: Batch;
  /** By the method that most batches of the log use. */
  readonly tests: { readonly [test in TestName]?: BatchFigure };
  /** Found by another method than the log's usual one: never on one curve with the rest. */
  readonly apart: readonly BatchFigure[];
  readonly recipe?: RecipeFigures;
}

export interface LogFigures {
  /** One for each batch that can be used, in the log's order. */
  readonly figures: readonly BatchFigures[];
  /** Repeatability of one test, over all rigs of the log; squeeze has none. */
  readonly pooled: { readonly [test in TestName]?: Scatter };
  /** Tests that gave no figure, with their places. */
  readonly issues: readonly Issue[];
}

/**
 * The figures of all usable batches. Repeats of a test are averaged; over their mean are drawn the sources that they
 * share (rig, method) and the scatter between them, Student's t: readings' own errors are in that scatter already.
 * With two or fewer degrees of freedom of its own, a test takes the scatter pooled over every repeat of the log by the
 * same method and rig, else by the same test, if that has three or more; so does a test that was done once. Where too
 * little was repeated, a single reading's own errors stand, and "repeats" is missing. Steps of the squeeze have no mean: their middle is taken.
 * A batch that the log leaves out has its figures; its repeats and methods teach nothing of the others.
 * Pooling: s = √(ΣΣ(x − own mean)² / Σ(n − 1)), GUM 4.2.4; it takes scatter to be about alike in all batches.
 * @example batchFigures(log).figures[0]?.tests.compactability?.value
 */
export function batchFigures(log: Pick<Log, "batches">): LogFigures {
  const issues: Issue[] = [];
  const usable = log.batches.filter((batch) => batch.usable);
  const kept = usable.filter(({ keptOut }) => keptOut === undefined);
  const main = mainKinds(kept);
  const groupsBy = new Map(usable.map((batch) => [batch, groupsOf(batch, main, issues)]));
  const groups = kept.flatMap((batch) => groupsBy.get(batch)!);
  const byTest = scatterBy(groups, ({ test }) => test);
  const byRig = scatterBy(groups, rigKey);
  const figures = usable.map((batch): BatchFigures => {
    const own = groupsBy.get(batch)!;
    const worked = (group: Group) => batchFigure(group, byRig.get(rigKey(group)) ?? byTest.get(group.test));
    const usual = ({ test, kind }: Group) => kind === main.get(test);
    const recipe = recipeFigures(batch);
    return sameRow({
      batch,
      tests: Object.fromEntries(own.filter(usual).map((group) => [group.test, worked(group)])),
      apart: own.filter((group) => !usual(group)).map(worked),
      ...(recipe ? { recipe } : {}),
    });
  });
  return { figures, pooled: Object.fromEntries(byTest), issues };
}

/** The row that stood before where nothing in it is another: what was made of it stands as well. */
function sameRow(row: BatchFigures): BatchFigures {
  const before = knownRows.get(row.batch);
  const tests = Object.entries(row.tests);
  const same =
    before?.recipe === row.recipe &&
    before?.apart.length === row.apart.length &&
    before.apart.every((figure, i) => figure === row.apart[i]) &&
    Object.keys(before.tests).length === tests.length &&
    tests.every(([test, figure]) => before.tests[test as TestName] === figure);
  if (before && same) return before;
  knownRows.set(row.batch, row);
  return row;
}

const knownRows = new WeakMap<Batch, BatchFigures>();

/** The readings of a batch by test and kind. */
function groupsOf(batch: Batch, main: ReturnType<typeof mainKinds>, issues: Issue[]): Group[] {
  return testNames.flatMap((test) => {
    const figures = batch.readings
      .filter((reading) => reading.test === test)
      .flatMap((reading) => {
        const { value, issues: wrong } = testFigure(reading, batch);
        issues.push(...wrong.map((issue) => ({ ...issue, about: batch.name })));
        return value ?? [];
      });
    const kind = ({ method }: TestFigure) => kindOf(test, method) ?? main.get(test);
    return [...new Set(figures.map(kind))].map((one) => ({
      test,
      batch,
      kind: one,
      figures: figures.filter((figure) => kind(figure) === one),
    }));
  });
}

function rigKey({ test, kind, figures }: Group): string {
  const rigs = [...new Set(figures.map(({ rig }) => rig ?? ""))].sort();
  return [test, kind ?? "", ...rigs].join(" / ");
}

function scatterBy<Key>(groups: readonly Group[], keyOf: (group: Group) => Key): Map<Key, Scatter> {
  const values = new Map<Key, number[][]>();
  for (const group of groups) {
    if (group.test === "squeeze") continue;
    const key = keyOf(group);
    const sets = values.get(key) ?? [];
    sets.push(group.figures.map(({ value }) => value));
    values.set(key, sets);
  }
  const pooled = [...values].flatMap(([key, sets]): [Key, Scatter][] => {
    const scatter = pooledRepeatScatter(sets);
    return scatter && scatter.sd > 0 ? [[key, scatter]] : [];
  });
  return new Map(pooled);
}
