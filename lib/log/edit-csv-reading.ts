// A CSV file as the reader sees it: what an edit finds its way in, and is checked by.

import { checkText } from "./check-text.ts";
import { type CsvRow, csvSeparator, readCsv } from "./csv.ts";
import { type Source, sourceOf } from "./source.ts";

export interface CsvReading {
  readonly source: Source;
  readonly separator: string;
  /** The first is the head. */
  readonly rows: readonly CsvRow[];
  /** How many things are wrong with its writing. */
  readonly faults: number;
}

/** Undefined where the text is none that can be read. */
export function csvReading(name: string, text: string): CsvReading | undefined {
  const source = sourceOf(name, text);
  let faults = 0;
  const report = () => {
    faults += 1;
  };
  if (!checkText(source, report)) return undefined;
  const separator = csvSeparator(text);
  return { source, separator, rows: readCsv(source, separator, report), faults };
}

/** True where the file now holds these cells, and nothing is wrong that was not before. */
export function nowHolds(
  before: CsvReading,
  after: CsvReading | undefined,
  wanted: readonly (readonly string[])[],
): after is CsvReading {
  if (!after || after.faults > before.faults || after.separator !== before.separator) return false;
  return JSON.stringify(textsOf(after)) === JSON.stringify(wanted);
}

export const textsOf = ({ rows }: CsvReading): string[][] => rows.map((row) => row.map(({ text }) => text));
