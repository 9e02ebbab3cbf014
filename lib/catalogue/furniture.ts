// The few words that a page adds of its own, each with its code.

import type { Tone } from "../finding/finding.ts";
import type { Severity } from "../issue.ts";
import { phraseMessage } from "../message.ts";

const tones: { readonly [tone in Tone]: string } = {
  good: "stands",
  note: "note",
  doubt: "look again",
  error: "no figure",
};
const severities: { readonly [severity in Severity]: string } = {
  error: "Error",
  warning: "Warning",
  note: "Note",
};

/** Every one with its code; figures come as they are printed. */
export const furniture = {
  tone: phraseMessage("page/tone", (tone: Tone) => tones[tone]),
  severity: phraseMessage("page/severity", (severity: Severity) => severities[severity]),
  table: phraseMessage("page/table", (number: string) => `Table ${number}`),
  tablePart: phraseMessage("page/table-part", (part: string, parts: string) => `part ${part} of ${parts}`),
  tableRows: phraseMessage("page/table-rows", (from: string, to: string) => `rows ${from} to ${to}`),
  /** On the fold that holds them. */
  moreRows: phraseMessage("page/table-more-rows", (from: string, to: string) => `Rows ${from} to ${to}`),
  /** At a table that is wider than its place. */
  scrolls: phraseMessage("page/table-scrolls", () => "scrolls sideways"),
  figure: phraseMessage("page/figure", (number: string) => `Figure ${number}`),
  figureData: phraseMessage("page/figure-data", (number: string) => `Data of figure ${number}`),
  /** In a cell, in place of a long text that is told under the table. */
  note: phraseMessage("page/table-note", (number: string) => `note ${number}`),
  noteText: phraseMessage(
    "page/table-note-text",
    (number: string, text: string) => `Note ${number}: ${text}`,
  ),
  /** Over the formulas of a table. */
  workedOut: phraseMessage("page/worked-out", () => "How each column is worked out"),
  restsOn: phraseMessage("page/rests-on", () => "What it rests on"),
  source: phraseMessage("page/source", (source: string) => `Source: ${source}`),
  sources: phraseMessage("page/sources", () => "Sources"),
  /** Over the files that travel with a page. */
  files: phraseMessage("page/files", () => "The files behind this page"),
  /** Said at a key figure that must not be relied on. */
  weak: phraseMessage("page/weak", () => "in doubt"),
  wentWrong: phraseMessage("page/went-wrong", () => "What went wrong"),
  moreErrors: phraseMessage("page/more-errors", (count: string) => `${count} more errors`),
  /** The line near the top of a page whose log has errors. */
  errorNotice: phraseMessage(
    "page/error-notice",
    (count: string) =>
      `${count === "1" ? "One error was found" : `${count} errors were found`}: figures may be missing or wrong.`,
  ),
  errorLink: phraseMessage("page/error-link", () => "See what went wrong"),
  errorsBelow: phraseMessage("page/errors-below", () => "They stand below the answer."),
  /** Over the issues that are no errors. */
  others: phraseMessage("page/others", (notesOnly: boolean) =>
    notesOnly ? "Notes on the log" : "Warnings and notes on the log",
  ),
  caution: phraseMessage("page/caution", () => "Caution"),
  /** After the first two hazards; the cautions themselves stand before the data. */
  moreHazards: phraseMessage("page/more-hazards", (others: string) =>
    others === "0"
      ? "More below."
      : others === "1"
        ? "One more stands below."
        : `${others} more cautions stand below.`,
  ),
  /** Under the title and at the foot of every page of a log that says so. */
  invented: phraseMessage(
    "page/invented",
    () => "The founder, the sands and the figures of this log are invented.",
  ),
  log: phraseMessage(
    "page/log",
    (file: string, fingerprint: string) => `Log ${file}, fingerprint ${fingerprint}.`,
  ),
  keptBy: phraseMessage("page/kept-by", (founder: string) => `Kept by ${founder}.`),
} as const;
