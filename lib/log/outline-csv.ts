// A CSV file as the rows of an outline.

import { csvReading } from "./edit-csv-reading.ts";
import type { OutlineNode } from "./outline-node.ts";
import { placeIn } from "./source.ts";
import type { LogText } from "./types.ts";

/** Undefined where the file is empty or no text. A cell past the last named column is not there. */
export function csvOutline({ name, text }: LogText): OutlineNode | undefined {
  const reading = csvReading(name, text);
  const [head, ...rows] = reading?.rows ?? [];
  if (!reading || !head) return undefined;
  const columns = head.map((cell) => cell.text);
  return {
    kind: "rows",
    path: [name],
    label: name,
    place: placeIn(reading.source, 0),
    columns,
    rows: rows.map((row, k) =>
      columns.map((column, c) => {
        const cell = row[c];
        return (
          cell && {
            kind: "value",
            path: [name, k, column],
            label: column,
            text: cell.text,
            place: cell.place,
          }
        );
      }),
    ),
  };
}
