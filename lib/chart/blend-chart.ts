// The grain curve of a blend, with the curve that is wanted and those of its sands.

import type { Chart } from "./chart.ts";
import { grainCurve } from "./grain-curve.ts";
import type { GrainCurveSand } from "./grain-input.ts";

export interface BlendChartInput {
  readonly name: string;
  /** Of the blend, on the sieves that its sands have in common. */
  readonly blend: GrainCurveSand["points"];
  /** The sand whose curve is wanted, where one is. */
  readonly wanted?: GrainCurveSand;
  /** The sands that are in it. */
  readonly of: readonly GrainCurveSand[];
}

/**
 * Draws a blend's grain curve first, then the wanted one, then those of the sands that are in it; grainCurve says how, and
 * what it does with missing figures. Of more than four curves the first four are drawn.
 * @example blendChart({ name: "blend", blend: [{ openingMm: 0.3, label: "No. 50", passingPercent: 90 }], of: [] })
 */
export function blendChart({ name, blend, wanted, of }: BlendChartInput): Chart {
  const aim = wanted ? [{ ...wanted, name: `wanted: ${wanted.name}` }] : [];
  return grainCurve({
    name,
    sands: [{ name: "the blend", points: blend }, ...aim, ...of],
    caption: `Share that passes each sieve, by mass, against the opening: the blend${wanted ? ", what is wanted" : ""} and the sands in it; straight lines join the sieves, upright bars are 95 % intervals.`,
  });
}
