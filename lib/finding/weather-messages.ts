// The sentences of water for tomorrow, figure first: plain strings in.

import { findingMessage } from "./finding-message.ts";

const front =
  "A dry skin that grows with the root of time (receding front, after Navarri & Andrieu 1993; Millington & Quirk 1961, from memory) × a factor of two either way, our own; never more than open water gives off (ASHRAE form, from memory)";
const frontFormula = "δ = √(2 De Δρ t/w); loss = w δ × surface";

export const lostOpen = findingMessage(
  "weather/uncovered",
  "note",
  (kg: string, hours: string, air: string, comesTo: string, atLeast: boolean) => ({
    text: `${kg} of water would leave the heap uncovered in ${hours}, at ${air}${comesTo}.`,
    because: [
      "It leaves through a skin that dries from outside; a heap that is turned, stands in the sun or in wind loses more, a damp cellar less.",
      ...(atLeast
        ? [
            "A part of the doubt is not known (a ± on the moisture or on the mass of the heap), so the range is at least that wide.",
          ]
        : []),
    ],
    formula: frontFormula,
    source: front,
  }),
);

export const lostCovered = findingMessage(
  "weather/covered",
  "good",
  (kg: string, points: string, cover: string) => ({
    text: `At most ${kg} of water would leave the heap under ${cover}, ${points}: little.`,
    because: [
      "The air under a cover is soon full of vapour; what leaves is what its changes carry off: 1 to 30 times an hour under a sheet that lies on the heap, 0.1 to 3 under a lid.",
      "Drops that gather under a sheet fall back on one place: mix before sampling.",
    ],
    formula: "loss = surface × air under the cover × changes an hour × hours × Δρ",
    source: "Mass balance; the changes of air are our own",
  }),
);

export const coverInstead = findingMessage(
  "weather/temper-tonight",
  "note",
  (want: string, hours: string, tonight: string, covered: string) => ({
    text: `To have ${want} after ${hours}: temper to ${covered} now, cover it, and test before use. Left open it would have to be tempered to ${tonight}, and nobody knows to which.`,
    because: [
      "Water that is missing in the morning is soon added; water that is too much is not soon lost, and over-wet sand is never poured on.",
      "Where it must stay open, temper to the lower figure and trim after the test.",
    ],
    formula: "now = 100 (D w/(100 − w) + loss)/(D w/(100 − w) + loss + D), D the dry mass",
    source: "Mass balance on the losses above",
  }),
);

export const tooWetForIt = findingMessage(
  "weather/too-wet",
  "doubt",
  (from: string, want: string, layer: string, hours: string) => ({
    text: `At ${from} the heap is too wet for ${want} even if it is left open: spread ${layer} deep and turned, it takes ${hours} in this air. Test before use; over-wet sand is never poured on.`,
    because: [
      "The short end is open water with every grain brought to the top in its turn, the long one a wet bulb at half that rate that falls as the sand dries.",
      "Dry sand with its share of dry clay, mulled in, is the other way.",
    ],
    formula: "t₁ = (m/A R)(X₁ − Xc); t₂ = (m/A R)(Xc − X*) ln((Xc − X*)/(X₂ − X*))",
    source: "Standard texts of drying, from memory; rates as for open water",
  }),
);

export const openWaterBound = findingMessage(
  "weather/open-water",
  "note",
  (airKg: string, wetBulbKg: string) => ({
    text: `${airKg} is what open water of that surface would give off at the air's own temperature, ${wetBulbKg} at the wet bulb: a bound, since damp sand soon dries at its face.`,
    because: [
      "Such formulas carry from place to place within about a factor of two (Singh & Xu 1997).",
      "Sand of 50 to 150 mesh leaves that steady rate below about 5 % of water (Perry, from memory), so green sand hardly knows it.",
    ],
    formula: "W = A (0.089 + 0.0782 V)(pw − pa)/Y",
    source: "Carrier 1918, as in ASHRAE HVAC Applications, from memory; vapour by IAPWS SR1-86(1992)",
  }),
);

export const drySkin = findingMessage("weather/dry-skin", "note", (mm: string) => ({
  text: `About ${mm} of an uncovered heap is dry skin by then, the inside is as damp as before: turn and mull it before a sample is taken.`,
  because: ["A sample of the skin reads too dry, one of the inside too damp."],
  formula: frontFormula,
  source: front,
}));

export const hotSand = findingMessage("weather/hot-sand", "doubt", (sand: string, kg: string) => ({
  text: `Up to ${kg} more may leave while sand of ${sand} cools to the air: these figures are for cold sand, so test when it is cold.`,
  because: [
    "If all of its heat went into vapour. Most leaves otherwise; how much is not known.",
    "Sand above about 49 °C (120 °F) mulls unevenly, above about 71 °C (160 °F) to no consistency (Aklinski & Granlund, citing Schumacher).",
  ],
  formula: "most = heap × c (sand − air)/L",
  source: "Heat balance",
}));

export const notSaid = findingMessage("weather/not-said", "note", (missing: string) => ({
  text: `No figure for tomorrow's water: this needs ${missing}.`,
  because: [],
}));

export const takenWords = (taken: string): string =>
  `Taken, because the log does not say it: ${taken}. Sun, rain, frost, hot sand and a floor that draws water are not in it.`;
