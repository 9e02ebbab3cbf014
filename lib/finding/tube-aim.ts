// The aim of a trial of water as a compactability: what the tube reads there.

import { lift } from "../quantity/combine.ts";
import { type Figure, figure } from "../quantity/figure.ts";
import type { Spread } from "../quantity/spread.ts";
import { spread } from "../quantity/spread-of.ts";
import type { AimPlace } from "../trial/aim.ts";
import type { ResponseCurve } from "../trial/response-curve.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { curveSlope } from "./curve-slope.ts";

/** The aim as a spread about its place. */
export function aimSpread({ x, low, high }: Pick<AimPlace, "x" | "low" | "high">): Spread {
  return spread({ mean: x, halfWidth: (high - low) / 2, kind: "normal", source: "the aim of this trial" });
}

/**
 * The curve's height at the aim: its own interval, and the aim's along the slope. Undefined without a curve there. The
 * two are drawn as if apart, though a curve that lies too high moves the aim the other way: so the interval is wider
 * than it need be, and a first dose by compactability is too much less often than once in ten.
 */
export function heightAtAim(
  curve: ResponseCurve,
  aim: Pick<AimPlace, "x" | "low" | "high">,
): Spread | undefined {
  const value = curve.at(aim.x);
  if (!value) return undefined;
  const { mean, low, high } = value;
  const source = "compactability at the aim of this trial";
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
  const curve = properties.find(({ test }) => test === "compactability")?.curve;
  if (axis !== "moisture" || !result?.window || !closedAim(report) || !curve?.fit) return undefined;
  const height = heightAtAim(curve, result.aim);
  return height && figure(height);
}
