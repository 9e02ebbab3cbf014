// Hazards of working a heap, each brought up by what the log holds.

import type { Log } from "../log/types.ts";
import { localRules } from "./cautions.ts";
import type { Caution } from "./finding.ts";
import { frozenIsHot, waterOnHotSand } from "./heat-cautions.ts";
import { metalCautions } from "./metal-cautions.ts";
import { mixingDust, mullerStopped, overWet } from "./trial-cautions.ts";

export const dampFloor: Caution = {
  code: "caution/damp-floor",
  trigger: "because the page is about a heap that lies on a floor",
  text: "Metal spilt on a damp floor or on concrete throws itself about: the water under it turns to steam.",
  points: [
    "Pour over a bed of dry sand or a steel tray with dry sand in it, not over the heap and not over bare concrete.",
    "Water the heap away from where metal is poured, and wipe up puddles before the melt is hot.",
  ],
  defers: localRules,
};

/**
 * The gravest first; waterOnHotSand, frozenIsHot and those of the metal where the log pours.
 * @example heapCautions(log).map(({ text }) => text)
 */
export function heapCautions(log: Log): readonly Caution[] {
  const pours = log.events.some(({ kind }) => kind === "pour") || log.planned !== undefined;
  return [
    overWet,
    ...(pours ? [frozenIsHot] : []),
    ...(pours || log.weather ? [waterOnHotSand] : []),
    ...(pours ? [dampFloor, ...metalCautions(log)] : []),
    mixingDust,
    mullerStopped,
  ];
}
