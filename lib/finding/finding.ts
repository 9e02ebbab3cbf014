// What the numbers say: a sentence with its figure first, and what it rests on.

import type { Phrase } from "../phrase.ts";

/** good: stands where it should; note: worth knowing; doubt: look again before relying on it; error: no figure can be given. */
export type Tone = "good" | "note" | "doubt" | "error";

export interface Finding {
  /** Folder-free short name, e.g. "fineness/in-band"; each has one message function in the catalogue. */
  readonly code: string;
  readonly tone: Tone;
  /** The sentence, figure first. */
  readonly text: string;
  /** The figures that it rests on, a sentence each. */
  readonly because: readonly string[];
  /** The equation, in plain signs. */
  readonly formula?: string;
  /** Where the comparison comes from: author, year, table; or "common practice", "from memory", "our own". */
  readonly source?: string;
  /** What its message function was called with, so that another language can say it anew; in no output. */
  readonly said?: readonly unknown[];
}

/** A hazard, shown before the figures that it belongs to. */
export interface Caution {
  readonly code: string;
  /** What in the page brings it up: "because you are about to sieve dry sand". */
  readonly trigger: string;
  /** The hazard first, then what is usually done. */
  readonly text: string;
  readonly points: readonly string[];
  /** Always defers to local rules. */
  readonly defers: string;
  /** Where another trigger than its own brings it up: that one, for another language; in no output. */
  readonly said?: readonly [Phrase];
}

/** A caution that something else brings up on a page. */
export function triggeredBy(caution: Caution, trigger: Phrase): Caution {
  return { ...caution, trigger: trigger.text, said: [trigger] };
}
