// The founder's own burn-out: a wide range, narrowed by what the record of the heap says.

import { invariant } from "../issue.ts";
import { contentOf } from "../quantity/content.ts";
import { kept } from "../quantity/kept.ts";
import { keptFirstDraws } from "../quantity/kept-draws.ts";
import { dryHeapKg } from "../sand/heap-balance.ts";
import { dryKgAt, type HeapColumns, heapAt } from "../sand/heap-columns.ts";
import type { PourScores, SeasonDraw } from "../sand/season.ts";
import { type Band, bandOf, heapBands } from "../sand/season-bands.ts";
import type { HeapHistory, HistoryEvent } from "./heap-history.ts";
import { type BurntDraws, type HistoryDraws, historyDraws, pourScatter, rangeOf } from "./history-draws.ts";

/** After a pour of the record, as its figures and tests leave it. */
export interface RecordPoint {
  readonly date: string;
  readonly liveClayOfDryMixPercent: Band;
  readonly deadClayOfDryMixPercent: Band;
  readonly finesOfGrainPercent: Band;
  readonly dryKg: Band;
}

export interface OwnBurnOut {
  /** Burnt sand for each kg of metal before and after the record, kg/kg: medians and 95 % intervals. */
  readonly prior: Band;
  readonly own: Band;
  /** Width of the interval after, as a share of that before. */
  readonly widthShare: number;
  /** False while the record has not narrowed the figure by a fifth. */
  readonly moved: boolean;
  /** Tests that it rests on: strength at a compactability, live clay, the heap weighed. */
  readonly tests: { readonly strength: number; readonly liveClay: number; readonly weighed: number };
  readonly pours: number;
  readonly metalKg: number;
  /** As many equal draws of the heap of today, for a forecast. */
  readonly now: readonly SeasonDraw[];
  /** The heap at each pour of the record and today; worked out when asked for. */
  course(): readonly RecordPoint[];
  /** How many independent draws stand behind the figures; below some 100 they are rough. */
  readonly effectiveDraws: number;
  /** True where the water that dries from pour to pour follows from the record. */
  readonly dryingKnown: boolean;
  /** Scores of pours to come, for forecastSeason. */
  readonly scores: PourScores;
}

/** Above this the record has not moved the figure. */
const notMoved = 0.8;
/** Scatter of ln(working bond ÷ live clay) from test to test, as if so many degrees of freedom had found it. Our own. */
const bondScatter = Object.freeze({ sd: 0.08, df: 6 });
const usualDraws = 4096;
/** Equal draws of today's heap: about as many as count. */
const mostKept = 1024;

/**
 * Burnt sand per kg of metal from the founder's record, kg/kg. Every draw of what is not known (the range before, the
 * heap at the start, losses nobody wrote down, how pours differ) is worked through the record and weighed by how well
 * it agrees with the tests: live clay and dry mass as normal about what was measured; strength s at a compactability c
 * through the working bond s/(132.1 − c), taken as proportional to live clay by a factor of the founder's own that is
 * wholly unknown (how well it is mulled, the rig), so that only its course counts, with a scatter σ that is known only
 * as if bondScatter.df degrees of freedom had found it: weight (ν s² + RSS)^(−(ν + n − 1)/2).
 *
 * history: at least one pour, else throws Misuse. A single strength test says nothing and is left out.
 * moved: the 95 % interval is at most 0.8 of the width before.
 * Method: Bayes by weighted draws (importance sampling; Gelman et al., Bayesian Data Analysis, from memory). Working bond: ICRI Report 610 (2003). Coverage: tests/trial/own-burn-out.
 * Example: strength that falls from 70 to 60 kPa at 45 % over ten pours of 2.5 kg from 100 kg, nothing put in: about
 * 0.5 kg/kg of burnt sand.
 */
