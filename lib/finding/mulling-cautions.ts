// Hazards of mulling by machine and by hand, each brought up by what the log holds.

import { HOT_SAND_C, type SandHeat } from "../sand/hot-sand.ts";
import { localRules, silicaDust } from "./cautions.ts";
import type { Caution } from "./finding.ts";
import { deadWeight, overWet } from "./trial-cautions.ts";

/** Home-made machines have no maker who thought of hands. */
export const movingMuller: Caution = {
  code: "caution/moving-muller",
  trigger: "because sand is mulled in a machine",
  text: "A turning muller drags in a hand, a sleeve or a scoop and does not let go: slow wheels on a strong gearbox crush what they catch.",
  points: [
    "Guards over wheels, ploughs, belts and gears, and a lid that stops the drive when it is lifted, before the first turn.",
    "Never reach in, scrape, wet or sample while it turns: stop it, cut its supply, and lock it off or keep the plug in your own pocket before cleaning or emptying.",
    "A stop that is hit without looking, within reach of whoever stands there; no gloves, loose sleeves, strings or long hair; children out of the yard.",
    "The wiring of a home-made machine near water and damp sand, its earth and its breaker are work for a qualified electrician.",
  ],
  defers: localRules,
};

/** The dry minutes make the dust. */
export const dryMullingDust: Caution = {
  ...silicaDust,
  code: "caution/dry-mulling-dust",
  trigger: "because sand and clay may be turned dry before the water goes in",
  points: [
    "Damp the sand before the clay goes in, or keep a tight lid on and let the dust settle before it is opened.",
    ...silicaDust.points.slice(2),
  ],
};

/** Whatever it has been measured at: it comes from the last casting. */
export const hotSandInMuller: Caution = {
  code: "caution/hot-sand",
  trigger: "because sand goes back into the muller after shaking out",
  text: "Sand from the last casting burns skin and throws steam when it is wetted; its middle stays hot for hours under a cool crust.",
  points: [
    `Spread it and let it cool: from about ${HOT_SAND_C} °C (120 °F) sand mulls unevenly, and water that is put into it leaves as steam.`,
    "Pick out metal, fins and hot lumps with a tool before it goes near hands or wheels.",
    "Measure in the middle of the heap, not on its skin.",
  ],
  defers: localRules,
};

/**
 * Those that a page on mulling shows, the gravest first. heat: of the sand, where the log says it.
 * @example mullingCautions({ machine: true, trials: true }).length > 1 // true
 */
export function mullingCautions(of: {
  readonly machine: boolean;
  readonly trials: boolean;
  readonly heat?: SandHeat;
}): readonly Caution[] {
  return [
    ...(of.machine ? [movingMuller] : []),
    ...(of.heat !== undefined && of.heat !== "cool" ? [hotSandInMuller] : []),
    dryMullingDust,
    ...(of.heat === undefined || of.heat === "cool" ? [hotSandInMuller] : []),
    overWet,
    ...(of.trials ? [deadWeight] : []),
  ];
}
