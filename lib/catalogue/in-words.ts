// A phrase in another language.

import { invariant } from "../issue.ts";
import { mapped, type Phrase } from "../phrase.ts";

/**
 * Another language: for each code a function of what the message is said with, giving the same fields in its words: a
 * text for a phrase, message and remedy for an issue, text, because, formula and source for a finding, trigger, text,
 * points and defers for a caution. The catalogue lists the codes and their arguments. What is not there stays English.
 */
export type Words = { readonly [code: string]: (...said: never[]) => unknown };

/** What the words say for a code; undefined where they do not know it. */
export function saidIn(words: Words, code: string, said: readonly unknown[]): unknown {
  if (!Object.hasOwn(words, code)) return undefined;
  const say = words[code] as (...said: readonly unknown[]) => unknown;
  return say(...said.map((one) => mapped(one, (phrase) => inWords(phrase, words))));
}

/** The phrase as the words say it, with the phrases in it; else as it is. Throws Misuse where they give no text. */
export function inWords(phrase: Phrase, words: Words): string {
  const told = saidIn(words, phrase.code, phrase.said);
  invariant(
    told === undefined || typeof told === "string",
    `the words for "${phrase.code}" must give a text`,
  );
  return told ?? phrase.text;
}
