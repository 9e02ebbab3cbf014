// Unseen runs after a page is first worked out: a browser compiles a program where it has run often, so that without them
// the first edits take twice as long as later ones.

import type { LogText } from "../log/types.ts";
import type { Wanted } from "./work-out.ts";

/** Our own. Of a larger log each run takes longer than it would save. */
const MOST = { runs: 6, ms: 1500, characters: 40_000 } as const;

export interface Rehearsals {
  /** What to work out unseen; undefined where enough was rehearsed, or the log has no figure to turn. */
  next(wanted: Wanted): Wanted | undefined;
  /** How long a run took, a told one or one of these. */
  took(ms: number): void;
}

/**
 * Each is the log with one figure turned by its last digit, every time another one: what is kept of earlier runs must not
 * answer all of it. No more than 6 in all, none that would end after 1.5 s of them, none of a log of more than 40,000
 * characters.
 */
export function rehearsals(): Rehearsals {
  let runs = 0;
  let spent = 0;
  let last = 0;
  let begun = false;
  return {
    next(wanted) {
      if (runs >= MOST.runs || spent + last > MOST.ms) return undefined;
      if (wanted.texts.reduce((sum, { text }) => sum + text.length, 0) > MOST.characters) return undefined;
      const texts = turned(wanted.texts, runs);
      if (!texts) return undefined;
      runs += 1;
      begun = true;
      return { ...wanted, texts };
    },
    took(ms) {
      last = ms;
      if (begun) spent += ms;
      begun = false;
    },
  };
}

/** A figure with a decimal mark, where a value may begin; dates and versions have none. */
const FIGURE = /(?<=[:,{[]\s*)\d+\.\d+(?![\d.])/g;

/** The k-th figure of those that stand evenly over the texts. */
function turned(texts: readonly LogText[], k: number): readonly LogText[] | undefined {
  const all = texts.flatMap(({ text }, file) =>
    [...text.matchAll(FIGURE)].map((match) => ({ file, at: match.index + match[0].length - 1 })),
  );
  const one = all[Math.floor(((k + 0.5) / MOST.runs) * all.length)];
  if (!one) return undefined;
  return texts.map((file, i) => {
    if (i !== one.file) return file;
    const digit = file.text[one.at] === "9" ? "8" : String(Number(file.text[one.at]) + 1);
    return { ...file, text: file.text.slice(0, one.at) + digit + file.text.slice(one.at + 1) };
  });
}
