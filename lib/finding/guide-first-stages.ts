// The stages before the first mix: sand, sieving, scales, rigs.

import { dryingHeat, localRules, silicaDust } from "./cautions.ts";
import { type Caution, triggeredBy } from "./finding.ts";
import { sandBought } from "./guide-messages.ts";
import type { GuideStage } from "./guide-stage.ts";
import { heavyLoads } from "./recipe-cautions.ts";
import { airVessel, deadWeight, fallingRammer, mixingDust } from "./trial-cautions.ts";

export const heavyAndWet: Caution = {
  code: "caution/known-weights",
  trigger: "because scales are checked with weights and water",
  text: "A weight that slips breaks toes, and water in a scale with a mains lead can kill.",
  points: [
    "Plastic bottles, low over the bench, filled and wiped away from the scale. A kitchen scale that has weighed sand stays in the foundry.",
  ],
  defers: localRules,
};

const sand: GuideStage = {
  name: "sand",
  title: "Buy sand and clay, and wash the sand",
  purpose:
    "One named sand with little dust in it, and one clay from one bag: what every later figure is about.",
  takes: "Half a day, and two days of drying.",
  owns: "50 kg of dry silica sand, 5 kg of bentonite without additives, two buckets, a mask that seals.",
  cautions: [triggeredBy(mixingDust, sandBought()), dryingHeat, heavyLoads],
  steps: [
    "Ask for washed, dried, rounded silica sand of about 50 to 70 in fineness number for aluminium (common practice); the name of its pit and bag goes into the log.",
    "Wash a bucket of it under water until the water stays clear, and dry it spread thin: clay and silt that came with it would count as grain.",
    "Keep five kilograms aside, closed and named. It is what a later bag is compared with.",
    "Name the sand in the log at once. Until it is sieved, check warns that it has no sieving.",
  ],
  cards: ["clay-by-wash"],
  lines: `sands:
  Lime Kiln sand:
    state: new
    note: "two bags of 25 kg, washed in April"`,
  begin: "sieving",
  notebook: "grain-fineness",
};

const sieving: GuideStage = {
  name: "sieving",
  title: "Sieve it",
  purpose:
    "How fine the sand is and how its grains are spread, with a ±: it decides how rough a casting's skin and how open a mould will be.",
  takes: "Two hours for two portions.",
  owns: "Four to eight sieves of one frame with lid and pan, a scale that reads to 0.1 g, paper and a brush.",
  cautions: [silicaDust, dryingHeat],
  steps: [
    "Split two portions of about 50 g from one sample, and sieve each for fifteen minutes.",
    "Write what each sieve held, also 0, down to the pan; the sum should miss the start by less than 0.3 %.",
    "The second portion is what makes a ± of it: sieve it even where the first went well.",
  ],
  cards: ["sieving"],
  lines: `sieve sets: { home stack: { frame: 200 mm } }
sands:
  Lime Kiln sand:
    state: new
    sievings:
      - { date: 2026-03-07, portion: A, repeat of: split, scale: kitchen scale, sieve set: home stack, washed: yes, start: 50.0 g, retained: { No. 30: 0.3, No. 40: 2.4, No. 50: 10.9, No. 70: 17.8, No. 100: 13.0, No. 140: 4.4, No. 200: 0.9, pan: 0.2 } }`,
  begin: "sieving",
  notebook: "grain-fineness",
};

const scales: GuideStage = {
  name: "scales",
  title: "Know your scales",
  purpose: 'What a scale reads to and how far it is off: without it every ± is only "at least".',
  takes: "Half an hour a scale.",
  owns: "Check weights, or a measuring flask and clean water.",
  cautions: [heavyAndWet],
  steps: [
    "Three weighings of each known weight, near what you will weigh; once more at the edge of the plate.",
    "The largest difference is what goes into `within`.",
    "A scale to 0.1 g for moisture and sieves; one to 10 g for sand and clay; a bathroom scale for buckets and loads.",
  ],
  cards: ["scale-check"],
  lines: `scales:
  kitchen scale: { reads to: 0.1 g, within: 0.2 g }
  bathroom scale: { reads to: 50 g, within: 100 g }`,
  notebook: "home-rigs",
};

const rigs: GuideStage = {
  name: "rigs",
  title: "Build the bench rigs, and check them",
  purpose:
    "Tube, rammer and load for compactability and strength, an air rig for permeability if you want it.",
  takes: "A weekend to build; an hour to check.",
  owns: "A tube of 50 mm bore and 120 mm height, a weight that falls, a pail; a caliper.",
  cautions: [fallingRammer, deadWeight, airVessel],
  steps: [
    "Bore, height, falling weight and drop go into the log: a blow should have 3.16 J.",
    "Ram one sand many times before anything is decided by it: what differs then is the rig and your hand.",
    "Make every test three times on one batch. How well your rigs repeat is learnt from that, and stands in where a test was made once.",
    "An air rig is run empty first; what it takes by itself is `blank` or `blank time`.",
  ],
  cards: ["rig-tube", "rig-air", "compactability", "green-compression"],
  lines: `rigs:
  home tube: { bore: 50 mm, tube: 120 mm, rammer: 2 kg, drop: 161 mm, blows: 3, ruler: 0.5 mm }`,
  notebook: "home-rigs",
};

export const firstStages: readonly GuideStage[] = [sand, sieving, scales, rigs];
