// A column put behind the last one of a CSV file, empty in every row.

import { csvCell, csvUnfit } from "./edit-csv-cell.ts";
import { csvReading, nowHolds, textsOf } from "./edit-csv-reading.ts";
import { spliced } from "./edit-splice.ts";
import type { LogText } from "./types.ts";

/**
 * The file's text with the column; undefined where it cannot be read, or would not hold the same cells and the new ones
 * when it is read again.
 */
export function csvColumnAdded({ name, text }: LogText, column: string): string | undefined {
  const before = csvReading(name, text);
  if (!before || before.rows.length === 0 || csvUnfit(column)) return undefined;
  const { separator, rows } = before;
  const head = csvCell(column, separator, false);
  const splices = rows.map((cells, r) => {
    const last = cells.at(-1)!.place;
    const end = last.offset! + last.length!;
    return { start: end, end, text: `${separator}${r === 0 ? head : ""}` };
  });
  const now = spliced(text, splices);
  const wanted = textsOf(before).map((cells, r) => [...cells, r === 0 ? column : ""]);
  return nowHolds(before, csvReading(name, now), wanted) ? now : undefined;
}
