// A way in by a question of one's own, told so that somebody else can repeat the answer.

import { type Beginning, whoAndScale } from "./beginning.ts";

interface Row {
  readonly name: string;
  readonly order: number;
  readonly block: string;
  readonly water: number;
  readonly dry: number;
  readonly rammed: number;
  readonly loads: readonly [number, number];
}

const batch = ({ name, order, block, water, dry, rammed, loads: [a, b] }: Row): string => `  ${name}:
    date: 2026-06-06
    order: ${order}
    block: ${block}
    made of: { sand: 4 kg, bentonite: 350 g, bentonite moisture: 9 %, water: ${water} g, scale: kitchen scale }
    mulled: ${block.replace(" min", "")} min
    stood: 30 min
    moisture: { method: oven, damp: 150.0 g, dry: ${dry.toFixed(1)} g, scale: kitchen scale }
    compactability: { filled: 120 mm, rammed: ${rammed.toFixed(1)} mm, rig: home tube }
    green compression: [ { load: ${a.toFixed(2)} kg, height: 50 mm, rig: home tube, scale: bathroom scale }, { load: ${b.toFixed(2)} kg, height: 50 mm, rig: home tube, scale: bathroom scale } ]
`;

const rows: readonly Row[] = [
  { name: "S1", order: 4, block: "8 min", water: 84, dry: 146.1, rammed: 78.6, loads: [12.4, 12.6] },
  { name: "S2", order: 1, block: "8 min", water: 107, dry: 145.4, rammed: 72.2, loads: [12.0, 11.8] },
  { name: "S3", order: 6, block: "8 min", water: 125, dry: 144.8, rammed: 66.4, loads: [11.0, 11.1] },
  { name: "S4", order: 8, block: "8 min", water: 148, dry: 144.0, rammed: 60.0, loads: [9.7, 9.6] },
  { name: "L1", order: 2, block: "15 min", water: 84, dry: 146.2, rammed: 79.5, loads: [14.5, 14.7] },
  { name: "L2", order: 7, block: "15 min", water: 107, dry: 145.5, rammed: 73.0, loads: [14.0, 14.2] },
  { name: "L3", order: 3, block: "15 min", water: 125, dry: 144.9, rammed: 66.9, loads: [13.1, 12.9] },
  { name: "L4", order: 5, block: "15 min", water: 148, dry: 144.1, rammed: 60.6, loads: [11.5, 11.6] },
];

export const writeUp: Beginning = {
  name: "write-up",
  says: "one question, what was changed and held, and the batches that answer it",
  notebook: "write-up",
  cards: ["trial", "moisture", "green-compression"],
  does: "A write-up: one question, what was changed, what was held, how it was measured, and the batches.",
  hazard:
    "Whoever repeats it meets the same dust, falling weights, turning muller and over-wet sand: say the hazard before its step.",
  body: `${whoAndScale("Does longer mulling pay?")}  bathroom scale: { reads to: 50 g, within: 100 g }

rigs:
  home tube: { bore: 50 mm, tube: 120 mm, rammer: 2 kg, drop: 161 mm, blows: 3 }

# A line, or a list of lines: - one line. Also: expected, departures, left out, review.
experiment:
  question: Does fifteen minutes of mulling give more green strength than eight, at the same water?
  where: a covered yard (invented), 15 to 18 °C
  from: 2026-06-06
  to: 2026-06-06
  version: 1
  changed:
    - minutes mulled after the water went in, 8 or 15
    - water, four steps
  held:
    - one bag of sand and one bag of clay
    - the tub, the hand and the tube
  measured:
    - Sand and two thirds of the water first, then the clay from low down, then the rest of the water; the clock starts then.
    - Each batch stands 30 minutes in a closed bucket and is riddled before any test.
    - Two specimens of each batch, loaded within two minutes of ramming.
  open:
    - whether twenty-five minutes would give more

aims: { compactability: 42 to 48 %, green compression: 50 to 75 kPa }

trial: { axis: moisture }

# block: what is compared at the same water. Shuffle the order, or time and what you change cannot be told apart.
batches:
${rows.map(batch).join("")}`,
};
