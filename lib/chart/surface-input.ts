// What a surface over two varied things is drawn from.

import type { AxisName } from "./axis-words.ts";

export interface SurfaceValue {
  readonly mean: number;
  /** Ends of the 95 % interval of the mean. */
  readonly low: number;
  readonly high: number;
}
export interface SurfaceBatch {
  readonly label: string;
  readonly x: number;
  readonly y: number;
  /** The property as measured. */
  readonly value: number;
}
export interface SurfaceChartInput {
  readonly name: string;
  /** Along the foot: moisture. */
  readonly axis: AxisName;
  /** Upright: clay. */
  readonly other: AxisName;
  readonly property: AxisName;
  /** The fitted surface, also somewhat beyond the batches; undefined: nothing is drawn there. */
  at(x: number, other: number): SurfaceValue | undefined;
  /** Where the batches bear the surface out; nothing is drawn elsewhere. The hull of the batches unless given. */
  tried?(x: number, other: number): boolean;
  readonly batches: readonly SurfaceBatch[];
  /** The founder's own aim; −Infinity and Infinity: open on that side. */
  readonly aim?: { readonly low: number; readonly high: number };
  readonly caption?: string;
}
