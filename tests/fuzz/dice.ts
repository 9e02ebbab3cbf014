// What a generator throws: fast-check's own random numbers, so that a seed repeats a run.

import type fc from "fast-check";

export interface Dice {
  /** Both ends included. */
  integer(low: number, high: number): number;
  chance(percent: number): boolean;
  pick<T>(items: readonly T[]): T;
  /** Some of the items, in their order. */
  some<T>(items: readonly T[], percent: number): T[];
}

export function diceOf(random: fc.Random): Dice {
  const integer = (low: number, high: number): number => random.nextInt(low, high);
  const chance = (percent: number): boolean => integer(1, 1000) <= percent * 10;
  return {
    integer,
    chance,
    pick: (items) => items[integer(0, items.length - 1)]!,
    some: (items, percent) => items.filter(() => chance(percent)),
  };
}
