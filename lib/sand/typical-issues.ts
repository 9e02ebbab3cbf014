// What can be said against a typical curve or an aim taken from a band: one function a message.

import type { Issue } from "../issue.ts";

export const outsideCurve = (
  what: string,
  value: string,
  low: string,
  high: string,
  unit: string,
): Issue => ({
  code: "sand/typical-outside",
  severity: "error",
  message: `${what} of ${value} ${unit} lies outside ${low} to ${high}, where this curve holds: no figure.`,
  remedy: "Take your own batches' figures instead; a curve is not drawn beyond its points.",
});

export const modelWantsLowClay = (clay: string, most: string): Issue => ({
  code: "sand/typical-clayey",
  severity: "error",
  message: `With ${clay} % clay the clay sets the permeability, not the grain: the model is for sands with up to ${most} % of dry sand and clay, and gives no figure.`,
  remedy: "Test the permeability; published sands of 36 and 56 % clay let through a tenth of what this says.",
});

export const modelIsUpperGuide = (clay: string): Issue => ({
  code: "sand/typical-clay-closes",
  severity: "warning",
  message: `The model is for dry sand without clay; ${clay} % clay and its water close pores, by more than it can say.`,
  remedy: "Read the figure as a guide from above.",
});

export const porosityAssumed = (low: string, high: string): Issue => ({
  code: "sand/typical-porosity",
  severity: "note",
  message: `The voids of the rammed sand were not given: ${low} to ${high} of the volume is in the range.`,
  remedy: "Weigh a rammed specimen of known size; its density gives the voids.",
});

export const shapeAssumed = (): Issue => ({
  code: "sand/typical-shape",
  severity: "note",
  message: "The grains' shape was not given: angularity 1.1 to 1.5 is in the range.",
});

export const strengthLevelsOff = (): Issue => ({
  code: "sand/typical-strength-levels",
  severity: "note",
  message:
    "One published series found that strength stops rising beyond about 7 % bentonite, where the relation goes on rising: the low end stays at 7 %.",
});

export const moistureDisagrees = (stated: string, implied: string): Issue => ({
  code: "sand/typical-moisture-disagrees",
  severity: "warning",
  message: `At this clay and strength the available-bond relation expects ${implied} % water of damp mass, not the ${stated} % stated: the two relations disagree here.`,
  remedy: "Trust neither end of the band; a batch of your own tells more.",
});

export const strengthBeyond = (kPa: string, low: string, high: string): Issue => ({
  code: "sand/typical-strength-beyond",
  severity: "error",
  message: `The relation comes out at ${kPa} kPa; it is taken to hold from ${low} to ${high} kPa: no figure.`,
});

export const onePublishedSand = (low: string, high: string): Issue => ({
  code: "sand/typical-one-sand",
  severity: "note",
  message: `The curve is one published sand's own, and its fineness was not printed: published bentonite sands run from ${low} to ${high}, so compare the slope, not the level.`,
});

export const temperOutside = (way: string, clay: string, low: string, high: string): Issue => ({
  code: "sand/temper-outside",
  severity: "note",
  message: `${way}: no figure at ${clay} % clay; its points lie at ${low} to ${high} %.`,
});

export const temperWaysDisagree = (low: string, high: string): Issue => ({
  code: "sand/temper-ways-disagree",
  severity: "warning",
  message: `The ways put temper at ${low} to ${high} % water of damp mass: no one law was found in print.`,
  remedy: "Start at the dry end, mull, and steer by compactability.",
});

export const aimNotKnown = (property: string, metal: string, bond: string, practice: string): Issue => ({
  code: "sand/aim-not-known",
  severity: "note",
  message: `No usual range of ${property} is known here for ${metal} in ${bond} sand, ${practice}.`,
  remedy: `Write your own under aims if ${property} matters to you.`,
});

export const permeabilityAimNeedsFineness = (ranges: readonly string[]): Issue => ({
  code: "sand/aim-needs-fineness",
  severity: "note",
  message: `No aim for permeability: its usual range follows the fineness of the sand, and those known go with a fineness number of ${ranges.join("; ")}.`,
  remedy: "Sieve the sand, or write your own aim.",
});

export const aimFromNaturalSand = (): Issue => ({
  code: "sand/aim-natural",
  severity: "warning",
  message:
    "These aims are for natural-bonded sand. So much water in bentonite sand can erupt as steam under the metal.",
  remedy: "If bentonite was added, set the bond to bentonite.",
});

export const aimsAreWeak = (properties: readonly string[]): Issue => ({
  code: "sand/aims-weak",
  severity: "note",
  message: `Usual ranges stand in as aims for ${properties.join(", ")}; no source was read that recommends them. They are a start and decide nothing.`,
  remedy: "Replace them by what your own good castings were made in.",
});
