// Theoretical specific surface: what the grains would show if all were smooth spheres.

import type { Issue } from "../issue.ts";
import type { Grading } from "./grading.ts";
import { panDrivesSurface, tooFewSieves, topMidAssumed } from "./grain-issues.ts";
import { type ClassMean, classMeanMm, grainClasses } from "./mean-size.ts";
import { QUARTZ_KG_M3 } from "./quartz.ts";
import { short } from "./short-figure.ts";

/**
 * Surface of smooth spheres of one size per mass: S = 6 / (ρd), cm²/g.
 * diameterMm: > 0, mm. grainKgM3: > 0, kg/m³, default quartz 2650. Else RangeError.
 * Source: geometry. Example: sphereSurfaceCm2G(1) is 22.64.
 */
export function sphereSurfaceCm2G(diameterMm: number, grainKgM3 = QUARTZ_KG_M3): number {
  if (!(diameterMm > 0 && grainKgM3 > 0))
    throw new RangeError(
      `sphereSurfaceCm2G: size and density must be above 0, got ${diameterMm} and ${grainKgM3}`,
    );
  return 60_000 / (grainKgM3 * diameterMm);
}

export interface SurfaceOptions {
  /** Which mean stands for a class; geometric unless said otherwise. */
  readonly mean?: ClassMean;
  readonly grainKgM3?: number;
}

export interface ClassSurface {
  readonly label: string;
  readonly lowerMm: number;
  readonly upperMm: number;
  readonly meanMm: number;
  /** % of the sand by mass. */
  readonly massPercent: number;
  /** Surface of one gram of this class, cm²/g. */
  readonly cm2G: number;
  /** % of the sand's surface. */
  readonly surfacePercent: number;
}

export interface SpecificSurface {
  /** Theoretical specific surface, cm²/g of clay-free sand; undefined where it cannot be had. */
  readonly cm2G: number | undefined;
  /** Sauter size d32 = 6 / (ρS): spheres of this one size have the same surface, mm. */
  readonly sauterMm: number | undefined;
  readonly byClass: readonly ClassSurface[];
  /** % of the surface that comes from the pan, whose size was not measured. */
  readonly panSharePercent: number;
  /** The surface if every grain in the pan were as coarse, or as fine, as its class allows. */
  readonly panBounds: { readonly low: number; readonly high: number } | undefined;
  readonly issues: readonly Issue[];
}

/**
 * Theoretical specific surface of a grading: S = (6/ρ) Σ(Pᵢ / dᵢ) / ΣPᵢ, cm²/g, with dᵢ the mean size of class i.
 *
 * mean: geometric by default, as the reference table was made; arithmetic is about 2 % lower, log-mean between them.
 * The coarsest class is taken to end at twice its opening, the pan to hold 0.020 mm to the finest opening.
 * Grains are not spheres and S is never the true surface: it is what an angularity is counted against.
 * Source: principle, Giesserei-Lexikon, "Eckigkeitsgrad".
 * Example: the sand of grainStatistics: 125.5 cm²/g, Sauter size 0.180 mm.
 */
export function specificSurface(grading: Grading, options: SurfaceOptions = {}): SpecificSurface {
  const { mean = "geometric", grainKgM3 = QUARTZ_KG_M3 } = options;
  const classes = grainClasses(grading);
  if (classes.length === 0 || !(grading.total > 0))
    return {
      cm2G: undefined,
      sauterMm: undefined,
      byClass: [],
      panSharePercent: 0,
      panBounds: undefined,
      issues: [tooFewSieves("a specific surface")],
    };
  const sized = classes.map((one) => {
    const meanMm = classMeanMm(one.lowerMm, one.upperMm, mean);
    const cm2G = sphereSurfaceCm2G(meanMm, grainKgM3);
    const share = one.mass / grading.total;
    return { ...one, meanMm, cm2G, share, part: share * cm2G };
  });
  const cm2G = sized.reduce((sum, { part }) => sum + part, 0);
  const pan = sized.find(({ openEnd }) => openEnd === "lower");
  const top = sized[0]!;
  const panSharePercent = pan ? (100 * pan.part) / cm2G : 0;
  const withPanAt = (sizeMm: number): number =>
    pan ? cm2G - pan.part + pan.share * sphereSurfaceCm2G(sizeMm, grainKgM3) : cm2G;
  return {
    cm2G,
    sauterMm: 60_000 / (grainKgM3 * cm2G),
    byClass: sized.map((one) => ({
      label: one.label,
      lowerMm: one.lowerMm,
      upperMm: one.upperMm,
      meanMm: one.meanMm,
      massPercent: 100 * one.share,
      cm2G: one.cm2G,
      surfacePercent: (100 * one.part) / cm2G,
    })),
    panSharePercent,
    panBounds: pan ? { low: withPanAt(pan.upperMm), high: withPanAt(pan.lowerMm) } : undefined,
    issues: [
      ...(pan && pan.mass > 0
        ? [
            panDrivesSurface(
              short(100 * pan.share),
              short(panSharePercent),
              panSharePercent > 20 ? "warning" : "note",
            ),
          ]
        : []),
      ...(top.openEnd === "upper" && top.mass > 0
        ? [topMidAssumed(short(100 * top.share), top.label, top.share > 0.01 ? "warning" : "note")]
        : []),
    ],
  };
}
