// Hazards of the tests that a diary names, the gravest first.

import type { DiaryProperty } from "../log/diary-properties.ts";
import type { ControlReport } from "../trial/control-report.ts";
import { silicaDust } from "./cautions.ts";
import type { Caution } from "./finding.ts";
import {
  airVessel,
  deadWeight,
  dryingSand,
  fallingRammer,
  mixingDust,
  mullerStopped,
  overWet,
  washingClay,
} from "./trial-cautions.ts";

/**
 * Tests that were made, and those that the log asks for: they are about to be.
 * @example diaryCautions(controlReport(log)).map(({ text }) => text)
 */
export function diaryCautions({ diary, due, inTime, events, pours }: ControlReport): readonly Caution[] {
  const named = new Set<DiaryProperty>([
    ...diary.series.map(({ property }) => property),
    ...due.map(({ property }) => property),
    ...inTime,
  ]);
  const has = (...tests: readonly DiaryProperty[]): boolean => tests.some((test) => named.has(test));
  const pressed = has("green compression", "green shear", "splitting");
  const weighed = events.some(({ kind }) => kind === "rebond" || kind === "new sand");
  return [
    ...(named.size > 0 || pours.length > 0 ? [overWet] : []),
    ...(has("fineness", "fines") ? [silicaDust] : weighed || named.size > 0 ? [mixingDust] : []),
    ...(diary.batches.some(({ batch }) => batch.mulledMin) ? [mullerStopped] : []),
    ...(pressed ? [deadWeight] : []),
    ...(pressed || has("compactability", "permeability") ? [fallingRammer] : []),
    ...(has("permeability") ? [airVessel] : []),
    ...(has("moisture", "clay by wash", "fines") ? [dryingSand] : []),
    ...(has("clay by wash") ? [washingClay] : []),
  ];
}
