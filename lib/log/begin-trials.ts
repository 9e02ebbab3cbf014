// Ways in by a trial: waters, clays, minutes of mulling.

import { type Beginning, whoAndScale } from "./beginning.ts";

const rigs = `  bathroom scale: { reads to: 50 g, within: 100 g }

rigs:
  home tube: { bore: 50 mm, tube: 120 mm, rammer: 2 kg, drop: 161 mm, blows: 3 }
`;

interface Row {
  readonly name: string;
  readonly order: number;
  readonly clay: string;
  readonly water: string;
  readonly damp: number;
  readonly dry: number;
  readonly rammed: number;
  readonly load: number;
  readonly squeeze?: number;
}

/** One batch, a test a line. */
const batch = (row: Row): string => `  ${row.name}:
    date: 2026-04-11
    order: ${row.order}
    made of: { sand: 4 kg, bentonite: ${row.clay}, bentonite moisture: 9 %, water: ${row.water}, scale: kitchen scale }
    mulled: 10 min
    stood: 30 min
    moisture: { method: oven, damp: ${row.damp.toFixed(1)} g, dry: ${row.dry.toFixed(1)} g, scale: kitchen scale }
    compactability: { filled: 120 mm, rammed: ${row.rammed.toFixed(1)} mm, rig: home tube }
    green compression: { load: ${row.load.toFixed(2)} kg, height: 50 mm, rig: home tube, scale: bathroom scale }${row.squeeze === undefined ? "" : `\n    squeeze: ${row.squeeze}`}
`;

const first = `# order: in which the batches were made; shuffle it. Repeats of a test stand as a list: [ { ... }, { ... } ].
# left out: the reason why a batch counts in no curve, as a line of that batch; its figures are shown all the same.
# squeeze: 1 falls apart, 2 crumbles, 3 snaps clean, 4 bends first, 5 smears.
batches:
`;

const clay = "350 g";
export const moistureTrial: Beginning = {
  name: "moisture-trial",
  says: "batches of one sand and clay at several waters",
  notebook: "moisture-trial",
  cards: ["trial", "moisture"],
  does: "A moisture trial: fresh batches of one mix, alike in all but their water.",
  hazard:
    "Over-wet sand can erupt under metal: the wet batches stay on the bench. Stop and unplug the muller for every sample.",
  body: `${whoAndScale("First moisture trial")}${rigs}
aims:                         # what you want of the sand; leave out what you don't know
  compactability: 42 to 48 %
  green compression: 50 to 80 kPa

trial: { axis: moisture }     # what you vary

heap: { mass: 60 kg ± 3 kg }  # to be tempered afterwards, taken to be as damp as the last batch; leave out if there is none yet

${first}${[
  { name: "W1", order: 3, clay, water: "84 g", damp: 150, dry: 146.1, rammed: 79.2, load: 14.6, squeeze: 2 },
  {
    name: "W2",
    order: 5,
    clay,
    water: "107 g",
    damp: 150.4,
    dry: 145.8,
    rammed: 72.4,
    load: 14.05,
    squeeze: 3,
  },
  {
    name: "W3",
    order: 1,
    clay,
    water: "125 g",
    damp: 149.8,
    dry: 144.6,
    rammed: 66.2,
    load: 13.05,
    squeeze: 3,
  },
  {
    name: "W3 again",
    order: 4,
    clay,
    water: "125 g",
    damp: 150.1,
    dry: 144.8,
    rammed: 65.5,
    load: 12.85,
    squeeze: 3,
  },
  {
    name: "W4",
    order: 2,
    clay,
    water: "148 g",
    damp: 150.2,
    dry: 144.2,
    rammed: 60.1,
    load: 11.4,
    squeeze: 4,
  },
  {
    name: "W5",
    order: 6,
    clay,
    water: "172 g",
    damp: 149.9,
    dry: 143.2,
    rammed: 54.3,
    load: 9.8,
    squeeze: 5,
  },
]
  .map(batch)
  .join("")}`,
};

export const clayTrial: Beginning = {
  name: "clay-trial",
  says: "batches of one sand at several clays, each tempered alike",
  notebook: "clay-trial",
  cards: ["trial-clay", "clay-moisture"],
  does: "A clay trial: fresh batches with more and less clay, each tempered to one compactability.",
  hazard:
    "Bentonite and dry sand make dust that harms the lungs: a mask that seals, low down, outdoors. Stop and unplug the muller for every sample.",
  body: `${whoAndScale("First clay trial")}${rigs}
aims:                         # what you want of the sand; leave out what you don't know
  compactability: 42 to 48 %
  green compression: 50 to 65 kPa

trial: { axis: clay }         # what you vary

${first}${[
  { name: "C5", order: 4, clay: "220 g", water: "103 g", damp: 149.7, dry: 145.4, rammed: 65.6, load: 9.7 },
  { name: "C7", order: 1, clay: "308 g", water: "117 g", damp: 150.2, dry: 145.2, rammed: 66.4, load: 11.1 },
  {
    name: "C7 again",
    order: 5,
    clay: "308 g",
    water: "117 g",
    damp: 149.9,
    dry: 145.0,
    rammed: 65.8,
    load: 10.95,
  },
  { name: "C9", order: 2, clay: "396 g", water: "131 g", damp: 150.3, dry: 144.7, rammed: 66.5, load: 12.4 },
  { name: "C11", order: 6, clay: "484 g", water: "143 g", damp: 150.0, dry: 143.9, rammed: 65.9, load: 13.5 },
  { name: "C13", order: 3, clay: "572 g", water: "155 g", damp: 149.8, dry: 143.2, rammed: 66.1, load: 14.2 },
]
  .map(batch)
  .join("")}`,
};

export const mullingTrial: Beginning = {
  name: "mulling-trial",
  says: "one load, tested as it is mulled",
  notebook: "mulling-trial",
  cards: ["mulling", "green-compression"],
  does: "A mulling trial: one load, tested as it goes, without more water.",
  hazard:
    "A turning muller drags in hands, sleeves and scoops: stop it and unplug it for every sample. Damp the sand before the clay goes in.",
  body: `${whoAndScale("How long to mull")}
mulling:
  by hand (invented):
    load: 5 kg
    readings:                 # six tell a plateau; four are the fewest
      - { minutes: 2, green compression: 37 kPa }
      - { minutes: 4, green compression: 50 kPa }
      - { minutes: 7, green compression: 60 kPa }
      - { minutes: 10, green compression: 63 kPa }
      - { minutes: 15, green compression: 65 kPa }
      - { minutes: 20, green compression: 64 kPa }

# The machine, if there is one (take the # away):
# muller: { motor: 1450 rpm, reduction: 60, pan diameter: 500 mm, wheel width: 60 mm, wheels: 2, load: 12 kg, minutes: 12 }
`,
};
