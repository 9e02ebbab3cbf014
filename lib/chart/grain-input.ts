// What a grain curve is drawn from.

export interface GrainPoint {
  /** mm; the pan (0) has no place on a log axis and is left out. */
  readonly openingMm: number;
  /** The sieve as the founder knows it: "No. 40". */
  readonly label: string;
  /** % of the sand by mass, 0..100; NaN: no figure. */
  readonly passingPercent: number;
  /** Ends of the 95 % interval, % of the sand by mass. */
  readonly low?: number;
  readonly high?: number;
}
export interface GrainCurveSand {
  readonly name: string;
  readonly points: readonly GrainPoint[];
  /** Where the curve may run between the sieves, % of the sand by mass. */
  readonly interval?: readonly { readonly openingMm: number; readonly low: number; readonly high: number }[];
  /** Drawn in the colour of words of second rank: what the others are held against. */
  readonly quiet?: boolean;
}
export interface GrainCurveInput {
  readonly name: string;
  readonly sands: readonly GrainCurveSand[];
  /** A range of openings worth seeing behind the curves, mm. */
  readonly band?: { readonly label: string; readonly lowMm: number; readonly highMm: number };
  /** Which way the opening runs from left to right; the axis title says it too. */
  readonly direction?: "coarse to fine" | "fine to coarse";
  readonly caption?: string;
  /** How many of the sands are drawn, the first ones; 4. */
  readonly most?: number;
}
