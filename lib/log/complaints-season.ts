// What can be wrong with the states, events, plans and trials of a heap.

import type { Issue, Severity } from "../issue.ts";

const issue = (severity: Severity, code: string, message: string, remedy: string): Issue => ({
  code: `log/${code}`,
  severity,
  message,
  remedy,
});

export const notAList = (what: string, line: string): Issue =>
  issue(
    "error",
    "not-a-list",
    `After ${what}, a list is expected: each begins with a dash, or all stand in [ ].`,
    `Write \`${line}\``,
  );

export const undated = (what: string): Issue =>
  issue(
    "error",
    "undated",
    `This ${what} has no day that can be read, so it is left out: the order of a season is that of its days.`,
    "Add `date: 2026-05-02`.",
  );

export const outOfOrder = (date: string, before: string): Issue =>
  issue(
    "warning",
    "out-of-order",
    `${date} stands below ${before}, a later day; they are put in order of their days.`,
    "Look at the year and the month of both; else move the line to its place.",
  );

export const farAhead = (date: string, next: string): Issue =>
  issue(
    "warning",
    "far-ahead",
    `${date} lies in the future of what stands below it (${next} and so on); they are put in order of their days.`,
    "Look at its year and month: one digit is the likely slip.",
  );

export const longGap = (date: string, before: string, days: string): Issue =>
  issue(
    "warning",
    "long-gap",
    `Between ${before} and ${date} lie ${days} days without a line.`,
    "Look at the year; if the heap did stand so long, leave it.",
  );

export const eventOfNothing = (known: string): Issue =>
  issue(
    "warning",
    "event-of-nothing",
    "This event says a day and nothing that happened, so it is left out.",
    `Add one of: ${known}.`,
  );

export const eventFaulty = (date: string, kind: string): Issue =>
  issue(
    "warning",
    "event-faulty",
    `What cannot be read of "${kind}" on ${date} is missing from the season's balance.`,
    "Mend the line that is complained of above; until then the balance is short of it.",
  );

export const moreThanHeap = (what: string, text: string, heap: string): Issue =>
  issue(
    "warning",
    "more-than-heap",
    `"${text}" of ${what} at one time is more than the whole heap (${heap}).`,
    "Check the unit: a number without one is read as kg.",
  );

export const pourWithoutMetal = (): Issue =>
  issue(
    "warning",
    "pour-without-metal",
    "This pour does not say how much metal there was, so the clay that it burnt is not counted.",
    "Add `metal: 2.4 kg`.",
  );

export const stateOfNothing = (known: string): Issue =>
  issue("warning", "state-of-nothing", "Nothing is said here of the heap's state.", `Add one of: ${known}.`);

export const castingAboveFlask = (casting: string, flask: string): Issue =>
  issue(
    "error",
    "casting-above-flask",
    `A casting of ${casting} does not fit into a flask of ${flask}; both are left out.`,
    "Write the inside of the whole flask as `volume`, that of casting, runners and risers as `casting volume`.",
  );

export const mullingTooFew = (name: string, count: string): Issue =>
  issue(
    "warning",
    "mulling-too-few",
    `"${name}" has ${count} readings; a course of strength over minutes needs four or more at different times.`,
    "Test at 1, 2, 4, 8 and 15 minutes, from one load and without more water.",
  );

export const noBlendSands = (): Issue =>
  issue(
    "error",
    "no-blend-sands",
    "A blend needs two sands or more of this log, so none is worked out.",
    "Write `of: [ first sand, second sand ]`, with the names as they stand under `sands`.",
  );

export const noBlendAim = (): Issue =>
  issue(
    "error",
    "no-blend-aim",
    "It is not said what the blend is to come to.",
    "Write `to: { gfn: 60 }`, `to: { like: third sand }` or `to: { band: aluminium }`.",
  );

export const severalBlendAims = (): Issue =>
  issue(
    "warning",
    "several-blend-aims",
    "The blend is to come to several things; only the first is read.",
    "Take the others out.",
  );

export const humidityFraction = (text: string, value: number): Issue =>
  issue(
    "error",
    "humidity-fraction",
    `"${text}" for humidity is below one per cent, which no weather has; percentages run from 0 to 100 here. It is left out.`,
    `If a fraction was meant, write \`humidity: ${Number((100 * value).toPrecision(4))} %\`.`,
  );

export const burntSand = (text: string): Issue =>
  issue(
    "warning",
    "air-too-hot",
    `"${text}" is warmer than any day; water lost is worked out for 0 to 50 °C.`,
    "Check the unit: °F is read as well where it is written.",
  );
