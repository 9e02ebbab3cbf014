// The best place of a grid for curves that are set anew for each draw: uphill first, then whatever may still be better.

import { type LnChance, lnChance, type RangeAndScatter } from "./ln-chance.ts";

/** A curve in b0 + b1·u + b2·u², with its range; row gives the powers of u at a place. */
interface Searched extends RangeAndScatter {
  readonly curve: RangeAndScatter["curve"] & { row(x: number): readonly number[] };
}

/** So few places are looked at each by itself. */
const few = 4;

export class PlaceSearch {
  readonly #size: number;
  readonly #count: number;
  readonly #chances: readonly LnChance[];
  /** Places of the grid on each curve's own axis, curve after curve. */
  readonly #u: Float64Array;
  /** b0, b1, b2 of each curve, and where it turns. */
  readonly #curve: Float64Array;
  /** The curve that put places behind the last time, and likely will again. */
  #behindBy = 0;
  #top = 0;
  #most = 0;

  constructor(curves: readonly Searched[], grid: readonly number[]) {
    this.#size = curves.length;
    this.#count = grid.length;
    this.#chances = curves.map(lnChance);
    this.#u = Float64Array.from(curves.flatMap(({ curve }) => grid.map((x) => curve.row(x)[1]!)));
    this.#curve = new Float64Array(4 * curves.length);
  }

  /** Curve k of this draw. */
  set(k: number, b0: number, b1: number, b2: number): void {
    const curve = this.#curve;
    curve[4 * k] = b0;
    curve[4 * k + 1] = b1;
    curve[4 * k + 2] = b2;
    curve[4 * k + 3] = -b1 / (2 * b2);
  }

  /** The first of the best rows. near: where to begin; stride: how far from there a better one is looked for first. */
  best(near: number, stride: number): number {
    this.#top = near;
    this.#most = this.#sumAt(near, Number.NEGATIVE_INFINITY);
    if (stride > 1) this.#climb(stride);
    this.#climb(1);
    // The row on either side is behind; further out runs may be longer, since most are further behind.
    const top = this.#top;
    for (let from = top + 2, length = 2; from < this.#count; from += length, length *= 2)
      this.#lookThrough(from, Math.min(from + length, this.#count));
    for (let end = top - 1, length = 2; end > 0; end -= length, length *= 2)
      this.#lookThrough(Math.max(0, end - length), end);
    return this.#top;
  }

  /** Strides uphill, to one side and, if it does not go up there, to the other. */
  #climb(stride: number): void {
    const from = this.#top;
    while (this.#isBetter(this.#top + stride));
    if (this.#top === from) while (this.#isBetter(this.#top - stride));
  }

  /** Goes there if it is; of two alike the first is. */
  #isBetter(row: number): boolean {
    if (row < 0 || row >= this.#count) return false;
    const here = this.#sumAt(row, this.#most);
    if (!(here > this.#most || (here === this.#most && row < this.#top))) return false;
    this.#top = row;
    this.#most = here;
    return true;
  }

  #lookThrough(from: number, end: number): void {
    // A sum below this is behind, whatever the last digits of a place within the run.
    if (this.#isBehind(from, end - 1, this.#most * (1 + 1e-6))) return;
    if (end - from > few) {
      const middle = (from + end) >>> 1;
      this.#lookThrough(from, middle);
      this.#lookThrough(middle, end);
    } else for (let row = from; row < end; row++) this.#isBetter(row);
  }

  /** Chances in ln are never above 0, so a sum only falls: a place that is behind already need not be gone on with. */
  #sumAt(row: number, toBeat: number): number {
    const curve = this.#curve;
    let all = 0;
    for (let k = 0; k < this.#size; k++) {
      const u = this.#u[k * this.#count + row]!;
      const y = curve[4 * k]! + u * (curve[4 * k + 1]! + u * curve[4 * k + 2]!);
      all += this.#chances[k]!.of(y);
      if (all < toBeat) return all;
    }
    return all;
  }

  /** True: no place from first to last can have a sum of toBeat. */
  #isBehind(first: number, last: number, toBeat: number): boolean {
    const leading = this.#behindBy;
    let all = this.#mostOf(leading, first, last);
    if (all < toBeat) return true;
    for (let k = 0; k < this.#size; k++) {
      if (k === leading) continue;
      all += this.#mostOf(k, first, last);
      if (all < toBeat) {
        this.#behindBy = k;
        return true;
      }
    }
    return false;
  }

  /** The largest chance in ln that curve k has from one place to another: it falls with the distance from the middle. */
  #mostOf(k: number, first: number, last: number): number {
    const chance = this.#chances[k]!;
    const curve = this.#curve;
    const from = this.#u[k * this.#count + first]!;
    const to = this.#u[k * this.#count + last]!;
    const b0 = curve[4 * k]! - chance.middle;
    const b1 = curve[4 * k + 1]!;
    const b2 = curve[4 * k + 2]!;
    const turn = curve[4 * k + 3]!;
    const a = b0 + from * (b1 + from * b2);
    const b = b0 + to * (b1 + to * b2);
    let low = Math.min(a, b);
    let high = Math.max(a, b);
    if (turn > from && turn < to) {
      const there = b0 + turn * (b1 + turn * b2);
      if (there < low) low = there;
      if (there > high) high = there;
    }
    return chance.ofDistance(low > 0 ? low : high < 0 ? -high : 0);
  }
}
