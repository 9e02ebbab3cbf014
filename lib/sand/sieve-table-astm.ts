// The US standard test sieves: number, opening, wire, and how far the opening may be off.

export interface AstmRow {
  readonly number: number;
  readonly openingMm: number;
  /** Typical wire, mm. */
  readonly wireMm: number;
  /** The average opening may be off by ± this many µm. */
  readonly toleranceUm: number;
  /** Largest single opening that is allowed, mm. */
  readonly largestMm: number;
  /** Openings that older tables print for the same number, where they differ. */
  readonly olderMm: readonly number[];
}

// ASTM E11-17 and ISO 3310-1:2016 as transcribed in open code; Nos. 6, 12, 20 to 270 also read in JB/T 9155.
// Older openings: 3.36, 1.68, 0.84, 0.59, 0.42, 0.297, 0.210, 0.149, 0.105, 0.074 read in coursework sheets
// (Univ. Técnica Estatal de Quevedo 2019) and on a Korean foundry textbook page, which also has 2.38 and 1.19;
// 4.76 read in a soil exercise; the rest from memory.
const rows: readonly (readonly [number, number, number, number, number, ...number[]])[] = [
  [4, 4.75, 1.6, 150, 5.16, 4.76],
  [5, 4.0, 1.4, 127, 4.37],
  [6, 3.35, 1.25, 107, 3.67, 3.36],
  [7, 2.8, 1.12, 90, 3.09, 2.83],
  [8, 2.36, 1.0, 76, 2.61, 2.38],
  [10, 2.0, 0.9, 65, 2.23],
  [12, 1.7, 0.8, 56, 1.9, 1.68],
  [14, 1.4, 0.71, 46, 1.58, 1.41],
  [16, 1.18, 0.63, 40, 1.34, 1.19],
  [18, 1.0, 0.56, 34, 1.14],
  [20, 0.85, 0.5, 29.1, 0.977, 0.84, 0.841],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: a printed opening in mm, not a root
  [25, 0.71, 0.45, 24.7, 0.822, 0.707],
  [30, 0.6, 0.4, 21.2, 0.701, 0.59, 0.595],
  [35, 0.5, 0.315, 18.0, 0.589],
  [40, 0.425, 0.28, 15.5, 0.506, 0.42],
  [45, 0.355, 0.224, 13.3, 0.427, 0.35, 0.354],
  [50, 0.3, 0.2, 11.5, 0.365, 0.297],
  [60, 0.25, 0.16, 9.9, 0.308],
  [70, 0.212, 0.14, 8.7, 0.264, 0.21],
  [80, 0.18, 0.125, 7.6, 0.227, 0.177],
  [100, 0.15, 0.1, 6.6, 0.193, 0.149],
  [120, 0.125, 0.09, 5.8, 0.163],
  [140, 0.106, 0.071, 5.2, 0.141, 0.105],
  [170, 0.09, 0.063, 4.6, 0.122, 0.088],
  [200, 0.075, 0.05, 4.1, 0.104, 0.074],
  [230, 0.063, 0.045, 3.7, 0.089, 0.062],
  [270, 0.053, 0.036, 3.4, 0.077],
  [325, 0.045, 0.032, 3.1, 0.067, 0.044],
  [400, 0.038, 0.03, 2.9, 0.058, 0.037],
  [450, 0.032, 0.028, 2.7, 0.05],
  [500, 0.025, 0.025, 2.5, 0.041],
  [635, 0.02, 0.02, 2.3, 0.035],
];

/** Coarse to fine. */
export const astmSieves: readonly AstmRow[] = Object.freeze(
  rows.map(([number, openingMm, wireMm, toleranceUm, largestMm, ...olderMm]) =>
    Object.freeze({
      number,
      openingMm,
      wireMm,
      toleranceUm,
      largestMm,
      olderMm: Object.freeze(olderMm),
    }),
  ),
);
