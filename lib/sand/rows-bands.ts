// Short rows to whole bands: each property has one unit, and a percentage one basis unless the row says another.

import type { Band, BandProperty } from "./band.ts";

const unitOf: Readonly<Record<BandProperty, { readonly unit: string; readonly basis?: string }>> =
  Object.freeze({
    fineness: { unit: "AFS grain fineness number" },
    moisture: { unit: "%", basis: "damp mass" },
    clay: { unit: "%" },
    compactability: { unit: "%", basis: "height" },
    "green compression": { unit: "kPa" },
    density: { unit: "g/cm³" },
    permeability: { unit: "permeability number" },
  });

export type BandRow = readonly [
  property: BandProperty,
  low: number,
  high: number,
  source: string,
  more?: Partial<Band> | undefined,
];

/** What all rows share, then the rows: property, low, high, source, and what else the row says of itself. */
export function asBands(
  shared: Pick<Band, "metal" | "bond" | "claim" | "tag"> & Partial<Band>,
  rows: readonly BandRow[],
): readonly Band[] {
  return rows.map(([property, low, high, source, more]) =>
    Object.freeze({ ...unitOf[property], ...shared, ...more, property, low, high, source }),
  );
}
