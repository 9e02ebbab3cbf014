// Can a reading be what it says: heights, masses, levels and times against each other, the figure against what sand shows.

import { hasError, type Issue } from "../issue.ts";
import type { Phrase } from "../phrase.ts";
import { amount } from "../quantity/amount.ts";
import { compactabilityIssues } from "../sand/compactability.ts";
import { heightToDiameterIssues } from "../sand/compression.ts";
import { moistureIssues } from "../sand/moisture-issues.ts";
import { permeabilityIssues } from "../sand/permeability-issues.ts";
import { densityIssues, specimenDensityGCm3 } from "../sand/specimen.ts";
import { clayByWashIssues } from "../sand/wash.ts";
import type { TestReading } from "./batch.ts";
import { densityImpossible, dishAboveDry, levelNotFalling, numberOverflows } from "./complaints-test.ts";
import { plainNumber } from "./plain-number.ts";
import { readingInputs } from "./reading-inputs.ts";
import { specimenOf } from "./specimen-of.ts";

type Values = { readonly [name: string]: number | undefined };

/** What is wrong with the figures of a reading, without places; empty when nothing is. */
export function checkReading(reading: TestReading): readonly Issue[] {
  const { test, worked } = reading;
  const values = valuesOf(reading);
  const issues = [...readingsAlone(reading, values), ...specimenIssues(values)];
  if (hasError(issues)) return issues;
  const number = plainNumber(reading);
  if (number === undefined) return issues;
  if (!Number.isFinite(number)) return [...issues, numberOverflows(test)];
  if (test === "compactability") issues.push(...compactabilityIssues(number));
  if (test === "density" && worked) issues.push(...densityOf(number, "as written"));
  return issues;
}

function valuesOf(reading: TestReading): Values {
  const inputs = readingInputs(reading)?.inputs ?? [];
  const resolved = inputs.flatMap(({ name, measured }) => (measured ? [[name, measured.value]] : []));
  const raw = Object.entries(reading.raw).map(([name, { value }]) => [name, value]);
  const bore = reading.rig?.fields.boreMm?.value;
  return Object.fromEntries([...(bore === undefined ? [] : [["diameterMm", bore]]), ...raw, ...resolved]);
}

function readingsAlone({ test, scale }: TestReading, values: Values): Issue[] {
  const { dampG, dryG, dishG = 0, grainG, fromMm, toMm, waterMm, seconds } = values;
  const issues: Issue[] = [];
  if (test === "moisture" && dampG !== undefined && dryG !== undefined) {
    if (dishG > 0 && dishG >= Math.min(dryG, dampG)) {
      return [dishAboveDry(amount(dishG, "g", 5), amount(Math.min(dryG, dampG), "g", 5))];
    }
    const step = scale ? { stepG: scale.stepG } : {};
    issues.push(...moistureIssues({ dampG: dampG - dishG, dryG: dryG - dishG, ...step }));
  }
  if (test === "clay by wash" && dryG !== undefined && grainG !== undefined) {
    issues.push(...clayByWashIssues({ startG: dryG, grainG }));
  }
  if (test === "permeability" && seconds !== undefined) {
    if (fromMm !== undefined && toMm !== undefined && fromMm <= toMm) {
      issues.push(levelNotFalling(amount(fromMm, "mm", 5), amount(toMm, "mm", 5)));
    }
    const levels = [waterMm, fromMm, toMm].filter((level) => level !== undefined);
    issues.push(...permeabilityIssues({ waterMm: levels, seconds }));
  }
  return issues;
}

/** A specimen whose mass is known: its shape, and its mass against the volume of the tube. */
function specimenIssues({ massG, heightMm, diameterMm, loadKg, packedG, filledMm }: Values): Issue[] {
  if (diameterMm === undefined) return [];
  const shape =
    heightMm !== undefined && loadKg !== undefined ? heightToDiameterIssues({ heightMm, diameterMm }) : [];
  // A specimen that is too squat keeps its figure, with the doubt said.
  const issues = shape.map((issue): Issue => ({ ...issue, severity: "warning" }));
  const mass = massG ?? packedG;
  const height = heightMm ?? filledMm;
  if (mass === undefined || height === undefined) return issues;
  const density = specimenDensityGCm3({ massG: mass, heightMm: height, diameterMm });
  const from = specimenOf(amount(mass, "g", 5), amount(diameterMm, "mm", 5), amount(height, "mm", 5));
  return [...issues, ...densityOf(density, from)];
}

/** Beyond these no sand is rammed, whatever it is made of (zircon, chromite): our own limits. */
const possible = { low: 0.8, high: 3.2 };

function densityOf(density: number, from: string | Phrase): readonly Issue[] {
  if (density < possible.low || density > possible.high) {
    return [densityImpossible(amount(density, "g/cm³", density < 10 ? 3 : 2), from)];
  }
  return densityIssues([density]);
}
