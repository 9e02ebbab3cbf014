// What others have found of a property's course over water, for founders with three or four batches.

import type { TestName, TrialAxis } from "../log/batch.ts";
import { mean } from "../numbers/summary.ts";
import { publishedWaterSensitivity } from "../sand/published-water-sensitivity.ts";
import type { SlopePrior } from "./slope-prior.ts";

/**
 * Scatter of home batches about their curve before any was made: points of compactability, % of water, a share of the
 * permeability number; our own. The first two are the sd of the rounding of a figure written to 1 point and to 0.1 %, and
 * weigh a twentieth of one degree of freedom, next to nothing: three readings that fall on one line by their rounding are
 * not exact. Permeability, with a bend to find as well, needs a whole degree.
 */
const homeScatter = {
  compactability: { sd: 0.3, df: 0.05 },
  moisture: { sd: 0.03, df: 0.05 },
  permeability: { share: 0.04, df: 1 },
} as const;

/** Of the permeability number's own size, for 1 % of water, at 4.5 %. */
const permeabilityPerWater = {
  at: 4.5,
  from: 3,
  to: 8,
  slope: -0.024,
  sd: 0.048,
  bend: { value: -0.0134, sd: 0.033 },
} as const;

const seriesSource =
  "Universitas Brawijaya casting laboratory, joint table 2.2 (6 and 8 % bentonite, 3 to 6 % water); Universitas Sebelas Maret, thesis on water in bentonite sand (4 and 8 % water)";

/**
 * The prior for a test over an axis, or undefined where nothing printed would hold one. x: where the batches stand;
 * y: their figures, for a permeability whose course is given in shares of its own size.
 *
 * - Compactability over moisture, and moisture over compactability: the range of publishedWaterSensitivity, which the
 *   first dose uses too, as a normal with the middle and sd of even draws over it: 29 ± 11 (sd) points for 1 %; 0.060 ±
 *   0.023 % for a point. The scatter of the batches is left to the batches.
 * - Permeability over moisture, 3 to 8 % only: three series. Slope at 4.5 % in shares of the number: −4.6 % (6 %
 *   bentonite), −1.0 % (8 %), −1.7 % (the third, brought from 6 % by the bend): mean −2.4, sd 1.9; bend −1.6 and −1.05.
 *   Each sd is widened so that 1.96 of it holds what Student's t gives for one more series: 4.8 and 3.3 %.
 * - Strength: one series, two waters, no scatter and no bend printed, and a peak somewhere between: none.
 *
 * Bentonite sand alone: ask only there.
 * @example publishedSlope("compactability", "moisture", [3, 3.5, 4], [38, 43, 49]) !== undefined // true
 */
export function publishedSlope(
  test: TestName,
  axis: TrialAxis,
  x: readonly number[],
  y: readonly number[],
): SlopePrior | undefined {
  if (x.length === 0) return undefined;
  const at = mean(x);
  const { low, high, source } = publishedWaterSensitivity;
  const between = "from a shop's ratio to what is worked out for fully mulled foundry sand; taken as";
  if (test === "compactability" && axis === "moisture")
    return {
      says: `In print 1 % of water moves compactability by anything from 10 to 48 points, ${between} 29 ± 21.`,
      source,
      ...evenly(10 / high, 10 / low),
      at,
      bend: undefined,
      scatter: homeScatter.compactability,
    };
  if (test === "moisture" && axis === "compactability")
    return {
      says: `In print 10 points of compactability take anything from 1.0 to 0.21 points of moisture, ${between} 0.6 ± 0.4.`,
      source,
      ...evenly(low / 10, high / 10),
      at,
      bend: undefined,
      scatter: homeScatter.moisture,
    };
  const { from, to, bend, ...published } = permeabilityPerWater;
  const tried = Math.min(...x) >= from && Math.max(...x) <= to;
  if (test !== "permeability" || axis !== "moisture" || !tried) return undefined;
  const size = mean(y);
  return {
    says: "Others have found permeability to change by a few hundredths of itself for 1 % of water, with a flat top.",
    source: seriesSource,
    slope: published.slope * size,
    sd: published.sd * size,
    at: published.at,
    bend: { value: bend.value * size, sd: bend.sd * size },
    scatter: { sd: homeScatter.permeability.share * size, df: homeScatter.permeability.df },
  };
}

/** Middle and sd of even draws. */
const evenly = (low: number, high: number): { readonly slope: number; readonly sd: number } => ({
  slope: (low + high) / 2,
  sd: (high - low) / Math.sqrt(12),
});
