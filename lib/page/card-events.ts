// Cards for what happens to a heap: each is filled in over weeks, a row a time.

import * as hazard from "./card-hazards-heap.ts";
import type { Card } from "./card-kinds.ts";

const scale = { key: "scale", unit: "", says: "which one, what it reads to" } as const;
const tare = { key: "tare", unit: "kg", says: "empty bucket, taken off" } as const;
const rows = 12;

const pour: Card = {
  name: "pour",
  title: "A pour",
  does: "metal, temperature, section and scrap of each pour",
  hazard: hazard.pourHazard,
  rig: "A scale for what goes into the crucible, and a probe for the metal if you own one. Write what you know, and leave out the rest.",
  steps: [
    "Weigh the charge and what is pigged afterwards: the metal poured is the difference, runners and all.",
    "`section` is the wall that holds most of the casting; `scrap share` is what was not ingot or your own returns.",
    "Test the sand that day (card: test-day): castings are held against the sand of their own pour.",
    "Two pours on one day are two lines; their castings say `of pour: 1` or `of pour: 2`.",
  ],
  once: [scale, { key: "alloy", unit: "", says: "if it is always one" }],
  table: {
    columns: [
      "date",
      "metal, kg",
      "alloy",
      "at, °C",
      "section, mm",
      "scrap share, %",
      "degassed, yes or no",
      "note",
    ],
    rows,
  },
  yaml: `events:
  - { date: ____, pour: { metal: ____ kg, alloy: ____, at: ____ °C, section: ____ mm, scrap share: ____ %, degassed: ____, note: ____ } }`,
};

const knockOut: Card = {
  name: "knock-out",
  title: "Knock-out",
  does: "when a mould was opened, and the burnt sand that left the heap",
  hazard: hazard.knockOutHazard,
  rig: "A bucket, a scale, a riddle for fins and lumps. What is thrown out is sand and clay that the heap no longer has.",
  steps: [
    "Leave the mould until it is cold; write the hours, so that one pour can be told from another.",
    "Break off the sand that is burnt hard or baked to the metal; weigh it before it is thrown out.",
    "Sand that goes back is riddled and spread to cool, and is not counted.",
    "`as: dry` for burnt sand, `as: damp` for sand as it lies in the heap.",
  ],
  once: [scale, tare],
  table: {
    columns: ["date", "poured, h:min", "opened, h:min", "thrown out: mass, kg", "as dry or damp", "note"],
    rows,
  },
  yaml: `events:
  - { date: ____, lost: { mass: ____ kg, as: ____ }, note: ____ }`,
};

const losses: Card = {
  name: "losses",
  title: "Losses",
  does: "sand swept up, riddled off or given away, by weight",
  hazard: hazard.sweepingHazard,
  rig: "A bucket with its empty mass written on it, and a scale. Losses that are not weighed are the widest doubt in what a season takes.",
  steps: [
    "Keep one bucket for sweepings and weigh it when it is full: a line for each time.",
    "Do not weigh the same sand twice: what a knock-out card has is not written here.",
    "Take metal, wood and stones out first.",
  ],
  once: [scale, tare],
  table: { columns: ["date", "mass, kg", "as dry or damp", "where from"], rows },
  yaml: `events:
  - { date: ____, lost: { mass: ____ kg, as: ____ } }`,
};

const rebond: Card = {
  name: "rebond",
  title: "A rebond",
  does: "clay that is mulled into the heap, as weighed from the bag",
  hazard: hazard.tippingHazard,
  rig: "A scale that reads to 10 g or finer. Bagged clay holds water of its own: the card clay-moisture tells how much.",
  steps: [
    "Weigh the clay as it comes from the bag. Scatter it from low down over damp, cold sand.",
    "Mull as long as your mulling trial says; clay that is not mulled in bonds nothing.",
    "Test a day before and a day after, alike: the difference is what the clay did.",
    "Write the bag if it is a new one: bags differ.",
  ],
  once: [scale, tare],
  table: { columns: ["date", "clay, kg", "clay moisture, %", "bag", "mulled, min"], rows },
  yaml: `events:
  - { date: ____, rebond: { clay: ____ kg, clay moisture: ____ % }, note: ____ }`,
};

const newSand: Card = {
  name: "new-sand",
  title: "New sand",
  does: "sand that is put into the heap, as weighed",
  hazard: hazard.tippingHazard,
  rig: "A scale and a bucket. New sand thins the clay: weigh what goes in, and the heap's page works out what it takes with it.",
  steps: [
    "Damp the sand before it is tipped. Weigh it as it goes in.",
    "`moisture` is the water that it holds already, of its damp mass: dry a weighed portion (card: moisture).",
    "A new bag is sieved before it is mixed in (card: sieving), or the heap's fineness moves and nobody knows why.",
  ],
  once: [scale, tare],
  table: { columns: ["date", "mass, kg", "moisture, % of damp mass", "which sand"], rows },
  yaml: `events:
  - { date: ____, new sand: { mass: ____ kg, moisture: ____ % }, note: ____ }`,
};

const watering: Card = {
  name: "watering",
  title: "Watering",
  does: "water that is put on the heap, by weight or by the litre",
  hazard: hazard.wateringHazard,
  rig: "A can on a scale, or a jug with marks: a litre is a kilogram. Weigh the can before and after.",
  steps: [
    "Never the whole of it at once: a first dose, turned in, then a test, then the rest.",
    "Spread it over the heap as a fine spray; wait until it has drawn in before it is turned.",
    "Test compactability after it has stood (card: compactability), and write both.",
  ],
  once: [{ ...scale, says: "which one, or the jug" }],
  table: { columns: ["date", "time, h:min", "water, kg", "compactability before, %", "after, %"], rows },
  yaml: `events:
  - { date: ____, water: ____ kg }`,
};

export const eventCards: readonly Card[] = [pour, knockOut, losses, rebond, newSand, watering];
