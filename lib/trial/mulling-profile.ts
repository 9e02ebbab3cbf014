// How badly a mulling curve fits when one thing about it is held: the ground of its intervals.

import { leastOnLine } from "../numbers/least-on-line.ts";

/** Minutes and strengths; one length, three readings or more at two minutes or more. */
export interface MulledReadings {
  readonly minutes: readonly number[];
  readonly strengthKPa: readonly number[];
}

export interface MulledShape {
  readonly startKPa: number;
  readonly fullKPa: number;
  readonly tauMin: number;
}

/** The longest τ looked at, in longest mullings: by then the curve is a straight line over the readings. */
const straightAt = 40;

const longest = ({ minutes }: MulledReadings): number => Math.max(...minutes);

function squares({ minutes, strengthKPa }: MulledReadings, model: (t: number) => number): number {
  let all = 0;
  for (let i = 0; i < minutes.length; i++) all += (strengthKPa[i]! - model(minutes[i]!)) ** 2;
  return all;
}

/** From a τ that is over before the first reading to one that is straight over all of them. */
function tauRange(readings: MulledReadings): readonly [number, number] {
  const first = Math.min(...readings.minutes.filter((t) => t > 0));
  return [first / 8, straightAt * longest(readings)];
}

/** For one τ: S0 ≥ 0 and S∞ ≥ S0 by least squares, S = S0 + A(1 − e^(−t/τ)). */
function forTau(readings: MulledReadings, tauMin: number): MulledShape & { readonly squares: number } {
  const { minutes, strengthKPa } = readings;
  const n = minutes.length;
  let [u, uu, uy, y] = [0, 0, 0, 0];
  for (let i = 0; i < n; i++) {
    const risen = -Math.expm1(-minutes[i]! / tauMin);
    u += risen;
    uu += risen * risen;
    uy += risen * strengthKPa[i]!;
    y += strengthKPa[i]!;
  }
  const spread = uu - (u * u) / n;
  let rise = spread > 1e-12 * uu ? (uy - (u * y) / n) / spread : 0;
  let start = (y - rise * u) / n;
  if (rise < 0) [rise, start] = [0, y / n];
  if (start < 0) [rise, start] = [Math.max(0, uy / uu), 0];
  const shape = { startKPa: start, fullKPa: start + rise, tauMin };
  return { ...shape, squares: squares(readings, (t) => start - rise * Math.expm1(-t / tauMin)) };
}

/** The curve of least squares with 0 ≤ S0 ≤ S∞. straight: a straight line does as well, so S∞ and τ have no end. */
export function leastMulled(
  readings: MulledReadings,
): MulledShape & { readonly squares: number; readonly straight: boolean } {
  const [low, high] = tauRange(readings);
  const { x } = leastOnLine((tau) => forTau(readings, tau).squares, low, high, 80);
  return { ...forTau(readings, x), straight: x > 0.9 * high };
}

/**
 * Least sum of squares with S(T) = q·S∞ held: S = C(1 − (1 − q)e^((T − t)/τ)), over C ≥ 0 and every τ that leaves
 * S0 ≥ 0, which is τ ≥ T/ln(1/(1 − q)). At T = 0: with S0 ≥ q·S∞, there already.
 */
export function squaresForTime(readings: MulledReadings, q: number, minutes: number): number {
  const [low, high] = tauRange(readings);
  const least = Math.max(low, minutes / -Math.log1p(-q));
  const scaled = (tau: number): number =>
    bestScale(readings, (t) => 1 - (1 - q) * Math.exp((minutes - t) / tau));
  const held = leastOnLine(scaled, least, Math.max(high, 2 * least), 40).value;
  if (minutes > 0) return held;
  const free = leastMulled(readings);
  return free.startKPa >= q * free.fullKPa ? free.squares : held;
}

function bestScale(readings: MulledReadings, form: (t: number) => number): number {
  const { minutes, strengthKPa } = readings;
  let [ff, fy, yy] = [0, 0, 0];
  for (let i = 0; i < minutes.length; i++) {
    const f = form(minutes[i]!);
    ff += f * f;
    fy += f * strengthKPa[i]!;
    yy += strengthKPa[i]! ** 2;
  }
  return Math.max(0, fy > 0 ? yy - (fy * fy) / ff : yy);
}

/**
 * Least sum of squares with S(s) = v held, s minutes or ∞: S = v + A(e^(−s/τ) − e^(−t/τ)), over every τ and every A ≥ 0 that leaves
 * S0 ≥ 0.
 */
export function squaresForStrength(readings: MulledReadings, atMinutes: number, strengthKPa: number): number {
  const [low, high] = tauRange(readings);
  const { minutes, strengthKPa: y } = readings;
  const forOne = (tau: number): number => {
    const end = Math.exp(-atMinutes / tau);
    let [ff, fy] = [0, 0];
    for (let i = 0; i < minutes.length; i++) {
      const f = end - Math.exp(-minutes[i]! / tau);
      ff += f * f;
      fy += f * (y[i]! - strengthKPa);
    }
    const most = end < 1 ? strengthKPa / (1 - end) : Number.POSITIVE_INFINITY;
    const rise = Math.min(most, Math.max(0, ff > 0 ? fy / ff : 0));
    return squares(readings, (t) => strengthKPa + rise * (end - Math.exp(-t / tau)));
  };
  return leastOnLine(forOne, low, high, 40).value;
}
