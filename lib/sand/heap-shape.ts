// Sand that lies open to the air, from the mass of a heap or bin.

import { requireAboveZero } from "./require.ts";

export type LyingAs = "heap" | "bin";

/** Slope of a loose heap of damp sand, degrees: common practice. */
const SLOPE_DEGREES = 35;

/**
 * Surface that is open to the air, m², and the depth that it stands over, mm (volume ÷ surface): a heap is a cone of 35°, a
 * bin a round one as deep as wide, open at the top. heapKg: damp, > 0. looseKgM3: damp, loose, > 0. Else RangeError.
 * A surface that was measured is better: a long heap along a wall or a wide tray has more of it.
 * Source: geometry; slope and bin are our own. Example: 100 kg at 1100 kg/m³ as a heap: 0.954 m², 95 mm.
 */
export function exposedSurface({
  heapKg,
  looseKgM3,
  shape,
}: {
  readonly heapKg: number;
  readonly looseKgM3: number;
  readonly shape: LyingAs;
}): { readonly areaM2: number; readonly depthMm: number } {
  requireAboveZero("exposedSurface", { heapKg, looseKgM3 });
  const volume = heapKg / looseKgM3;
  const areaM2 = shape === "heap" ? coneM2(volume) : Math.PI * (volume / (2 * Math.PI)) ** (2 / 3);
  return { areaM2, depthMm: (1000 * volume) / areaM2 };
}

function coneM2(volume: number): number {
  const slope = (SLOPE_DEGREES * Math.PI) / 180;
  const radius = Math.cbrt((3 * volume) / (Math.PI * Math.tan(slope)));
  return (Math.PI * radius ** 2) / Math.cos(slope);
}
