// What a permeability rig adds of its own: friction in its lines, a leak along the wall.

import type { Issue } from "../issue.ts";
import { issueMessage } from "../message.ts";
import { requireAboveZero, requireFromZero } from "./require.ts";

/**
 * Time that the specimen alone would have taken, s: seconds − blank. The blank is the same run (same volume or same
 * fall, same pressures) without a specimen. Friction of hose and specimen stand in a row, so that at laminar flow
 * their times add; for every rig here.
 * seconds > 0; blankSeconds 0 or more, and below seconds, else RangeError: blankIssues tells the founder.
 * Source: resistances in a row. Where the blank is a jet rather than friction, this takes off too much (see blankIssues).
 * Example: specimenSeconds({ seconds: 24, blankSeconds: 1.5 }) is 22.5.
 */
export function specimenSeconds({
  seconds,
  blankSeconds,
}: {
  readonly seconds: number;
  readonly blankSeconds: number;
}): number {
  requireAboveZero("specimenSeconds", { seconds });
  requireFromZero("specimenSeconds", { blankSeconds });
  if (!(blankSeconds < seconds))
    throw new RangeError(`specimenSeconds: the blank (${blankSeconds}) must be below the run (${seconds})`);
  return seconds - blankSeconds;
}

/**
 * Pressure across the specimen alone, mm of water: waterMm − what the empty rig takes at the same flow.
 * waterMm > 0; blankWaterMm 0 or more and below waterMm, else RangeError. Source: pressures in a row add.
 * Example: specimenWaterMm({ waterMm: 100, blankWaterMm: 6 }) is 94.
 */
export function specimenWaterMm({
  waterMm,
  blankWaterMm,
}: {
  readonly waterMm: number;
  readonly blankWaterMm: number;
}): number {
  requireAboveZero("specimenWaterMm", { waterMm });
  requireFromZero("specimenWaterMm", { blankWaterMm });
  if (!(blankWaterMm < waterMm))
    throw new RangeError(`specimenWaterMm: the blank (${blankWaterMm}) must be below ${waterMm}`);
  return waterMm - blankWaterMm;
}

/**
 * Permeability without the leak along the wall: measured − what a run with a sealed plug in the tube reads, for leak
 * and specimen stand side by side. permeability > 0; leakPermeability 0 or more and below it, else RangeError.
 * The plug (a cylinder of wax or wood, greased as the specimen is) has the specimen's height and diameter.
 * Source: flows side by side add. Example: withoutLeak({ permeability: 80, leakPermeability: 3 }) is 77.
 */
export function withoutLeak({
  permeability,
  leakPermeability,
}: {
  readonly permeability: number;
  readonly leakPermeability: number;
}): number {
  requireAboveZero("withoutLeak", { permeability });
  requireFromZero("withoutLeak", { leakPermeability });
  if (!(leakPermeability < permeability))
    throw new RangeError(`withoutLeak: the leak (${leakPermeability}) must be below ${permeability}`);
  return permeability - leakPermeability;
}

/** Our own: a blank of more than a tenth of the run is too much to be taken off as if it were laminar. */
const BLANK_SHARE = 0.1;

/**
 * What a blank run says of the rig. seconds > 0, blankSeconds 0 or more, else RangeError.
 * Source: the limit of a tenth is our own. Example: blankIssues({ seconds: 20, blankSeconds: 5 }) has one warning.
 */
export function blankIssues({
  seconds,
  blankSeconds,
}: {
  readonly seconds: number;
  readonly blankSeconds: number;
}): readonly Issue[] {
  requireAboveZero("blankIssues", { seconds });
  requireFromZero("blankIssues", { blankSeconds });
  const share = blankSeconds / seconds;
  if (share <= BLANK_SHARE) return [];
  return share >= 1 ? [blankAsLong()] : [blankLarge(String(Math.round(100 * share)))];
}

const widerHose = "Use a wider and shorter hose, or a smaller specimen or pressure.";

export const blankAsLong = issueMessage("sand/blank-as-long", "error", () => ({
  message: "The empty rig took as long as the specimen, so the rig was measured and not the sand.",
  remedy: widerHose,
}));

export const blankLarge = issueMessage("sand/blank-large", "warning", (percent: string) => ({
  message: `The empty rig takes ${percent} % of the time, and at such flow friction is not in proportion: the corrected figure may be too high.`,
  remedy: widerHose,
}));
