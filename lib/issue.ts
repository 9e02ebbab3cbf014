// What can be wrong, and where. Bad data make issues; misuse by a programmer throws.

/** error: a figure is missing or cannot be trusted; warning: it stands, with a doubt; note: worth knowing. */
export type Severity = "error" | "warning" | "note";

/** Where in the founder's files; lines and columns count from 1, offset and length in characters. */
export interface Place {
  readonly file: string;
  readonly line?: number;
  readonly column?: number;
  readonly offset?: number;
  readonly length?: number;
}

/** One thing that is wrong: what (message), where (place) and what to do (remedy). */
export interface Issue {
  /** Folder and short name, e.g. "log/decimal-comma"; stable, each has one message function. */
  readonly code: string;
  readonly severity: Severity;
  /** A whole sentence in plain words. */
  readonly message: string;
  /** What to do about it: a whole sentence. */
  readonly remedy?: string;
  readonly place?: Place;
  /** What it is about, e.g. the name of a sand, so that a page can show it there. */
  readonly about?: string;
  /** What its message function was called with, so that another language can say it anew; in no output. */
  readonly said?: readonly unknown[];
  /** What stands before the message, with a colon: the label of a sieve, a part of a formula. */
  readonly lead?: string;
}

/** A value may come with issues; no value means that nothing could be made of the input. */
export interface Checked<T> {
  readonly value?: T;
  readonly issues: readonly Issue[];
}

/**
 * True when any issue is an error.
 * @example hasError(readLog("format: 9\n", { name: "log.yaml" }).issues) // true
 */
export function hasError(issues: readonly Issue[]): boolean {
  return issues.some((issue) => issue.severity === "error");
}

/**
 * "sand.yaml:12:5" as far as known; the empty string without a place.
 * @example placeText({ file: "log.yaml", line: 3, column: 7 }) // "log.yaml:3:7"
 */
export function placeText(place: Place | undefined): string {
  if (!place) return "";
  return [place.file, place.line, place.line === undefined ? undefined : place.column]
    .filter((part) => part !== undefined)
    .join(":");
}

/**
 * One issue as the command line prints it: place, severity, message, then the remedy on a line of its own.
 * @example readLog("format: 9\n", { name: "log.yaml" }).issues.map(issueText)
 */
export function issueText(issue: Issue): string {
  const place = placeText(issue.place);
  const head = `${place === "" ? "" : `${place}: `}${issue.severity}: ${issue.message}`;
  return issue.remedy === undefined ? head : `${head}\n    ${issue.remedy}`;
}

/** Thrown for our own mistakes and for calls that break a function's stated contract. */
export class Misuse extends Error {
  override readonly name = "Misuse";
}

/** Throws Misuse unless the condition holds. */
export function invariant(condition: unknown, message: string): asserts condition {
  if (!condition) throw new Misuse(message);
}
