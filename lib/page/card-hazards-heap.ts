// The hazards of working a heap and of its bench checks; those that a page knows as cautions are the same here.

import { castingCautions } from "../finding/casting-cautions.ts";
import type { Caution } from "../finding/finding.ts";
import { frozenIsHot, waterOnHotSand } from "../finding/heat-cautions.ts";
import { mullingCautions } from "../finding/mulling-cautions.ts";
import { mixingDust, overWet } from "../finding/trial-cautions.ts";
import { invariant } from "../issue.ts";
import type { Hazard } from "./card-kinds.ts";

/** A page's caution on a card: its words, the card's own trigger, and no more points than a card has room for. */
const onCard = ({ text, points }: Caution, trigger: string, most = points.length): Hazard => ({
  text,
  trigger,
  points: points.slice(0, most),
});

function named(cautions: readonly Caution[], code: string): Caution {
  const found = cautions.find((caution) => caution.code === code);
  invariant(found !== undefined, `no caution has the code ${code}`);
  return found;
}

export const pourHazard: Hazard = {
  text: "Metal spilt on damp sand or on concrete throws itself about: dry sand under the mould, and nobody near who need not be.",
  trigger: "because you write down a pour",
  points: [
    "This card is for the figures and teaches no melting: that is learnt beside somebody who does it.",
    "Face shield, leather gloves and apron, boots under the trousers. Write before and after, never with a ladle in hand.",
    "Damp scrap, tools and moulds throw metal out.",
    "Scrap with a closed hollow bursts in the melt; brass and zinc fume makes ill; magnesium burns, and water feeds its fire.",
    ...overWet.points.slice(2),
  ],
};

export const statedHazard = onCard(overWet, "because a heap is watered, and then poured on, by such figures");

export const knockOutHazard = onCard(frozenIsHot, "because you knock a mould out");

export const sweepingHazard = onCard(mixingDust, "because sand that lies about is dry");

export const tippingHazard = onCard(mixingDust, "because dry sand and bentonite are weighed and tipped");

export const wateringHazard = onCard(waterOnHotSand, "because you water a heap");

export const standingHazard: Hazard = {
  ...onCard(overWet, "because you temper a heap for the next day", 1),
  points: [
    ...waterOnHotSand.points,
    "A forecast of water is a first dose: test the heap again in the morning, before it is moulded.",
  ],
};

export const mullingHazard = onCard(
  named(mullingCautions({ machine: true, trials: true }), "caution/moving-muller"),
  "because you sample a mix while it is mulled",
);

export const inspectionHazard = onCard(
  named(castingCautions, "caution/fettling-dust"),
  "because you clean castings to look them over",
);

export const bucketHazard: Hazard = {
  text: "A full bucket of damp sand weighs fifteen to twenty-five kilograms and takes backs and toes with it.",
  trigger: "because you lift a bucket onto a scale",
  points: [
    "Fill it half, or lift it with two; keep feet from under it, and the scale on level, dry ground.",
    "Cold sand only. Dry sand makes dust: tip it from low down, with a mask that seals.",
  ],
};

export const weightsHazard: Hazard = {
  text: "A weight that slips breaks toes, and glass jars of water cut: plastic bottles, low over the bench.",
  trigger: "because you stack weights on a scale",
  points: [
    "Water and a scale with a mains lead stay apart: fill and wipe the bottle away from it.",
    "A kitchen scale that has weighed sand or clay stays in the foundry.",
  ],
};
