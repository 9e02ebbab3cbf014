// Hazards of looking over castings and of what they are put down to, the gravest first.

import { phraseMessage } from "../message.ts";
import { localRules } from "./cautions.ts";
import { type Caution, triggeredBy } from "./finding.ts";
import { frozenIsHot } from "./heat-cautions.ts";
import { overWet } from "./trial-cautions.ts";

export const gasUnderMetal: Caution = {
  code: "caution/gas-under-metal",
  trigger: "because this page is about holes that gas and steam leave",
  text: "The gas that leaves holes can also throw metal out of the mould: a blow is an eruption that stayed small.",
  points: [
    "Metal on wet sand turns its water to steam at once; a gassy casting is a reason to stop and test, not to vent more and pour again.",
    "Damp scrap, tools, flux or ladles throw metal out of the crucible: heat them through before they touch it. Scrap with a closed hollow in it bursts in the melt: leave it out.",
    "Degassing tablets and gases give off fumes that injure the lungs; tablets that give off chlorine are for licensed works, not for a yard.",
    "No figure on this page says that a sand or a mould may be poured on.",
  ],
  defers: localRules,
};

export const fettlingDust: Caution = {
  code: "caution/fettling-dust",
  trigger: "because castings are fettled before they are looked over",
  text: "Burnt-on sand that is ground, wire-brushed or blasted off becomes silica dust, finer than that of sieving, and it scars the lungs for good.",
  points: [
    "Once it is cold right through, soak the casting and knock sand off wet, outdoors; no blasting with sand, no compressed air.",
    "Wear a mask that seals, N95, FFP2 or better, and goggles; chips from a grinder or chisel take eyes.",
    "Wipe up wet or use a HEPA vacuum. No dry sweeping.",
    "A casting that cracked or has holes is weaker than it looks: none of it holds a load, pressure or a wheel.",
  ],
  defers: localRules,
};

/** Why a caution of heat stands on a page of castings. */
export const shakenOut = phraseMessage(
  "caution/trigger-shaken-out",
  () => "because castings are shaken out before they are looked over",
);

export const castingCautions: readonly Caution[] = Object.freeze([
  gasUnderMetal,
  overWet,
  triggeredBy(frozenIsHot, shakenOut()),
  fettlingDust,
]);
