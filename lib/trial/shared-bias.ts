// What all readings of a property share, as one bias: of many batches in parts, so that an edit draws one part anew.

import { lift } from "../quantity/combine.ts";
import { drawing, drawsOf, isWhole } from "../quantity/drawing.ts";
import { keptColumn } from "../quantity/kept-column.ts";
import type { Spread } from "../quantity/spread.ts";

/** Batches whose shared parts are summed and kept together. */
const partSize = 32;

/**
 * A bias about 0: the mean over the batches of what each shares with others, less its middle. shared: one a batch, in the
 * log's order; undefined where none of them moves. Of more than one part of batches the draws are summed part by part,
 * each part remembered while its spreads are the same objects: a sum of sums, whether or not it was remembered.
 */
export function sharedBias(all: readonly Spread[]): Spread | undefined {
  const shared = all.filter(({ sources }) => sources.length > 0);
  if (shared.length === 0) return undefined;
  const middle = shared.reduce((sum, { value }) => sum + value, 0);
  const count = shared.length;
  if (count <= partSize) {
    return lift(
      (values) => {
        let sum = 0;
        for (let i = 0; i < count; i++) sum += values[i]!;
        return (sum - middle) / count;
      },
      shared,
      `mean of all less ${middle}`,
    );
  }
  const parts = Array.from({ length: Math.ceil(count / partSize) }, (_, k) =>
    sumOf(shared.slice(k * partSize, (k + 1) * partSize)),
  );
  return lift((values) => {
    let sum = 0;
    for (let k = 0; k < parts.length; k++) sum += values[k]!;
    return (sum - middle) / count;
  }, parts);
}

function sumOf(spreads: readonly Spread[]): Spread {
  const sum = lift((values) => {
    let all = 0;
    for (let i = 0; i < spreads.length; i++) all += values[i]!;
    return all;
  }, spreads);
  // An open drawing has to see each source; one that holds some still has draws of its own.
  const named = sum.sources.every(({ id }) => id !== undefined);
  const name = `sum of what is shared by ${spreads.map(numberOf).join(" ")}`;
  return {
    value: sum.value,
    sources: sum.sources,
    fill(out, start, plan) {
      if (!named || !isWhole(plan)) return sum.fill(out, start, plan);
      const column = keptColumn(`${plan.count} draws of ${name}`, () =>
        drawsOf(sum, drawing(sum.sources, { count: plan.count })),
      );
      out.set(column.subarray(start, start + out.length));
    },
  };
}

/** Tells one spread from any other: spreads never change, and batches that an edit left alone keep theirs. */
function numberOf(spread: Spread): number {
  const known = numbers.get(spread);
  if (known !== undefined) return known;
  given++;
  numbers.set(spread, given);
  return given;
}

const numbers = new WeakMap<Spread, number>();
let given = 0;
