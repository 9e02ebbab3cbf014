// The message functions of findings.

import { type Message, messageOf } from "../message.ts";
import type { Finding, Tone } from "./finding.ts";

/** The words of a finding, and its tone where one of several. */
export type FindingWords = Omit<Finding, "code" | "tone" | "said"> & { readonly tone?: Tone };

/**
 * The message function of a finding: figure first, then what it rests on. Its arguments are plain words and figures as
 * they are printed: another language says the same by a function of the same arguments.
 * @example
 * const holds = findingMessage("water/holds", "note", (water: string) => ({
 *   text: `${water} of water is in the sand.`,
 *   because: [],
 * }));
 */
export function findingMessage<Said extends readonly unknown[]>(
  code: string,
  tone: Tone | readonly [Tone, ...Tone[]],
  say: (...said: Said) => FindingWords,
): Message<Said, Finding> {
  const ranks: readonly [Tone, ...Tone[]] = typeof tone === "string" ? [tone] : tone;
  return messageOf(
    { kind: "finding", code, ranks },
    say,
    (words, said): Finding => Object.freeze({ code, tone: ranks[0], ...words, said }),
  );
}
