// A source of doubt: one reason why a figure may be off, with the shape of its scatter.

/**
 * reading: a scale or ruler read once. repeat: scatter between grabs, splits, specimens, batches.
 * rig: a bias shared by all readings of one instrument. method: what was done, e.g. how a loss is spread.
 * model: scatter of a relation or of an interpolation.
 */
export type SourceKind = "reading" | "repeat" | "rig" | "method" | "model";

/** The standardised distribution of a source's score: sd 1 (normal), scale 1 (t), else half-width 1. */
export type Shape =
  | { readonly kind: "normal" }
  | { readonly kind: "t"; readonly df: number }
  | { readonly kind: "rectangular" }
  | { readonly kind: "triangular" }
  | { readonly kind: "arcsine" }
  /** A rectangle whose half-width is itself known only within 1 ± edge. */
  | { readonly kind: "curvilinear trapezoid"; readonly edge: number };

export interface Source {
  /** Comes from names and dates, never from positions. Undefined: a source of its own, told apart by identity. */
  readonly id?: string;
  readonly kind: SourceKind;
  readonly shape: Shape;
  /** What it is, in plain words: "weighing of No. 40 on the kitchen scale". */
  readonly says?: string;
}
