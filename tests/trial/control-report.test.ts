// The diary of a heap: which values belong together, from what the limits are, what has moved, what is due.

import { expect, test } from "vitest";
import { diaryFindings } from "../../lib/finding/diary-findings.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { lagOneAutocorrelation } from "../../lib/numbers/autocorrelation.ts";
import { dateOfDay, dayOf } from "../../lib/numbers/days.ts";
import { ewma } from "../../lib/numbers/ewma.ts";
import { d2OfTwo, individualsChart } from "../../lib/numbers/individuals-chart.ts";
import { spread } from "../../lib/quantity/spread-of.ts";
import { falseAlarmsIn100, measuringShare } from "../../lib/trial/control-doubt.ts";
import { controlReport } from "../../lib/trial/control-report.ts";
import type { DiaryValue } from "../../lib/trial/control-series.ts";
import { seeded } from "../seeded.ts";

const start = dayOf("2026-01-03");
/** States of a heap, one a week. */
const states = (values: readonly number[], what = "moisture", unit = "%", first = 0) =>
  values.map((value, i) => `  - { date: ${dateOfDay(start + 7 * (first + i))}, ${what}: ${value} ${unit} }`);

function report(measured: readonly string[], more = "", options: Parameters<typeof controlReport>[1] = {}) {
  const text = `format: 1\nmetal: bronze\nbond: bentonite\n${more}\nmeasured:\n${measured.join("\n")}\n`;
  const { value, issues } = readLog(text, { name: "heap.yaml" });
  expect(issues.filter(({ severity }) => severity === "error")).toEqual([]);
  return controlReport(value!, options);
}

const wobble = [3.3, 3.5, 3.2, 3.4, 3.3, 3.5, 3.2, 3.4];
const twenty = [...wobble, ...wobble, ...wobble.slice(0, 4)];

test("eight values have limits, seven stand alone", () => {
  expect(report(states(wobble)).controlled[0]).toMatchObject({ baseline: 8, verdict: "baseline only" });
  const few = report(states(wobble.slice(1)));
  expect(few.controlled).toEqual([]);
  expect(few.few.map(({ values }) => values.length)).toEqual([7]);
});

test("limits are from the first twenty: later values move nothing of them", () => {
  const [alone] = report(states(twenty)).controlled;
  const [moved] = report(states([...twenty, 4.4, 4.5, 4.6])).controlled;
  expect(moved!.chart.upper).toBe(alone!.chart.upper);
  expect(moved!.baseline).toBe(20);
  expect(moved!.verdict).toBe("moved");
  expect(report(states([...twenty, 4.4, 4.5, 4.6]), "", { baselineValues: 8 }).controlled[0]!.baseline).toBe(
    8,
  );
});

test("steady, moved, back again, unsteady in its own baseline", () => {
  const verdict = (later: readonly number[]) => report(states([...twenty, ...later])).controlled[0]!.verdict;
  expect(verdict(wobble)).toBe("steady");
  expect(verdict([3.35, 4.4])).toBe("moved");
  expect(verdict([4.4, ...wobble, ...wobble])).toBe("signal passed");
  expect(report(states([...wobble, 6, ...wobble])).controlled[0]!.verdict).toBe("unsteady");
});

test("a slow drift within the limits is seen by the weighted mean, and dated by the sum of departures", () => {
  const [one] = report(states([...twenty, ...twenty.map((value) => value + 0.3)])).controlled;
  expect(one!.after.filter(({ rule }) => rule === "outside")).toEqual([]);
  expect(one!.drift).toMatchObject({ side: "above", still: true });
  expect(one!.verdict).toBe("moved");
});

test("methods are never mixed, and a number that stands in two sections counts once", () => {
  const batches = wobble.map(
    (value, i) =>
      `  B${i}: { date: ${dateOfDay(start + 7 * i)}, moisture: { method: oven, damp: 100 g, dry: ${(100 - value).toFixed(1)} g }, compactability: ${40 + i} % }`,
  );
  const more = `batches:\n${batches.join("\n")}`;
  const compactability = wobble.map(
    (_, i) => `  - { date: ${dateOfDay(start + 7 * i)}, compactability: ${40 + i} %, moisture: 3 % }`,
  );
  const { diary } = report(compactability, more);
  expect(diary.series.map(({ property, method, values }) => [property, method, values.length])).toEqual([
    ["moisture", "oven", 8],
    ["moisture", "a method that is not said", 8],
    ["compactability", "rammed", 8],
  ]);
});

test("batches made up by weight, and batches without a date, are named and left out", () => {
  const more = `batches:
  Mix: { date: 2026-01-04, made of: { sand: 5 kg, bentonite: 0.4 kg, water: 0.1 kg }, compactability: 44 % }
  Undated: { compactability: 45 % }
  Heap: { date: 2026-01-05, compactability: 46 % }`;
  const { diary } = report(states([3.3]), more);
  expect([diary.madeUp, diary.undated]).toEqual([["Mix"], ["Undated"]]);
  expect(
    diary.series.find(({ property }) => property === "compactability")!.values.map(({ name }) => name),
  ).toEqual(["Heap"]);
});

