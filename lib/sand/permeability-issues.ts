// Readings of a permeability test that cannot be, or cannot carry a figure.

import type { Issue } from "../issue.ts";
import { issueMessage } from "../message.ts";
import { amount } from "../quantity/amount.ts";
import { MOST_WATER_MM } from "./permeability.ts";

/** Below this a water gauge can hardly be read. */
const LEAST_WATER_MM = 20;
/** Our own: reaction time at both ends is about 0.3 s, so a shorter run is more than a tenth uncertain. */
const LEAST_SECONDS = 3;

/**
 * What is wrong with pressures and time of a permeability test; empty when nothing is. Ask before the models, which
 * throw on what is an error here. waterMm: every pressure that was read, mm of water; seconds.
 * Source: 100 gf/cm² is our limit for home vessels; below 20 mm unreadable; 3 s our own.
 * Example: permeabilityIssues({ waterMm: [100], seconds: 0 })[0]?.code is "sand/permeability-no-time".
 */
export function permeabilityIssues({
  waterMm,
  seconds,
}: {
  readonly waterMm: readonly number[];
  readonly seconds: number;
}): readonly Issue[] {
  const issues: Issue[] = [];
  if (!(seconds > 0)) issues.push(noTime());
  else if (seconds < LEAST_SECONDS) issues.push(shortTime(String(Number(seconds.toPrecision(2)))));
  if (waterMm.some((mm) => mm > MOST_WATER_MM))
    issues.push(pressureRefused(amount(Math.round(Math.max(...waterMm)), "mm", 6)));
  else if (waterMm.some((mm) => !(mm > 0))) issues.push(noPressure());
  else if (waterMm.some((mm) => mm < LEAST_WATER_MM))
    issues.push(pressureLow(amount(Math.min(...waterMm), "mm", 2)));
  return issues;
}

export const noTime = issueMessage("sand/permeability-no-time", "error", () => ({
  message: "The time of the permeability test is zero, so there is no figure.",
  remedy:
    "Write the seconds that the air took; if it went too fast to time, use more air, a larger vessel or less pressure.",
}));

export const shortTime = issueMessage("sand/permeability-short", "warning", (seconds: string) => ({
  message: `${seconds} s is too short to time by hand: starting and stopping late moves the figure by a tenth or more.`,
  remedy: "Use more air, a larger vessel, a wider column or less pressure.",
}));

export const pressureRefused = issueMessage(
  "sand/permeability-pressure-refused",
  "error",
  (pressure: string) => ({
    message: `${pressure} of water is more than 100 gf/cm². Home vessels burst under air pressure, so no figure is given.`,
    remedy: "Let it off now, from the side. Work at 50 to 200 mm of water.",
  }),
);

export const noPressure = issueMessage("sand/permeability-no-pressure", "error", () => ({
  message: "A pressure of the permeability test is zero or below, so there is no figure.",
  remedy: "Stop the clock while there is still 20 mm of water or more across the specimen.",
}));

export const pressureLow = issueMessage("sand/permeability-pressure-low", "warning", (pressure: string) => ({
  message: `${pressure} of water can hardly be read on a gauge, so the figure is in doubt by a tenth or more.`,
  remedy: "Work at 50 to 200 mm of water.",
}));
