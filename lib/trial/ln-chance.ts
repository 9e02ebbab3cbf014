// The logarithm of the chance that a batch lies within a range, by how far its mean is off the middle.

import type { LinearFit } from "../numbers/linear-fit.ts";
import { normalCumulative } from "../numbers/normal.ts";
import { onceFor } from "../quantity/once-for.ts";

/** As much of a curve with its range as a chance hangs on. */
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

/**
 * ln of the chance that a batch whose mean is y lies within the range: ln(Φ((high − y)/s) − Φ((low − y)/s)), from a
 * table over |y − middle|, straight between its places; s is the scatter of a batch. Well within a wide range the
 * chance of missing it is counted, however small, so that more to spare is always better. Never above 0, and the
 * further off the middle the less.
 */
export class LnChance {
  readonly middle: number;
  readonly #half: number;
  readonly #step: number;
  /** Places of the table in the property's unit. */
  readonly #places: number;
  readonly #last: number;
  /** Each place worked out when it is first wanted: few are. */
  readonly #table: Float64Array;

  constructor(aimed: RangeAndScatter) {
    const s = scatterOf(aimed);
    this.middle = (aimed.low + aimed.high) / 2;
    this.#half = (aimed.high - aimed.low) / (2 * s);
    const count = Math.min(4096, Math.ceil((this.#half + beyond) * steps));
    this.#step = (this.#half + beyond) / count;
    this.#places = 1 / (s * this.#step);
    this.#last = count - 1;
    this.#table = new Float64Array(count + 1).fill(1);
  }

  of(y: number): number {
    return this.ofDistance(Math.abs(y - this.middle));
  }

  /** Of a mean that lies so far off the middle; 0 or more. */
  ofDistance(distance: number): number {
    const at = distance * this.#places;
    const i = at < this.#last ? at | 0 : this.#last;
    const table = this.#table;
    let here = table[i]!;
    if (here === 1) here = this.#made(i);
    let next = table[i + 1]!;
    if (next === 1) next = this.#made(i + 1);
    return here + (at - i) * (next - here);
  }

  #made(i: number): number {
    const half = this.#half;
    const z = i * this.#step;
    const missed = normalCumulative(z - half) + normalCumulative(-half - z);
    const made = missed < least ? -least / (1 + half - z) : Math.log1p(-missed);
    this.#table[i] = made;
    return made;
  }
}

/** Of one curve with its range, however often the best place is asked for. */
export const lnChance = onceFor((aimed: RangeAndScatter) => new LnChance(aimed));
