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

/** With the blend as many as there are colours. */
const mostSands = 3;

/**
 * Draws the grain curves of up to three sands, each in the colour that a strip of the same sands gives it, then that of
 * the blend, and quietly the wanted one; grainCurve says how, and what it does with missing figures.
 * @example blendChart({ name: "blend", blend: [{ openingMm: 0.3, label: "No. 50", passingPercent: 90 }], of: [] })
 */
export function blendChart({ name, blend, wanted, of }: BlendChartInput): Chart {
  const aim = wanted ? [{ ...wanted, name: `wanted: ${wanted.name}`, quiet: true }] : [];
  const drawn = of.slice(0, mostSands);
  const left = of.length - drawn.length;
  const others = left === 0 ? "" : ` The first ${mostSands} of its ${of.length} sands are drawn.`;
  return grainCurve({
    name,
    sands: [...drawn, { name: "the blend", points: blend }, ...aim],
    most: drawn.length + 1 + aim.length,
    caption: `Share that passes each sieve, by mass, against the opening: the blend${wanted ? ", what is wanted" : ""} and the sands in it; straight lines join the sieves, upright bars are 95 % intervals.${others}`,
  });
}
