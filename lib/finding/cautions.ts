// Hazards with their triggers. They stand before the figures that they belong to.

import type { Caution } from "./finding.ts";

export const localRules =
  "Local rules and the sheets of your own materials come first; where they ask for a trained or licensed person, that is who does it.";

/** Dry sieving is the dustiest hour of the whole trade. */
export const silicaDust: Caution = {
  code: "caution/silica-dust",
  trigger: "because this page rests on sieving dry sand",
  text: "Silica dust scars the lungs for good, and the dust that does it is too fine to see.",
  points: [
    "Keep the lid on the stack and let it stand a minute before it is opened.",
    "Sieve outdoors with the wind at your back, or under extraction; washing a portion through the finest sieve in water makes no dust.",
    "Wear a mask that seals, N95, FFP2 or better, and no beard under it. It is the last resort, not the first.",
    "Wipe up wet or use a HEPA vacuum. No dry sweeping, no dry brushing of the bench, no compressed air.",
    "Change out of dusty clothes before going indoors, and keep others away.",
    "Workplace limits, 0.05 mg/m³ of respirable quartz in 8 hours in the USA (29 CFR 1910.1053) and 0.1 in the EU (2017/2398), need measuring that a yard does not have. Dust that is seen is too much; that none is seen does not mean that there is none.",
  ],
  defers: localRules,
};

/** Drying and washing before sieving. */
export const dryingHeat: Caution = {
  code: "caution/drying-heat",
  trigger: "because washed grain is dried before it is sieved",
  text: "Hot pans burn, and steam spits from wet sand that is heated fast.",
  points: [
    "Spread the grain thin, dry it at about 105 °C (220 °F), and let it cool before it is sieved or weighed.",
    "An oven, pan or microwave that has dried sand is not used for food again.",
  ],
  defers: localRules,
};
