// Control chart of single values and their moving range, and the signals on it.

import { invariant } from "../issue.ts";
import { mean } from "./summary.ts";

/**
 * Mean range of two values of a normal scatter over its standard deviation, 2/√π = 1.12838 to the four figures of the
 * tables; 3/d2 is the 2.66 of the trade's cards.
 * Source: ASTM Manual on Presentation of Data and Control Chart Analysis, table of factors, n = 2 (from memory);
 * the exact value by hand in tests/reference/control.test.ts.
 */
export const d2OfTwo = 1.128;
/** Upper limit of the range of two values over its mean, 1 + 3·d3/d2 with d3 = 0.853. Source: as d2OfTwo. */
export const d4OfTwo = 3.267;

/**
 * So many in a row on one side of the mean are a signal: the rule of eight of the Western Electric Company, Statistical
 * Quality Control Handbook (1956). Values that only scatter give it once in 2⁸ − 1 = 255 on average (by hand).
 */
export const runLength = 8;
/**
 * So many in a row that each rise, or each fall, are a signal: the rule of six of L. S. Nelson, Journal of Quality
 * Technology 16 (1984) 237–239. Values that only scatter give it once in about 420 (tests/reference/control.test.ts).
 */
export const trendLength = 6;

/** Places count from 0; both are within the signal. */
export interface ControlSignal {
  /**
   * outside: a value beyond a limit. range: a step from one value to the next above its limit. run: runLength or more in
   * a row on one side of the mean. trend: trendLength or more in a row that each rise or each fall.
   */
  readonly rule: "outside" | "range" | "run" | "trend";
  readonly from: number;
  readonly to: number;
  /** Of the mean; of a range or a trend: whether it rose. */
  readonly side: "above" | "below";
}

export interface IndividualsChart {
  readonly mean: number;
  readonly upper: number;
  readonly lower: number;
  readonly meanMovingRange: number;
  readonly rangeUpper: number;
  /** By the place of their ends, of one place in the order outside, range, run, trend. */
  readonly signals: readonly ControlSignal[];
}

/**
 * Control chart of single values: limits x̄ ± 3·MR̄/d2 with MR̄ the mean of |xᵢ − xᵢ₋₁| and d2 = 1.128 (so 2.66·MR̄),
 * and 3.267·MR̄ for the moving range, whose lower limit is 0.
 * values: in the order in which they were taken, any unit, finite; else it throws. Fewer than two: limits are NaN, no signals.
 * baseline: limits are from the first so many values and the others are judged by them; 2 to all of them, all by default.
 * The limits are in the unit of the values and may pass what the quantity can be: a mass below 0 is for the caller to cut.
 * False alarms of values that only scatter, normally, by known limits: outside once in 370; limits from few values give
 * more. Values that go together with their neighbours (lagOneAutocorrelation) make the limits too narrow.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2 (its example in tests/reference/control.test.ts).
 * @example individualsChart([49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]).upper // 55.804...
 */
export function individualsChart(
  values: readonly number[],
  { baseline = values.length }: { readonly baseline?: number } = {},
): IndividualsChart {
  invariant(values.every(Number.isFinite), "every value of a control chart is a finite number");
  invariant(
    Number.isInteger(baseline) && baseline <= values.length && (baseline >= 2 || baseline === values.length),
    `a baseline holds 2 to ${values.length} of the values, not ${baseline}`,
  );
  const base = values.slice(0, baseline);
  const middle = mean(base);
  const meanMovingRange = mean(movingRanges(base));
  const reach = (3 * meanMovingRange) / d2OfTwo;
  const limits = {
    mean: middle,
    upper: middle + reach,
    lower: middle - reach,
    meanMovingRange,
    rangeUpper: d4OfTwo * meanMovingRange,
  };
  return { ...limits, signals: values.length < 2 ? [] : signalsOf(values, limits) };
}

/** |xᵢ − xᵢ₋₁|, one fewer than there are values. */
function movingRanges(values: readonly number[]): number[] {
  return values.slice(1).map((value, i) => Math.abs(value - values[i]!));
}

const order = ["outside", "range", "run", "trend"] as const;

function signalsOf(
  values: readonly number[],
  { mean: middle, upper, lower, rangeUpper }: Omit<IndividualsChart, "signals">,
): ControlSignal[] {
  // What differs by rounding alone is alike.
  const alike = 1e-12 * Math.max(...values.map(Math.abs));
  const sideOf = (from: number, to: number): -1 | 0 | 1 =>
    Math.abs(to - from) <= alike ? 0 : to > from ? 1 : -1;
  const single = (rule: "outside" | "range", at: number, back: number, up: boolean): ControlSignal => ({
    rule,
    from: at - back,
    to: at,
    side: up ? "above" : "below",
  });
  const outside = values.flatMap((value, i) =>
    value > upper + alike || value < lower - alike ? [single("outside", i, 0, value > middle)] : [],
  );
  const range = movingRanges(values).flatMap((step, i) =>
    step > rangeUpper + alike ? [single("range", i + 1, 1, values[i + 1]! > values[i]!)] : [],
  );
  const run = stretches(
    "run",
    values.map((value) => sideOf(middle, value)),
    runLength,
    0,
  );
  const steps = values.slice(1).map((value, i) => sideOf(values[i]!, value));
  // Six values that rise are five steps.
  const trend = stretches("trend", steps, trendLength - 1, 1);
  return [...outside, ...range, ...run, ...trend].sort(
    (a, b) => a.to - b.to || order.indexOf(a.rule) - order.indexOf(b.rule),
  );
}

/** Stretches of one sign, each reported once and as long as it is. more: values that a stretch of signs has over its signs. */
function stretches(
  rule: "run" | "trend",
  signs: readonly (-1 | 0 | 1)[],
  least: number,
  more: number,
): ControlSignal[] {
  const found: ControlSignal[] = [];
  let start = 0;
  for (let i = 1; i <= signs.length; i++) {
    if (i < signs.length && signs[i] === signs[start]) continue;
    const sign = signs[start];
    if (sign !== 0 && i - start >= least)
      found.push({ rule, from: start, to: i - 1 + more, side: sign === 1 ? "above" : "below" });
    start = i;
  }
  return found;
}
