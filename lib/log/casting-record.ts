// What a log says of castings at inspection, and what its founder wants to know of them.

import type { Place } from "../issue.ts";
import type { CastingFault } from "../sand/casting-faults.ts";
import { diaryProperties } from "./diary-properties.ts";
import type { Measured } from "./figure-types.ts";

export interface LoggedCasting {
  readonly date: string;
  readonly name: string;
  /** Which pour of that day, 1 for the first; undefined: not said. */
  readonly ofPour?: number;
  /** None: looked for and not found. Undefined: not said, so it counts neither way. */
  readonly faults?: readonly CastingFault[];
  /** True where a fault could not be read: what is not named may still have been there. */
  readonly incomplete: boolean;
  readonly note?: string;
  readonly place: Place;
}

/** What a fault can be held against: tests of the sand, then facts of the pour. */
export const sandSides = diaryProperties;
export const pourSides = ["pouring temperature", "scrap share", "section", "degassed"] as const;

export type SandSide = (typeof sandSides)[number];
export type PourSide = (typeof pourSides)[number];

/** One pair that the founder named before looking. */
export interface CastingQuestion {
  readonly fault: CastingFault;
  readonly against: SandSide | PourSide;
  /** Where the values are parted in two sides; undefined: they are compared by rank. */
  readonly limit?: Measured;
  readonly place: Place;
}
