// A few chosen points about the middle of some sources, which show how straight a figure is in them.

import { hashText } from "../quantity/permutation.ts";
import { scoreSd } from "../quantity/scores.ts";
import type { Shape, Source } from "../quantity/source.ts";
import type { Drawing } from "../quantity/spread.ts";

/** Up to here every pair of sources is moved together as well. */
const mostPaired = 14;
const corners = 4;

/** value + Σ firstₖ·sₖ + Σ squareₖ·sₖ² + Σ pairₖₗ·sₖ·sₗ, s the scores of the sources. Arrays may be longer than needed. */
export interface Expansion {
  readonly value: number;
  readonly first: Float64Array;
  readonly square: Float64Array;
  /** Row by row, k before l; undefined where there are too many sources: then what they do together is in rest. */
  readonly pair: Float64Array | undefined;
  /** The most that the expansion misses by at corners where every source is one standard deviation off. NaN: no value there. */
  readonly rest: number;
}

export interface Design {
  /** For pointsOf(…, 0, count). */
  readonly drawing: Drawing;
  /** One for each name, in the order of take(). */
  readonly sources: readonly Source[];
  readonly names: readonly string[];
  /** How many points there are, after the last take(). */
  count(): number;
  /** Begins anew, without sources. */
  clear(): void;
  take(source: Source, name: string): void;
  /** Read it before the next read(): the arrays are used again. */
  read(values: Float64Array): Expansion;
}

/** How far one source is moved alone: nearly as far as it goes. */
function reach(shape: Shape): number {
  return shape.kind === "normal" || shape.kind === "t" ? 1.9 : 1;
}

export function emptyDesign(): Design {
  const slots = new Map<Source, number>();
  const byName = new Map<string, number>();
  const sources: Source[] = [];
  const names: string[] = [];
  const alone: number[] = [];
  const off: number[] = [];
  const signs: number[] = [];
  let [first, square, pair, score] = [0, 0, 0, 0].map(() => new Float64Array(0)) as Arrays;

  const paired = (): boolean => names.length <= mostPaired;
  const pairs = (): number => (paired() ? (names.length * (names.length - 1)) / 2 : 0);
  const atCorners = (): number => 1 + 2 * names.length + pairs();

  function clear(): void {
    slots.clear();
    byName.clear();
    for (const list of [sources, names, alone, off, signs]) list.length = 0;
  }

  function take(source: Source, name: string): void {
    const known = byName.get(name);
    slots.set(source, known ?? names.length);
    if (known !== undefined) return;
    byName.set(name, names.length);
    sources.push(source);
    names.push(name);
    alone.push(reach(source.shape));
    // Where there is no standard deviation the points are only for first-order shares.
    off.push(Math.min(1.5, scoreSd(source.shape)));
    // Signs come from the names, so that nothing hangs on the order of rows or columns.
    signs.push(hashText(name, 77));
  }

  function add(source: Source, scale: number, out: Float64Array): void {
    const k = slots.get(source)!;
    const n = names.length;
    out[1 + 2 * k]! += scale * alone[k]!;
    out[2 + 2 * k]! -= scale * alone[k]!;
    const step = scale * off[k]!;
    let at = 1 + 2 * n;
    if (paired()) {
      for (let l = 0; l < k; l++) out[at + pairPlace(l, k, n)]! += step;
      for (let l = k + 1; l < n; l++) out[at + pairPlace(k, l, n)]! += step;
      at += (n * (n - 1)) / 2;
    }
    for (let j = 0; j < corners; j++) out[at + j]! += (signs[k]! >>> j) & 1 ? step : -step;
  }

  function read(values: Float64Array): Expansion {
    const n = names.length;
    if (first.length < n || pair.length < pairs()) {
      [first, square, pair, score] = [n, n, pairs(), n].map((length) => new Float64Array(length)) as Arrays;
    }
    const value = values[0]!;
    for (let k = 0; k < n; k++) {
      const up = values[1 + 2 * k]! - value;
      const down = values[2 + 2 * k]! - value;
      const t = alone[k]!;
      first[k] = (up - down) / (2 * t);
      square[k] = (up + down) / (2 * t * t);
    }
    if (paired()) {
      let p = 0;
      for (let k = 0; k < n; k++) {
        const own = first[k]! * off[k]! + square[k]! * off[k]! ** 2;
        for (let l = k + 1; l < n; l++, p++) {
          const other = first[l]! * off[l]! + square[l]! * off[l]! ** 2;
          pair[p] = (values[1 + 2 * n + p]! - value - own - other) / (off[k]! * off[l]!);
        }
      }
    }
    return { value, first, square, pair: paired() ? pair : undefined, rest: restOf(values) };
  }

  function restOf(values: Float64Array): number {
    const n = names.length;
    const at = atCorners();
    const value = values[0]!;
    let rest = 0;
    for (let j = 0; j < corners; j++) {
      let expected = value;
      for (let k = 0; k < n; k++) {
        const s = (signs[k]! >>> j) & 1 ? off[k]! : -off[k]!;
        score[k] = s;
        expected += first[k]! * s + square[k]! * s * s;
      }
      if (paired()) {
        let p = 0;
        for (let k = 0; k < n; k++)
          for (let l = k + 1; l < n; l++, p++) expected += pair[p]! * score[k]! * score[l]!;
      }
      const miss = Math.abs(values[at + j]! - expected);
      if (Number.isNaN(miss)) return Number.NaN;
      if (miss > rest) rest = miss;
    }
    return rest;
  }

  const count = (): number => atCorners() + corners;
  return { drawing: { count: 16, add }, sources, names, count, clear, take, read };
}

type Arrays = [Float64Array, Float64Array, Float64Array, Float64Array];

/** Where the pair k, l stands, k before l. */
function pairPlace(k: number, l: number, n: number): number {
  return k * n - (k * (k + 1)) / 2 + l - k - 1;
}
