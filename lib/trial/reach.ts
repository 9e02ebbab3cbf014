// Aims that no place tried meets, and aims that are each met but never together.

import type { TestName } from "../log/batch.ts";
import { figure } from "../quantity/figure.ts";
import type { Spread } from "../quantity/spread.ts";
import { gridOver } from "./aim.ts";
import type { ResponseCurve } from "./response-curve.ts";

export interface Unreachable {
  readonly test: TestName;
  /** The mean that comes nearest to the range, and where. */
  readonly best: number;
  readonly at: number;
  /** How far outside the range it is, with its 95 % interval; low may be below 0: then it may be met. */
  readonly short: { readonly value: number; readonly low: number; readonly high: number };
  readonly side: "too low" | "too high";
  /** True where all other aims can be met together: only this one stands in the way. */
  readonly onlyThis: boolean;
}

export interface ApartAims {
  readonly tests: readonly [TestName, TestName];
  /** From the first to the last place where the mean of each lies in its range. */
  readonly aAt: { readonly low: number; readonly high: number };
  readonly bAt: { readonly low: number; readonly high: number };
}

export interface AimToReach {
  readonly test: TestName;
  readonly curve: ResponseCurve;
  readonly low: number;
  readonly high: number;
  /** About 0, shared by all readings: it widens how far an aim is missed by. */
  readonly bias?: Spread;
}

/**
 * Looked for at 81 places between the first and the last batch, by the mean curves: what the sand does on the whole,
 * not what one batch may do by luck. The interval of short is that of the curve, at the place found, with the bias of
 * the rig beside it. aims: each with a fitted curve and low < high.
 */
export function unreachableAims(aims: readonly AimToReach[]): readonly Unreachable[] {
  return aims.flatMap((aim): Unreachable[] => {
    const nearest = gridOver(aim.curve.from, aim.curve.to)
      .map((x) => ({ x, value: aim.curve.at(x)! }))
      .map((place) => ({ ...place, short: shortOf(place.value.mean, aim) }))
      .reduce((a, b) => (b.short < a.short ? b : a));
    if (!(nearest.short > 0)) return [];
    const { mean, low, high } = nearest.value;
    const side = mean < aim.low ? "too low" : "too high";
    const bias = aim.bias ? figure(aim.bias, { draws: 1024 }) : { low: 0, high: 0 };
    const down = Math.hypot(mean - low, bias.low);
    const up = Math.hypot(high - mean, bias.high);
    const others = aims.filter((other) => other !== aim);
    return [
      {
        test: aim.test,
        best: mean,
        at: nearest.x,
        short: {
          value: nearest.short,
          low: nearest.short - (side === "too low" ? up : down),
          high: nearest.short + (side === "too low" ? down : up),
        },
        side,
        onlyThis: metTogether(others),
      },
    ];
  });
}

/** Pairs of aims that are each met somewhere, by the mean curves, and at no place both. */
export function apartAims(aims: readonly AimToReach[]): readonly ApartAims[] {
  const met = aims.flatMap((aim) => {
    const places = gridOver(aim.curve.from, aim.curve.to).filter((x) => meets(aim, x));
    return places.length === 0 ? [] : [{ aim, at: { low: places[0]!, high: places.at(-1)! } }];
  });
  return met.flatMap((a, i) =>
    met
      .slice(i + 1)
      .filter((b) => commonGrid([a.aim, b.aim]).length > 0 && !metTogether([a.aim, b.aim]))
      .map(
        (b): ApartAims => ({
          tests: [a.aim.test, b.aim.test],
          aAt: a.at,
          bAt: b.at,
        }),
      ),
  );
}

function shortOf(mean: number, { low, high }: AimToReach): number {
  return Math.max(low - mean, mean - high, 0);
}

const meets = (aim: AimToReach, x: number): boolean => shortOf(aim.curve.at(x)!.mean, aim) === 0;

function metTogether(aims: readonly AimToReach[]): boolean {
  return aims.length === 0 || commonGrid(aims).some((x) => aims.every((aim) => meets(aim, x)));
}

/** Where all were tried; empty where their batches lie apart. */
function commonGrid(aims: readonly AimToReach[]): readonly number[] {
  const from = Math.max(...aims.map(({ curve }) => curve.from));
  const to = Math.min(...aims.map(({ curve }) => curve.to));
  return from <= to ? gridOver(from, to) : [];
}
