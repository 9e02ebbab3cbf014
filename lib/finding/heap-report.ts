// Everything that a log says of its heap, worked out once for findings, chart and tables.

import type { Log } from "../log/types.ts";
import { type OwnBurnOut, ownBurnOut, type RecordPoint } from "../trial/own-burn-out.ts";
import { heapHistory } from "./heap-history.ts";
import { type HeapMending, heapMending } from "./heap-mending.ts";
import { type HeapSeason, heapSeason } from "./heap-season.ts";

export interface HeapReport {
  readonly burnOut: OwnBurnOut | undefined;
  /** Of the record, at each pour and today; empty without one. */
  readonly course: readonly RecordPoint[];
  readonly mending: HeapMending | undefined;
  readonly season: HeapSeason | undefined;
  readonly assumed: readonly string[];
  /** What the log does not say, each a clause. */
  readonly missing: readonly string[];
  readonly finesKnown: boolean;
}

/**
 * The heap of a log: its own burn-out by the record of pours, what mends it, and its season by the plan. What cannot be
 * worked out is undefined, and missing says what for. Pure.
 * @example heapReport(log).burnOut?.own.value // burnt sand, kg for each kg of metal
 */
export function heapReport(log: Log): HeapReport {
  const answer = heapHistory(log);
  const burnOut = answer.known && ownBurnOut(answer.known.history);
  return {
    burnOut,
    course: burnOut?.course() ?? [],
    mending: heapMending(log, burnOut),
    season: burnOut && heapSeason(log, burnOut),
    assumed: answer.known?.assumed ?? [],
    missing: answer.known ? [] : answer.missing,
    finesKnown: answer.known?.finesKnown ?? false,
  };
}
