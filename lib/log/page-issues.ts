// What every page of a log complains of besides what reading it brought up.

import type { Issue } from "../issue.ts";
import type { Batch } from "./batch.ts";
import { practiceIssues } from "./practice-issues.ts";
import { testFigure } from "./test-figure.ts";
import type { Log } from "./types.ts";

/** Doubts that show only once figures are taken together or worked out: from the sievings and the batches that can be used. */
export function pageIssues(log: Log): readonly Issue[] {
  const sieved = log.sands.flatMap((sand) =>
    sand.sievings.filter(({ usable }) => usable).flatMap((sieving) => practiceIssues(sand, sieving)),
  );
  return [...sieved, ...log.batches.filter(({ usable }) => usable).flatMap(readingIssues)];
}

function readingIssues(batch: Batch): Issue[] {
  const found = batch.readings.flatMap((reading) => testFigure(reading, batch).issues);
  return found.map((issue) => ({ ...issue, about: batch.name }));
}
