// What the chance of meeting the founder's aims is drawn from.

import type { AimPlace, AimWindow } from "./aim-lane.ts";
import type { AxisName } from "./axis-words.ts";

/** Chances are % of new batches, 0..100; NaN: no figure. */
export interface ChancePoint {
  readonly x: number;
  readonly chance: number;
}
export interface ChancePanelInput {
  readonly name: string;
  readonly axis: AxisName;
  /** Each property's own chance. */
  readonly each: readonly { readonly property: string; readonly points: readonly ChancePoint[] }[];
  /** All aims at once, and how far that moves. */
  readonly all: readonly (ChancePoint & { readonly low?: number; readonly high?: number })[];
  /** What low and high of `all` are: "edges moved by a tenth"; "95 % interval of all at once" by default. */
  readonly rangeMeans?: string;
  /** Whose ranges they are; "your own aims" by default. */
  readonly whose?: string;
  readonly window?: AimWindow;
  readonly aimAt?: AimPlace;
  readonly caption?: string;
}
