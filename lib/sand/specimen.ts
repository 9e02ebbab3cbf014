// The rammed specimen: its size, density and pores.

import type { Issue } from "../issue.ts";
import { issueMessage } from "../message.ts";
import { amount, amounts } from "../quantity/amount.ts";
import { isAboveZero, requireAboveZero, requireBelow100 } from "./require.ts";

/** 2 in × 2 in, ± 1/16 in of height (lab manual); 50 × 50 mm (Giesserei-Praxis lexicon, "Normprüfkörper"). */
export const specimens = Object.freeze({
  us: Object.freeze({ diameterMm: 50.8, heightMm: 50.8 }),
  metric: Object.freeze({ diameterMm: 50, heightMm: 50 }),
});

interface Cylinder {
  readonly heightMm: number;
  readonly diameterMm: number;
}

/** Area of a round face, cm²: π d² / 4. diameterMm > 0, else RangeError. Example: 50.8 mm is 20.268. */
export function faceAreaCm2(diameterMm: number): number {
  if (!isAboveZero(diameterMm)) requireAboveZero("faceAreaCm2", { diameterMm });
  return (Math.PI * diameterMm * diameterMm) / 400;
}

/** Volume of a cylinder, cm³. heightMm, diameterMm > 0, else RangeError. Example: 50.8 × 50.8 mm is 102.96. */
export function specimenVolumeCm3({ heightMm, diameterMm }: Cylinder): number {
  if (!isAboveZero(heightMm)) requireAboveZero("specimenVolumeCm3", { heightMm });
  return (faceAreaCm2(diameterMm) * heightMm) / 10;
}

/**
 * Density of a damp rammed specimen, g/cm³: 4000 mass / (π diameter² height).
 * massG, heightMm, diameterMm: > 0, g and mm, else RangeError. Height to 0.1 mm, mass to 0.1 g, three or more
 * specimens within ± 5 % of their mean.
 * Source: TJFS-104. Example: specimenDensityGCm3({ massG: 155, heightMm: 50.8, diameterMm: 50.8 }) is 1.505.
 */
export function specimenDensityGCm3({ massG, heightMm, diameterMm }: Cylinder & { massG: number }): number {
  if (!isAboveZero(massG)) requireAboveZero("specimenDensityGCm3", { massG });
  return massG / specimenVolumeCm3({ heightMm, diameterMm });
}

/**
 * Porosity of rammed sand, % of its volume, pores with their water: 100 (1 − density (1 − m/100) / grain density).
 * densityGCm3: damp, > 0; moistureOfDampPercent: below 100; grainGCm3: solid grain and clay, > 0, 2.65 unless given.
 * Else RangeError. A density above the grain's gives a negative figure.
 * Source: definition; 2.65 quartz, clay 2.6 (reference value).
 * @example porosityPercent({ densityGCm3: 1.505, moistureOfDampPercent: 3.5 }) // 45.2
 */
export function porosityPercent(sand: {
  readonly densityGCm3: number;
  readonly moistureOfDampPercent: number;
  readonly grainGCm3?: number;
}): number {
  const { densityGCm3, moistureOfDampPercent, grainGCm3 = 2.65 } = sand;
  requireAboveZero("porosityPercent", { densityGCm3, grainGCm3 });
  requireBelow100("porosityPercent", { moistureOfDampPercent });
  return 100 * (1 - (densityGCm3 * (1 - moistureOfDampPercent / 100)) / grainGCm3);
}

/**
 * Pores that hold air, % of the volume: porosity − density × moisture / density of water (1 g/cm³).
 * Arguments as porosityPercent. Source: definition.
 * @example airPorosityPercent({ densityGCm3: 1.505, moistureOfDampPercent: 3.5 }) // 39.9
 */
export function airPorosityPercent(sand: Parameters<typeof porosityPercent>[0]): number {
  return porosityPercent(sand) - sand.densityGCm3 * sand.moistureOfDampPercent;
}

/**
 * What is wrong with densities of specimens of one batch, g/cm³, each > 0 and at least one, else RangeError.
 * Outside 1.3 to 1.8 a reading is doubted (our own; published sands 1.41 to 1.70); more than 5 % from their mean the
 * specimens do not agree (TJFS-104).
 * Example: densityIssues([1.5, 1.7])[0]?.code is "sand/densities-disagree".
 */
export function densityIssues(densitiesGCm3: readonly number[]): readonly Issue[] {
  if (densitiesGCm3.length === 0) throw new RangeError("densityIssues: there must be a density");
  for (const densityGCm3 of densitiesGCm3) requireAboveZero("densityIssues", { densityGCm3 });
  const odd = densitiesGCm3.find((density) => density < 1.3 || density > 1.8);
  const middle = densitiesGCm3.reduce((all, density) => all + density, 0) / densitiesGCm3.length;
  const apart = densitiesGCm3.some((density) => Math.abs(density / middle - 1) > 0.05 + 1e-9);
  return [
    ...(odd === undefined ? [] : [densityUnlikely(amount(odd, "g/cm³", 3), amounts(1.3, 1.8, "g/cm³", 2))]),
    ...(apart ? [densitiesDisagree(amount(middle, "g/cm³", 3))] : []),
  ];
}

export const densityUnlikely = issueMessage(
  "sand/density-unlikely",
  "warning",
  (density: string, usual: string) => ({
    message: `A specimen of ${density} is outside what rammed green sand weighs, ${usual}.`,
    remedy: "Look at its mass (without the tube?), its height and its diameter.",
  }),
);

export const densitiesDisagree = issueMessage("sand/densities-disagree", "warning", (middle: string) => ({
  message: `The specimens differ by more than 5 % from their mean density, ${middle}, so they were not rammed alike.`,
  remedy: "Ram new ones: riddled sand, the same mass, the same drop, three blows, and a pause between them.",
}));
