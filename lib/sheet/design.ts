// A few chosen points about the middle of some sources, which show how straight a figure is in them.

import { hashText } from "../quantity/permutation.ts";
import { scoreSd } from "../quantity/scores.ts";
import type { Shape, Source } from "../quantity/source.ts";
import type { Drawing } from "../quantity/spread.ts";

/** Up to here every pair of sources is moved together as well. */
const mostPaired = 14;
const corners = 8;

export interface Design {
  /** For pointsOf(…, 0, count). */
  readonly drawing: Drawing;
  readonly count: number;
  /** One for each name. */
  readonly sources: readonly Source[];
  readonly names: readonly string[];
  read(values: Float64Array): Expansion;
}

/** value + Σ firstₖ·sₖ + Σ squareₖ·sₖ² + Σ pairₖₗ·sₖ·sₗ, s the scores of the sources. */
export interface Expansion {
  readonly value: number;
  readonly first: Float64Array;
  readonly square: Float64Array;
  /** Row by row, k before l; empty where there are too many sources: then what they do together is in rest. */
  readonly pair: Float64Array;
  /** The most that the expansion misses by at corners where every source is one standard deviation off. NaN: no value there. */
  readonly rest: number;
}

/** How far one source is moved alone: nearly as far as it goes. */
function reach(shape: Shape): number {
  return shape.kind === "normal" || shape.kind === "t" ? 1.9 : 1;
}

/** sources by name, as namedOnce() gives them; alias: every source object with its name. */
export function designOf(named: ReadonlyMap<string, Source>, alias: ReadonlyMap<Source, string>): Design {
  const names = [...named.keys()];
  const sources = [...named.values()];
  const n = names.length;
  const place = new Map(names.map((name, k) => [name, k]));
  const slots = new Map([...alias].map(([source, name]) => [source, place.get(name)!]));
  const alone = sources.map(({ shape }) => reach(shape));
  // Where there is no standard deviation the points are only for first-order shares.
  const off = sources.map(({ shape }) => Math.min(1.5, scoreSd(shape)));
  // Signs come from the names, so that nothing hangs on the order of rows or columns.
  const signs = names.map((name) => hashText(name, 77));
  const paired = n <= mostPaired;
  const pairs = paired ? (n * (n - 1)) / 2 : 0;
  const atPairs = 1 + 2 * n;
  const atCorners = atPairs + pairs;
  const count = atCorners + corners;
  const rowStart = (k: number): number => k * n - (k * (k + 1)) / 2 - k - 1;

  function add(source: Source, scale: number, out: Float64Array): void {
    const k = slots.get(source)!;
    out[1 + 2 * k]! += scale * alone[k]!;
    out[2 + 2 * k]! -= scale * alone[k]!;
    const step = scale * off[k]!;
    if (paired) {
      for (let l = 0; l < k; l++) out[atPairs + rowStart(l) + k]! += step;
      for (let l = k + 1; l < n; l++) out[atPairs + rowStart(k) + l]! += step;
    }
    for (let j = 0; j < corners; j++) out[atCorners + j]! += (signs[k]! >>> j) & 1 ? step : -step;
  }

  function read(values: Float64Array): Expansion {
    const value = values[0]!;
    const [first, square, pair] = [new Float64Array(n), new Float64Array(n), new Float64Array(pairs)];
    for (let k = 0; k < n; k++) {
      const [up, down, t] = [values[1 + 2 * k]! - value, values[2 + 2 * k]! - value, alone[k]!];
      first[k] = (up - down) / (2 * t);
      square[k] = (up + down) / (2 * t * t);
    }
    for (let k = 0, p = 0; k < n && paired; k++) {
      const own = first[k]! * off[k]! + square[k]! * off[k]! ** 2;
      for (let l = k + 1; l < n; l++, p++) {
        const other = first[l]! * off[l]! + square[l]! * off[l]! ** 2;
        pair[p] = (values[atPairs + p]! - value - own - other) / (off[k]! * off[l]!);
      }
    }
    return { value, first, square, pair, rest: restOf(values, { value, first, square, pair }) };
  }

  function restOf(values: Float64Array, { value, first, square, pair }: Omit<Expansion, "rest">): number {
    let rest = 0;
    const s = new Float64Array(n);
    for (let j = 0; j < corners; j++) {
      let expected = value;
      for (let k = 0; k < n; k++) {
        s[k] = (signs[k]! >>> j) & 1 ? off[k]! : -off[k]!;
        expected += first[k]! * s[k]! + square[k]! * s[k]! * s[k]!;
      }
      for (let k = 0, p = 0; k < n && paired; k++) {
        for (let l = k + 1; l < n; l++, p++) expected += pair[p]! * s[k]! * s[l]!;
      }
      rest = Math.max(rest, Math.abs(values[atCorners + j]! - expected));
      if (Number.isNaN(values[atCorners + j]!)) return Number.NaN;
    }
    return rest;
  }

  return {
    drawing: { count: 16, add: (source, scale, out) => add(source, scale, out) },
    count,
    sources,
    names,
    read,
  };
}
