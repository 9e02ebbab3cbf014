// A log of many batches, invented: a trial gone on for years. Every batch has its recipe and six tests, one repeated.

import { seeded } from "../seeded.ts";

/** The text of a log with that many batches, from a fixed seed. */
export function batchLog(count: number): string {
  const random = seeded(2000);
  const batches = Array.from({ length: count }, (_, i) => {
    const day = new Date(Date.UTC(2001, 0, 1) + Math.floor(i / 4) * 86_400_000).toISOString().slice(0, 10);
    const moisture = 2.2 + 2.6 * ((i * 0.618034) % 1);
    const bring = (middle: number, sd: number, digits: number) =>
      (middle + sd * random.normal()).toFixed(digits);
    const filled = 120;
    const rammed = bring(filled * (1 - (20 + 12 * (moisture - 1.5)) / 100), 0.8, 1);
    const load = 15.5 - 2.2 * (moisture - 3) ** 2;
    const loads = [0, 1, 2].map(
      () =>
        `      - { load: ${bring(load, 0.3, 2)} kg, height: 50 mm, rig: drop tube, scale: bathroom scale }`,
    );
    const water = ((5.44 * moisture) / (100 - moisture)) * 1000 - 43;
    return `  B${i + 1}:
    date: ${day}
    order: ${(i % 4) + 1}
    made of: { sand: 5.00 kg, bentonite: 0.48 kg, bentonite moisture: 9 %, water: ${Math.max(20, water).toFixed(0)} g, scale: kitchen scale }
    mulled: 12 min
    stood: 30 min
    moisture: { method: oven, damp: 150.0 g, dry: ${(150 * (1 - moisture / 100)).toFixed(1)} g, scale: kitchen scale }
    compactability: { filled: ${filled} mm, rammed: ${rammed} mm, rig: drop tube }
    green compression:
${loads.join("\n")}
    permeability: { method: falling column, from: 200 mm, to: 100 mm, seconds: ${bring(17, 1, 1)}, height: 50 mm, rig: air column }
    density: { mass: ${bring(153, 0.8, 1)} g, height: 50 mm, rig: drop tube, scale: kitchen scale }
    squeeze: ${Math.min(5, Math.max(1, Math.round(moisture)))}
`;
  });
  return `${head}${batches.join("")}`;
}

const head = `# Invented: every figure.
format: 1
title: A log of many batches
invented: yes
metal: aluminium
bond: bentonite
scales:
  kitchen scale: { reads to: 0.1 g, within: 0.2 g }
  bathroom scale: { reads to: 50 g, within: 100 g }
rigs:
  drop tube: { bore: 50 mm, tube: 120 mm, rammer: 2.00 kg, drop: 163 mm, blows: 3 }
  air column: { bore: 50 mm, column: 100 mm, blank: 2 mm }
aims:
  compactability: 41 to 47 %
  green compression: 55 to 95 kPa
trial:
  axis: moisture
batches:
`;
