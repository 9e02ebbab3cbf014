// What a write-up is made of: the log with its groups named, the trial, the sands that went in, the days.

import type { Batch } from "../log/batch.ts";
import { type BatchFigures, batchFigures } from "../log/batch-figures.ts";
import type { ExperimentRecord } from "../log/experiment-record.ts";
import type { Log } from "../log/types.ts";
import { type TrialReport, trialReport } from "../trial/trial-report.ts";
import { type SandReport, sandReports } from "./sand-report.ts";

export interface WriteUp {
  /** Where no batch names a block and the batches are of just two sands, the sands are its blocks. */
  readonly log: Log;
  readonly record: ExperimentRecord | undefined;
  readonly report: TrialReport;
  /** Every usable batch, also those that do not stand on the trial's axis. */
  readonly rows: readonly BatchFigures[];
  /** Of the sands that the batches name; of all sieved sands where none names one. */
  readonly sands: readonly SandReport[];
  /** ISO dates: the experiment's own, else those of its batches; undefined where none is known. */
  readonly days: { readonly from: string; readonly to: string } | undefined;
}

/**
 * Everything that a write-up tells, worked out once; no clock: the date is the experiment's last day.
 * @example writeUpOf(log).rows.length // every usable batch
 */
export function writeUpOf(typed: Log): WriteUp {
  const log = withSandsAsBlocks(typed);
  const named = new Set(log.batches.flatMap(({ sand }) => sand ?? []));
  const reports = sandReports(log);
  return {
    log,
    record: log.experiment,
    report: trialReport(log),
    rows: batchFigures(log).figures,
    sands: named.size === 0 ? reports : reports.filter(({ sand }) => named.has(sand.name)),
    days: daysOf(log),
  };
}

function withSandsAsBlocks(log: Log): Log {
  const sands = new Set(log.batches.map(({ sand }) => sand));
  const blocked = log.batches.some(({ block }) => block !== undefined);
  if (blocked || sands.size !== 2 || sands.has(undefined)) return log;
  return { ...log, batches: log.batches.map((batch): Batch => ({ ...batch, block: batch.sand! })) };
}

function daysOf({ experiment, batches }: Log): WriteUp["days"] {
  const dated = batches.flatMap(({ date }) => date ?? []).sort();
  const from = experiment?.from ?? dated[0] ?? experiment?.to;
  const to = experiment?.to ?? dated.at(-1) ?? experiment?.from;
  if (from === undefined || to === undefined) return undefined;
  // Dates as they are written stand in the order of days.
  return from < to ? { from, to } : { from, to: from };
}

/** "2026-07-11 to 2026-07-12", or the one day. */
export function daysText({ days }: Pick<WriteUp, "days">): string | undefined {
  if (!days) return undefined;
  return days.from === days.to ? days.from : `${days.from} to ${days.to}`;
}
