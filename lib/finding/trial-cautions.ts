// Hazards of the bench tests and of mulling, each brought up by what the log holds.

import type { TestName } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import { localRules, silicaDust } from "./cautions.ts";
import type { Caution } from "./finding.ts";

const defers = localRules;

/** Over-wet sand under metal. */
export const overWet: Caution = {
  code: "caution/over-wet",
  trigger: "because this page is about water in moulding sand",
  text: "Over-wet or puddled sand can erupt under molten metal: water that cannot leave as steam throws the metal out.",
  points: [
    "Keep wet batches for the bench, and never pour on them; bring them back by spreading, turning and drying.",
    "Vent every mould, and never mend a dry mould with a splash of water at its face.",
    "No figure on this page says that a mould may be poured.",
  ],
  defers,
};

/** Dry sand and bentonite are weighed, tipped and dried. */
export const mixingDust: Caution = {
  ...silicaDust,
  code: "caution/mixing-dust",
  trigger: "because dry sand and bentonite are weighed and mixed",
  points: [
    "Weigh and tip outdoors or under extraction, from low down, and damp the sand before the clay goes in.",
    ...silicaDust.points.slice(2, 5),
  ],
};

export const mullerStopped: Caution = {
  code: "caution/muller",
  trigger: "because the sand was mulled",
  text: "A muller's wheels and ploughs crush and drag in hands, sleeves and hair.",
  points: [
    "Take samples only from a muller that stands still and is unplugged.",
    "Keep guard and lid on while it turns, and know where its stop is before it is started.",
  ],
  defers,
};

export const deadWeight: Caution = {
  code: "caution/dead-weight",
  trigger: "because strength is tested with weights",
  text: "Ten to twenty kilograms fall the moment that the specimen breaks.",
  points: [
    "Let the weight drop no more than a few millimetres: put blocks beside the specimen.",
    "Keep feet and fingers out from under it, and load with water or shot, slowly.",
  ],
  defers,
};

export const fallingRammer: Caution = {
  code: "caution/rammer",
  trigger: "because specimens are rammed",
  text: "A falling rammer breaks fingers.",
  points: ["Both hands on the handle, none on the rim of the tube; keep children away from it."],
  defers,
};

export const airVessel: Caution = {
  code: "caution/air-vessel",
  trigger: "because air is driven through a specimen",
  text: "A vessel under pressure bursts with all the air that is in it.",
  points: [
    "Stay far below 100 gf/cm², a column of water one metre high, and let the water column show it.",
    "Blow it up by mouth or by the column itself: no compressor, no bottle gas, no glass vessel.",
  ],
  defers,
};

export const dryingSand: Caution = {
  code: "caution/drying-sand",
  trigger: "because sand is dried for its moisture",
  text: "Damp sand that is heated fast spits, and a hot dish burns.",
  points: [
    "Dry at about 105 °C (220 °F), in a thin layer, with goggles on; let it cool under a lid before it is weighed.",
    "Over a flame: outdoors, for a flame gives off carbon monoxide, which has no smell.",
    "In a microwave: no bits of metal in the sand, low power, short spells, a cup of water beside the sample, and a stop at any smell of scorching.",
    "An oven, pan or microwave that has dried sand is not used for food again. Dry sand makes dust: no stirring dry.",
  ],
  defers,
};

export const washingClay: Caution = {
  code: "caution/washing-clay",
  trigger: "because clay is washed out of sand",
  text: "Caustic soda blinds and burns: it is not used to wash clay out. Washing soda is enough, and even that stays out of eyes.",
  points: ["Goggles and gloves. Draw off by a siphon that was filled with water, never by mouth."],
  defers,
};

/**
 * Those that the batches of a log bring up, the gravest first.
 * @example trialCautions(batchFigures(log).figures).map(({ text }) => text)
 */
export function trialCautions(rows: readonly BatchFigures[]): readonly Caution[] {
  const tested = (test: TestName): boolean => rows.some(({ tests }) => tests[test] !== undefined);
  const pressed = (["green compression", "green shear", "splitting"] as const).some(tested);
  const rammed = pressed || tested("compactability") || tested("density") || tested("permeability");
  return [
    ...(rows.length > 0 ? [overWet, mixingDust] : []),
    ...(rows.some(({ batch }) => batch.mulledMin) ? [mullerStopped] : []),
    ...(pressed ? [deadWeight] : []),
    ...(rammed ? [fallingRammer] : []),
    ...(tested("permeability") ? [airVessel] : []),
    ...(tested("moisture") ? [dryingSand] : []),
    ...(tested("clay by wash") ? [washingClay] : []),
  ];
}
