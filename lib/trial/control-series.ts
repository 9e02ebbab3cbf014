// What was tested on the heap, day by day: a series for each test and each method.

import { invariant } from "../issue.ts";
import type { TestName } from "../log/batch.ts";
import { type BatchFigure, type BatchFigures, batchFigures } from "../log/batch-figures.ts";
import { type DiaryProperty, diaryProperties } from "../log/diary-properties.ts";
import type { Measured } from "../log/figure-types.ts";
import type { BasedShare, HeapState } from "../log/heap-state.ts";
import { kindOf, mainKinds } from "../log/main-methods.ts";
import type { Log } from "../log/types.ts";
import { workedUnits } from "../log/worked-units.ts";
import { dayOf } from "../numbers/days.ts";
import type { Spread } from "../quantity/spread.ts";
import { spreadOfQuantity } from "../quantity/spread-of.ts";
import { sievedValues } from "./control-sieved.ts";

/** One value of a day: a batch's figure, the mean of its repeats; or a number of a state that was measured. */
export interface DiaryValue {
  readonly date: string;
  /** Since 1970-01-01. */
  readonly day: number;
  /** Of the batch, else "as measured". */
  readonly name: string;
  readonly value: number;
  readonly spread: Spread;
  /** What the ± does not hold: with any, it is "at least". */
  readonly missing: readonly string[];
  readonly rig?: string;
  /** The reason why the log leaves its batch out: such a value is shown and is in no mean and no limit. */
  readonly keptOut?: string;
}

export interface DiarySeries {
  readonly property: DiaryProperty;
  /** Undefined where the test has one way only, or none was said. */
  readonly method?: string;
  /** "% of damp mass", "kPa"; empty for a bare number. */
  readonly unit: string;
  /** The bench test whose unit it is printed in, where it is one. */
  readonly test?: TestName;
  /** By day; those of one day by their order, else as they stand. */
  readonly values: readonly DiaryValue[];
  /** Those of batches that the log leaves out, by day. */
  readonly keptOut: readonly DiaryValue[];
}

export interface Diary {
  /** In the order of diaryProperties, of one property the longest first. */
  readonly series: readonly DiarySeries[];
  /** Tests that were made on batches that the log leaves out, and on no other: they have no values. */
  readonly onlyKeptOut: readonly DiarySeries[];
  /** Batches with tests but without a date. */
  readonly undated: readonly string[];
  /** Batches made up by weight: a new mix, not the heap as it lies. */
  readonly madeUp: readonly string[];
  /** The last day that the log tells of; undefined where it has none. */
  readonly lastDate?: string;
  readonly batches: readonly BatchFigures[];
  readonly issues: ReturnType<typeof batchFigures>["issues"];
}

interface Found extends DiaryValue {
  readonly property: DiaryProperty;
  readonly method: string | undefined;
  readonly unit: string;
  readonly order: number;
}

const benchTests: readonly TestName[] = [
  "moisture",
  "compactability",
  "green compression",
  "green shear",
  "splitting",
  "permeability",
  "clay by wash",
];

/**
 * The values of a heap's diary. From batches with a date that were not made up by weight, from states as measured, from
 * tests between pours, and from washed sievings of used sand. Methods are never mixed: moisture by oven is one series,
 * moisture by a method that is not said another. A value that stands twice for one day counts once. A batch that the log
 * leaves out has its values beside the others, in no mean and no limit; a test that only such batches have stands apart.
 * @example diaryOf(log).series.map(({ property }) => property)
 */
export function diaryOf(log: Log): Diary {
  const { figures, issues } = batchFigures(log);
  const madeUp = figures.filter(({ batch }) => batch.recipe);
  const own = figures.filter(({ batch }) => !batch.recipe);
  const dated = own.filter(({ batch }) => batch.date !== undefined);
  const main = mainKinds(log.batches.filter(({ usable, keptOut }) => usable && !keptOut));
  const states: readonly (HeapState & { readonly date: string })[] = [
    ...log.measured,
    ...log.events.flatMap((event) => (event.kind === "tested" ? [{ ...event.state, date: event.date }] : [])),
  ];
  const all = [
    ...dated.flatMap((row, i) => ofBatch(row, i, main)),
    ...states.flatMap((state) => ofState(state, main)),
    ...sievedValues(log.sands).map((one) => ({ ...one, property: "fineness" as const, unit: "", order: 0 })),
  ];
  const days = [
    ...log.batches.flatMap(({ date }) => date ?? []),
    ...states.map(({ date }) => date),
    ...log.events.map(({ date }) => date),
    ...(log.remarks ?? []).map(({ date }) => date),
    ...log.sands.flatMap(({ sievings }) => sievings.flatMap(({ date }) => date ?? [])),
  ];
  const lastDate = days.toSorted().at(-1);
  const series = seriesOf(all);
  return {
    series: series.filter(({ values }) => values.length > 0),
    onlyKeptOut: series.filter(({ values }) => values.length === 0),
    undated: own.filter((row) => !row.batch.date && hasTests(row)).map(({ batch }) => batch.name),
    madeUp: madeUp.filter(hasTests).map(({ batch }) => batch.name),
    ...(lastDate === undefined ? {} : { lastDate }),
    batches: dated,
    issues,
  };
}

