// Bond state, equilibrium moisture, mulling efficiency: against the two pages that print the relations.

import { bondRelations, bondState, KPA_PER_PSI } from "../../lib/sand/bond-state.ts";
import { equilibriumMoisturePercent } from "../../lib/sand/equilibrium-moisture.ts";
import {
  compactedGreenStrengthPercent,
  moistureGreenStrengthPercent,
} from "../../lib/sand/green-strength-bond.ts";
import { liveClayByBondPercent } from "../../lib/sand/live-clay-by-bond.ts";
import { mullingEfficiencyPercent } from "../../lib/sand/mulling-efficiency.ts";
import type { Published } from "./published.ts";

const state = (psi: number, moistureOfDampPercent: number, compactabilityPercent: number) => ({
  strengthKPa: psi * KPA_PER_PSI,
  moistureOfDampPercent,
  compactabilityPercent,
});
const five = () =>
  (
    [
      [10, 2.5, 40],
      [15, 3, 42],
      [20, 3.5, 45],
      [25, 3.5, 40],
      [30, 3.2, 42],
    ] as const
  ).map(([psi, moisture, compactability]) => bondState(state(psi, moisture, compactability)));
const equilibrium = (liveClayPercent: number, compactabilityPercent: number) =>
  equilibriumMoisturePercent({ liveClayPercent, compactabilityPercent })!;
const points = [30, 35, 40, 45, 50, 55];

export const bondRows: readonly Published[] = [
  {
    figure: "available bond of five states, %",
    source: ["icri", "honeyman"],
    theirs: ["4.340", "5.523", "6.706", "7.231", "7.361"],
    ours: () => five().map((bond) => bond.availableBondPercent!),
    tag: "by hand",
    note: "constants 0.105, 1.316 read twice",
  },
  {
    figure: "their working bond, %",
    source: ["icri", "honeyman"],
    theirs: ["1.660", "2.546", "3.511", "4.150", "5.091"],
    ours: () => five().map((bond) => bond.workingBondPercent!),
    tag: "by hand",
    note: "constants 15.29, 132.1 read twice",
  },
  {
    figure: "their muller efficiency, %",
    source: ["icri", "honeyman"],
    theirs: ["38.3", "46.1", "52.4", "57.4", "69.2"],
    ours: () => five().map((bond) => bond.mullerEfficiencyPercent!),
    tag: "by hand",
  },
  {
    figure: "the relations in kPa: of 100 kPa with no water, and at 32.1 %",
    source: ["icri", "honeyman"],
    theirs: ["1.5229", "2.2176"],
    ours: () => {
      const at = { strengthKPa: 100, moistureOfDampPercent: 0, compactabilityPercent: 32.1 };
      const { availableBondPercent, workingBondPercent } = bondRelations(at);
      return [availableBondPercent, workingBondPercent];
    },
    tag: "by hand",
  },
  {
    figure: 'compacted green strength "× 100", % of clay',
    source: "icri",
    theirs: ["373"],
    ours: () => [compactedGreenStrengthPercent({ ...state(20, 3.5, 45), liveClayPercent: 8 })!],
    agree: { instead: ["3.73"] },
    tag: "misprint",
    note: "no sand holds 373 % of clay; working bond of the same state is 3.51",
  },
  {
    figure: "moisture green strength of the same state",
    source: "icri",
    theirs: ["5.7"],
    ours: () => [moistureGreenStrengthPercent({ ...state(20, 3.5, 45), liveClayPercent: 8 })!],
    tag: "by hand",
    note: "relation read",
  },
  {
    figure: "equilibrium moisture at 7, 8, 9, 10 % live clay and compactability 30 to 55 %",
    source: "icri",
    theirs: ["3.143", "3.228", "3.319", "3.415", "3.589", "3.837", "3.591", "3.690", "3.793", "3.903", "4.102", "4.385", "4.040", "4.151", "4.267", "4.391", "4.614", "4.934", "4.489", "4.612", "4.742", "4.879", "5.127", "5.482"], // biome-ignore format: as the table runs
    ours: () => [7, 8, 9, 10].flatMap((clay) => points.map((at) => equilibrium(clay, at))),
    tag: "by hand",
    note: "relation read",
  },
  {
    figure: "its two branches where they meet, 47.5 %",
    source: "icri",
    theirs: ["2.0201", "2.0136"],
    ours: () => [8 / equilibrium(8, 47.5), 8 / equilibrium(8, 47.5 + 1e-9)],
    tag: "by hand",
  },
  {
    figure: "live clay by bond, 20 psi at 3.5 and 45 %: low and high, %",
    source: "icri",
    theirs: ["3.51", "6.71"],
    ours: () => {
      const { low, high } = liveClayByBondPercent(state(20, 3.5, 45))!;
      return [low, high];
    },
    tag: "by hand",
  },
  {
    figure: "mulling efficiency by the Japanese method, %",
    source: "tjfs",
    theirs: ["81.8"],
    ours: () => [
      mullingEfficiencyPercent({
        batch: { strengthKPa: 150, compactabilityPercent: 40, moistureOfDampPercent: 3.2 },
        reference: { strengthKPa: 180, compactabilityPercent: 42, moistureOfDampPercent: 3.3 },
      }),
    ],
    tag: "by hand",
    note: "relation read",
  },
];
