// Strength against minutes of mulling: how long is enough, and how surely that is known from a few readings.

import { invariant } from "../issue.ts";
import { type CurveFit, fitCurve } from "../numbers/curve-fit.ts";
import { studentTQuantile } from "../numbers/student-t.ts";
import { mulledStrengthKPa, mullingMinutes } from "../sand/mulling-time.ts";
import { leastMulled, type MulledReadings, squaresForStrength, squaresForTime } from "./mulling-profile.ts";

/**
 * What one reading scatters by about its curve before any was made, as a share of the greatest strength, as if two degrees
 * of freedom had found it: our own. Four readings say next to nothing of it themselves.
 */
const homeScatter = 0.05;
const knownScatter = 2;
/** Times the usual variance, from which readings with three degrees of freedom or more are rough of their own: our own. */
const coarse = 1.5 ** 2;
/** Minutes are looked for up to so many times the longest mulling; beyond, the end of an interval is open. */
const farthest = 4;
const places = 72;

/** An end that is not finite is open: the readings do not close it. */
export interface MullingInterval {
  /** ∞ where the readings do not bend. */
  readonly value: number;
  /** Ends of the 95 % interval. */
  readonly low: number;
  readonly high: number;
}

export interface MullingTime extends MullingInterval {
  readonly sharePercent: number;
  /** Minutes below which the true time lies with a chance of p, 0 to 1; 0 and ∞ are open ends. */
  quantile(p: number): number;
}

export interface MullingCurve {
  readonly name: string;
  readonly readings: MulledReadings;
  readonly startKPa: number;
  /** ∞ where the readings do not bend. */
  readonly fullKPa: number;
  readonly tauMin: number;
  /** True where a straight line fits as well: strength was still rising as fast as ever. */
  readonly straight: boolean;
  /** The free fit with its standard errors; undefined where S0 stands at 0, the curve is straight, or no freedom is left. */
  readonly fit: CurveFit | undefined;
  /** Scatter of one reading, kPa, with what home readings scatter by weighed in, and the degrees of freedom of both. */
  readonly scatterKPa: number;
  readonly degreesOfFreedom: number;
  readonly longestMin: number;
  /** Strength of the curve after some minutes, kPa; ∞ gives the full bond. */
  strengthAt(minutes: number): MullingInterval;
  /** Minutes to a share of the full bond, above 0 and below 100 %. */
  timeTo(sharePercent: number): MullingTime;
}

/**
 * Least squares of S = S∞ − (S∞ − S0)·e^(−t/τ) with 0 ≤ S0 ≤ S∞, and intervals by profile: every value of a figure for which the curve
 * of least squares with that value held has Q(value) − Q ≤ t²·s², t Student's at 97.5 %, s² = (Q + ν₀s₀²)/(n − 3 + ν₀).
 * s₀: 5 % of the greatest strength with ν₀ = 2, our own.
 * readings: minutes 0 or more (after the last water), strengths above 0 in one unit, finite; three or more different minutes, else throws.
 * timeTo: a rig's bias in proportion to the strength cancels, since a share has none. Where the readings have not flattened, high is ∞, and value too where
 * they do not bend at all: no time is made up. A mix that is at the share from the start has low 0. Ends are looked for up to four times the
 * longest mulling. Full bond is that of this mix at this water; what happens when sand dries while it is mulled is not in the form.
 * Source: profile likelihood, D. M. Bates and D. G. Watts, Nonlinear Regression Analysis and Its Applications, chapter 6 (from memory).
 * Readings with three degrees of freedom or more whose own variance is above 1.5² s₀² are taken by themselves: s² = Q/(n − 3).
 * Coverage of the time to 95 % in simulation (250 to 1,000 founders a case, 4 to 8 readings): 100 % where one reading scatters by 2 %
 * of the full bond, 96 to 100 % at 5 %, 94 to 98 % at 10 % (tests/trial/mulling-curve.test.ts); at 2 % it is wider than it need be.
 * @example
 * mullingCurve("by hand", { minutes: [1, 2, 4, 8, 16], strengthKPa: [30, 48, 66, 76, 78] }).timeTo(95)
 * // { value: 6.39 }
 */
