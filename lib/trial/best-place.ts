// The place on the axis where a new batch most surely meets all ranges at once.

import type { LinearFit } from "../numbers/linear-fit.ts";
import { normalCumulative } from "../numbers/normal.ts";
import type { CurveToDraw } from "./curve-draws.ts";

/** One property with the range that the founder wants. */
export interface AimedCurve extends CurveToDraw {
  readonly low: number;
  readonly high: number;
}

/** As much of it as a chance hangs on. */
export interface RangeAndScatter {
  readonly curve: { readonly fit?: Pick<LinearFit, "residualSd"> };
  readonly low: number;
  readonly high: number;
}

/** The scatter of a batch about the curve, or the range where there is none. */
function scatterOf({ curve, low, high }: RangeAndScatter): number {
  return curve.fit!.residualSd || high - low;
}

const steps = 64;
/** Scatters beyond an edge up to which the table reaches; further out a straight line goes on. */
const beyond = 8;
const least = 1e-280;
/** Places of the axis that are looked at together before each by itself. */
const runLength = 8;

/**
 * ln of the chance that a batch whose mean is y lies within the range: ln(Φ((high − y)/s) − Φ((low − y)/s)), from a
 * table over |y − middle|, straight between its places; s is the scatter of a batch. Well within a wide range the
 * chance of missing it is counted, however small, so that more to spare is always better.
 */
class LnChance {
  readonly #s: number;
  readonly #middle: number;
  readonly #half: number;
  readonly #step: number;
  readonly #last: number;
  /** Each place worked out when it is first wanted: few are. */
  readonly #table: Float64Array;

  constructor(aimed: RangeAndScatter) {
    this.#s = scatterOf(aimed);
    this.#middle = (aimed.low + aimed.high) / 2;
    this.#half = (aimed.high - aimed.low) / (2 * this.#s);
    const count = Math.min(4096, Math.ceil((this.#half + beyond) * steps));
    this.#step = (this.#half + beyond) / count;
    this.#last = count - 1;
    this.#table = new Float64Array(count + 1).fill(1);
  }

  of(y: number): number {
    const at = Math.abs(y - this.#middle) / this.#s / this.#step;
    const i = Math.min(Math.floor(at), this.#last);
    const here = this.#at(i);
    return here + (at - i) * (this.#at(i + 1) - here);
  }

  /** The largest of() on the curve b0 + b1·u + b2·u² from u = first to u = last: it falls with the distance from the middle. */
  mostOver(b0: number, b1: number, b2: number, first: number, last: number): number {
    const middle = this.#middle;
    const a = b0 + first * (b1 + first * b2) - middle;
    const b = b0 + last * (b1 + last * b2) - middle;
    let [low, high] = a < b ? [a, b] : [b, a];
    const turn = -b1 / (2 * b2);
    if (turn > first && turn < last) {
      const there = b0 + turn * (b1 + turn * b2) - middle;
      low = Math.min(low, there);
      high = Math.max(high, there);
    }
    const nearest = low > 0 ? low : Math.min(high, 0);
    return this.of(middle + nearest);
  }

  #at(i: number): number {
    const known = this.#table[i]!;
    if (known !== 1) return known;
    const half = this.#half;
    const z = i * this.#step;
    const missed = normalCumulative(z - half) + normalCumulative(-half - z);
    const made = missed < least ? -least / (1 + half - z) : Math.log1p(-missed);
    this.#table[i] = made;
    return made;
  }
}

/** Of one curve with its range, however often the best place is asked for. */
const chancesKnown = new WeakMap<object, LnChance>();

function lnChance(aimed: RangeAndScatter): LnChance {
  const before = chancesKnown.get(aimed);
  if (before) return before;
  const made = new LnChance(aimed);
  chancesKnown.set(aimed, made);
  return made;
}

/** The place where the product of the properties' chances is largest, their means as told for each row of the grid. */
export function bestPlace(
  curves: readonly RangeAndScatter[],
  grid: readonly number[],
  mean: (property: number, row: number) => number,
): number {
  const chances = curves.map(lnChance);
  let best = Number.NEGATIVE_INFINITY;
  let at = grid[0]!;
  for (let row = 0; row < grid.length; row++) {
    let all = 0;
    for (let k = 0; k < chances.length; k++) all += chances[k]!.of(mean(k, row));
    if (all > best) {
      best = all;
      at = grid[row]!;
    }
  }
  return at;
}

/** The best place for every draw of the mean curves. coefficients: columns for the powers 1, u and, if curved, u². */
export function bestPlaces(
  curves: readonly AimedCurve[],
  drawn: readonly { readonly coefficients: readonly Float64Array[] }[],
  grid: readonly number[],
): Float64Array {
  const count = drawn[0]!.coefficients[0]!.length;
  const parts = curves.map((aimed, k) => {
    const [b0, b1, b2 = new Float64Array(count)] = drawn[k]!.coefficients as readonly Float64Array[];
    const u = Float64Array.from(grid, (x) => aimed.curve.row(x)[1]!);
    return { chance: lnChance(aimed), b0: b0!, b1: b1!, b2, u };
  });
  /** No place of the run can have a larger sum. */
  const mostIn = (from: number, to: number, i: number, toBeat: number): number => {
    let all = 0;
    for (let k = 0; k < parts.length; k++) {
      const { chance, b0, b1, b2, u } = parts[k]!;
      all += chance.mostOver(b0[i]!, b1[i]!, b2[i]!, u[from]!, u[to]!);
      if (all < toBeat) return all;
    }
    return all;
  };
  /** Chances in ln are never above 0, so a sum only falls: a place that is behind already need not be gone on with. */
  const sumAt = (row: number, i: number, toBeat: number): number => {
    let all = 0;
    for (let k = 0; k < parts.length; k++) {
      const { chance, b0, b1, b2, u } = parts[k]!;
      const at = u[row]!;
      all += chance.of(b0[i]! + at * (b1[i]! + at * b2[i]!));
      if (all < toBeat) return all;
    }
    return all;
  };
  const best = new Float64Array(count);
  let before = 0;
  for (let i = 0; i < count; i++) {
    let top = 0;
    let most = sumAt(0, i, Number.NEGATIVE_INFINITY);
    // Where the last draw had its best this one is good as well, and most other places fall behind it soon.
    const there = sumAt(before, i, most);
    if (there > most) [top, most] = [before, there];
    for (let from = 0; from < grid.length; from += runLength) {
      const end = Math.min(from + runLength, grid.length);
      // A sum below this is behind, whatever the last digits of a place within the run.
      const toBeat = most * (1 + 1e-6);
      if (mostIn(from, end - 1, i, toBeat) < toBeat) continue;
      for (let row = from; row < end; row++) {
        const here = sumAt(row, i, most);
        if (here > most || (here === most && row < top)) {
          top = row;
          most = here;
        }
      }
    }
    best[i] = grid[top]!;
    before = top;
  }
  return best;
}
