// From the readings of a rig to the number of the trade: which readings, in which part, by which formula.

import { permeabilityAt20 } from "../sand/air.ts";
import {
  compactabilityByWeighingPercent,
  compactabilityPercent,
  pressedCompactabilityPercent,
} from "../sand/compactability.ts";
import { compressionKPa } from "../sand/compression.ts";
import { moistureOfDampPercent } from "../sand/moisture.ts";
import { permeabilityNumber } from "../sand/permeability.ts";
import { specimenSeconds, specimenWaterMm } from "../sand/permeability-corrections.ts";
import { bleedingVesselPermeability, fallingColumnPermeability } from "../sand/permeability-rigs.ts";
import { shearKPa } from "../sand/shear.ts";
import { faceAreaCm2, specimenDensityGCm3 } from "../sand/specimen.ts";
import { splittingKPa } from "../sand/splitting.ts";
import { clayByWashPercent } from "../sand/wash.ts";
import type { TestName } from "./batch.ts";

/** What kind of reading an input is, so that it gets the doubt of its instrument. */
export type InputRole =
  | "weighing"
  | "load"
  | "length"
  | "bore"
  | "rig volume"
  | "volume"
  | "level"
  | "time"
  | "air"
  | "blank";

type Values = { readonly [input: string]: number };

export interface TestFormula {
  readonly inputs: { readonly [input: string]: InputRole };
  /** May throw RangeError where the values cannot be. */
  readonly number: (values: Values) => number;
  /** In plain signs, for a page. */
  readonly formula: string;
}

/** Of a table of formulas, so that a formula names its own readings and nothing else. */
const of = <Name extends string>(
  inputs: { readonly [input in Name]: InputRole },
  formula: string,
  number: (values: { readonly [input in Name]: number }) => number,
): TestFormula => ({ inputs, formula, number: number as (values: Values) => number });

const cylinder = { heightMm: "length", diameterMm: "bore" } as const;
const perBlow = { loadKg: "load", diameterMm: "bore" } as const;
const headInputs = {
  airMl: "volume",
  waterMm: "level",
  seconds: "time",
  ...cylinder,
  airC: "air",
  blankMm: "blank",
} as const;
const fallInputs = {
  fromMm: "level",
  toMm: "level",
  seconds: "time",
  ...cylinder,
  airC: "air",
  blankS: "blank",
} as const;

// Fields are named one by one: a rest of the record costs more than the formula, and it is worked out for every draw.
const steadyHead = of(
  headInputs,
  "V H / (p A t), at 20 °C",
  ({ airMl, waterMm, seconds, heightMm, diameterMm, airC, blankMm }) =>
    permeabilityAt20({
      permeability: permeabilityNumber({
        airMl,
        waterMm: specimenWaterMm({ waterMm, blankWaterMm: blankMm }),
        seconds,
        heightMm,
        diameterMm,
      }),
      celsius: airC,
    }),
);

const formulas: { readonly [form: string]: TestFormula } = {
  moisture: of({ dampG: "weighing", dryG: "weighing" }, "100 (damp − dry) / damp", moistureOfDampPercent),
  "moisture with dish": of(
    { dampG: "weighing", dryG: "weighing", dishG: "weighing" },
    "100 (damp − dry) / (damp − dish)",
    ({ dampG, dryG, dishG }) => moistureOfDampPercent({ dampG: dampG - dishG, dryG: dryG - dishG }),
  ),
  "compactability, height": of(
    { filledMm: "length", rammedMm: "length" },
    "100 (filled − rammed) / filled",
    compactabilityPercent,
  ),
  "compactability, pressed": of(
    { filledMm: "length", rammedMm: "length" },
    "100 (filled − pressed) / filled",
    ({ filledMm, rammedMm }) => pressedCompactabilityPercent({ filledMm, pressedMm: rammedMm }),
  ),
  "compactability, two weighings": of(
    { looseG: "weighing", packedG: "weighing" },
    "100 (1 − loose / packed)",
    ({ looseG, packedG }) => compactabilityByWeighingPercent({ looseG, rammedG: packedG }),
  ),
  "green compression": of(perBlow, "4 F / (π D²)", compressionKPa),
  "green shear": of(perBlow, "4 F / (π D²), one plane", shearKPa),
  splitting: of({ loadKg: "load", ...cylinder }, "2 F / (π D H)", splittingKPa),
  "permeability, constant head": steadyHead,
  "permeability, aspirator": steadyHead,
  "permeability, falling column": of(
    { columnMm: "bore", ...fallInputs },
    "a H ln(h₁/h₂) / (A t), at 20 °C",
    ({ columnMm, fromMm, toMm, seconds, heightMm, diameterMm, airC, blankS }) =>
      permeabilityAt20({
        permeability: fallingColumnPermeability({
          columnCm2: faceAreaCm2(columnMm),
          fromMm,
          toMm,
          heightMm,
          diameterMm,
          seconds: specimenSeconds({ seconds, blankSeconds: blankS }),
        }),
        celsius: airC,
      }),
  ),
  "permeability, bleeding vessel": of(
    { vesselMl: "rig volume", ...fallInputs },
    "V H ln(p₁/p₂) / (A t P), at 20 °C",
    ({ vesselMl, fromMm, toMm, seconds, heightMm, diameterMm, airC, blankS }) =>
      permeabilityAt20({
        permeability: bleedingVesselPermeability({
          vesselMl,
          fromMm,
          toMm,
          heightMm,
          diameterMm,
          seconds: specimenSeconds({ seconds, blankSeconds: blankS }),
        }),
        celsius: airC,
      }),
  ),
  density: of({ massG: "weighing", ...cylinder }, "4 m / (π D² H)", specimenDensityGCm3),
  "clay by wash": of(
    { dryG: "weighing", grainG: "weighing" },
    "100 (dry − grain) / dry",
    ({ dryG, grainG }) => clayByWashPercent({ startG: dryG, grainG }),
  ),
};

/** The formula for a test as it was read: by its method, and with the dish where that was weighed too. */
export function formulaFor(
  test: TestName,
  method: string | undefined,
  hasDish: boolean,
): TestFormula | undefined {
  if (hasDish && test === "moisture") return formulas["moisture with dish"];
  return formulas[test] ?? formulas[`${test}, ${method}`];
}
