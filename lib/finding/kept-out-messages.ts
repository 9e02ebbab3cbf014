// The sentences of batches that the log leaves out: plain strings in.

import { phraseMessage } from "../message.ts";
import { findingMessage } from "./finding-message.ts";

/** batches: "W3"; why: the founder's own words; withThem: what the aim would be with these batches counted. */
export const keptOut = findingMessage(
  "trial/kept-out",
  "note",
  (batches: string, many: boolean, why: string, withThem: string) => ({
    text: `${batches} ${many ? "are" : "is"} left out: ${why}. ${withThem}`,
    because: [
      "By the log. What is left out takes part in no curve, aim, chance or comparison, nor in what the repeats teach of a rig; its figures stand in the tables.",
      "Leave a batch out for what went wrong when it was made or tested, never for where it lies.",
    ],
    source: "Common practice",
  }),
);

const them = (many: boolean): string => (many ? "them" : "it");

export const aimOtherwise = phraseMessage(
  "trial/kept-out-aim",
  (many: boolean, counted: string, now: string, axis: string) =>
    `With ${them(many)} the aim would be ${counted} instead of ${now} ${axis}.`,
);
export const aimOnlyWith = phraseMessage(
  "trial/kept-out-aim-only-with",
  (many: boolean, counted: string, axis: string) =>
    `With ${them(many)} the aim would be ${counted} ${axis}; without, there is none.`,
);
export const aimOnlyWithout = phraseMessage(
  "trial/kept-out-aim-only-without",
  (many: boolean) => `With ${them(many)} there would be no aim.`,
);
export const aimNeither = phraseMessage(
  "trial/kept-out-no-aim",
  (many: boolean) => `With ${them(many)} or without, there is no aim.`,
);

/** For the answer of a page. */
export const answeredWithout = phraseMessage(
  "trial/answered-without",
  (batches: string, why: string) => `This is without ${batches}, left out by the log: ${why}.`,
);
