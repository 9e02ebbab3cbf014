// Cards for weighing and for checking what is measured with: buckets, bagged clay, scales, rigs.

import { dryingHazard, pressureHazard, rammerHazard } from "./card-hazards.ts";
import { bucketHazard, weightsHazard } from "./card-hazards-heap.ts";
import type { Card } from "./card-kinds.ts";

const scale = { key: "scale", unit: "", says: "which one, what it reads to" } as const;
const date = { key: "date", unit: "", says: "year-month-day" } as const;

const bucket: Card = {
  name: "bucket",
  title: "Weighing buckets",
  does: "how much the heap is, counted in buckets of which a few are weighed",
  hazard: bucketHazard,
  rig: "One bucket, filled as always: shovelled loose and struck off at the rim. A bathroom scale does.",
  steps: [
    "Weigh the empty bucket, then the full one; three to five full ones tell how far they differ.",
    "Count every bucket of the heap as it is turned from one place to another.",
    "For sand and clay of a recipe: `bucket of: { sand: 14.2 kg, clay: 8.1 kg }` under `recipe:`, net, and its page counts in buckets.",
  ],
  formula: "heap = buckets × mean of (full − empty)",
  once: [
    date,
    scale,
    { key: "buckets", unit: "", says: "all of them, counted" },
    { key: "empty", unit: "kg", says: "the bucket" },
  ],
  table: { columns: ["of what", "full, kg", "full, kg", "full, kg", "net, mean, kg"], rows: 5 },
  yaml: `heap:
  buckets: ____
  bucket: [ ____ kg, ____ kg, ____ kg ]
  empty: ____ kg
  scale: ____`,
};

const clayMoisture: Card = {
  name: "clay-moisture",
  title: "The bag's own water",
  does: "water that bagged clay holds as it comes, in % of its damp mass",
  hazard: dryingHazard,
  rig: "A dish, the finest scale, an oven at 105 °C. Bagged bentonite often holds 6 to 12 % (common practice), which is clay that you paid for and do not have.",
  steps: [
    "Take about 50 g from the middle of the bag, two portions; weigh each damp at once.",
    "Dry at 105 °C for at least two hours, spread thin; cool it under a lid, for dry clay drinks water out of the air.",
    "Weigh, dry an hour more, weigh again, until it loses no more.",
    "The mean stands as `clay moisture` in a recipe or a rebond, and as `bentonite moisture` under `made of:`.",
  ],
  formula: "100 (damp − dry) / damp",
  once: [date, scale, { key: "tare", unit: "g", says: "the empty dish, taken off" }],
  table: { columns: ["bag", "damp, g", "dry, g", "again, g", "moisture, %"], rows: 5 },
  yaml: `sheets:
  clay bags:
    columns:
      bag: text
      damp: { unit: g, scale: ____ }
      dry: { unit: g, scale: ____ }
      moisture: { unit: "% of damp mass", formula: 100 * (damp - dry) / damp }
    rows:
      - { bag: ____, damp: ____, dry: ____ }
      - { bag: ____, damp: ____, dry: ____ }
    foot: { mean moisture: mean(moisture) }`,
};

const scaleCheck: Card = {
  name: "scale-check",
  title: "Checking a scale",
  does: "how far a scale is off, with weights that are known",
  hazard: weightsHazard,
  rig: "Known weights near what you will weigh: check weights, new coins whose mass their mint gives, or water by a measuring flask: at 20 °C a litre is 998 g.",
  steps: [
    "Level ground, no draught, ten minutes after it was switched on. Set it to zero before each weighing.",
    "Each weight three times, in the middle of the plate, then once near its edge.",
    "`within` is the largest difference that you saw, or the doubt of the weights if that is more; never less than a step.",
    'Once a season, and after a fall. A scale that was never checked leaves `within` out: the ± then says "at least".',
  ],
  once: [
    date,
    { key: "name", unit: "", says: "the scale's name in the log" },
    { key: "reads to", unit: "g", says: "smallest step" },
  ],
  table: {
    columns: ["known, g", "reads, g", "again, g", "again, g", "at the edge, g", "largest difference, g"],
    rows: 6,
  },
  yaml: `scales:
  ____:
    reads to: ____ g
    within: ____ g`,
};

const rigTube: Card = {
  name: "rig-tube",
  title: "Checking tube and rammer",
  does: "bore, height, falling weight and drop: the energy of a blow",
  hazard: rammerHazard,
  rig: "A caliper, a ruler and a scale. A blow of 3.16 J, three of them, on 50 mm of bore is what published figures were made with.",
  steps: [
    "Bore at both ends, twice across at right angles; the mean counts. A tube that differs by more than 0.3 mm is not round enough.",
    "Weigh all that falls. Measure the drop from where it rests on the sand to where it is let go, after the third blow.",
    "Another weight is made good by its drop: 3.16 J = mass × 9.807 × drop.",
    "Ram one sand ten times in a row and write the heights: their scatter is yours and the rig's (card: compactability).",
  ],
  formula: "blow in J = rammer (kg) × 9.807 × drop (m)",
  once: [
    date,
    { key: "name", unit: "", says: "the rig's name in the log" },
    { key: "ruler", unit: "mm", says: "smallest step" },
  ],
  table: { columns: ["bore, mm", "tube, mm", "rammer, kg", "drop, mm", "rammed, mm"], rows: 5 },
  yaml: `rigs:
  ____:
    bore: ____ mm
    tube: ____ mm
    rammer: ____ kg
    drop: ____ mm
    blows: ____
    ruler: ____ mm`,
};

const rigAir: Card = {
  name: "rig-air",
  title: "Blank run of an air rig",
  does: "what a permeability rig takes by itself, with no specimen in it",
  hazard: pressureHazard,
  rig: "The rig as it is used, with hose, tap and empty tube. What it takes by itself is taken off every reading, or fine sands read alike.",
  steps: [
    "Empty tube: run it as for a test, three times. Falling column or vessel: the seconds from mark to mark are `blank time`.",
    "Constant head or aspirator: the pressure that the gauge shows with nothing in the tube is `blank`.",
    "Plugged tube: nothing may move in a minute. If it does, find the leak first.",
    "Again whenever hose, tap or water level was changed.",
  ],
  once: [
    date,
    { key: "name", unit: "", says: "the rig's name in the log" },
    { key: "bore", unit: "mm", says: "of the specimen tube" },
    { key: "column", unit: "mm", says: "bore of the water column" },
    { key: "vessel", unit: "l", says: "volume of the vessel, with its hose" },
  ],
  table: {
    columns: ["empty: seconds", "empty: pressure, mm", "plugged: moved in 60 s, mm", "note"],
    rows: 6,
  },
  yaml: `rigs:
  ____:
    bore: ____ mm
    column: ____ mm
    vessel: ____ l
    blank time: ____ s
    blank: ____ mm`,
};

export const checkCards: readonly Card[] = [bucket, clayMoisture, scaleCheck, rigTube, rigAir];
