// A test's own number: its unit, and what it cannot be.

import type { TestName } from "./batch.ts";

export interface WorkedUnit {
  /** As it is printed; the empty string for a bare number. */
  readonly unit: string;
  /** More than this cannot be. */
  readonly most: number;
  readonly aboveZero: boolean;
}

export const workedUnits: { readonly [test in TestName]: WorkedUnit } = {
  moisture: { unit: "% of damp mass", most: 60, aboveZero: false },
  compactability: { unit: "% of height", most: 100, aboveZero: false },
  "green compression": { unit: "kPa", most: 2000, aboveZero: true },
  "green shear": { unit: "kPa", most: 2000, aboveZero: true },
  splitting: { unit: "kPa", most: 2000, aboveZero: true },
  permeability: { unit: "", most: 10_000, aboveZero: true },
  density: { unit: "g/cm³", most: 10, aboveZero: true },
  "clay by wash": { unit: "% of dry mix", most: 100, aboveZero: false },
  squeeze: { unit: "step", most: 5, aboveZero: true },
};

/**
 * Below this a bare number for a strength looks like psi, kPa. Weak but usable sands stand above: green sands
 * 30 to 160 kPa, the lowest published point held 23 kPa; shear 0.38 to 0.69 of compression. Our own limits from those.
 */
export const looksLikePsiBelow: { readonly [test in TestName]?: number } = {
  "green compression": 20,
  "green shear": 8,
  splitting: 1.5,
};
