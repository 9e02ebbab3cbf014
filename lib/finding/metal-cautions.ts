// The fume and the fire of metals that are not plain aluminium, brought up by what a log names.

import type { Log } from "../log/types.ts";
import { localRules } from "./cautions.ts";
import type { Caution } from "./finding.ts";

export const zincFume: Caution = {
  code: "caution/zinc-fume",
  trigger: "because the log names brass, bronze or zinc",
  text: "Molten brass and zinc give off a white fume that brings chills and fever within hours, and old alloys give off lead with it.",
  points: [
    "Melt and pour outdoors with the wind at your back, no hotter than the casting asks for; a mask against dust does not make fume harmless.",
    "Galvanised and painted scrap stays out of the crucible. Wash, and change clothes, before eating and before going indoors.",
    "Fever after a pour is fume that was breathed: stop pouring, and ask a doctor.",
  ],
  defers: localRules,
};

export const magnesiumFire: Caution = {
  code: "caution/magnesium-fire",
  trigger: "because the log names magnesium",
  text: "Magnesium burns with a light that harms eyes, and water, damp sand and carbon dioxide feed its fire.",
  points: [
    "It is work for licensed foundries, with sand and cover made for it: it is not melted in a yard, and not poured into plain green sand.",
    "Light scrap of unknown metal, such as wheels and housings of engines and saws, may be magnesium: it stays out of the crucible.",
    "No water on such a fire: get away from it, keep others away, and call the fire brigade.",
  ],
  defers: localRules,
};

/**
 * The cautions of the metals that a log names: its own, and the alloys of its pours.
 * @example metalCautions({ metal: "brass and bronze", events: [] }).length // 1
 */
export function metalCautions({ metal, events }: Pick<Log, "metal" | "events">): readonly Caution[] {
  const alloys = events.flatMap((event) => (event.kind === "pour" ? (event.alloy ?? []) : []));
  const names = (pattern: RegExp) => [metal ?? "", ...alloys].some((name) => pattern.test(name));
  return [
    ...(names(/magnesium/i) ? [magnesiumFire] : []),
    ...(names(/brass|bronze|gunmetal|zinc|galvani/i) ? [zincFume] : []),
  ];
}