export function ownBurnOut(history: HeapHistory, options: { readonly draws?: number } = {}): OwnBurnOut {
  const pours = history.events.filter((event) => event.kind === "pour");
  invariant(pours.length > 0, "a record without a pour says nothing of burn-out");
  const count = options.draws ?? usualDraws;
  const content = contentOf(history);
  const key = content === undefined ? undefined : `${count} ${content}`;
  const before = key === undefined ? undefined : found.get(key);
  if (before) return before;
  const made = workedOut(history, pours, count);
  if (key !== undefined) found.set(key, made);
  return made;
}

/** By the record, since an edit elsewhere in a log leaves it as it was. Some 200 bytes for each draw of the heap now. */
const found = kept<OwnBurnOut>(2_000_000, ({ now }) => 100 * now.length);

function workedOut(
  history: HeapHistory,
  pours: readonly Extract<HistoryEvent, { kind: "pour" }>[],
  count: number,
): OwnBurnOut {
  const { draws: known, burnt, weights, effectiveDraws } = enoughDraws(history, count);
  const chosen = resampled(weights, Math.min(mostKept, weights.length));
  const { low, high } = history.burntKgPerKg;
  const prior = { low, value: Math.sqrt(low * high), high };
  const own = bandOf(Float64Array.from(resampled(weights, weights.length), (i) => burnt.kgPerKg[i]!));
  const widthShare = (own.high - own.low) / (prior.high - prior.low);
  const strength = strengthTests(history.events).length;
  const { course, now } = recordAgain(history, known, burnt, chosen);
  return {
    prior,
    own,
    widthShare,
    moved: widthShare <= notMoved,
    tests: {
      strength: strength > 1 ? strength : 0,
      liveClay: history.events.filter(({ kind }) => kind === "live clay").length,
      weighed: history.events.filter(({ kind }) => kind === "weighed").length,
    },
    pours: pours.length,
    metalKg: pours.reduce((all, { metalKg }) => all + metalKg.value, 0),
    now,
    course: () => course,
    effectiveDraws,
    dryingKnown: known.moistureNow !== undefined && history.events.some(({ kind }) => kind === "water"),
    scores: (pour) => keptFirstDraws(pourScatter(`planned ${pour}`), chosen.length, count),
  };
}

/**
 * Draws and their weights: first over the whole range, then once more where the record has shown it to be, one and a
 * half times as wide, so that enough of them count.
 */
function enoughDraws(history: HeapHistory, count: number) {
  const draws = historyDraws(history, count);
  const first = draws.burntFrom();
  const weights = weighed(history, draws, first);
  const mean = logMean(first, weights, 0, 1);
  const sd = Math.sqrt(logMean(first, weights, mean, 2));
  const range = rangeOf(history.burntKgPerKg);
  if (sd > 0.7 * range.sd) return { draws, burnt: first, weights, effectiveDraws: effective(weights) };
  // Where very few draws count the first look says little of the width.
  const wide = Math.min(range.sd, Math.max(1.5 * sd, (2 * range.sd) / effective(weights)));
  const burnt = draws.burntFrom({ mean, sd: wide });
  const second = weighed(history, draws, burnt);
  return { draws, burnt, weights: second, effectiveDraws: effective(second) };
}

const effective = (weights: Float64Array): number =>
  1 / weights.reduce((all, weight) => all + weight * weight, 0);

const logMean = (burnt: BurntDraws, weights: Float64Array, about: number, power: number): number =>
  weights.reduce((all, weight, i) => all + weight * (Math.log(burnt.kgPerKg[i]!) - about) ** power, 0);

const strengthTests = (events: readonly HistoryEvent[]) => events.filter((event) => event.kind === "tested");

