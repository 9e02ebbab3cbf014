// What a log says of a heap and its season, as the rest may rely on it: every figure read, in the unit of its name.

import type { Place } from "../issue.ts";
import type { CastingQuestion, LoggedCasting } from "./casting-record.ts";
import type { Reminder } from "./diary-properties.ts";
import type { Measured } from "./figure-types.ts";
import type { HeapKg } from "./heap.ts";
import type { HeapEvent, LoggedRemark } from "./heap-events.ts";
import type { HeapState, MeasuredState, ShareBasis } from "./heap-state.ts";

export type ClayKind = "sodium bentonite" | "calcium bentonite";
export type HeapShape = "heap" | "bin";
export type HeapCover = "none" | "sheet" | "lid";

/** The heap itself: what lies on the floor or in the bin. */
export interface HeapRecord {
  /** The same as log.heapKg. */
  readonly heapKg?: HeapKg;
  readonly clayKind?: ClayKind;
  readonly shape?: HeapShape;
  readonly cover?: HeapCover;
  /** Of the sand that lies open to the air, m²; undefined: to be had from shape and mass. */
  readonly exposedM2?: Measured;
  readonly depthMm?: Measured;
  readonly place: Place;
}

export interface RecipeAdditive {
  readonly name: string;
  /** On the recipe's basis, dry. */
  readonly percent: Measured;
}

/** What one bucketful, filled as always, holds net, kg. */
export interface BucketWeight {
  /** "sand", "clay" or the name of an additive. */
  readonly of: string;
  readonly kg: Measured;
}

/** A mix as it is meant, for the whole heap and for the loads of a muller. */
export interface LoggedRecipe {
  /** Undefined: not said, or not readable; then nothing can be worked out and the issues say so. */
  readonly basis?: ShareBasis;
  /** Dry clay on the basis. */
  readonly clayPercent?: Measured;
  readonly additives: readonly RecipeAdditive[];
  /** Wanted, % of damp mass. */
  readonly moisturePercent?: Measured;
  /** Water that sand and bagged clay hold already, % of their own damp mass. */
  readonly sandMoisturePercent?: Measured;
  readonly clayMoisturePercent?: Measured;
  /** The damp heap that is to be made; or the sand as weighed that is at hand, never both. */
  readonly makeKg?: Measured;
  readonly sandKg?: Measured;
  /** Where it was written by weight or in buckets: what goes in, as typed. */
  readonly weighed?: string;
  /** What one load of the muller, or of a hand-worked tray, may be, damp. */
  readonly mullerPanKg?: Measured;
  readonly buckets: readonly BucketWeight[];
  readonly place: Place;
}

export interface Price {
  /** "sand", "bentonite", a sand's or an additive's name. */
  readonly name: string;
  readonly cost: Measured;
  readonly forKg: Measured;
  readonly place: Place;
}

export interface LoggedPrices {
  /** As printed after a sum; the empty string where none is said. */
  readonly currency: string;
  readonly of: readonly Price[];
  readonly place: Place;
}

/** Weather over the hours that the heap is to stand, and what moisture it starts from and shall have after them. */
export interface LoggedWeather {
  readonly airC?: Measured;
  readonly sandC?: Measured;
  readonly humidityPercent?: Measured;
  readonly windMS?: Measured;
  /** Height at which that wind blows, m: 10 in a forecast; over the sand itself where it is not said. */
  readonly windAtM?: Measured;
  readonly hours?: Measured;
  readonly startPercent?: Measured;
  readonly wantPercent?: Measured;
  readonly place: Place;
}

export interface LoggedFlask {
  readonly volumeL?: Measured;
  readonly castingVolumeL?: Measured;
  /** Of the rammed sand. */
  readonly densityGCm3?: Measured;
  readonly place: Place;
}

export interface LoggedPlan {
  readonly pours?: Measured;
  /** Of one pour. */
  readonly metalKg?: Measured;
  readonly sectionMm?: Measured;
  readonly everyDays?: Measured;
  /** Dry, with each pour. */
  readonly lostKg?: Measured;
  readonly place: Place;
}

export interface MullingReading {
  readonly minutes: Measured;
  readonly greenCompressionKPa: Measured;
  readonly compactabilityPercent?: Measured;
  readonly moisturePercent?: Measured;
  readonly place: Place;
}

/** One way of mulling one mix: strength against minutes. */
export interface MullingTrial {
  /** "by hand", "barrel muller". */
  readonly name: string;
  readonly loadKg?: Measured;
  /** By minutes, the shortest first. */
  readonly readings: readonly MullingReading[];
  readonly place: Place;
}

export interface LoggedMuller {
  readonly motorRpm?: Measured;
  /** Motor turns for one turn of the pan, or of the wheels' cross. */
  readonly reduction?: Measured;
  readonly panDiameterMm?: Measured;
  readonly wheelWidthMm?: Measured;
  readonly wheels?: Measured;
  readonly ploughs?: Measured;
  readonly loadKg?: Measured;
  /** Of one load, from filling to emptying. */
  readonly minutes?: Measured;
  readonly sandC?: Measured;
  readonly place: Place;
}

/** What a blend is to come to: a fineness number, the curve of another sand, or the band of a metal. */
export type BlendAim =
  | { readonly kind: "gfn"; readonly gfn: Measured }
  | { readonly kind: "like"; readonly sand: string }
  | { readonly kind: "band"; readonly metal: string };

export interface LoggedBlend {
  /** Names of sands that the log declares. */
  readonly of: readonly string[];
  readonly to?: BlendAim;
  readonly place: Place;
}

/** The sections of a log that a heap and its season are made of. */
export interface HeapSections {
  readonly heap?: HeapRecord;
  readonly recipe?: LoggedRecipe;
  readonly prices?: LoggedPrices;
  readonly wanted?: HeapState;
  readonly measured: readonly MeasuredState[];
  readonly weather?: LoggedWeather;
  readonly flask?: LoggedFlask;
  readonly events: readonly HeapEvent[];
  readonly remarks?: readonly LoggedRemark[];
  readonly planned?: LoggedPlan;
  readonly mulling: readonly MullingTrial[];
  readonly muller?: LoggedMuller;
  readonly blend?: LoggedBlend;
  /** By date, as they were looked over. */
  readonly castings: readonly LoggedCasting[];
  /** Pairs of a fault and what it is held against, named beforehand. */
  readonly questions: readonly CastingQuestion[];
  /** How often each test is meant to be made. */
  readonly remind?: readonly Reminder[];
}
