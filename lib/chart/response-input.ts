// What the panels of a trial are drawn from.

import type { AimPlace, AimWindow } from "./aim-lane.ts";
import type { AxisName } from "./axis-words.ts";

/** A batch as measured, in the units of its axes; the ends are those of 95 % intervals. NaN: no figure. */
export interface ResponsePoint {
  readonly x: number;
  readonly y: number;
  readonly xLow?: number;
  readonly xHigh?: number;
  readonly yLow?: number;
  readonly yHigh?: number;
  /** Name of the batch. */
  readonly label?: string;
  /** True: measured, but not in the fit; drawn hollow. */
  readonly leftOut?: boolean;
  /** Of a point that is left out by the founder: the reason. Such a point is crossed as well. */
  readonly why?: string;
}
/** The fitted curve at one place: its mean, the 95 % interval of the mean, and that of a new batch. */
export interface CurvePoint {
  readonly x: number;
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  readonly newLow?: number;
  readonly newHigh?: number;
}
/** A range that does not depend on the axis; −Infinity and Infinity: open on that side. */
export interface ResponseBand {
  readonly low: number;
  readonly high: number;
  readonly label: string;
  /** "read", "common practice", …; "from memory" and "our own" are drawn lighter and dashed. */
  readonly tag: string;
}
/** A usual course along the axis, as a range at each place; where low and high are one, a line. */
export interface TypicalCourse {
  readonly label: string;
  readonly tag: string;
  readonly points: readonly { readonly x: number; readonly low: number; readonly high: number }[];
}
export interface ResponsePanel {
  /** "green compression strength". */
  readonly property: string;
  /** "kPa", "%"; empty for a bare number. */
  readonly unit: string;
  /** What a percentage is of. */
  readonly basis?: string;
  readonly points: readonly ResponsePoint[];
  readonly curve?: readonly CurvePoint[];
  readonly band?: ResponseBand;
  readonly typical?: readonly TypicalCourse[];
  /** The founder's own aim; −Infinity and Infinity: open on that side. */
  readonly aim?: { readonly low: number; readonly high: number };
  /** Where the curve turns, with its Fieller limits; bounded is false where the data do not close them. */
  readonly optimum?: {
    readonly x: number;
    readonly low: number;
    readonly high: number;
    readonly bounded: boolean;
  };
}
export interface ResponsePanelsInput {
  readonly name: string;
  /** What is varied: moisture, compactability, clay. */
  readonly axis: AxisName;
  readonly panels: readonly ResponsePanel[];
  /** Where all aims are met together. */
  readonly window?: AimWindow;
  readonly aimAt?: AimPlace;
  readonly caption?: string;
}
