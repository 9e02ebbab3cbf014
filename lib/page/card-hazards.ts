// The hazard of each bench procedure, which stands in the first line of its card.

import type { Hazard } from "./card-kinds.ts";

const muller =
  "Take the sample only from a muller that is stopped and unplugged, never through the lid or past turning wheels.";
const dust = "Damp sand makes little dust, dried sand much: a mask that seals, wet wiping, no dry sweeping.";

export const loadHazard: Hazard = {
  text: "Ten to twenty kilograms come down at once when the specimen breaks: fingers, toes and eyes out of the way.",
  trigger: "because you load a specimen with dead weight until it breaks",
  points: [
    "Set blocks a few millimetres below the disc or pail, so that they catch it; work low, over the bench or floor.",
    "Add water or shot slowly from the side. No hand goes under the load, and no face over it.",
    muller,
  ],
};

export const rammerHazard: Hazard = {
  text: "A falling rammer crushes fingers: both hands stay on its handle, and none on the rim of the tube.",
  trigger: "because you ram sand with a falling weight",
  points: [
    "Fix the tube's foot so that nobody has to hold it; let the weight drop, and lift it only by its handle.",
    muller,
    dust,
  ],
};

/** A day of all the tests. */
export const testDayHazard: Hazard = {
  text: rammerHazard.text,
  trigger: "because a test day rams, loads and dries sand",
  points: [
    "The load comes down at once when the specimen breaks, and hot pans burn: read the card of each test.",
    ...rammerHazard.points,
  ],
};

export const pressHazard: Hazard = {
  text: "A press crushes fingers before they are felt: nothing but the plunger goes near the tube while it is loaded.",
  trigger: "because you press sand with about two hundred kilograms",
  points: [
    "Stand beside the lever, not under it; chock it, so that it cannot fly up when it is let go.",
    "Seat the plunger straight: one that tips throws the tube. Eye protection.",
    muller,
    dust,
  ],
};

export const dryingHazard: Hazard = {
  text: "Hot pans burn, and damp sand that is heated fast spits steam and grains: eye protection and dry gloves.",
  trigger: "because you dry sand with heat",
  points: [
    "The oven, pan or microwave that has dried sand is not used for food again.",
    "Over a flame: outdoors, for carbon monoxide has no smell. A microwave: no bits of metal in the sand, low power, a cup of water beside the sample, short spells, stop at any smell of scorching.",
    muller,
    dust,
  ],
};

export const pressureHazard: Hazard = {
  text: "A vessel under air pressure can burst: never more than 1000 mm of water (100 gf/cm²), and no sealed tins or glass.",
  trigger: "because you push air through a specimen",
  points: [
    "Let an open column of water limit the pressure: it blows out before a vessel does. No compressor, no pump left alone.",
    "A falling rammer crushes fingers: both hands on its handle while the specimen is rammed.",
    muller,
  ],
};

export const suctionHazard: Hazard = {
  text: "A thin bottle under suction caves in, and glass flies: use a thick plastic bottle, and stay below 200 mm of water.",
  trigger: "because you draw air through a specimen",
  points: [
    "Open the drain slowly; if the suction climbs, close it and let air in at the top.",
    "A falling rammer crushes fingers: both hands on its handle while the specimen is rammed.",
    muller,
  ],
};

export const washHazard: Hazard = {
  text: "Never caustic soda: it blinds and burns. Washing soda is enough, and even that stays out of eyes.",
  trigger: "because you wash clay out of sand",
  points: [
    "Goggles and gloves. Draw off by a siphon that was filled with water, never by mouth.",
    `Dry the grain in a dish that is not used for food again. ${dust}`,
  ],
};

export const squeezeHazard: Hazard = {
  text: "A hand in a muller is lost before it is felt: stop it, unplug it, and only then reach in.",
  trigger: "because you take sand from a muller by hand",
  points: [
    "Sand with resin, oil or fresh burnt sand in it is squeezed in a glove; wash hands before eating.",
    "Sand that smears is too wet for metal: over-wet sand can erupt under it.",
  ],
};

export const sievingHazard: Hazard = {
  text: "Silica dust scars the lungs for good, and the dust that does it is too fine to see.",
  trigger: "because you sieve dry sand",
  points: [
    "Lid on, outdoors with the wind at your back or under extraction; let the stack stand a minute before it is opened.",
    "A mask that seals, N95, FFP2 or better. Wipe up wet: no dry sweeping, no compressed air.",
    "The pan or oven that dried the sand is not used for food again.",
  ],
};

export const trialHazard: Hazard = {
  text: "Over-wet sand can erupt under metal: the wet end of a trial is for the bench, and is not poured on.",
  trigger: "because a trial makes batches that are too wet on purpose",
  points: [
    muller,
    "Weigh bentonite and dry sand with a mask that seals: both make dust that harms the lungs.",
    "Ramming, loading and drying have hazards of their own: read the card of each test. What has dried sand is not used for food again.",
    "The wettest batch goes back with dry sand and clay, mulled again, before it comes near a mould.",
  ],
};
