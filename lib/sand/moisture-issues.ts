// Readings of a moisture test that cannot be, or cannot carry a decision.

import type { Issue } from "../issue.ts";
import { issueMessage } from "../message.ts";
import { amount } from "../quantity/amount.ts";
import { moistureOfDampPercent, moistureStepPercent } from "./moisture.ts";
import { grams, short } from "./short-figure.ts";

/** Our own: a step of the scale that moves moisture by more than this is no use for tempering. */
const COARSE_STEP_PERCENT = 0.2;
/** Above this a bentonite sand is mud, and a figure of the dry basis or of another sample is more likely (our own). */
const WET_PERCENT = 12;

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
  if (percent < 0) {
    // Weighings that round alike would not be seen to differ.
    const digits = short(dampG) === short(dryG) ? 8 : 3;
    issues.push(dryAboveDamp(amount(dampG, "g", digits), amount(dryG, "g", digits)));
  }
  if (percent > WET_PERCENT) issues.push(veryWet(short(percent)));
  if (stepG !== undefined) {
    const off = moistureStepPercent({ stepG, dampG });
    if (off > COARSE_STEP_PERCENT * (1 + 1e-9))
      issues.push(
        coarseForMoisture(
          grams(stepG),
          grams(dampG),
          String(Number(off.toPrecision(1))),
          grams((100 * stepG) / COARSE_STEP_PERCENT),
        ),
      );
  }
  return issues;
}

export const dryAboveDamp = issueMessage("sand/dry-above-damp", "error", (damp: string, dry: string) => ({
  message: `The dry sample (${dry}) is heavier than the damp one (${damp}), so there is no moisture.`,
  remedy:
    "Look whether the two were swapped, or whether the pan was taken off one weighing and not the other.",
}));

export const veryWet = issueMessage("sand/moisture-not-of-a-moulding-sand", "warning", (percent: string) => ({
  message: `${percent} % of the damp mass is far more water than a bentonite sand is moulded at. Over-wet sand can erupt under metal.`,
  remedy:
    "Look whether the sample was the sand from the heap, and whether the pan was taken off both weighings.",
}));

export const coarseForMoisture = issueMessage(
  "sand/scale-coarse-for-moisture",
  "warning",
  (step: string, damp: string, off: string, needed: string) => ({
    message: `A scale that steps by ${step} puts the moisture of ${damp} off by up to ± ${off} points, too much to temper by.`,
    remedy: `Dry ${needed} or more, or temper by compactability.`,
  }),
);
