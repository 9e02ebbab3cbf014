// What a typical curve is drawn from.

import type { AxisName } from "./axis-words.ts";

export interface TypicalCurve {
  readonly label: string;
  /** "read", "derived", "our own", "from memory" … ; the weak ones are drawn dashed. */
  readonly tag: string;
  readonly source: string;
  /** What low and high hold, for the text. */
  readonly holds: string;
  readonly points: readonly {
    readonly x: number;
    readonly value: number;
    readonly low: number;
    readonly high: number;
  }[];
}

export interface TypicalPublished {
  readonly label: string;
  readonly x: number;
  readonly y: number;
  /** Ends of a range that the source prints. */
  readonly low?: number;
  readonly high?: number;
  readonly tag: string;
  readonly source: string;
}

/** A batch of the founder's own; ends are those of its 95 % intervals. */
export interface TypicalBatch {
  readonly label: string;
  readonly x: number;
  readonly y: number;
  readonly xLow?: number;
  readonly xHigh?: number;
  readonly yLow?: number;
  readonly yHigh?: number;
}

export interface TypicalCurveInput {
  readonly name: string;
  readonly axis: AxisName;
  readonly property: AxisName;
  /** None: only points are known, and no curve is made up. Several: ways that disagree, each with its own light fill. */
  readonly curves: readonly TypicalCurve[];
  readonly published: readonly TypicalPublished[];
  readonly batches: readonly TypicalBatch[];
  /** Said in the caption and the text: "at 3.5 % water, compactability 45 %". */
  readonly conditions?: string;
}
