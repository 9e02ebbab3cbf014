// What every page of a log complains of besides what reading it brought up.

import type { Issue } from "../issue.ts";
import type { Batch } from "./batch.ts";
import { balanceIssues, practiceIssues } from "./practice-issues.ts";
import { testFigure } from "./test-figure.ts";
import type { Log } from "./types.ts";

/** Doubts that show only once figures are taken together or worked out: from the sievings and the batches that can be used. */
export function pageIssues(log: Log): readonly Issue[] {
  const sieved = log.sands.flatMap((sand) =>
    sand.sievings.filter(({ usable }) => usable).flatMap((sieving) => practiceIssues(sand, sieving)),
  );
  return [...sieved, ...log.batches.filter(({ usable }) => usable).flatMap(readingIssues)];
}

/** The same, and what a page tells as a finding and a check of the log as a complaint: sand that was lost. */
export function checkIssues(log: Log): readonly Issue[] {
  const lost = log.sands.flatMap((sand) =>
    sand.sievings.filter(({ usable }) => usable).flatMap((sieving) => balanceIssues(sand, sieving)),
  );
  return [...lost, ...pageIssues(log)];
}

function readingIssues(batch: Batch): Issue[] {
  const found = batch.readings.flatMap((reading) => testFigure(reading, batch).issues);
  return found.map((issue) => ({ ...issue, about: batch.name }));
}
