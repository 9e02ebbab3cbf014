// The catalogue: every message with its code, how grave it may be, what it is said with, and an example in English.

import type { Finding } from "../finding/finding.ts";
import { type Issue, invariant } from "../issue.ts";
import type { MessageKind } from "../message.ts";
import type { Phrase } from "../phrase.ts";
import { examples } from "./examples.ts";
import { type AnyMessage, allCautions, allMessages } from "./messages.ts";

export interface CatalogueEntry {
  readonly code: string;
  readonly kind: MessageKind;
  /** Severities of an issue, tones of a finding, the usual one first; none for cautions and phrases. */
  readonly ranks: readonly string[];
  /** Names of what it is said with, in order; what another language's function is given. */
  readonly parameters: readonly string[];
  /** What it is said with in the example. */
  readonly said: readonly unknown[];
  /** By field, as the words of another language give them; a phrase has its text alone. */
  readonly english: { readonly [field: string]: string | readonly string[] };
}

/** By code. Throws Misuse where a message that is said with something has no example. */
export function catalogue(): readonly CatalogueEntry[] {
  const entries = [...allMessages.map(entryOf), ...allCautions.map(cautionEntry)];
  return entries.sort((a, b) => (a.code < b.code ? -1 : 1));
}

function entryOf(message: AnyMessage): CatalogueEntry {
  const { code, kind, ranks, length } = message;
  const example = examples[code] ?? {};
  const said = Object.values(example);
  invariant(said.length >= length, `the message "${code}" has no example in lib/catalogue/examples`);
  return {
    code,
    kind,
    ranks,
    parameters: Object.keys(example),
    said,
    english: fieldsOf(message(...(said as never[]))),
  };
}

function fieldsOf(thing: unknown): CatalogueEntry["english"] {
  const { text, because, formula, source, message, remedy, about } = thing as Partial<
    Finding & Issue & Phrase
  >;
  const fields = { text, because, formula, source, message, remedy, about };
  return Object.fromEntries(
    Object.entries(fields).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])),
  );
}

function cautionEntry({ code, trigger, text, points, defers }: (typeof allCautions)[number]): CatalogueEntry {
  return {
    code,
    kind: "caution",
    ranks: [],
    parameters: [],
    said: [],
    english: { trigger, text, points, defers },
  };
}
