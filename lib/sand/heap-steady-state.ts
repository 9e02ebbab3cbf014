// Where a heap settles when every cycle is like the last, and how far it is after n of them.

import type { HeapCycle } from "./heap-cycle.ts";
import { requireAboveZero, requireFromZero } from "./require.ts";

export interface HeapSteadyState {
  /** Dry, to be put in with each cycle, kg. */
  readonly clayKg: number;
  readonly newSandKg: number;
  /** Where the heap settles, kg; dead clay null where nothing leaves the heap: it then grows without end. */
  readonly liveClayKg: number;
  readonly deadClayKg: number | null;
  readonly sandKg: number | null;
  /** Cycles in which half of the way to the settled dead clay is gone; null where nothing leaves. */
  readonly halfWayCycles: number | null;
}

/**
 * Clay and new sand for each cycle that hold the live clay and the mass of a heap, and the dead clay it comes to:
 * a = A (1 − (1 − β)(1 − λ)) / π, s = λ M − a, D* = ((1 − λ) β A + (1 − π) a) / λ, S* = s / λ; dead clay is half way
 * there after ln 2 / −ln(1 − λ) cycles.
 *
 * dryKg: M, > 0. liveClayKg: A, above 0 and below M. burntPercent β, lostPercent λ: 0 to below 100. clayLivePercent π:
 * above 0 to 100. Else RangeError. newSandKg is below zero where the clay alone is more than what is lost: the heap
 * then grows by so much, and as much must be thrown out.
 * Source: mass balance; settled at the order burn, lose, put in. Grains are not broken in it.
 * @example
 * heapSteadyState({ dryKg: 100, liveClayKg: 8, burntPercent: 2, lostPercent: 5, clayLivePercent: 100 })
 * // { clayKg: 0.552, newSandKg: 4.448, deadClayKg: 3.04, halfWayCycles: 13.5 }
 */
export function heapSteadyState(heap: {
  readonly dryKg: number;
  readonly liveClayKg: number;
  readonly burntPercent: number;
  readonly lostPercent: number;
  readonly clayLivePercent?: number;
}): HeapSteadyState {
  const { dryKg, liveClayKg, burntPercent, lostPercent, clayLivePercent = 100 } = heap;
  requireAboveZero("heapSteadyState", { dryKg, liveClayKg, clayLivePercent });
  requireFromZero("heapSteadyState", { burntPercent, lostPercent });
  if (!(liveClayKg < dryKg && burntPercent < 100 && lostPercent < 100 && clayLivePercent <= 100))
    throw new RangeError("heapSteadyState: clay is part of the heap, and shares are below 100 %");
  const [beta, lambda, live] = [burntPercent / 100, lostPercent / 100, clayLivePercent / 100];
  const clayKg = (liveClayKg * (1 - (1 - beta) * (1 - lambda))) / live;
  const newSandKg = lambda * dryKg - clayKg;
  const settles = lambda > 0;
  return {
    clayKg,
    newSandKg,
    liveClayKg,
    deadClayKg: settles ? ((1 - lambda) * beta * liveClayKg + (1 - live) * clayKg) / lambda : null,
    sandKg: settles ? newSandKg / lambda : null,
    halfWayCycles: settles ? Math.LN2 / -Math.log1p(-lambda) : null,
  };
}

/**
 * Live and dead clay after n like cycles, kg, without stepping: with q = 1 − λ and r = (1 − β) q, live
 * A = A* + (A₀ − A*) rⁿ with A* = π a / (1 − r), and all clay C = C* + (C₀ − C*) qⁿ with C* = a / λ (C₀ + n a where λ is
 * nought); dead is C − A.
 *
 * liveClayKg, deadClayKg: at the start, 0 or more. cycle as for heapCycle. cycles: 0 or more. Else RangeError.
 * Source: the geometric series of heapCycle.
 * @example
 * clayAfterCyclesKg({ liveClayKg: 8, deadClayKg: 0 },
 *   { burntPercent: 2, lostPercent: 0, clayKg: 0, clayLivePercent: 100 }, 10).liveClayKg // 6.537
 */
export function clayAfterCyclesKg(
  start: { readonly liveClayKg: number; readonly deadClayKg: number },
  cycle: Pick<HeapCycle, "burntPercent" | "lostPercent" | "clayKg" | "clayLivePercent">,
  cycles: number,
): { readonly liveClayKg: number; readonly deadClayKg: number } {
  requireFromZero("clayAfterCyclesKg", { ...start, ...cycle, cycles });
  const { burntPercent, lostPercent, clayKg, clayLivePercent } = cycle;
  const q = 1 - lostPercent / 100;
  const r = q * (1 - burntPercent / 100);
  const alive = (clayKg * clayLivePercent) / 100;
  const liveClayKg = series(start.liveClayKg, alive, r, cycles);
  const allKg = series(start.liveClayKg + start.deadClayKg, clayKg, q, cycles);
  return { liveClayKg, deadClayKg: allKg - liveClayKg };
}

/** x after n steps of x′ = ratio x + add. */
function series(start: number, add: number, ratio: number, n: number): number {
  if (ratio === 1) return start + n * add;
  const settled = add / (1 - ratio);
  return settled + (start - settled) * ratio ** n;
}
