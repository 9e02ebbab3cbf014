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
  "bentonite, kg",
  "water, g",
  "mulled, min",
  "stood, min",
  "moisture, %",
  "compact- ability, %",
  "load, kg",
  "perme- ability",
  "squeeze",
];

const trial: Card = {
  name: "trial",
  title: "Trial sheet",
  does: "batches at several waters or clays, one row each",
  hazard: trialHazard,
  rig: "Six batches at four waters or more say far more than three; make them in a shuffled order, each from fresh sand, mulled and stood alike.",
  steps: [
    "Change one thing only: water, or clay. Everything else stays: sand, minutes mulled, minutes stood, tube, rammer, hand.",
    "Make the batches in the order that a shuffle gave, not from dry to wet: else time and water cannot be told apart.",
    "Where one heap is wetted step by step after all, write `same heap: yes` from the second batch on.",
    "Make one batch twice: it shows how batches scatter.",
  ],
  once: [
    { key: "date", unit: "", says: "year-month-day" },
    { key: "sand", unit: "", says: "its name in the log" },
    { key: "scales", unit: "", says: "which ones, what they read to" },
    { key: "tare", unit: "g", says: "bucket, dish, pail" },
    { key: "rig", unit: "", says: "its name in the log" },
    { key: "time", unit: "h:min", says: "first batch / last batch" },
  ],
  table: { columns, rows: 8 },
  yaml: `trial: { axis: ____ }
batches:
  ____:
    date: ____
    order: ____
    made of: { sand: ____ kg, bentonite: ____ kg, water: ____ g }
    mulled: ____ min
    stood: ____ min
    moisture: ____ %
    compactability: ____ %
    green compression: ____ kPa
    permeability: ____
    squeeze: ____`,
};

export const sheetCards: readonly Card[] = [sieving, trial];
