// A way in by a sheet of one's own.

import { type Beginning, whoAndScale } from "./beginning.ts";

export const ownSheets: Beginning = {
  name: "own-sheets",
  says: "columns with units, formulas by their names, a foot, a chart",
  notebook: "own-sheets",
  cards: ["clay-moisture"],
  does: "A sheet of your own: what the clay in three bags holds of water.",
  hazard:
    "A dish from the oven burns, and what has dried clay is not used for food again. Bentonite is dusty: a mask that seals.",
  body: `${whoAndScale("My sheets")}
sheets:
  clay bags (invented):
    columns:
      bag: text               # text, date, number, or a unit
      damp: { unit: g, scale: kitchen scale }
      dry: { unit: g, scale: kitchen scale }
      moisture: { unit: "% of damp mass", formula: 100 * (damp - dry) / damp }
    rows:                     # or the name of a CSV file beside this log: rows: my-bags.csv
      - { bag: first, damp: 52.4, dry: 47.6 }
      - { bag: second, damp: 50.9, dry: 47.1 ± 0.2 }
      - { bag: third, damp: 51.7, dry: 46.8 }
    foot:
      mean moisture: mean(moisture)
      widest difference: max(moisture) - min(moisture)
    charts:
      - { x: bag, y: moisture }

# A formula may use + - * / ^, comparisons, if, sum, mean, sd, count, min, max, lookUp in another sheet,
# and the models of the sand by name: the page lists all of them.
`,
};
