// How the columns of a trial's tests are worked out, as formulas of a sheet over the readings of a batch.

import type { TestName, TestReading } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import { readingInputs } from "../log/reading-inputs.ts";

export interface TestSheet {
  /** In the names of the columns. */
  readonly formula: string;
  /** Name of the column, the reading that stands in it, its unit, and what is taken where the log gives none. */
  readonly columns: readonly (readonly [name: string, input: string, unit: string, taken?: number])[];
  /** Of the result; undefined: a plain number. */
  readonly unit?: string;
}

const bore = ["bore", "diameterMm", "mm"] as const;
const height = ["height", "heightMm", "mm"] as const;
const load = ["load", "loadKg", "kg"] as const;
const weighed = (name: string) => [name, `${name}G`, "g"] as const;
const length = (name: string) => [name, `${name}Mm`, "mm"] as const;
const time = ["time", "seconds", "s"] as const;
const temperature = ["temperature", "airC", "°C", 20] as const;
/** Two levels of water, the blank run's time, and what the specimen and the air are. */
const falling = [
  length("from"),
  length("to"),
  time,
  ["blank", "blankS", "s", 0],
  height,
  bore,
  temperature,
] as const;

/** By the formula as the log's models tell it; tests/page/shown-formulas.test.ts works each out again as a sheet. */
const sheets: { readonly [formula: string]: TestSheet } = {
  "100 (damp − dry) / damp": {
    formula: "100 * (damp - dry) / damp",
    columns: [weighed("damp"), weighed("dry")],
    unit: "% of damp mass",
  },
  "100 (damp − dry) / (damp − dish)": {
    formula: "100 * (damp - dry) / (damp - dish)",
    columns: [weighed("damp"), weighed("dry"), weighed("dish")],
    unit: "% of damp mass",
  },
  "100 (filled − rammed) / filled": {
    formula: "100 * (filled - rammed) / filled",
    columns: [length("filled"), length("rammed")],
    unit: "% of height",
  },
  "100 (1 − loose / packed)": {
    formula: "100 * (1 - loose / packed)",
    columns: [weighed("loose"), weighed("packed")],
    unit: "% of height",
  },
  "4 F / (π D²)": { formula: "compressionKPa(load, bore)", columns: [load, bore], unit: "kPa" },
  "4 F / (π D²), one plane": { formula: "shearKPa(load, bore)", columns: [load, bore], unit: "kPa" },
  "2 F / (π D H)": {
    formula: "splittingKPa(load, height, bore)",
    columns: [load, height, bore],
    unit: "kPa",
  },
  "4 m / (π D² H)": {
    formula: "specimenDensityGCm3(mass, height, bore)",
    columns: [weighed("mass"), height, bore],
    unit: "g/cm³",
  },
  "100 (filled − pressed) / filled": {
    formula: "100 * (filled - pressed) / filled",
    columns: [length("filled"), ["pressed", "rammedMm", "mm"]],
    unit: "% of height",
  },
  "100 (dry − grain) / dry": {
    formula: "100 * (dry - grain) / dry",
    columns: [weighed("dry"), weighed("grain")],
    unit: "% of dry mix",
  },
  "V H / (p A t), at 20 °C": {
    formula:
      "permeabilityAt20(permeabilityNumber(air, height, bore, specimenWaterMm(pressure, blank), time), temperature)",
    columns: [
      ["air", "airMl", "ml"],
      height,
      bore,
      ["pressure", "waterMm", "mm"],
      ["blank", "blankMm", "mm", 0],
      time,
      temperature,
    ],
  },
  "a H ln(h₁/h₂) / (A t), at 20 °C": {
    formula:
      "permeabilityAt20(fallingColumnPermeability(pi * column^2 / 4, height, bore, from, to, specimenSeconds(time, blank)), temperature)",
    columns: [length("column"), ...falling],
  },
  "V H ln(p₁/p₂) / (A t P), at 20 °C": {
    formula:
      "permeabilityAt20(bleedingVesselPermeability(vessel, height, bore, from, to, specimenSeconds(time, blank)), temperature)",
    columns: [["vessel", "vesselMl", "ml"], ...falling],
  },
};

/** The sheet that works out a formula as the log's models tell it. */
export function sheetOfFormula(told: string): TestSheet | undefined {
  return sheets[told];
}

/** The one way in which every figure of a test was worked out from readings; undefined where there is not one. */
export function testSheet(test: TestName, rows: readonly BatchFigures[]): TestSheet | undefined {
  const tested = rows.filter((row) => row.tests[test]);
  // Readings by another method, and those that gave no figure, stand beside: then no one formula tells them all.
  if (tested.some((row) => readingsOf(test, row).length !== row.tests[test]!.each.length)) return undefined;
  const ways = new Set(
    tested.flatMap((row) => readingsOf(test, row)).map((reading) => readingInputs(reading)?.formula.formula),
  );
  const [way] = ways;
  return ways.size === 1 && way !== undefined ? sheetOfFormula(way) : undefined;
}

export function readingsOf(test: TestName, { batch }: BatchFigures): readonly TestReading[] {
  return batch.readings.filter((reading) => reading.test === test);
}

/** The formula of the column: the mean over the readings where a batch has several. */
export function testFormula(test: TestName, rows: readonly BatchFigures[]): string | undefined {
  const found = testSheet(test, rows);
  const repeated = rows.some((row) => readingsOf(test, row).length > 1);
  return found && (repeated ? `mean(${found.formula})` : found.formula);
}

/** What is taken where no reading tells: "blank 0 s where no blank run was made; temperature 20 °C where none was read". */
export function testTaken(test: TestName, rows: readonly BatchFigures[]): string | undefined {
  const taken = (testSheet(test, rows)?.columns ?? []).flatMap(([name, , unit, value]) =>
    value === undefined ? [] : [`${name} ${value} ${unit}`],
  );
  return taken.length === 0 ? undefined : `taken where the log does not say: ${taken.join(", ")}`;
}
