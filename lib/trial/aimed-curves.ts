// Which curves of a trial an aim is worked out over, and how it hangs on them.

import type { TestName } from "../log/batch.ts";
import { aimPlace } from "./aim.ts";
import type { AimedCurve } from "./best-place.ts";
import type { CurveDraws } from "./curve-draws.ts";
import type { AimToReach } from "./reach.ts";
import type { TrialProperty } from "./trial-property.ts";

/** The curve with its range; none for a property without either, nor for one that leans on a published slope. */
export function aimedCurve(property: TrialProperty): readonly (AimedCurve & AimToReach)[] {
  const { test, curve, bias, wanted } = property;
  if (!wanted || !curve.fit || !isAimedFor(property)) return [];
  return [{ name: test, test, curve, low: wanted.low, high: wanted.high, ...(bias ? { bias } : {}) }];
}

export function isAimedFor({ test, wanted }: TrialProperty): boolean {
  return wanted !== undefined && test !== "moisture" && test !== "density";
}

export interface MovedAim {
  readonly x: number;
  readonly chance: number;
}

/** The aim and its chance with every edge moved out by a share of its range, or in for a share below 0. */
export function withEdges(aimed: readonly AimedCurve[], drawn: CurveDraws, share: number): MovedAim {
  const moved = aimed.map((one) => {
    const by = share * (one.high - one.low);
    return { ...one, low: one.low - by, high: one.high + by };
  });
  return aimPlace(moved, drawn);
}

/** Names of the tests, in the order of the curves. */
export const testsOf = (aimed: readonly { readonly test: TestName }[]): readonly TestName[] =>
  aimed.map(({ test }) => test);
