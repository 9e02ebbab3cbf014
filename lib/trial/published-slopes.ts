// What others have found of a property's course over water, for founders with three or four batches.

import type { TestName, TrialAxis } from "../log/batch.ts";
import { mean } from "../numbers/summary.ts";
import type { SlopePrior } from "./slope-prior.ts";

/** Points of compactability for 1 % water. The source prints the ratio of the two, 10 to 12; see the comment below. */
const compactabilityPerWater = { slope: 11, sd: 3 } as const;

/**
 * Scatter of home batches about their curve before any was made: points of compactability, % of water, a share of the
 * permeability number, each as if one degree of freedom had found it. Our own; three points say next to nothing of it.
 */
const homeScatter = { compactability: 1, moisture: 0.1, permeability: 0.04 } as const;
const knownScatter = 1;

/** Of the permeability number's own size, for 1 % of water, at 4.5 %. */
const permeabilityPerWater = {
  at: 4.5,
  from: 3,
  to: 8,
  slope: -0.024,
  sd: 0.048,
  bend: { value: -0.0134, sd: 0.033 },
} as const;

const ratioSource =
  "Shop article on testing green sand (anonymous repost): compactability over moisture 10 to 12; spread our own";
const seriesSource =
  "Universitas Brawijaya casting laboratory, joint table 2.2 (6 and 8 % bentonite, 3 to 6 % water); Universitas Sebelas Maret, thesis on water in bentonite sand (4 and 8 % water)";

/**
 * The prior for a test over an axis, or undefined where nothing printed would hold one. x: where the batches stand;
 * y: their figures, for a permeability whose course is given in shares of its own size.
 *
 * - Compactability over moisture: 11 ± 3 (sd) points for 1 %. What is printed is a ratio of 10 to 12, not a slope, by
 *   one weak source; three points of sd, our own, hold it three times over.
 * - Moisture over compactability: the same turned over, 1/11 % for a point, sd 3/11².
 * - Permeability over moisture, 3 to 8 % only: three series. Slope at 4.5 % in shares of the number: −4.6 % (6 %
 *   bentonite), −1.0 % (8 %), −1.7 % (the third, brought from 6 % by the bend): mean −2.4, sd 1.9; bend −1.6 and −1.05.
 *   Each sd is widened so that 1.96 of it holds what Student's t gives for one more series: 4.8 and 3.3 %.
 * - Strength: one series, two waters, no scatter and no bend printed, and a peak somewhere between: none.
 *
 * Bentonite sand alone: ask only there.
 */
export function publishedSlope(
  test: TestName,
  axis: TrialAxis,
  x: readonly number[],
  y: readonly number[],
): SlopePrior | undefined {
  if (x.length === 0) return undefined;
  const at = mean(x);
  if (test === "compactability" && axis === "moisture") {
    const { slope, sd } = compactabilityPerWater;
    return {
      says: "One source prints compactability as 10 to 12 times the moisture; it is taken as about 11 points for 1 % of water, give or take 6.",
      source: ratioSource,
      slope,
      sd,
      at,
      bend: undefined,
      scatter: { sd: homeScatter.compactability, df: knownScatter },
    };
  }
  if (test === "moisture" && axis === "compactability") {
    const { slope, sd } = compactabilityPerWater;
    return {
      says: "One source prints compactability as 10 to 12 times the moisture; it is taken as about 0.09 % of water for a point, give or take 0.05.",
      source: ratioSource,
      slope: 1 / slope,
      sd: sd / slope ** 2,
      at,
      bend: undefined,
      scatter: { sd: homeScatter.moisture, df: knownScatter },
    };
  }
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
    scatter: { sd: homeScatter.permeability * size, df: knownScatter },
  };
}
