// Hazards of blending dry sands.

import { localRules, silicaDust } from "./cautions.ts";
import type { Caution } from "./finding.ts";

/** Kilograms of dry sand are tipped and turned, not a sieve's handful. */
export const blendingDust: Caution = {
  ...silicaDust,
  code: "caution/blending-dust",
  trigger: "because dry sands are sieved, tipped and mixed",
  points: [
    "Blend outdoors with the wind at your back or under extraction, or damp both sands first and take their water off the weights.",
    ...silicaDust.points.slice(0, 1),
    ...silicaDust.points.slice(2),
  ],
};

/** Where a tub is turned by a machine. */
export const turningTub: Caution = {
  code: "caution/turning-tub",
  trigger: "because a blend is often turned in a mixer or muller",
  text: "A turning drum or muller drags in hands, sleeves and tools.",
  points: [
    "Guards on, lid shut; stop it and lock it off before reaching in, cleaning or sampling.",
    "Lift no more than you can: a full bucket of sand weighs 15 to 20 kg (35 to 45 lb).",
  ],
  defers: localRules,
};