/** The weight of each draw; they add to 1. */
function weighed(history: HeapHistory, draws: HistoryDraws, burnt: BurntDraws): Float64Array {
  const every = Int32Array.from({ length: draws.count }, (_, i) => i);
  const heaps = draws.startOf(every);
  const logs = burnt.logRatio.slice();
  const bonds: Float64Array[] = [];
  for (const [k, event] of history.events.entries()) {
    if (event.kind === "tested") {
      const working = event.strengthKPa / (132.1 - event.compactabilityPercent);
      bonds.push(logs.map((_, i) => Math.log(working / liveAt(heaps, i))));
    } else if (event.kind === "live clay") {
      for (let i = 0; i < logs.length; i++)
        logs[i]! -= ((liveAt(heaps, i) - event.percent) / event.sd) ** 2 / 2;
    } else if (event.kind === "weighed") {
      for (let i = 0; i < logs.length; i++)
        logs[i]! -= ((dryKgAt(heaps, i) - event.dryKg) / event.sd) ** 2 / 2;
    } else draws.work(heaps, k, every, burnt);
  }
  addBondLogs(logs, bonds);
  const largest = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const weights = logs.map((log) => (Number.isFinite(log) ? Math.exp(log - largest) : 0));
  const total = weights.reduce((all, weight) => all + weight, 0);
  return weights.map((weight) => weight / total);
}

/** Live clay of heap i, % of the dry mix. */
const liveAt = (heaps: HeapColumns, i: number): number => (100 * heaps.liveClayKg[i]!) / dryKgAt(heaps, i);

/** bonds: ln of the working bond over live clay, a column for each test. */
function addBondLogs(logs: Float64Array, bonds: readonly Float64Array[]): void {
  const n = bonds.length;
  if (n < 2) return;
  const { sd, df } = bondScatter;
  for (let i = 0; i < logs.length; i++) {
    let total = 0;
    for (const bond of bonds) total += bond[i]!;
    const mean = total / n;
    let squares = 0;
    for (const bond of bonds) squares += (bond[i]! - mean) ** 2;
    logs[i]! += (-(df + n - 1) / 2) * Math.log(df * sd * sd + squares);
  }
}

/** Systematic resampling: draws in their order, each as often as its weight asks. */
function resampled(weights: Float64Array, count: number): Int32Array {
  const chosen = new Int32Array(count);
  let [at, sum] = [0, weights[0]!];
  for (let k = 0; k < count; k++) {
    const place = (k + 0.5) / count;
    while (sum < place && at < weights.length - 1) sum += weights[++at]!;
    chosen[k] = at;
  }
  return chosen;
}

/** The record once more, for the draws that are left: the heap at every pour, and today with what was lost and dried. */
function recordAgain(
  history: HeapHistory,
  draws: HistoryDraws,
  burnt: BurntDraws,
  chosen: Int32Array,
): { readonly course: readonly RecordPoint[]; readonly now: readonly SeasonDraw[] } {
  const { events } = history;
  const heaps = draws.startOf(chosen);
  const course: RecordPoint[] = [];
  const lostKg = new Float64Array(chosen.length);
  for (const [k, event] of events.entries()) {
    // A pour's point is what the heap was when it was poured on.
    if (event.kind === "pour") course.push(pointOf(event.date, heaps));
    const before = lostKg.map((_, j) => dryKgAt(heaps, j));
    draws.work(heaps, k, chosen, burnt);
    if (event.kind !== "pour" && event.kind !== "lost") continue;
    for (let j = 0; j < chosen.length; j++) lostKg[j]! += before[j]! - dryKgAt(heaps, j);
  }
  course.push(pointOf(events.at(-1)!.date, heaps));
  const pours = events.filter(({ kind }) => kind === "pour").length;
  const now = Array.from(chosen, (i, j): SeasonDraw => {
    const heap = heapAt(heaps, j);
    const moisture = draws.moistureNow?.[i];
    const waterKg = moisture === undefined ? heap.waterKg : (dryHeapKg(heap) * moisture) / (100 - moisture);
    return {
      heap: { ...heap, waterKg },
      burntKgPerKg: burnt.kgPerKg[i]!,
      lostKg: lostKg[j]! / pours,
      driedKg: Math.max(0, heap.waterKg - waterKg) / pours,
      newSandFinesPercent: Math.max(0, draws.newSandFinesPercent[i]!),
    };
  });
  return { course, now };
}

function pointOf(date: string, heaps: HeapColumns): RecordPoint {
  return { date, ...heapBands(heaps) };
}
