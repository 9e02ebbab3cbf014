// The sentences of a recipe.

import { findingMessage } from "./finding-message.ts";

const balance = "Mass balance";

export const sharesSaid = findingMessage(
  "recipe/shares",
  "note",
  (ofSand: string, ofMix: string, ofDamp: string, basis: string) => ({
    text: `${ofMix} of dry mix is clay: the same clay is ${ofSand} per 100 of sand and ${ofDamp} of damp mass.`,
    because: [
      `The recipe counts ${basis}.`,
      "Counted is dry clay as added; live clay and clay by wash are other things.",
    ],
    formula: "of dry mix = 100 p / (100 + p) without additives, p per 100 of sand",
    source: balance,
  }),
);

export const pourSaid = findingMessage(
  "recipe/water",
  "note",
  (inAll: string, first: string, trim: string, atMost: string, brought: string) => ({
    text: `${inAll} of water is to be poured in all: ${first} first, then mull and test, then trim with about ${trim}${atMost === "" ? "" : `, hardly more than ${atMost}`}.`,
    because: [
      `Sand and clay bring ${brought} themselves, which is counted.`,
      "The first dose is what nine mixes in ten still want, and never more than nine tenths (our own rule): water goes in easily and comes out slowly.",
      "Water that dries off while mulling is not counted; the test before the trim finds it.",
    ],
    formula: "water = moisture × dry mix / (100 − moisture) − water that sand and clay hold",
    source: balance,
  }),
);

export const tooWetAlready = findingMessage(
  "recipe/too-wet-already",
  "error",
  (brought: string, tooMuch: string, dryTo: string) => ({
    text: `${tooMuch} too much water is in the sand and the clay already: no water is to be poured.`,
    because: [
      `They bring ${brought} themselves.`,
      dryTo === ""
        ? "Even bone-dry sand would leave too much: the bagged clay alone is too damp for this moisture."
        : `Spread and turn the sand until it holds ${dryTo} or less, weigh it anew, and write that as \`sand moisture\`.`,
    ],
    formula: "water = moisture × dry mix / (100 − moisture) − water that sand and clay hold",
    source: balance,
  }),
);

export const waterPerClaySaid = findingMessage(
  "recipe/water-per-clay",
  "note",
  (ratio: string, where: string) => ({
    text: `${ratio} of water goes to one of clay, by weight: ${where}.`,
    because: [
      "In one published series strength peaks near 0.4 and permeability near 0.6; another sand and clay may peak elsewhere.",
    ],
    formula: "all water / dry clay",
    source: "Subbarao & Rammohan, J. Indian Inst. Sci. (abstract)",
  }),
);

export const temperSaid = findingMessage(
  "recipe/temper",
  ["good", "doubt"],
  (wanted: string, low: string, high: string, verdict: "within" | "below" | "above") => ({
    tone: verdict === "within" ? "good" : "doubt",
    text: `${wanted} moisture is wanted, ${verdict === "within" ? "between" : `${verdict} both ends of`} what the published ways give for this clay (${low} to ${high}).`,
    because: [
      "The ways in print disagree by this much, and none knows this sand: compactability decides, not this range.",
      ...(verdict === "above"
        ? ["Too much water under molten metal is the graver side: approach from the dry end."]
        : []),
    ],
    source: "ICRI Report 610 (2003); Subbarao & Rammohan; Abdullah et al. 2013; a common rule, from memory",
  }),
);

export const bucketsSaid = findingMessage("recipe/buckets", "doubt", (parts: string) => ({
  text: `A bucket measures volume and not weight: ${parts}.`,
  because: [
    "Damp sand bulks: its volume rises by a fifth to a third at 5 to 8 % of water, so a bucket then holds that much less sand and the mix that much more clay.",
    "Fill and strike off each bucket alike, and weigh one anew whenever the sand is damper or drier than it was.",
  ],
  source: "Neville, Properties of Concrete (from memory)",
}));

export const takenSaid = findingMessage("recipe/taken", "doubt", (taken: string) => ({
  text: `Not written, and so taken: ${taken}.`,
  because: [
    "Bagged bentonite holds up to 10 %, some up to 15 % of water (suppliers' sheets), and yard sand may hold several per cent: the ± of the water does not hold that.",
    "Dry a weighed portion of each, and write `sand moisture` and `clay moisture`.",
  ],
}));
