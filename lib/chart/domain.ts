// How far an arithmetic axis reaches.

import { niceTicks } from "./ticks.ts";

type Values = readonly (number | undefined)[];

/** What is worth seeing but may be cut: it widens an axis by `reach` times the span of what must be seen, at most, on each side. */
export interface MaySee {
  readonly values: Values;
  readonly reach: number;
}

function finite(values: Values): number[] {
  return values.filter((value): value is number => value !== undefined && Number.isFinite(value));
}

/** From the lowest to the highest of the values that must be seen, with some air; never below the floor. 0 to 1 without any. */
export function axisDomain(
  must: Values,
  maySee: readonly MaySee[] = [],
  floor = Number.NEGATIVE_INFINITY,
): [number, number] {
  const seen = finite(must);
  const core = seen.length > 0 ? seen : finite(maySee.flatMap(({ values }) => values));
  if (core.length === 0) return [0, 1];
  let low = Math.min(...core);
  let high = Math.max(...core);
  const span = high > low ? high - low : Math.max(Math.abs(high) * 0.2, 1);
  const [least, most] = [low, high];
  for (const { values, reach } of maySee)
    for (const value of finite(values)) {
      low = Math.min(low, Math.max(value, least - reach * span));
      high = Math.max(high, Math.min(value, most + reach * span));
    }
  const air = high > low ? (high - low) * 0.07 : span / 2;
  return [Number(Math.max(low - air, floor).toPrecision(6)), Number((high + air).toPrecision(6))];
}

/** Zero where no value is negative: what cannot be negative needs no axis below zero. */
export function floorOf(values: Values): number {
  return finite(values).some((value) => value < 0) ? Number.NEGATIVE_INFINITY : 0;
}

/** Round numbers inside the domain, one at least where there is one; about so many. */
export function ticksIn([low, high]: readonly [number, number], about: number): readonly number[] {
  return niceTicks(low, high, Math.max(2, about)).filter((tick) => tick >= low && tick <= high);
}