test("a test that only left-out batches have is no series, and is told with its values and reasons", () => {
  const more = `batches:
  H1: { date: 2026-01-05, compactability: 46 % }
  H2: { date: 2026-01-06, permeability: 72, left out: the tube leaked }`;
  const told = report(states([3.3]), more);
  expect(told.diary.series.map(({ property }) => property)).not.toContain("permeability");
  expect(told.diary.onlyKeptOut.map(({ property }) => property)).toEqual(["permeability"]);
  const found = diaryFindings(told).find(({ code }) => code === "diary/only-left-out");
  expect(found?.text).toMatch(/^Permeability.*: 1 value, of batches that the log leaves out/);
  expect(found?.because).toEqual(["H2, 2026-01-06: 72.0, left out (the tube leaked)."]);
});

test("live clay of the dry mix and of the sand are two series", () => {
  const clay = ["dry mix", "sand"].map((of, i) => `  - { date: 2026-01-0${i + 3}, live clay: 8 % of ${of} }`);
  expect(report(clay).diary.series.map(({ unit }) => unit)).toEqual(["% of dry mix", "% of sand"]);
});

test("limits begin after the last change that eight values follow; one of the heap's hundredths is none", () => {
  const day = (week: number) => dateOfDay(start + 7 * week + 1);
  const heap = (events: string) => `heap: { mass: 100 kg ± 3 kg }\nevents: [ ${events} ]`;
  const values = states([...twenty, ...twenty.map((value) => value + 1)]);
  const big = report(values, heap(`{ date: ${day(19)}, new sand: 12 kg }`));
  expect(big.controlled[0]!.since).toMatchObject({ kind: "new sand", sharePercent: { value: 12 } });
  expect(big.controlled[0]!.values).toHaveLength(20);
  expect(big.controlled[0]!.verdict).toBe("baseline only");
  const small = report(
    values,
    heap(`{ date: ${day(19)}, new sand: 2 kg }, { date: ${day(19)}, rebond: { clay: 0.9 kg } }`),
  );
  expect(small.controlled[0]!.since).toBeUndefined();
  expect(small.controlled[0]!.verdict).toBe("moved");
  expect(small.events.map(({ kind }) => kind)).toEqual(["new sand", "rebond"]);
  const late = report(values, heap(`{ date: ${day(36)}, rebond: { clay: 1.5 kg } }`));
  expect(late.controlled[0]!.changedSince).toMatchObject({ values: 3 });
  expect(late.controlled[0]!.since).toBeUndefined();
  const first = report(values, heap(`{ date: ${day(19)}, new sand: 12 kg }`), { baseline: "first" });
  expect(first.controlled[0]!.verdict).toBe("moved");
  // The test of the event's own day counts as before it.
  const same = report(values, heap(`{ date: ${dateOfDay(start + 7 * 20)}, new sand: 12 kg }`));
  expect(same.controlled[0]!.values).toHaveLength(19);
});

test("without the heap's mass every addition counts as a change", () => {
  const more = `events: [ { date: ${dateOfDay(start + 7 * 19 + 1)}, rebond: { clay: 0.1 kg } } ]`;
  const found = report(states([...twenty, ...wobble]), more);
  expect(found.heapKnown).toBe(false);
  expect(found.controlled[0]!.since?.kind).toBe("rebond");
});

test("a step is suggested once, with its days; p is counted over all charts", () => {
  const { controlled } = report(states([...twenty, ...twenty.map((value) => value + 0.5)]));
  const { change } = controlled[0]!;
  expect(change).toMatchObject({ at: 20, suggested: true });
  expect(change!.shift.value).toBeCloseTo(0.5, 10);
  expect(change!.pOverAll).toBeCloseTo(change!.p * controlled.length, 12);
  expect(report(states([...twenty, ...twenty])).controlled[0]!.change!.suggested).toBe(false);
});

test("what is due is counted to the last day of the log", () => {
  const more = "remind: { moisture: 7 days, permeability: monthly, compactability: 400 days }";
  const habit = [
    ...states([44, 45, 44, 46, 45, 44, 45, 44], "compactability"),
    ...states([58, 59, 58, 59, 58], "gfn", ""),
  ];
  const { due, inTime } = report([...habit, ...states([3.3], "moisture", "%", 20)], more);
  expect(due.map(({ property, days, by }) => [property, days, by])).toEqual([
    ["permeability", undefined, "asked"],
    ["fineness", 112, "habit"],
  ]);
  expect(inTime).toEqual(["moisture", "compactability"]);
});

const valuesOf = (numbers: readonly number[], sd: number, source?: string): DiaryValue[] =>
  numbers.map((value, i) => ({
    date: dateOfDay(start + i),
    day: start + i,
    name: "as measured",
    value,
    spread: spread({ mean: value, sd, source: source ?? `reading ${i}` }),
    missing: [],
  }));

