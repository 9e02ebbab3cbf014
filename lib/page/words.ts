// The few words that a page adds of its own; the same in every format, and in another language where words are given.

import { furniture } from "../catalogue/furniture.ts";
import { inWords, type Words } from "../catalogue/in-words.ts";
import type { Tone } from "../finding/finding.ts";
import type { Issue } from "../issue.ts";
import type { Message } from "../message.ts";
import type { Phrase } from "../phrase.ts";

/** A mark for the eye; with it stands a word for everyone: never colour alone. */
export const MARKS: { readonly [tone in Tone]: string } = { good: "●", note: "○", doubt: "◐", error: "×" };

type Said<M> = M extends Message<infer S, Phrase> ? S : never;
type Furniture = typeof furniture;
/** The words of a page's own as functions that give what is written. */
export type PageWords = {
  readonly [name in keyof Furniture]: (...said: Said<Furniture[name]>) => string;
};

/** In English, or as the words say. */
export function pageWords(words: Words = {}): PageWords {
  const each = Object.entries(furniture).map(([name, say]) => [
    name,
    (...said: never[]) => inWords((say as (...said: never[]) => Phrase)(...said), words),
  ]);
  return Object.fromEntries(each) as PageWords;
}

export const english: PageWords = pageWords();

export function othersTitle(issues: readonly Issue[], words: PageWords): string {
  return words.others(issues.every((issue) => issue.severity === "note"));
}

/** The first two hazards in one line, and how many more there are. */
export function hazardLine(hazards: readonly string[], words: PageWords): string {
  return `${hazards.slice(0, 2).join(" ")} ${words.moreHazards(String(Math.max(0, hazards.length - 2)))}`;
}
