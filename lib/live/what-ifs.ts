// Values that are tried and not kept: the texts with them in place, and the way back from those texts' places.

import type { Place } from "../issue.ts";
import type { Edited, LogEdit } from "../log/edit-types.ts";
import type { LogText } from "../log/types.ts";
import { carried, type Splice, splicesBetween, undone } from "./splice.ts";

export interface WhatIf {
  /** In the texts without what-ifs. */
  readonly at: Place;
  readonly text: string;
}

export type EditLog = (texts: readonly LogText[], edit: LogEdit) => Edited;

export interface Tried {
  readonly texts: readonly LogText[];
  /** From the texts without what-ifs to those with them, one after the other. */
  readonly steps: readonly (readonly Splice[])[];
}

/** Written from the last place to the first, so that none moves another. One that is refused is left out. */
export function tried(texts: readonly LogText[], whatIfs: readonly WhatIf[], editLog: EditLog): Tried {
  const steps: (readonly Splice[])[] = [];
  let now = texts;
  for (const { at, text } of [...whatIfs].sort((a, b) => (b.at.offset ?? 0) - (a.at.offset ?? 0))) {
    const edited = editLog(now, { kind: "write", at, text });
    if (!edited.texts) continue;
    steps.push(splicesBetween(now, edited.texts, edited.changed));
    now = edited.texts;
  }
  return { texts: now, steps };
}

/** A place of the texts with what-ifs as one of the texts without. */
export function untried(place: Place, { steps }: Pick<Tried, "steps">): Place {
  return [...steps].reverse().reduce((at, splices): Place => carried(at, undone(splices)) ?? at, place);
}

/** The what-ifs that still stand somewhere after an edit, with their places in the new texts. */
export function carriedWhatIfs(whatIfs: readonly WhatIf[], splices: readonly Splice[]): readonly WhatIf[] {
  return whatIfs.flatMap(({ at, text }) => {
    const now = carried(at, splices);
    return now ? [{ at: now, text }] : [];
  });
}
