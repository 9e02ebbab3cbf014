// A message is defined once: its code, how grave it may be, and its words as a function of what is printed in them.

import type { Issue, Severity } from "./issue.ts";
import { Phrase, printed, type Spoken } from "./phrase.ts";

export type MessageKind = "issue" | "finding" | "caution" | "phrase";

/** A function that says one thing, and knows which. */
export interface Message<Said extends readonly unknown[], Thing> {
  (...said: Spoken<Said>): Thing;
  readonly kind: MessageKind;
  readonly code: string;
  /** The severities of an issue or the tones of a finding, the usual one first; empty for a phrase. */
  readonly ranks: readonly string[];
}

/** Makes one; its length is that of its words, so that a reader of the list knows how many arguments it takes. */
export function messageOf<Said extends readonly unknown[], Words, Thing>(
  named: Pick<Message<Said, Thing>, "kind" | "code" | "ranks">,
  words: (...said: Said) => Words,
  thing: (words: Words, said: readonly unknown[]) => Thing,
): Message<Said, Thing> {
  const say = (...said: Spoken<Said>): Thing => thing(words(...printed<Said>(said)), said);
  Object.defineProperty(say, "length", { value: words.length });
  return Object.freeze(Object.assign(say, named));
}

/** The words of an issue, and its severity where one of several. */
export type IssueWords = Pick<Issue, "message" | "remedy" | "about"> & { readonly severity?: Severity };

/**
 * The message function of an issue. Its arguments are plain words and figures as they are printed: another language
 * says the same by a function of the same arguments.
 * @example
 * const noPan = issueMessage("log/no-pan", "error", (line: string) => ({
 *   message: "There is no pan.",
 *   remedy: `Write \`pan:\` after line ${line}.`,
 * }));
 */
export function issueMessage<Said extends readonly unknown[]>(
  code: string,
  severity: Severity | readonly [Severity, ...Severity[]],
  say: (...said: Said) => IssueWords,
): Message<Said, Issue> {
  const ranks: readonly [Severity, ...Severity[]] = typeof severity === "string" ? [severity] : severity;
  return messageOf(
    { kind: "issue", code, ranks },
    say,
    (words, said): Issue => Object.freeze({ code, severity: ranks[0], ...words, said }),
  );
}

/** An issue with what it stands at before its message: the label of a sieve, a part of a formula. */
export function ledBy(issue: Issue, lead: string): Issue {
  return { ...issue, message: `${lead}: ${issue.message}`, lead };
}

/** A part of a sentence, or one that stands in another message: given to that as an argument, it keeps its code. */
export function phraseMessage<Said extends readonly unknown[]>(
  code: string,
  say: (...said: Said) => string,
): Message<Said, Phrase> {
  return messageOf({ kind: "phrase", code, ranks: [] }, say, (text, said) => new Phrase(code, text, said));
}
