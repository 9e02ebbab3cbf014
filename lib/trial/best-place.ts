// The place on the axis where a new batch most surely meets all ranges at once.

import { normalCumulative } from "../numbers/normal.ts";
import type { CurveToDraw } from "./curve-draws.ts";

/** One property with the range that the founder wants. */
export interface AimedCurve extends CurveToDraw {
  readonly low: number;
  readonly high: number;
}

/** The scatter of a batch about the curve, or the range where there is none. */
function scatterOf({ curve, low, high }: Pick<AimedCurve, "curve" | "low" | "high">): number {
  return curve.fit!.residualSd || high - low;
}

const steps = 64;
/** Scatters beyond an edge up to which the table reaches; further out a straight line goes on. */
const beyond = 8;
const least = 1e-280;

/**
 * ln of the chance that a batch whose mean is y lies within the range: ln(Φ((high − y)/s) − Φ((low − y)/s)), worked
 * out once for a table over |y − middle|, straight between its places; s is the scatter of a batch. Well within a wide
 * range the chance of missing it is counted, however small, so that more to spare is always better.
 */
function lnChance(aimed: Pick<AimedCurve, "curve" | "low" | "high">): (y: number) => number {
  const s = scatterOf(aimed);
  const middle = (aimed.low + aimed.high) / 2;
  const half = (aimed.high - aimed.low) / (2 * s);
  const count = Math.min(4096, Math.ceil((half + beyond) * steps));
  const step = (half + beyond) / count;
  const table = Float64Array.from({ length: count + 1 }, (_, i) => {
    const z = i * step;
    const missed = normalCumulative(z - half) + normalCumulative(-half - z);
    return missed < least ? -least / (1 + half - z) : Math.log1p(-missed);
  });
  const last = table[count - 1]!;
  const slope = table[count]! - last;
  return (y) => {
    const at = Math.abs(y - middle) / s / step;
    const i = Math.min(Math.floor(at), count - 1);
    return i === count - 1 ? last + (at - i) * slope : table[i]! + (at - i) * (table[i + 1]! - table[i]!);
  };
}

/** The place where the product of the properties' chances is largest, their means as told for each row of the grid. */
export function bestPlace(
  curves: readonly AimedCurve[],
  grid: readonly number[],
  mean: (property: number, row: number) => number,
): number {
  const chances = curves.map(lnChance);
  let best = Number.NEGATIVE_INFINITY;
  let at = grid[0]!;
  for (let row = 0; row < grid.length; row++) {
    let all = 0;
    for (let k = 0; k < chances.length; k++) all += chances[k]!(mean(k, row));
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
  const all = new Float64Array(grid.length);
  const best = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    all.fill(0);
    for (const { chance, b0, b1, b2, u } of parts) {
      const [c0, c1, c2] = [b0[i]!, b1[i]!, b2[i]!];
      for (let row = 0; row < all.length; row++) {
        const at = u[row]!;
        all[row]! += chance(c0 + at * (c1 + at * c2));
      }
    }
    let top = 0;
    for (let row = 1; row < all.length; row++) if (all[row]! > all[top]!) top = row;
    best[i] = grid[top]!;
  }
  return best;
}