const hasTests = ({ tests }: BatchFigures): boolean => benchTests.some((test) => tests[test]);

function seriesOf(all: readonly Found[]): DiarySeries[] {
  const groups = new Map<string, Found[]>();
  for (const one of all) {
    const key = [one.property, one.unit, one.method ?? ""].join(" / ");
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  const place = ({ property }: DiarySeries) => diaryProperties.indexOf(property);
  return [...groups.values()]
    .map(([...found]): DiarySeries => {
      const { property, method, unit } = found[0]!;
      const test = benchTests.find((one) => one === property);
      const inOrder = found.toSorted((a, b) => a.day - b.day || a.order - b.order);
      const values = inOrder.filter(({ keptOut }) => keptOut === undefined);
      return {
        property,
        unit,
        ...(method === undefined ? {} : { method }),
        ...(test ? { test } : {}),
        values: values
          .filter((one, i) => !values.slice(0, i).some((before) => isTwice(one, before)))
          .map(plain),
        keptOut: inOrder.filter(({ keptOut }) => keptOut !== undefined).map(plain),
      };
    })
    .sort((a, b) => place(a) - place(b) || b.values.length - a.values.length);
}

/** One number written down in two sections. */
const isTwice = (a: Found, b: Found): boolean =>
  a.day === b.day && a.value === b.value && (a.name === asMeasured) !== (b.name === asMeasured);

const plain = ({ property: _, method: __, unit: ___, order: ____, ...value }: Found): DiaryValue => value;

const asMeasured = "as measured";

function ofBatch(
  { batch, tests, apart }: BatchFigures,
  at: number,
  main: ReturnType<typeof mainKinds>,
): Found[] {
  const date = batch.date;
  invariant(date, "a batch of the diary has a date");
  const found = (one: BatchFigure, method: string | undefined): Found => ({
    property: one.test as DiaryProperty,
    method,
    unit: one.unit,
    order: batch.order ?? at,
    date,
    day: dayOf(date),
    name: batch.name,
    value: one.value,
    spread: one.spread,
    missing: one.missing,
    ...(one.rig === undefined ? {} : { rig: one.rig }),
    ...(batch.keptOut ? { keptOut: batch.keptOut.why } : {}),
  });
  const followed = ({ test }: BatchFigure): boolean => benchTests.includes(test);
  return [
    ...Object.values(tests)
      .filter(followed)
      .map((one) => found(one, main.get(one.test))),
    ...apart.filter(followed).map((one) => found(one, kindOf(one.test, one.method))),
  ];
}

function ofState(state: HeapState & { readonly date: string }, main: ReturnType<typeof mainKinds>): Found[] {
  const { date } = state;
  const found = (
    property: DiaryProperty,
    measured: Measured | undefined,
    unit: string,
    method?: string,
  ): Found[] => {
    if (!measured) return [];
    const { value, plusMinus } = measured;
    const spread = spreadOfQuantity(
      { value, ...(plusMinus ? { plusMinus } : {}) },
      {
        source: `${property} as measured on ${date}, ${measured.text}`,
        says: `${property} as it was written down`,
      },
    );
    const missing = plusMinus ? [] : ["reading"];
    const day = dayOf(date);
    return [{ property, method, unit, order: 0, date, day, name: asMeasured, value, spread, missing }];
  };
  const ofTest = (test: TestName, measured: Measured | undefined) =>
    found(test as DiaryProperty, measured, workedUnits[test].unit, kindOf(test, undefined) ?? main.get(test));
  const share: BasedShare | undefined = state.liveClay;
  return [
    ...ofTest("moisture", state.moisturePercent),
    ...ofTest("compactability", state.compactabilityPercent),
    ...ofTest("green compression", state.greenCompressionKPa),
    ...found("live clay", share, `% of ${share?.of ?? "dry mix"}`),
    ...found("fineness", state.gfn, "", "as written down"),
    ...found("fines", state.finesPercent, "% of the washed and dried sand"),
  ];
}
