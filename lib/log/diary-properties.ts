// What a diary of a heap follows, and how often each test is meant to be made.

import type { Place } from "../issue.ts";
import type { Measured } from "./figure-types.ts";

/** What a diary follows, in the order in which its page tells of it. */
export const diaryProperties = [
  "moisture",
  "compactability",
  "green compression",
  "green shear",
  "splitting",
  "permeability",
  "clay by wash",
  "live clay",
  "fineness",
  "fines",
] as const;

export type DiaryProperty = (typeof diaryProperties)[number];

export interface Reminder {
  readonly property: DiaryProperty;
  readonly everyDays: Measured;
  readonly place: Place;
}
