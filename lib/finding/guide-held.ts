// Which stages of the guide a log holds already, and with which figures.

import type { Log } from "../log/types.ts";
import { firstStages } from "./guide-first-stages.ts";
import { heapStages } from "./guide-heap-stages.ts";
import { castingsHeld, heapHeld, writeUpHeld } from "./guide-held-heap.ts";
import { rigsHeld, sandHeld, scalesHeld, sievingHeld } from "./guide-held-sand.ts";
import type { Held } from "./guide-held-state.ts";
import { trialHeld } from "./guide-held-trial.ts";
import type { GuideStage, StageName } from "./guide-stage.ts";
import { trialStages } from "./guide-trial-stages.ts";

export interface StageStanding extends Held {
  readonly stage: GuideStage;
}

export interface GuideReport {
  /** In the order of the way. */
  readonly standings: readonly StageStanding[];
  /** The first stage that is not on record; undefined: all are. */
  readonly next: StageStanding | undefined;
}

export const guideStages: readonly GuideStage[] = Object.freeze([
  ...firstStages,
  ...trialStages,
  ...heapStages,
]);

/**
 * Where a log stands on the way from an empty yard to a write-up: each stage with what the log holds of it. Never
 * throws; a log with nothing in it stands before the first stage. The states are our own:
 * on record, in the order of the stages, means a sand named; one sieved in two portions; every scale checked; a
 * rig, and a test made three times on one batch; a recipe or a batch by weight; five batches at four waters; an aim
 * with both its ends; a weighed heap with eight values of one test; castings with a question; an experiment that says
 * what it asks, changed and held.
 * @example guideReport(readLog("format: 1\n", { name: "log.yaml" }).value!).next?.stage.name   // "sand"
 */
export function guideReport(log: Log): GuideReport {
  const trial = trialHeld(log);
  const held: { readonly [name in StageName]: Held } = {
    sand: sandHeld(log),
    sieving: sievingHeld(log),
    scales: scalesHeld(log),
    rigs: rigsHeld(log),
    ...trial,
    heap: heapHeld(log),
    castings: castingsHeld(log),
    "write-up": writeUpHeld(log),
  };
  const standings = guideStages.map((stage) => ({ stage, ...held[stage.name] }));
  return { standings, next: standings.find(({ state }) => state !== "on record") };
}
