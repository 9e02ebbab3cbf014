// What can be said against a typical curve or an aim taken from a band: one function a message.

import { issueMessage } from "../message.ts";

export const outsideCurve = issueMessage(
  "sand/typical-outside",
  "error",
  (what: string, value: string, low: string, high: string, unit: string) => ({
    message: `${what} of ${value} ${unit} lies outside ${low} to ${high}, where this curve holds: no figure.`,
    remedy: "Take your own batches' figures instead; a curve is not drawn beyond its points.",
  }),
);

export const modelWantsLowClay = issueMessage(
  "sand/typical-clayey",
  "error",
  (clay: string, most: string) => ({
    message: `With ${clay} % clay the clay sets the permeability, not the grain: the model is for sands with up to ${most} % of dry sand and clay, and gives no figure.`,
    remedy:
      "Test the permeability; published sands of 36 and 56 % clay let through a tenth of what this says.",
  }),
);

export const modelIsUpperGuide = issueMessage("sand/typical-clay-closes", "warning", (clay: string) => ({
  message: `The model is for dry sand without clay; ${clay} % clay and its water close pores, by more than it can say.`,
  remedy: "Read the figure as a guide from above.",
}));

export const porosityAssumed = issueMessage("sand/typical-porosity", "note", (low: string, high: string) => ({
  message: `The voids of the rammed sand were not given: ${low} to ${high} of the volume is in the range.`,
  remedy: "Weigh a rammed specimen of known size; its density gives the voids.",
}));

export const shapeAssumed = issueMessage("sand/typical-shape", "note", () => ({
  message: "The grains' shape was not given: angularity 1.1 to 1.5 is in the range.",
}));

export const strengthLevelsOff = issueMessage("sand/typical-strength-levels", "note", () => ({
  message:
    "One published series found that strength stops rising beyond about 7 % bentonite, where the relation goes on rising: the low end stays at 7 %.",
}));

export const moistureDisagrees = issueMessage(
  "sand/typical-moisture-disagrees",
  "warning",
  (stated: string, implied: string) => ({
    message: `At this clay and strength the available-bond relation expects ${implied} % water of damp mass, not the ${stated} % stated: the two relations disagree here.`,
    remedy: "Trust neither end of the band; a batch of your own tells more.",
  }),
);

export const strengthBeyond = issueMessage(
  "sand/typical-strength-beyond",
  "error",
  (kPa: string, low: string, high: string) => ({
    message: `The relation comes out at ${kPa} kPa; it is taken to hold from ${low} to ${high} kPa: no figure.`,
    remedy: "Test the strength itself: a batch of your own tells more than a relation beyond its range.",
  }),
);

export const onePublishedSand = issueMessage(
  "sand/typical-one-sand",
  "note",
  (low: string, high: string) => ({
    message: `The curve is one published sand's own, and its fineness was not printed: published bentonite sands run from ${low} to ${high}, so compare the slope, not the level.`,
  }),
);

export const temperOutside = issueMessage(
  "sand/temper-outside",
  "note",
  (way: string, clay: string, low: string, high: string) => ({
    message: `${way}: no figure at ${clay} % clay; its points lie at ${low} to ${high} %.`,
  }),
);

export const temperWaysDisagree = issueMessage(
  "sand/temper-ways-disagree",
  "warning",
  (low: string, high: string) => ({
    message: `The ways put temper at ${low} to ${high} % water of damp mass: no one law was found in print.`,
    remedy: "Start at the dry end, mull, and steer by compactability.",
  }),
);

export const aimNotKnown = issueMessage(
  "sand/aim-not-known",
  "note",
  (property: string, metal: string, bond: string, practice: string) => ({
    message: `No usual range of ${property} is known here for ${metal} in ${bond} sand, ${practice}.`,
    remedy: `Write your own under aims if ${property} matters to you.`,
  }),
);

export const permeabilityAimNeedsFineness = issueMessage(
  "sand/aim-needs-fineness",
  "note",
  (ranges: readonly string[]) => ({
    message: `No aim for permeability: its usual range follows the fineness of the sand, and those known go with a fineness number of ${ranges.join("; ")}.`,
    remedy: "Sieve the sand, or write your own aim.",
  }),
);

export const aimFromNaturalSand = issueMessage("sand/aim-natural", "warning", () => ({
  message:
    "These aims are for natural-bonded sand. So much water in bentonite sand can erupt as steam under the metal.",
  remedy: "If bentonite was added, set the bond to bentonite.",
}));

export const aimsAreWeak = issueMessage("sand/aims-weak", "note", (properties: readonly string[]) => ({
  message: `Usual ranges stand in as aims for ${properties.length < 2 ? properties.join("") : `${properties.slice(0, -1).join(", ")} and ${properties.at(-1)}`}; no source was read that recommends them. They are a start and decide nothing.`,
  remedy: "Replace them by what your own good castings were made in.",
}));
