// One message in another language.

import { inWords, saidIn, type Words } from "../catalogue/in-words.ts";
import { findMessage } from "../catalogue/messages.ts";
import type { Caution, Finding } from "../finding/finding.ts";
import { type Issue, invariant } from "../issue.ts";
import { mapped } from "../phrase.ts";

/** The words, and what is found out on the way. */
export interface Anew {
  readonly words: Words;
  /** Codes of all that was met. */
  readonly met: Set<string>;
  /** English sentences of the messages with what stands for them. */
  readonly sentences: Map<string, string>;
}

export function findingAnew(finding: Finding, anew: Anew): Finding {
  return saidAnew(finding, ["text", "because", "formula", "source"], anew);
}

/** What stands before the message stays: it is the founder's own. */
export function issueAnew(issue: Issue, anew: Anew): Issue {
  const { lead } = issue;
  const fields = ["message", "remedy", "about"] as const;
  if (lead === undefined) return saidAnew(issue, fields, anew);
  const bare = { ...issue, message: issue.message.slice(lead.length + 2) };
  const told = saidAnew(bare, fields, anew);
  const message = `${lead}: ${told.message}`;
  anew.sentences.set(issue.message, message);
  return { ...told, message };
}

export function cautionAnew({ said, ...own }: Caution, anew: Anew): Caution {
  const told = saidAnew<Caution>(own, ["trigger", "text", "points", "defers"], anew);
  if (!said) return told;
  meet(said, anew);
  return { ...told, trigger: inWords(said[0], anew.words), said };
}

/** The fields of a message in the words; those that they leave out stay. */
function saidAnew<T extends Finding | Issue | Caution>(
  thing: T,
  fields: readonly (keyof T)[],
  anew: Anew,
): T {
  const { code, said = [] } = thing;
  anew.met.add(code);
  meet(said, anew);
  const told = saidIn(anew.words, code, said) as Partial<T> | undefined;
  if (told === undefined) return thing;
  const english = (findMessage(code)?.(...(said as never[])) ?? {}) as Partial<T>;
  const changed: { [field in keyof T]?: T[field] } = {};
  for (const field of fields) {
    const value = told[field];
    if (value === undefined) continue;
    const list = Array.isArray(thing[field]);
    invariant(
      list ? Array.isArray(value) && value.every(isText) : isText(value),
      `the words for "${code}" must give ${list ? "a list of texts" : "a text"} as ${String(field)}`,
    );
    const whole = withTail(thing[field], english[field], value) as T[keyof T];
    changed[field] = whole;
    pair(thing[field], whole, anew.sentences);
  }
  return { ...thing, ...changed };
}

/** What a page put behind a sentence, such as the number of its source, stands behind the other one too. */
function withTail(shown: unknown, english: unknown, other: unknown): unknown {
  if (!isText(shown) || !isText(english) || !isText(other) || !shown.startsWith(english)) return other;
  return other + shown.slice(english.length);
}

const isText = (value: unknown): value is string => typeof value === "string";

function pair(from: unknown, to: unknown, sentences: Map<string, string>): void {
  if (isText(from) && isText(to)) sentences.set(from, to);
  if (!Array.isArray(from) || !Array.isArray(to) || from.length !== to.length) return;
  from.forEach((line, i) => {
    pair(line, to[i], sentences);
  });
}

/** The phrases among what a message is said with, and those within them. */
function meet(said: unknown, anew: Anew): void {
  mapped(said, (phrase) => {
    anew.met.add(phrase.code);
    meet(phrase.said, anew);
  });
}
