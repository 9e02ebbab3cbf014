// The way back and forth through a log's texts, kept as what changed and not as whole texts.

import type { LogText } from "../log/types.ts";
import { type Splice, sameFiles, spliced, splicesBetween, undone } from "./splice.ts";

/** What leads to other texts: splices, or all of the texts where a file came or went. */
type Step = { readonly splices: readonly Splice[] } | { readonly whole: readonly LogText[] };

export interface Steps {
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** Remembers the way back; what was undone before is gone. */
  add(before: readonly LogText[], after: readonly LogText[], splices: readonly Splice[]): void;
  /** The texts one step back or forth, from those of now; undefined where there is no such step. */
  travel(way: "undo" | "redo", now: readonly LogText[]): readonly LogText[] | undefined;
}

export function newSteps(): Steps {
  const ways: { readonly undo: Step[]; readonly redo: Step[] } = { undo: [], redo: [] };
  return {
    get canUndo() {
      return ways.undo.length > 0;
    },
    get canRedo() {
      return ways.redo.length > 0;
    },
    add(before, after, splices) {
      ways.undo.push(sameFiles(before, after) ? { splices: undone(splices) } : { whole: before });
      ways.redo.length = 0;
    },
    travel(way, now) {
      const step = ways[way].pop();
      if (!step) return undefined;
      const texts = "whole" in step ? step.whole : spliced(now, step.splices);
      const back: Step = "whole" in step ? { whole: now } : { splices: undone(step.splices) };
      ways[way === "undo" ? "redo" : "undo"].push(back);
      return texts;
    },
  };
}

/** How the second texts differ, and whether at all. */
export function difference(
  before: readonly LogText[],
  after: readonly LogText[],
): { readonly differs: boolean; readonly splices: readonly Splice[] } {
  const splices = splicesBetween(before, after);
  return { differs: splices.length > 0 || !sameFiles(before, after), splices };
}
