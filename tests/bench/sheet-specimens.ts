// An invented sheet with a ± on every input, as long as is asked for.

import type { Sheet, SheetSpec } from "../../lib/index.ts";
import { seeded } from "../seeded.ts";

export const scales = [{ name: "kitchen scale", stepG: 0.1, withinG: 0.5 }];
const formulas = {
  water: "= wet - dry",
  moisture: { unit: "% of damp mass", formula: "100 * water / wet" },
  area: { unit: "cm²", formula: "3.141592653589793 * bore^2 / 4" },
  volume: { unit: "cm³", formula: "area * height" },
  density: { unit: "g/cm³", formula: "wet / volume" },
  strength: "= compressionKPa(load, bore)",
  "dry density": "= dry / volume",
  ratio: "= strength / moisture",
};
const names = Object.keys(formulas);

/** Invented: specimens of damp sand, each weighed, dried, measured and loaded. */
export function specOf(count: number): SheetSpec {
  const random = seeded(1);
  return {
    name: "specimens",
    columns: {
      bag: "text",
      wet: { unit: "g", scale: "kitchen scale" },
      dry: { unit: "g", scale: "kitchen scale" },
      height: { unit: "mm", plusMinus: "0.2 mm" },
      bore: { unit: "mm", plusMinus: "0.1 mm" },
      load: { unit: "kg", plusMinus: "0.1 kg" },
      ...formulas,
    },
    rows: Array.from({ length: count }, (_, k) => ({
      bag: `specimen ${k}`,
      wet: random.uniform(150, 154).toFixed(1),
      dry: random.uniform(144, 146).toFixed(1),
      height: random.uniform(49.5, 50.5).toFixed(1),
      bore: "50.0",
      load: random.uniform(5, 7).toFixed(1),
    })),
    foot: { "mean moisture": "mean(moisture)", spread: "sd(moisture)" },
  };
}

export function readAll(made: Sheet, withEnds: boolean): number {
  let all = 0;
  for (let row = 0; row < made.rowCount; row++) {
    for (const name of names) {
      const cell = made.cell(row, name);
      if (cell.kind === "figure")
        all += withEnds ? cell.value + cell.figure.low + cell.figure.high : cell.value;
    }
  }
  return all;
}
