// An edit of a CSV file beside the log.

import { type Issue, invariant } from "../issue.ts";
import { changesMore, noValueHere, signInCsv, unreadableText } from "./complaints-edit.ts";
import { csvCell, csvUnfit } from "./edit-csv-cell.ts";
import { type CsvReading, csvReading, nowHolds, textsOf } from "./edit-csv-reading.ts";
import { type Splice, spliced } from "./edit-splice.ts";
import type { EditedText, LogEdit } from "./edit-types.ts";
import { placeIn } from "./source.ts";
import type { LogText } from "./types.ts";

/** A splice, and the cells that must be read from the file when it is made. */
export interface CsvTry {
  readonly splice: Splice;
  readonly wanted: readonly (readonly string[])[];
  /** Where in the splice the new text stands; not there where something was removed. */
  readonly shown?: { readonly from: number; readonly length: number };
  readonly what: string;
}

export function csvEdited({ name, text }: LogText, edit: LogEdit): EditedText {
  const refuse = (issue: Issue): EditedText => ({
    issues: [{ ...issue, place: edit.kind === "write" ? edit.at : { file: name } }],
  });
  const before = csvReading(name, text);
  if (!before) return refuse(unreadableText(name));
  const way = csvTry(before, edit);
  if ("refused" in way) return refuse(way.refused);
  const now = spliced(text, [way.splice]);
  const after = csvReading(name, now);
  if (!nowHolds(before, after, way.wanted)) return refuse(changesMore(way.what));
  const { splice, shown } = way;
  const changed = shown && placeIn(after.source, splice.start + shown.from, shown.length);
  return { text: now, issues: [], ...(changed ? { changed } : {}) };
}

function csvTry(reading: CsvReading, edit: LogEdit): CsvTry | { readonly refused: Issue } {
  switch (edit.kind) {
    case "write":
      return cellWritten(reading, edit.at.offset, edit.at.length, edit.text.trim());
    default:
      return invariant(false, "not yet") as never;
  }
}

export function cellWritten(
  { source, separator, rows, ...rest }: CsvReading,
  offset: number | undefined,
  length: number | undefined,
  text: string,
): CsvTry | { readonly refused: Issue } {
  if (csvUnfit(text)) return { refused: signInCsv() };
  const here = ({ place }: (typeof rows)[number][number]) =>
    place.offset === offset && (length === undefined || place.length === length);
  const row = rows.findIndex((cells) => cells.some(here));
  const column = rows[row]?.findIndex(here) ?? -1;
  const place = rows[row]?.[column]?.place;
  if (!place) return { refused: noValueHere(source.file) };
  const [start, end] = [place.offset!, place.offset! + place.length!];
  const typed = source.text.slice(start, end);
  const spelt = csvCell(text, separator, typed.startsWith('"'));
  // Spaces that line the columns up stay.
  const [, left = "", right = ""] = spelt.startsWith('"')
    ? []
    : (/^(\s*)\S(?:.*\S)?(\s*)$/s.exec(typed) ?? []);
  const wanted = textsOf({ source, separator, rows, ...rest });
  wanted[row]![column] = text;
  return {
    splice: { start, end, text: left + spelt + right },
    wanted,
    shown: { from: 0, length: left.length + spelt.length + right.length },
    what: text,
  };
}
