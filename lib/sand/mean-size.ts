// The class of sizes that a sieve holds, and one size to stand for it.

import type { Grading } from "./grading.ts";

/** Finest grain that counts as sand: what is finer is washed out as AFS clay. Indian lab manual, experiment 2.3. */
const CLAY_LIMIT_MM = 0.02;

export interface GrainClass {
  readonly label: string;
  readonly lowerMm: number;
  readonly upperMm: number;
  readonly mass: number;
  /** An end that was not measured: the upper one of the coarsest sieve, the lower one of the pan. */
  readonly openEnd?: "upper" | "lower";
}

/**
 * Classes of sizes, coarse to fine. A sieve's class runs from its opening to that of the sieve above.
 * The coarsest is taken to end at twice its opening (as No. 6: 3.35 to 6.7 mm), the pan to begin at 0.020 mm,
 * or at half the finest opening where that is already 0.020 mm or less; both are our own assumption and marked openEnd.
 * A pan without any sieve has no upper limit and gives no class.
 * Example: 1 g on No. 200, 1 g on No. 270, 1 g in the pan: 0.075–0.150, 0.053–0.075, 0.020–0.053 mm.
 */
export function grainClasses(grading: Grading): readonly GrainClass[] {
  const classes: GrainClass[] = [];
  let upperMm: number | undefined;
  for (const { label, openingMm, mass } of grading.fractions) {
    if (openingMm > 0) {
      classes.push(
        upperMm === undefined
          ? { label, lowerMm: openingMm, upperMm: 2 * openingMm, mass, openEnd: "upper" }
          : { label, lowerMm: openingMm, upperMm, mass },
      );
      upperMm = openingMm;
    } else if (upperMm !== undefined) {
      const lowerMm = upperMm > CLAY_LIMIT_MM ? CLAY_LIMIT_MM : upperMm / 2;
      classes.push({ label, lowerMm, upperMm, mass, openEnd: "lower" });
    }
  }
  return classes;
}

/** Which mean stands for a class. On sieves a factor √2 apart they differ by less than 2 %. */
export type ClassMean = "arithmetic" | "geometric" | "log-mean";

/**
 * Mean size of a class from l to u, mm: arithmetic (l + u) / 2; geometric √(lu); log-mean (u − l) / ln(u / l),
 * which is exact for the surface if the mass is spread evenly over d (moment M₋₁, ISO 9276-2, from memory).
 * lowerMm, upperMm: 0 < lowerMm < upperMm, else RangeError.
 * Example: 0.15 to 0.212 mm: 0.1810, 0.1783, 0.1792.
 */
export function classMeanMm(lowerMm: number, upperMm: number, mean: ClassMean): number {
  if (!(lowerMm > 0 && upperMm > lowerMm))
    throw new RangeError(`classMeanMm: limits must be 0 < lower < upper, got ${lowerMm} and ${upperMm}`);
  if (mean === "arithmetic") return (lowerMm + upperMm) / 2;
  if (mean === "geometric") return Math.sqrt(lowerMm * upperMm);
  return (upperMm - lowerMm) / Math.log(upperMm / lowerMm);
}
