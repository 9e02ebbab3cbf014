// An edit of a CSV file beside the log.

import type { Issue } from "../issue.ts";
import { changesMore, noNameWanted, noSuchPath, unreadableText } from "./complaints-edit.ts";
import { type CsvReading, csvReading, nowHolds } from "./edit-csv-reading.ts";
import { rowAdded, rowRemoved } from "./edit-csv-rows.ts";
import type { CsvTry } from "./edit-csv-try.ts";
import { cellWritten } from "./edit-csv-write.ts";
import { pathText } from "./edit-find.ts";
import { spliced } from "./edit-splice.ts";
import type { EditedText, LogEdit } from "./edit-types.ts";
import { placeIn } from "./source.ts";
import type { LogText } from "./types.ts";

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
    case "add":
      if (edit.to.length > 1) return { refused: noSuchPath(pathText(edit.to)) };
      return edit.name === undefined ? rowAdded(reading, edit) : { refused: noNameWanted(pathText(edit.to)) };
    case "remove":
      return rowRemoved(reading, edit.path);
  }
}
