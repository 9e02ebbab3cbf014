// The aim of a trial of water as a compactability: what the tube reads there.

import { lift } from "../quantity/combine.ts";
import { type Figure, figure } from "../quantity/figure.ts";
import type { Spread } from "../quantity/spread.ts";
import { spread } from "../quantity/spread-of.ts";
import type { AimPlace, AimResult } from "../trial/aim.ts";
import type { TrialProperty } from "../trial/trial-property.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { curveSlope } from "./curve-slope.ts";

/** The aim as a spread about its place. */
export function aimSpread({ x, low, high }: Pick<AimPlace, "x" | "low" | "high">): Spread {
  return spread({ mean: x, halfWidth: (high - low) / 2, kind: "normal", source: "the aim of this trial" });
}

/**
 * What the founder's tube reads at the aim. Where compactability is one of the ranges that the aim is for, curve and aim
 * come from the same draws (AimResult.heights); else the curve's own interval, and the aim's along the slope, apart.
 * Undefined without a curve there.
 */
export function heightAtAim({ test, curve }: TrialProperty, { aim, heights }: AimResult): Spread | undefined {
  const value = curve.at(aim.x);
  if (!value) return undefined;
  const { mean, low, high } = value;
  const source = "compactability at the aim of this trial";
  const joint = heights.find(({ name }) => name === test);
  if (joint) {
    const halfWidth = Math.max(mean - joint.low, joint.high - mean);
    return spread({ mean, halfWidth, kind: "normal", source });
  }
  const height = spread({ mean, halfWidth: (high - low) / 2, kind: "normal", source });
  const slope = curveSlope(curve, aim.x)?.value ?? 0;
  return lift((v) => v[0]! + slope * (v[1]! - aim.x), [height, aimSpread(aim)]);
}

/** False where the best place may lie beyond what was tried: then the aim has no interval. */
export const closedAim = ({ result }: TrialReport): boolean =>
  !(result?.aim.open.low || result?.aim.open.high);

/**
 * Compactability at the aim of a trial of water, % of height, by the trial's own curve of it. Undefined on another axis,
 * where there is no aim or an open one, and where compactability has no fitted curve.
 */
export function tubeAim(report: TrialReport): Figure | undefined {
  const { axis, result, properties } = report;
  const property = properties.find(({ test }) => test === "compactability");
  if (axis !== "moisture" || !result?.window || !closedAim(report) || !property?.curve.fit) return undefined;
  const height = heightAtAim(property, result);
  return height && figure(height);
}
