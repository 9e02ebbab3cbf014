// Readings of a moisture test that cannot be, or cannot carry a decision.

import type { Issue } from "../issue.ts";
import { issueMessage } from "../message.ts";
import { moistureOfDampPercent, moistureStepPercent } from "./moisture.ts";

/** Our own: a step of the scale that moves moisture by more than this is no use for tempering. */
const COARSE_STEP_PERCENT = 0.2;
/** Above this a bentonite sand is mud, and a figure of the dry basis or of another sample is more likely (our own). */
const WET_PERCENT = 12;

const short = (x: number): string => String(Number(x.toPrecision(3)));

/**
 * What is wrong with the two weighings of a moisture test; empty when nothing is.
 * dampG > 0, dryG 0 or more, g; stepG: smallest step of the scale, > 0, if known. Else RangeError.
 * Source: limits of 0.2 % for a step and 12 % for a moulding sand are our own.
 * Example: moistureIssues({ dampG: 50, dryG: 52 }) has one, "sand/dry-above-damp".
 */
export function moistureIssues(weighing: {
  readonly dampG: number;
  readonly dryG: number;
  readonly stepG?: number;
}): readonly Issue[] {
  const { dampG, dryG, stepG } = weighing;
  const percent = moistureOfDampPercent(weighing);
  const issues: Issue[] = [];
  if (percent < 0) issues.push(dryAboveDamp(dampG, dryG));
  if (percent > WET_PERCENT) issues.push(veryWet(percent));
  if (stepG !== undefined) {
    const off = moistureStepPercent({ stepG, dampG });
    if (off > COARSE_STEP_PERCENT * (1 + 1e-9))
      issues.push(coarseForMoisture(stepG, dampG, off, (100 * stepG) / COARSE_STEP_PERCENT));
  }
  return issues;
}

const dryAboveDamp = issueMessage("sand/dry-above-damp", "error", (dampG: number, dryG: number) => ({
  message: `The dry sample (${short(dryG)} g) is heavier than the damp one (${short(dampG)} g), so there is no moisture.`,
  remedy:
    "Look whether the two were swapped, or whether the pan was taken off one weighing and not the other.",
}));

const veryWet = issueMessage("sand/moisture-not-of-a-moulding-sand", "warning", (percent: number) => ({
  message: `${short(percent)} % of the damp mass is far more water than a bentonite sand is moulded at. Over-wet sand can erupt under metal.`,
  remedy:
    "Look whether the sample was the sand from the heap, and whether the pan was taken off both weighings.",
}));

const coarseForMoisture = issueMessage(
  "sand/scale-coarse-for-moisture",
  "warning",
  (stepG: number, dampG: number, off: number, neededG: number) => ({
    message: `A scale that steps by ${short(stepG)} g puts the moisture of ${short(dampG)} g off by up to ± ${Number(off.toPrecision(1))} points, too much to temper by.`,
    remedy: `Dry ${short(neededG)} g or more, or temper by compactability.`,
  }),
);
