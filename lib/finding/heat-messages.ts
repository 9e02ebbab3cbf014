// The sentences of heat and burn-out, figure first: plain strings in.

import { findingMessage } from "./finding-message.ts";

export const burntSand = findingMessage(
  "heat/burnt-sand",
  "note",
  (range: string, metal: string, clay: string, clayPerKg: string, soFar: string, source: string) => ({
    text: `${range} of sand loses its clay for each ${metal}, with ${clay}${clayPerKg}.${soFar}`,
    because: [
      "The range is wide because it hangs on the temperature at which a clay counts as burnt. Only your own record of rebonding narrows it.",
      "Partly burnt sand counts by its share; cores, corners and thin walls of sand burn more, early shake-out and damp sand less, which is no reason for either.",
    ],
    formula:
      "burnt clay = f × live clay/100 × metal; f is the wear factor read as kg of sand per kg of metal",
    source,
  }),
);

export const kindUnknown = findingMessage("heat/clay-kind-unknown", "doubt", () => ({
  text: "The kind of clay decides most of it, and the log does not say it: write clay kind: sodium bentonite, or calcium bentonite, under heap.",
  because: [
    "Calcium bentonite loses its bond at 316 °C (600 °F), sodium bentonite at 638 °C (1180 °F), where moulds were tested (Vingas & Zrimsek).",
  ],
  source: "Vingas & Zrimsek, Thermal stability of bentonites in foundry molding sand",
}));

export const shareOfMould = findingMessage("heat/share-of-clay", "note", (share: string, ratio: string) => ({
  text: `${share} of the live clay in a mould burns with each pour, at ${ratio} of sand for each of metal.`,
  because: ["A bigger flask for the same casting spreads the same loss over more sand."],
  formula: "β = f/R, R = ρ (flask − casting)/metal",
  source: 'Giesserei Lexikon, "Wear factor", read as a share; the ratio from your flask',
}));

export const sectionNoMatter = findingMessage(
  "heat/section",
  "note",
  (thin: string, thick: string, depths: string, hot: string) => ({
    text: `${depths} of sand beside ${thin} and ${thick} is heated past ${hot}: the depth grows with the section, the sand burnt for each kilogram of metal does not.`,
    because: ["Metal and heated sand grow alike, as long as the metal cools in the mould."],
    formula: "depth = a × section; a by conduction from a plate into sand",
    source:
      "Our own model on published properties of sand and metal; it meets the published wear factor for iron",
  }),
);

export const freezingCompared = findingMessage(
  "heat/freezing",
  "note",
  (times: string, ratio: string, source: string) => ({
    text: `${times}${ratio}: for comparing one section with another, and no time to open a mould.`,
    because: [
      "The constant is for a plate, one sand and one pouring temperature, never measured on yours; lumps freeze sooner than plates, hubs and feeders later.",
      "Metal that has frozen at its face is still near its freezing point and may be liquid inside.",
    ],
    formula: "t = C (V/A)², V/A half the thickness of a plate",
    source,
  }),
);

export const waterDriven = findingMessage("heat/water-driven-off", "note", (kg: string, metal: string) => ({
  text: `Up to ${kg} of water leaves with the steam of each ${metal}: an upper bound, most of it condenses again in the cold sand behind.`,
  because: ["Test the moisture when the sand is cold and mixed, and make it up from that."],
  formula: "most water = w × heat of the metal/(c ΔT + w (cw ΔT + L))",
  source: "Heat balance on properties from memory",
}));

export const metalUnknown = findingMessage("heat/metal-unknown", "note", () => ({
  text: "No figure for heat and burn-out: write what you pour, such as metal: aluminium, at the top of the log.",
  because: [],
}));

/** What happens to bentonite in sand at the three temperatures, and who says so. */
export const temperatureWords = {
  316: (at: string): string => `${at}, calcium bentonite has lost its bond (Vingas & Zrimsek)`,
  500: (at: string): string => `${at}, clay begins to fire onto the grains (Giesserei Lexikon)`,
  638: (at: string): string => `${at}, sodium bentonite has lost its bond (Vingas & Zrimsek)`,
} as const;
