// What a number strip is drawn from.

export interface StripMark {
  readonly label: string;
  readonly value: number;
  /** Ends of the 95 % interval. */
  readonly low?: number;
  readonly high?: number;
  /** What nothing but the masses allow. */
  readonly possible?: { readonly low: number; readonly high: number };
  /** The figure as the page prints it; by default rounded to its 95 % interval. */
  readonly figure?: string;
  /** True where a part of the doubt is not known; by default as the printed figure says ("± at least 0.4"). */
  readonly atLeast?: boolean;
}
export interface StripBand {
  readonly label: string;
  /** −Infinity and Infinity: open on that side. */
  readonly low: number;
  readonly high: number;
  readonly source: string;
  /** "read", "common practice", …; bands "from memory" and "our own" are drawn lighter and dashed. */
  readonly tag: string;
}
export interface NumberStripInput {
  readonly name: string;
  /** What is measured, e.g. "grain fineness number". */
  readonly title: string;
  /** With its basis where it is a percentage; empty for a bare number. */
  readonly unit: string;
  readonly marks: readonly StripMark[];
  readonly bands: readonly StripBand[];
  readonly caption?: string;
}
