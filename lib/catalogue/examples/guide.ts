// What messages on the guide may be said with.

import type { Examples } from "../example.ts";

export const guide: Examples = {
  "guide/aim": { place: "3.511 (95 %: 3.465 to 3.535)", unit: "% of damp mass" },
  "guide/air-rig": { name: "air column" },
  "guide/asks": { question: "Does fifteen minutes of mulling give more green strength than eight?" },
  "guide/castings": { castings: "4 castings", days: "4 days", faulty: "2" },
  "guide/events": { pours: "2 pours", others: "2 other events" },
  "guide/experiment-lacks": { parts: "what it asks and what was changed" },
  "guide/few-tests": { least: "8" },
  "guide/fineness": {
    sand: "Lime Kiln sand (invented)",
    figure: "58.5 ± at least 1.7",
    portions: "2 portions",
  },
  "guide/heap": { mass: "50 kg (± not known)" },
  "guide/made-up": { count: "2 batches were" },
  "guide/no-blank": { names: "air column" },
  "guide/ranges": { tests: "compactability and green compression" },
  "guide/recipe": { clay: "7.41 ± 0.05 %", moisture: "3.40 ± 0.34 %" },
  "guide/recipe-lacks": { lack: "basis" },
  "guide/repeats": { test: "Compactability", times: "3", batch: "first mix" },
  "guide/rig": { name: "yard tube", joules: "3.16" },
  "guide/rig-without-blow": { name: "drop tube" },
  "guide/sands": { names: "Lime Kiln sand (invented)" },
  "guide/scale": { name: "kitchen scale", step: "0.1 g", within: "0.2 g" },
  "guide/scale-unchecked": { names: "bathroom scale" },
  "guide/tests": { property: "Moisture", count: "10 days" },
  "guide/trial": { count: "2 batches", levels: "2 waters", low: "3.17", high: "3.59" },
  "guide/with-clay": { sand: "Coppice Lane sand" },
};
