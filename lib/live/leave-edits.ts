// A batch left out or put back in the log's texts: a line of an entry, or a cell of a CSV file, which may lack the column.

import type { Issue } from "../issue.ts";
import { csvColumnAdded } from "../log/edit-csv-column.ts";
import type { LogEdit } from "../log/edit-types.ts";
import { plainName } from "../log/node.ts";
import { LEFT_OUT, type OutlinedBatch } from "../log/outline-batches.ts";
import type { Bench } from "./edit-bench.ts";

/** why: undefined puts it back. As one step back; what the session says of it. */
export function leave(bench: Bench, batch: OutlinedBatch, why: string | undefined): readonly Issue[] {
  if (batch.kind === "csv") return leaveRows(bench, batch, why);
  const { path } = batch;
  return bench.apply([
    why === undefined
      ? { kind: "remove", path: [...path, LEFT_OUT] }
      : { kind: "add", to: path, entries: { [LEFT_OUT]: why } },
  ]);
}

/** The reason stands in the first row of the batch; put back, in none. */
function leaveRows(
  bench: Bench,
  { file, rows }: OutlinedBatch & { readonly kind: "csv" },
  why: string | undefined,
): readonly Issue[] {
  const { session } = bench;
  let issues: readonly Issue[] = [];
  session.together(() => {
    const before = session.texts;
    if (outColumn(bench, file) === undefined) {
      const now = session.texts.map((one) =>
        one.name === file ? { ...one, text: csvColumnAdded(one, LEFT_OUT) ?? one.text } : one,
      );
      session.replace(now);
    }
    const column = outColumn(bench, file);
    const edits = rows.flatMap((row, k): LogEdit[] => {
      const cell = column === undefined ? undefined : bench.places().get([file, row, column]);
      if (cell?.kind !== "value") return [];
      const text = k === 0 ? (why ?? "") : "";
      return cell.text === text ? [] : [{ kind: "write", at: cell.place, text }];
    });
    // From the last to the first, so that the places of the others stand.
    issues = bench.apply(edits.reverse());
    if (edits.length === 0) session.replace(before);
  });
  return issues;
}

function outColumn(bench: Bench, file: string): string | undefined {
  const node = bench.places().get([file]);
  return node?.kind === "rows" ? node.columns.find((column) => plainName(column) === LEFT_OUT) : undefined;
}
