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

export const RESTS_ON = "What it rests on";
export const SOURCES = "Sources";
/** Said at a key figure that must not be relied on. */
export const WEAK = "in doubt";

export function issuesTitle(issues: readonly Issue[]): string {
  return issues.every((issue) => issue.severity === "note") ? "Notes on the log" : "What went wrong";
}

/** The one line near the top of a page whose log has errors. */
export function errorNotice(errors: number): { readonly says: string; readonly link: string } {
  const says = errors === 1 ? "One error was found" : `${errors} errors were found`;
  return { says: `${says}: figures below may be missing or wrong.`, link: "See what went wrong" };
}
