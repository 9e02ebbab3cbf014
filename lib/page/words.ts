// The few words that a page adds of its own; the same in every format.

import type { Tone } from "../finding/finding.ts";
import type { Issue, Severity } from "../issue.ts";

/** A mark for the eye and a word for everyone: never colour alone. */
export const TONES: { readonly [tone in Tone]: { readonly mark: string; readonly word: string } } = {
  good: { mark: "●", word: "stands" },
  note: { mark: "○", word: "note" },
  doubt: { mark: "◐", word: "look again" },
  error: { mark: "×", word: "no figure" },
};

export const SEVERITIES: { readonly [severity in Severity]: string } = {
  error: "Error",
  warning: "Warning",
  note: "Note",
};

/** Over the formulas of a table. */
export const WORKED_OUT = "How each column is worked out";

export const RESTS_ON = "What it rests on";
export const SOURCES = "Sources";
/** Over the files that travel with a page. */
export const FILES = "The files behind this page";
/** Said at a key figure that must not be relied on. */
export const WEAK = "in doubt";

export const WENT_WRONG = "What went wrong";
/** Under the title and at the foot of every page of a log that says so. */
export const INVENTED = "The founder, the sands and the figures of this log are invented.";

/** Over the issues that are no errors. */
export function othersTitle(issues: readonly Issue[]): string {
  return issues.every((issue) => issue.severity === "note")
    ? "Notes on the log"
    : "Warnings and notes on the log";
}

/** The one line near the top of a page whose log has errors. */
export function errorNotice(errors: number): { readonly says: string; readonly link: string } {
  const says = errors === 1 ? "One error was found" : `${errors} errors were found`;
  return { says: `${says}: figures may be missing or wrong.`, link: "See what went wrong" };
}

export const CAUTION = "Caution";

/** The first two hazards in one line; the cautions themselves stand before the data. */
export function hazardLine(hazards: readonly string[]): string {
  const others = hazards.length - 2;
  const more =
    others < 1
      ? " More below."
      : others === 1
        ? " One more stands below."
        : ` ${others} more cautions stand below.`;
  return `${hazards.slice(0, 2).join(" ")}${more}`;
}
