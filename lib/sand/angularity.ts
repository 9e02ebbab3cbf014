// Angularity: how much more surface the grains have than spheres would.

/**
 * Coefficient of angularity E = actual specific surface / theoretical specific surface.
 * actualCm2G: measured by the air permeability of a packed column; theoreticalCm2G: from the sieving. Both > 0,
 * cm²/g, else RangeError. Below 1 the two do not belong together, or the pan was taken too fine.
 * Source: Giesserei-Lexikon, "Eckigkeitsgrad".
 * Example: angularityCoefficient(163, 125.5) is 1.30.
 */
export function angularityCoefficient(actualCm2G: number, theoreticalCm2G: number): number {
  if (!(actualCm2G > 0 && theoreticalCm2G > 0))
    throw new RangeError(
      `angularityCoefficient: surfaces must be above 0, got ${actualCm2G} and ${theoreticalCm2G}`,
    );
  return actualCm2G / theoreticalCm2G;
}

export type AngularityClass = "less than a sphere" | "round" | "rounded edges" | "angular" | "splintery";

/**
 * Word for a coefficient of angularity: 1.0 ideally round, 1.1 to 1.3 rounded edges, 1.3 to 1.7 angular, above 1.7
 * splintery. The source leaves 1.0 to 1.1 open; we call it round. No body has less surface than spheres: below 1 is
 * a sign of faulty figures.
 * coefficient: > 0, else RangeError. Source: Giesserei-Lexikon, "Eckigkeitsgrad". Other scales do not agree with it.
 * Example: angularityClass(1.2) is "rounded edges".
 */
export function angularityClass(coefficient: number): AngularityClass {
  if (!(coefficient > 0)) throw new RangeError(`angularityClass: must be above 0, got ${coefficient}`);
  if (coefficient < 1) return "less than a sphere";
  if (coefficient < 1.1) return "round";
  if (coefficient < 1.3) return "rounded edges";
  return coefficient <= 1.7 ? "angular" : "splintery";
}
