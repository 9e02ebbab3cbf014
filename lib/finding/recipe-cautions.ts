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
    "Guard belt, chain and wheels; a lid that stops the drive, and a stop within reach after which it does not start again by itself.",
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
    "Carbon monoxide has no smell: no pour and no shake-out in a closed shed or a cellar, and an alarm for it where people stand.",
    "Aluminium seldom needs coal dust (common practice): leave out what the casting does not ask for.",
    "Fine coal and flour dust can burn in the air: no flame and no sparks while it is tipped.",
  ],
  defers: localRules,
};

export const dryingHeap: Caution = {
  code: "caution/drying-heap",
  trigger: "because the sand is dried before it is mixed",
  text: "Sand that is heated fast spits steam and grains and burns skin, and sand that is dried out is dust again.",
  points: [
    "Spread it thin in sun and wind and turn it; stop while it still clumps, for it need not be dry to be dry enough.",
    "Over heat: outdoors, low, stirred, with goggles and dry gloves; cold right through before the clay goes in.",
  ],
  defers: localRules,
};

export const heavyLoads: Caution = {
  code: "caution/heavy-loads",
  trigger: "because sand is carried by the bag and the bucket",
  text: "A bag of sand or a full bucket weighs 15 to 25 kg (35 to 55 lb) and takes backs and toes with it.",
  points: [
    "Fill buckets half, or lift with two: close to the body, without a twist, and no feet under the load.",
  ],
  defers: localRules,
};

/**
 * The cautions of a recipe page, the gravest first. dried: the sand is too wet as it lies.
 * @example recipeCautions({ muller: true, additives: false }).length > 0 // true
 */
export function recipeCautions({
  muller,
  additives,
  dried = false,
}: {
  readonly muller: boolean;
  readonly additives: boolean;
  readonly dried?: boolean;
}): readonly Caution[] {
  return [
    overWet,
    mixingDust,
    ...(muller ? [homeMuller] : []),
    ...(additives ? [additiveFume] : []),
    ...(dried ? [dryingHeap] : []),
    heavyLoads,
  ];
}
