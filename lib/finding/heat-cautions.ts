// Hazards of figures about heat: they stand before any of them.

import { localRules } from "./cautions.ts";
import type { Caution } from "./finding.ts";

export const frozenIsHot: Caution = {
  code: "caution/frozen-is-hot",
  trigger: "because this page compares how sections freeze",
  text: "Metal that looks frozen burns to the bone, and can still be liquid inside and run out.",
  points: [
    "No figure on this page says when a mould may be opened: leave it overnight where you can, and open it cold.",
    "Hot sand in a heap stays hot for hours; it burns feet, and water on it scalds as steam.",
    "Shake out over dry sand, not on a bare concrete floor, in boots, gloves and face shield.",
    "A poured mould gives off carbon monoxide, which has no smell: pour and shake out outdoors, never in a closed shed or a cellar.",
  ],
  defers: localRules,
};

export const waterOnHotSand: Caution = {
  code: "caution/water-on-hot-sand",
  trigger: "because a heap is watered after a pour",
  text: "Water on hot sand flashes to steam, and water under metal throws it out of the mould.",
  points: [
    "Let sand cool before it is watered or mulled; look for metal left in it first.",
    "Never pour on puddled sand, on a wet floor, or on a heap whose moisture was not tested since it stood.",
  ],
  defers: localRules,
};
