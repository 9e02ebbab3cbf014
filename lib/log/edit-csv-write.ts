// A cell of a CSV file written anew.

import type { Issue } from "../issue.ts";
import { noValueHere, signInCsv } from "./complaints-edit.ts";
import { csvCell, csvUnfit } from "./edit-csv-cell.ts";
import { type CsvReading, textsOf } from "./edit-csv-reading.ts";
import type { CsvTry } from "./edit-csv-try.ts";

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
