// The state of a stage from what is held and what is lacking.

import type { Phrase } from "../phrase.ts";

/** on record: what the stage is for is there. begun: some of it. */
export type StageState = "on record" | "begun" | "not yet";

export interface Held {
  readonly state: StageState;
  /** What the log holds, a sentence each. */
  readonly holds: readonly Phrase[];
  /** What is missing, a sentence each; empty where it is on record. */
  readonly lacks: readonly Phrase[];
}

/** Nothing held: not yet, whatever is lacking. */
export function heldBy(holds: readonly Phrase[], lacks: readonly Phrase[]): Held {
  const state = holds.length === 0 ? "not yet" : lacks.length === 0 ? "on record" : "begun";
  return { state, holds, lacks };
}

/** "1 batch", "3 batches". */
export const counted = (count: number, one: string, more = `${one}s`): string =>
  `${count} ${count === 1 ? one : more}`;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