test("measuring's share: 1/(2/1.128)² where steps are 2 and readings have an sd of 1 (by hand); a shared bias has none", () => {
  const numbers = [10, 12, 10, 12, 10, 12];
  expect(measuringShare(valuesOf(numbers, 1), 2)!.percent).toBeCloseTo((100 * d2OfTwo ** 2) / 4, 8);
  expect(measuringShare(valuesOf(numbers, 1, "bias of the scale"), 2)).toBeUndefined();
  expect(measuringShare(valuesOf(numbers, 1), 0)).toBeUndefined();
});

test("the rate of false alarms is that of fresh rows", () => {
  const random = seeded(99);
  const rows = 1500;
  let [alarms, last] = [0, 0];
  for (let i = 0; i < rows; i++) {
    const values = Array.from({ length: 30 }, random.normal);
    const { mean, meanMovingRange, signals } = individualsChart(values, { baseline: 20 });
    const drift = ewma(values.slice(20), { target: mean, sd: meanMovingRange / 1.128 }).signals;
    const ends = [
      ...drift.map(({ at }) => at + 20),
      ...signals.flatMap(({ rule, to }) => (rule !== "range" && to >= 20 ? [to] : [])),
    ];
    if (ends.length > 0) alarms++;
    if (ends.includes(29)) last++;
  }
  // Two simulations: their standard errors are at most 2.2 and 1.3 in 100.
  const { any, standing } = falseAlarmsIn100(20, 10);
  expect(Math.abs(any - (100 * alarms) / rows)).toBeLessThan(3.5 * Math.hypot(2.2, 1.3));
  expect(Math.abs(standing - (100 * last) / rows)).toBeLessThan(3.5 * Math.hypot(1, 0.6));
  expect(falseAlarmsIn100(20, 40).any).toBeGreaterThan(any);
  expect(standing).toBeLessThan(any);
});

test("values that go together: limits are too narrow by √(1 − r), and it is said", () => {
  const random = seeded(3);
  const values: number[] = [];
  let last = 0;
  for (let i = 0; i < 20_000; i++) {
    last = 0.6 * last + 0.8 * random.normal();
    values.push(last);
  }
  // Scatter 1 by construction: 0.6² + 0.8² = 1.
  const { meanMovingRange } = individualsChart(values);
  const r = lagOneAutocorrelation([values]);
  expect(meanMovingRange / 1.1283792 / Math.sqrt(1 - r)).toBeCloseTo(1, 1);
  const slow = Array.from({ length: 20 }, (_, i) => Number((3.3 + 0.3 * Math.sin(i / 3)).toFixed(2)));
  expect(report(states(slow)).controlled[0]!.together!.widerBy).toBeGreaterThan(1.5);
  expect(report(states(twenty)).controlled[0]!.together).toBeUndefined();
});

test("the diary is pure: the same log gives the same report, and the log is left as it was", () => {
  const lines = states([...twenty, ...wobble]);
  expect(JSON.stringify(report(lines))).toBe(JSON.stringify(report(lines)));
});

test("moved needs more than a signal: a level that changed, or a value outside beyond the limit's own doubt", () => {
  const of = (values: readonly number[]) => report(states([...twenty, ...values])).controlled[0]!;
  const { upper } = of(wobble).chart;
  const just = Number((upper + 0.02).toFixed(2));
  expect(of([3.3, just]).doubt.limit).toBeGreaterThan(0.05);
  expect(of([3.3, just])).toMatchObject({ verdict: "perhaps moved", change: { suggested: false } });
  expect(of([3.3, just + 1]).verdict).toBe("moved");
  expect(of([just, 3.3]).verdict).toBe("signal passed");
});

test("a baseline with signals of its own is told, and one without is not", () => {
  const spoiled = [...twenty.slice(0, 9), 6, ...twenty.slice(10)];
  expect(report(states([...spoiled, ...wobble])).controlled[0]).toMatchObject({ restless: true });
  expect(report(states([...twenty, ...wobble])).controlled[0]).toMatchObject({ restless: false });
});

test("an unmoved heap is seldom called moved: with limits from 20 and 16 later values, at most 3 in 100", () => {
  const random = seeded(41);
  let [moved, standing] = [0, 0];
  const rows = 150;
  for (let i = 0; i < rows; i++) {
    const values = Array.from({ length: 36 }, () => Number((50 + 3 * random.normal()).toFixed(2)));
    const { verdict } = report(states(values, "gfn", "")).controlled[0]!;
    if (verdict === "moved") moved++;
    if (verdict === "moved" || verdict === "perhaps moved") standing++;
  }
  // Rates by 600 rows: 1 and 5 in 100; two standard errors above.
  expect(moved / rows).toBeLessThan(0.03);
  expect(standing / rows).toBeLessThan(0.09);
});
