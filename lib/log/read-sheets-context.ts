// What the readers of a sheet need besides its own lines.

import type { Files } from "./csv-file.ts";
import type { Scale } from "./figure-types.ts";
import type { Typed } from "./logged-sheet.ts";
import { type Entry, type LogNode, plainName, type Report, type TextNode } from "./node.ts";
import type { Source } from "./source.ts";

export interface SheetContext {
  /** Of the log: tells whether a text stands in quotes. */
  readonly source: Source;
  readonly files: Files;
  readonly scales: readonly Scale[];
  readonly scaleSection: LogNode | undefined;
  /** True when a line of the sheet that stands there could not be read. */
  readonly spoiled: (entry: Entry) => boolean;
  readonly report: Report;
  readonly reportAbout: (name: string) => Report;
}

/** The text without its quotes and the spaces around it, at its own first character. */
export function typedOf({ text, place }: TextNode, { source }: Pick<SheetContext, "source">): Typed {
  const { column = 1, offset = 0, length = 0 } = place;
  const quoted = /["']/.test(source.text[offset] ?? "") && place.file === source.file ? 1 : 0;
  const lead = quoted + (text.length - text.trimStart().length);
  const trimmed = text.trim();
  const oneLine = length === text.length + 2 * quoted;
  return {
    text: trimmed,
    place: {
      ...place,
      column: column + lead,
      offset: offset + lead,
      // Over several lines, or with signs behind \, no character can be told by counting: such a text is longer where
      // it stands than read, and that tells it from one on a line.
      length: oneLine ? trimmed.length : length - lead,
    },
  };
}

/** A name as it is compared: case, doubled spaces and underscores don't count. */
export function sheetName(text: string): string {
  return plainName(text.replaceAll("_", " "));
}

/** Nothing was measured. */
export function isBlankCell(text: string): boolean {
  return text === "" || /^[-–—]$/.test(text);
}
