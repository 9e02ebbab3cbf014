// Hazards of making up a heap.

import { localRules } from "./cautions.ts";
import type { Caution } from "./finding.ts";
import { mixingDust, overWet } from "./trial-cautions.ts";

export const homeMuller: Caution = {
  code: "caution/home-muller",
  trigger: "because the loads are for a muller",
  text: "A turning muller drags in hands, sleeves, hair and scoops, and a home-made one has no guard unless you built it.",
  points: [
    "Unplug it, or lock it off, before a hand or a scoop goes in: to fill, to sample, to empty.",
    "Guard belt, chain and wheels; a stop within reach that does not start again by itself.",
    "Add clay and water while it stands. Nothing is poured in past turning ploughs.",
    "Let hot sand from a shake-out cool first: hot sand steams in the pan and does not mull evenly.",
  ],
  defers: localRules,
};

export const additiveFume: Caution = {
  code: "caution/additive-fume",
  trigger: "because the recipe has additives",
  text: "Coal dust, flour and oils burn at the mould face and give off carbon monoxide and harmful fume.",
  points: [
    "Pour outdoors or under strong extraction, and keep out of what rises from the mould until it is cold.",
    "Aluminium seldom needs coal dust (common practice): leave out what the casting does not ask for.",
    "Fine coal and flour dust can burn in the air: no flame and no sparks while it is tipped.",
  ],
  defers: localRules,
};

/**
 * The cautions of a recipe page, the gravest first.
 * @example recipeCautions({ muller: true, additives: false }).length > 0 // true
 */
export function recipeCautions({
  muller,
  additives,
}: {
  readonly muller: boolean;
  readonly additives: boolean;
}): readonly Caution[] {
  return [overWet, mixingDust, ...(muller ? [homeMuller] : []), ...(additives ? [additiveFume] : [])];
}
