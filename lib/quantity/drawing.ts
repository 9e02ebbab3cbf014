// One evaluation: every source gets its own permutation of its scores.

import { invariant } from "../issue.ts";
import { addPermuted, type PermutationKey, permutationKey } from "./permutation.ts";
import { drawsUsual, scores } from "./scores.ts";
import type { Source } from "./source.ts";
import type { Drawing, Spread } from "./spread.ts";

/** Sources with one id are one source; those without are told apart by identity. */
export function sourceNames(sources: readonly Source[]): Map<Source, string> {
  const names = new Map<Source, string>();
  let unnamed = 0;
  for (const source of sources) {
    if (!names.has(source)) names.set(source, source.id ?? `\u0000unnamed ${unnamed++}`);
  }
  return names;
}

/**
 * The drawing of all that hangs on these sources. only: this source alone moves, the rest stay at their
 * middle. Two sources of one id but different shapes throw: they would be drawn as one and are not.
 */
export function drawing(
  sources: readonly Source[],
  options: { readonly count?: number; readonly only?: string } = {},
): Drawing {
  const count = options.count ?? drawsUsual;
  const names = sourceNames(sources);
  const shapes = new Map<string, string>();
  const plans = new Map<Source, { table: Float64Array; key: PermutationKey }>();
  for (const [source, name] of names) {
    const shape = JSON.stringify(source.shape);
    invariant((shapes.get(name) ?? shape) === shape, `the source ${name} has two shapes`);
    shapes.set(name, shape);
    if (options.only !== undefined && name !== options.only) continue;
    plans.set(source, { table: scores(source.shape, count), key: permutationKey(name) });
  }
  const made: Drawing = {
    count,
    add(source, scale, out, start) {
      const plan = plans.get(source);
      if (plan) addPermuted(plan.table, plan.key, scale, out, start);
      else invariant(names.has(source), `${source.id ?? "an unnamed source"} is missing from the sources`);
    },
    ...(options.only === undefined ? {} : { moves: (source) => plans.has(source) }),
  };
  if (options.only === undefined) whole.add(made);
  return made;
}

/** Drawings in which every source moves. */
const whole = new WeakSet<Drawing>();

/**
 * True where the draws of a spread whose sources all have an id are the same in every drawing of so many draws that this
 * is said of: they may be drawn once and read again. Not of an open one, which has to see each source to compare its shape.
 */
export function isWhole(plan: Drawing): boolean {
  return whole.has(plan);
}

/** A drawing that sources join as they come. Those without an id are numbered as they first come. */
export function openDrawing(count = drawsUsual): Drawing {
  const plans = new Map<Source, { table: Float64Array; key: PermutationKey }>();
  const shapes = new Map<string, string>();
  let unnamed = 0;
  return {
    count,
    add(source, scale, out, start) {
      let plan = plans.get(source);
      if (!plan) {
        const name = source.id ?? `\u0000unnamed ${unnamed++}`;
        const shape = JSON.stringify(source.shape);
        invariant((shapes.get(name) ?? shape) === shape, `the source ${name} has two shapes`);
        shapes.set(name, shape);
        plan = { table: scores(source.shape, count), key: permutationKey(name) };
        plans.set(source, plan);
      }
      addPermuted(plan.table, plan.key, scale, out, start);
    },
  };
}

/**
 * All draws of a spread, worked through in blocks so that the columns stay in the fast memory; in longer ones where one
 * source moves, since few columns are then in use.
 */
export function drawsOf(spread: Spread, plan: Drawing): Float64Array {
  const all = new Float64Array(plan.count);
  const block = Math.min(plan.moves ? 4096 : 1024, plan.count);
  for (let start = 0; start < plan.count; start += block) {
    spread.fill(all.subarray(start, start + block), start, plan);
  }
  return all;
}
