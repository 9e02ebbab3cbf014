// Cards that are no single test: a sieving, and the sheet of a whole trial.

import { sievingDrawing } from "./card-drawings.ts";
import { sievingHazard, trialHazard } from "./card-hazards.ts";
import type { Card } from "./card-kinds.ts";

const sieves = ["No. 20", "No. 30", "No. 40", "No. 50", "No. 70", "No. 100", "No. 140", "No. 200", "pan"];

const sieving: Card = {
  name: "sieving",
  title: "A sieving",
  does: "what each sieve holds, for fineness and grading",
  hazard: sievingHazard,
  rig: "Sieves coarse to fine, a pan under them, a lid on top. Strike out the sieves that you do not own and write in those that you do.",
  drawing: sievingDrawing,
  steps: [
    "Wash out the clay of used sand first (card: clay-by-wash). Dry it, and split two portions of about 50 g from one sample.",
    "Weigh the portion, shake fifteen minutes, let the stack stand a minute, and brush each sieve out from below onto paper.",
    "Weigh what each sieve held, also 0, down to the pan. The sum should miss the start by less than 0.3 %.",
  ],
  once: [
    { key: "date", unit: "", says: "year-month-day" },
    { key: "scale", unit: "", says: "which one, what it reads to" },
    { key: "sieve set", unit: "", says: "its name in the log" },
    { key: "minutes", unit: "min", says: "time of shaking" },
    { key: "washed", unit: "", says: "yes or no" },
    { key: "tare", unit: "g", says: "paper or dish" },
    { key: "start", unit: "g", says: "dry mass on the top sieve" },
  ],
  table: { columns: ["A, g", "B, g"], rows: sieves },
  yaml: `sands:
  ____:
    state: ____
    sievings:
      - date: ____
        portion: A
        scale: ____
        sieve set: ____
        minutes: ____
        washed: ____
        start: ____ g
        retained: { ${sieves.map((label) => `${label}: ____`).join(", ")} }`,
};

const columns = [
  "batch",
  "order",
  "sand, kg",
  "bento- nite, kg",
  "water, g",
  "mulled, min",
  "stood, min",
  "damp, g",
  "dry, g",
  "filled, mm",
  "rammed, mm",
  "load, kg",
  "seconds",
  "squeeze",
];

/** The lines of one batch of a trial: what each column is in the log. */
const batchLines = `  ____:
    date: ____
    order: ____
    made of: { sand: ____ kg, bentonite: ____ kg, water: ____ g, scale: ____ }
    mulled: ____ min
    stood: ____ min
    moisture: { method: oven, damp: ____ g, dry: ____ g, scale: ____ }
    compactability: { filled: ____ mm, rammed: ____ mm, rig: ____ }
    green compression: { load: ____ kg, rig: ____, scale: ____ }
    permeability: { method: falling column, from: ____ mm, to: ____ mm, seconds: ____ s, height: ____ mm, rig: ____ }
    squeeze: ____`;

const once: Card["once"] = [
  { key: "date", unit: "", says: "year-month-day" },
  { key: "scale", unit: "", says: "for the sand / for moisture / for the load" },
  { key: "rig", unit: "", says: "tube, air column: names in the log" },
  { key: "tare", unit: "g", says: "bucket, dish, pail: taken off" },
  { key: "from, to", unit: "mm", says: "water levels of permeability" },
  { key: "height", unit: "mm", says: "of the specimens, if always one" },
  { key: "time", unit: "h:min", says: "first batch / last batch" },
];

const shuffled =
  "Make the batches in the order that a shuffle gave, not from one end to the other: else time and what you change cannot be told apart.";
const twice =
  "Make one batch twice: it shows how batches scatter. Repeats of a test go on a sheet of the test's own.";
const pressing =
  "Pressed instead of rammed: write `method: pressed, filled: 100 mm, pressed: ... mm`. The scale or rig is as its name stands under `scales:` and `rigs:`.";

const trial: Card = {
  name: "trial",
  title: "Trial sheet",
  does: "batches at several waters, one row each",
  hazard: trialHazard,
  rig: "Six batches at four waters or more say far more than three; each from fresh sand, mulled and stood alike.",
  steps: [
    "Change one thing only: the water. Everything else stays: sand, clay, minutes mulled and stood, tube, rammer, hand.",
    shuffled,
    "Where one heap is wetted step by step after all, write `same heap: yes` from the second batch on.",
    twice,
    pressing,
  ],
  once,
  table: { columns, rows: 8 },
  yaml: `trial: { axis: moisture }\nbatches:\n${batchLines}`,
};

const clayTrial: Card = {
  name: "trial-clay",
  title: "Trial sheet: clay",
  does: "batches at several clays, each tempered alike, one row each",
  hazard: trialHazard,
  rig: "Six batches at four clays or more; the water of each is what brings it to one compactability, so weigh all of it.",
  steps: [
    "Change one thing only: the clay. Temper every batch to the same compactability, within two points, and mull it as long.",
    shuffled,
    "Old clay or new, one bag or another: write `block: name of the bag`, and the two are compared at the same clay.",
    twice,
    pressing,
  ],
  once,
  table: { columns, rows: 8 },
  yaml: `trial: { axis: clay }\nbatches:\n${batchLines}`,
};

export const sheetCards: readonly Card[] = [sieving, trial, clayTrial];
