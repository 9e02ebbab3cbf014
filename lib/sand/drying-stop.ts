// When a sample is dry: weighings one after another until nothing more goes.

import type { Issue } from "../issue.ts";
import { issueMessage } from "../message.ts";
import type { Phrase } from "../phrase.ts";
import { amount } from "../quantity/amount.ts";
import { requireAboveZero } from "./require.ts";

/** Dry when the last two weighings differ by less than this, % of the damp sample (constant mass, TJFS-201; our figure). */
const STOP_PERCENT = 0.05;

export interface Dryness {
  readonly dry: boolean;
  /** Which weighing, counted from 0, first met the rule and stayed; undefined while not dry. */
  readonly at: number | undefined;
  /** What went between the last two weighings, % of the damp sample; negative for a gain; undefined for one weighing. */
  readonly lastLossPercent: number | undefined;
  readonly issues: readonly Issue[];
}

const grams = (x: number): Phrase => amount(x, "g", 2);

/**
 * Whether a sample is dry: the last two weighings differ by less than 0.05 % of the damp mass. A long flat end counts
 * from its first flat weighing.
 *
 * dampG: sample before drying; weighingsG: after each spell of drying, in order, at least one; stepG: smallest step of
 * the scale. All > 0, g, else RangeError. Spells of about a minute in a pan or microwave, ten or more in an oven.
 * Where the step is coarser than the rule, two equal weighings prove nothing, and an issue says so.
 * Source: constant mass, TJFS-201; one-minute spells, ASTM D4643; 0.05 % our own.
 * Example: dryEnough({ dampG: 100, weighingsG: [96.5, 96.31, 96.29] }) is dry at 2.
 */
export function dryEnough(drying: {
  readonly dampG: number;
  readonly weighingsG: readonly number[];
  readonly stepG?: number;
}): Dryness {
  const { dampG, weighingsG, stepG } = drying;
  requireAboveZero("dryEnough", { dampG, ...(stepG === undefined ? {} : { stepG }) });
  if (weighingsG.length === 0) throw new RangeError("dryEnough: there must be a weighing");
  for (const massG of weighingsG) requireAboveZero("dryEnough", { massG });
  const losses = weighingsG.slice(1).map((massG, i) => (100 * (weighingsG[i]! - massG)) / dampG);
  const flat = (loss: number): boolean => Math.abs(loss) < STOP_PERCENT - 1e-9;
  const lastMoving = losses.findLastIndex((loss) => !flat(loss));
  const dry = losses.length > 0 && lastMoving < losses.length - 1;
  const issues: Issue[] = [];
  if (losses.some((loss) => loss <= -STOP_PERCENT)) issues.push(gainedWhileDrying());
  if (stepG !== undefined && (100 * stepG) / dampG > STOP_PERCENT * (1 + 1e-9))
    issues.push(scaleTooCoarseToStop(grams(stepG), grams((100 * stepG) / STOP_PERCENT)));
  return { dry, at: dry ? lastMoving + 2 : undefined, lastLossPercent: losses.at(-1), issues };
}

export const gainedWhileDrying = issueMessage("sand/gained-while-drying", "warning", () => ({
  message:
    "The sample grew heavier between two weighings, so it was weighed hot, took up damp, or the scale moved.",
  remedy: "Let it cool under a lid, set the scale to zero, and weigh again.",
}));

export const scaleTooCoarseToStop = issueMessage(
  "sand/scale-coarse-for-drying",
  "note",
  (step: string, needed: string) => ({
    message: `A scale that steps by ${step} cannot see the last of the water leave so small a sample.`,
    remedy: `Dry ${needed} or more, or go on for two more spells after the reading stands still.`,
  }),
);
