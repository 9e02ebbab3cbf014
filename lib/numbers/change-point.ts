// Where in a row of values the mean may have moved, once, and how sure that is.

import { invariant } from "../issue.ts";
import { mixedWords } from "./mixing.ts";
import { studentTQuantile } from "./student-t.ts";

export interface ChangePoint {
  /** Place, from 0, of the first value after the change. */
  readonly at: number;
  /** The change fell between the values of these places and the ones before them, with 95 % of the weight. */
  readonly earliest: number;
  readonly latest: number;
  readonly before: number;
  readonly after: number;
  /** After less before, with the ends of its 95 % interval if the change fell at this place. */
  readonly shift: { readonly value: number; readonly low: number; readonly high: number };
  /** Share of shuffled rows that split as clearly, at any place; never below 1/(shuffles + 1). */
  readonly p: number;
}

/** A part of fewer values is an outlier, not a level. */
const leastPart = 3;

/**
 * The one place at which two levels fit best: over all splits with three values or more in each part, the largest
 * Bₖ = n·(Σ₁ᵏxᵢ − k·x̄)²/(k(n − k)), which is the likelihood ratio for one change of the mean under normal scatter of
 * one size. p: share of the shuffled rows whose largest Bₖ is as large: exact where values only scatter, whatever their
 * distribution; too small where neighbours go together. earliest to latest: the span of the fewest splits that hold
 * 95 % of the weight RSSₖ^(−(n−2)/2)/√(k(n − k)), every split as likely before.
 * values: in order, finite, else it throws; fewer than 8, or all alike: undefined. shuffles: 1 and up, the same ones each time.
 * Source: D. V. Hinkley, Biometrika 57 (1970) 1–17 (likelihood); A. F. M. Smith, Biometrika 62 (1975) 407–416 (weights);
 * both from memory. Rate of false alarms and coverage by simulation, and the mean of the annual flow of the Nile, in
 * tests/reference/change-point.test.ts.
 * @example changePoint([1, 2, 1, 2, 1, 5, 6, 5, 6, 5])?.at // 5
 */
export function changePoint(
  values: readonly number[],
  { shuffles = 1999 }: { readonly shuffles?: number } = {},
): ChangePoint | undefined {
  invariant(values.every(Number.isFinite), "every value of a change point is a finite number");
  invariant(Number.isInteger(shuffles) && shuffles >= 1, "shuffles are a whole number from 1");
  const n = values.length;
  if (n < 8) return undefined;
  const middle = values.reduce((all, value) => all + value, 0) / n;
  const off = Float64Array.from(values, (value) => value - middle);
  const squares = off.reduce((all, each) => all + each * each, 0);
  if (!(squares > 1e-24 * n * middle * middle)) return undefined;
  const between = splits(off);
  let at = leastPart;
  for (let k = leastPart; k <= n - leastPart; k++) if (between[k]! > between[at]!) at = k;
  const [before, after] = [meanOf(values.slice(0, at)), meanOf(values.slice(at))];
  const scatter = Math.sqrt((Math.max(0, squares - between[at]!) / (n - 2)) * (1 / at + 1 / (n - at)));
  const half = studentTQuantile(0.975, n - 2) * scatter;
  const value = after - before;
  return {
    at,
    ...likelySpan(between, squares, n),
    before,
    after,
    shift: { value, low: value - half, high: value + half },
    p: shareOfShuffles(off, between[at]!, shuffles),
  };
}

/** Bₖ for each split k that is allowed; off: departures from the mean. */
function splits(off: Float64Array): Float64Array {
  const n = off.length;
  const between = new Float64Array(n);
  let sum = 0;
  for (let k = 1; k <= n - leastPart; k++) {
    sum += off[k - 1]!;
    if (k >= leastPart) between[k] = (n * sum * sum) / (k * (n - k));
  }
  return between;
}

function likelySpan(
  between: Float64Array,
  squares: number,
  n: number,
): { readonly earliest: number; readonly latest: number } {
  const places = Array.from({ length: n - 2 * leastPart + 1 }, (_, i) => i + leastPart);
  const logs = places.map((k) => {
    const rest = Math.max(squares - between[k]!, 1e-12 * squares);
    return -((n - 2) / 2) * Math.log(rest) - 0.5 * Math.log(k * (n - k));
  });
  const top = Math.max(...logs);
  const weights = places.map((k, i) => ({ k, weight: Math.exp(logs[i]! - top) }));
  const total = weights.reduce((all, { weight }) => all + weight, 0);
  let held = 0;
  const kept: number[] = [];
  for (const { k, weight } of weights.toSorted((a, b) => b.weight - a.weight)) {
    if (held >= 0.95 * total) break;
    held += weight;
    kept.push(k);
  }
  return { earliest: Math.min(...kept), latest: Math.max(...kept) };
}

function shareOfShuffles(off: Float64Array, found: number, shuffles: number): number {
  const row = Float64Array.from(off);
  const next = steadyRandom();
  let asClear = 1;
  for (let s = 0; s < shuffles; s++) {
    for (let i = row.length - 1; i > 0; i--) {
      const j = Math.floor(next() * (i + 1));
      [row[i], row[j]] = [row[j]!, row[i]!];
    }
    // A row that splits alike may differ in the last digit.
    if (largest(row) >= found * (1 - 1e-9)) asClear++;
  }
  return asClear / (shuffles + 1);
}

function largest(row: Float64Array): number {
  const n = row.length;
  let sum = 0;
  let most = 0;
  for (let k = 1; k <= n - leastPart; k++) {
    sum += row[k - 1]!;
    if (k < leastPart) continue;
    const each = (n * sum * sum) / (k * (n - k));
    if (each > most) most = each;
  }
  return most;
}

/** The same row of numbers from 0 to 1 each time: a Weyl sequence, mixed, in 32 bits. */
function steadyRandom(): () => number {
  const word = mixedWords(0x6d2b79f5);
  return () => word() / 2 ** 32;
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((all, value) => all + value, 0) / values.length;