export function mullingCurve(name: string, readings: MulledReadings): MullingCurve {
  const { minutes, strengthKPa } = readings;
  invariant(minutes.length === strengthKPa.length, "a mulling curve needs a strength for each time");
  invariant(
    minutes.every((t) => t >= 0 && Number.isFinite(t)) &&
      strengthKPa.every((s) => s > 0 && Number.isFinite(s)),
    "minutes are 0 or more and strengths above 0",
  );
  invariant(new Set(minutes).size >= 3, "a mulling curve needs readings at three different times");
  const least = leastMulled(readings);
  const freedom = minutes.length - 3;
  const before = (homeScatter * Math.max(...strengthKPa)) ** 2;
  // Readings that plainly scatter more speak for themselves: with the usual scatter weighed in, intervals came out too narrow.
  const own = freedom >= 3 && least.squares / freedom > coarse * before;
  const df = own ? freedom : freedom + knownScatter;
  const variance = own ? least.squares / freedom : (least.squares + knownScatter * before) / df;
  const fit = freeFit(readings, least);
  const [startKPa, fullKPa, tauMin] = fit?.parameters ?? [least.startKPa, least.fullKPa, least.tauMin];
  const shape = { startKPa: startKPa!, fullKPa: fullKPa!, tauMin: tauMin! };
  const longestMin = Math.max(...minutes);
  const root = (squares: number): number => Math.sqrt(Math.max(0, squares - least.squares) / variance);
  const t = studentTQuantile(0.975, df);
  const { straight } = least;
  const times = new Map<number, MullingTime>();
  return {
    name,
    readings,
    startKPa: shape.startKPa,
    fullKPa: straight ? Number.POSITIVE_INFINITY : shape.fullKPa,
    tauMin: straight ? Number.POSITIVE_INFINITY : shape.tauMin,
    straight,
    fit,
    scatterKPa: Math.sqrt(variance),
    degreesOfFreedom: df,
    longestMin,
    strengthAt(at) {
      const middle = mulledStrengthKPa({ ...shape, minutes: at });
      const value = straight && at === Number.POSITIVE_INFINITY ? at : middle;
      const away = (strength: number): number => root(squaresForStrength(readings, at, strength));
      const largest = 12 * Math.max(...strengthKPa);
      const start = Math.min(middle, largest);
      return { value, low: crossing(away, t, start, 0), high: crossing(away, t, start, largest, true) };
    },
    timeTo(sharePercent) {
      const known = times.get(sharePercent);
      if (known) return known;
      const value = straight ? Number.POSITIVE_INFINITY : mullingMinutes({ sharePercent, ...shape });
      const table = timeTable(readings, sharePercent / 100, value, longestMin, root);
      const at = (p: number): number => minutesAt(table, studentTQuantile(p, df));
      const [low, high] = [Math.min(at(0.025), value), Math.max(at(0.975), value)];
      const time = { sharePercent, value, low, high, quantile: at };
      times.set(sharePercent, time);
      return time;
    },
  };
}

/** Chance, 0 to 1, that the share is reached within some minutes, by the same profile. */
export function chanceWithin(time: MullingTime, minutes: number): number {
  let [low, high] = [0, 1];
  for (let round = 0; round < 30; round++) {
    const middle = (low + high) / 2;
    if (time.quantile(middle) <= minutes) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** All three free; only where the best curve lies inside its limits, so that standard errors mean something. */
function freeFit(readings: MulledReadings, least: ReturnType<typeof leastMulled>): CurveFit | undefined {
  const { startKPa, fullKPa, tauMin, straight } = least;
  if (straight || !(startKPa > 0 && fullKPa > startKPa) || readings.minutes.length < 4) return undefined;
  const fit = fitCurve(
    (t: number, [start, full, tau]) => full! - (full! - start!) * Math.exp(-t / tau!),
    [startKPa, fullKPa, tauMin],
    readings.minutes,
    readings.strengthKPa,
  );
  const [start, full, tau] = fit.parameters;
  const inside = start! >= 0 && full! > start! && tau! > 0;
  return fit.converged && inside && fit.residualSumOfSquares <= least.squares * (1 + 1e-9) + 1e-12
    ? fit
    : undefined;
}

/** Where the distance from the best fit reaches t, between a value with none and an end; the end, or ∞ where open, if it never does. */
function crossing(
  away: (value: number) => number,
  t: number,
  from: number,
  to: number,
  open = false,
): number {
  if (away(to) <= t) return open ? Number.POSITIVE_INFINITY : to;
  let [inside, outside] = [from, to];
  for (let round = 0; round < 24; round++) {
    const middle = (inside + outside) / 2;
    if (away(middle) <= t) inside = middle;
    else outside = middle;
  }
  return (inside + outside) / 2;
}

interface TimeTable {
  readonly minutes: readonly number[];
  /** Signed distance from the best fit in standard deviations, rising. */
  readonly score: readonly number[];
}

function timeTable(
  readings: MulledReadings,
  q: number,
  best: number,
  longestMin: number,
  root: (squares: number) => number,
): TimeTable {
  const end = farthest * longestMin;
  const spaced = Array.from({ length: places + 1 }, (_, k) => end * (k / places) ** 2);
  const minutes = best > 0 && best < end ? [...spaced, best].sort((a, b) => a - b) : spaced;
  const raw = minutes.map((t) => {
    if (t === best) return 0;
    const away = root(squaresForTime(readings, q, t));
    return t < best ? -away : away;
  });
  // A profile with a second valley is held level there, so that each chance has one time.
  let highest = Number.NEGATIVE_INFINITY;
  const score = raw.map((value) => {
    highest = Math.max(highest, value);
    return highest;
  });
  return { minutes, score };
}

function minutesAt({ minutes, score }: TimeTable, wanted: number): number {
  if (wanted < score[0]!) return 0;
  const k = score.findIndex((value) => value > wanted);
  if (k < 0) return Number.POSITIVE_INFINITY;
  if (k === 0) return minutes[0]!;
  const share = (wanted - score[k - 1]!) / (score[k]! - score[k - 1]!);
  return minutes[k - 1]! + share * (minutes[k]! - minutes[k - 1]!);
}
