// A property over two things varied together: moisture and clay, or compactability and clay.

import type { TestName, TrialAxis } from "../log/batch.ts";
import type { CurveValue } from "./response-curve.ts";

/** "none": the batches cannot tell the two apart, or are too few. */
export type SurfaceForm = "none" | "plane" | "quadratic";

export interface SurfaceTop {
  /** A saddle, a ridge and a place outside what was tried are no optimum. */
  readonly kind: "maximum" | "minimum" | "saddle" | "ridge" | "outside what was tried";
  /** Where the surface is level, along the trial's axis and the other. */
  readonly x: number;
  readonly other: number;
  /** The property there. */
  readonly mean: number;
  /** How far the 95 % region of a maximum reaches; undefined for every other kind. */
  readonly region: { readonly x: Reach; readonly other: Reach } | undefined;
}
export interface Reach {
  readonly low: number;
  readonly high: number;
}

export interface ResponseSurface {
  readonly form: SurfaceForm;
  /** Why it is no full quadratic, or none at all. */
  readonly why: "too few batches" | "too few places" | "the two went together" | undefined;
  /** Pearson's correlation of the two over the batches used. */
  readonly rho: number;
  /** Indices of the batches that it rests on. */
  readonly used: readonly number[];
  /** Mean, its 95 % interval and that of a new batch; undefined where there is no surface. */
  at(x: number, other: number): CurveValue | undefined;
  /** True where the mean is no less sure than at the least sure of the batches. */
  tried(x: number, other: number): boolean;
  /** Of a quadratic alone. */
  readonly top: SurfaceTop | undefined;
}

export interface TrialSurface {
  readonly test: TestName;
  /** What was varied beside the trial's axis. */
  readonly other: TrialAxis;
  readonly surface: ResponseSurface;
}
