// What can be wrong with the states, events, plans and trials of a heap.

import { issueMessage } from "../message.ts";

export const notAList = issueMessage("log/not-a-list", "error", (what: string, line: string) => ({
  message: `After ${what}, a list is expected: each begins with a dash, or all stand in [ ].`,
  remedy: `Write \`${line}\``,
}));

export const undated = issueMessage("log/undated", "error", (what: string) => ({
  message: `This ${what} has no day that can be read, so it is left out: the order of a season is that of its days.`,
  remedy: "Add `date: 2026-05-02`.",
}));

export const outOfOrder = issueMessage("log/out-of-order", "warning", (date: string, before: string) => ({
  message: `${date} stands below ${before}, a later day; they are put in order of their days.`,
  remedy: "Look at the year and the month of both; else move the line to its place.",
}));

export const farAhead = issueMessage("log/far-ahead", "warning", (date: string, next: string) => ({
  message: `${date} lies in the future of what stands below it (${next} and so on); they are put in order of their days.`,
  remedy: "Look at its year and month: one digit is the likely slip.",
}));

export const longGap = issueMessage(
  "log/long-gap",
  "warning",
  (date: string, before: string, days: string) => ({
    message: `Between ${before} and ${date} lie ${days} days without a line.`,
    remedy: "Look at the year; if the heap did stand so long, leave it.",
  }),
);

export const eventOfNothing = issueMessage("log/event-of-nothing", "warning", (known: string) => ({
  message: "This event says a day and nothing that happened, so it is left out.",
  remedy: `Add one of: ${known}.`,
}));

export const eventFaulty = issueMessage("log/event-faulty", "warning", (date: string, kind: string) => ({
  message: `What cannot be read of "${kind}" on ${date} is missing from the season's balance.`,
  remedy: "Mend the line that is complained of above; until then the balance is short of it.",
}));

export const moreThanHeap = issueMessage(
  "log/more-than-heap",
  "warning",
  (what: string, text: string, heap: string) => ({
    message: `"${text}" of ${what} at one time is more than the whole heap (${heap}).`,
    remedy: "Check the unit: a number without one is read as kg.",
  }),
);

export const pourWithoutMetal = issueMessage("log/pour-without-metal", "warning", () => ({
  message: "This pour does not say how much metal there was, so the clay that it burnt is not counted.",
  remedy: "Add `metal: 2.4 kg`.",
}));

export const stateOfNothing = issueMessage("log/state-of-nothing", "warning", (known: string) => ({
  message: "Nothing is said here of the heap's state.",
  remedy: `Add one of: ${known}.`,
}));

export const castingAboveFlask = issueMessage(
  "log/casting-above-flask",
  "error",
  (casting: string, flask: string) => ({
    message: `A casting of ${casting} does not fit into a flask of ${flask}; both are left out.`,
    remedy:
      "Write the inside of the whole flask as `volume`, that of casting, runners and risers as `casting volume`.",
  }),
);

export const mullingTooFew = issueMessage(
  "log/mulling-too-few",
  "warning",
  (name: string, count: string) => ({
    message: `"${name}" has ${count} readings; a course of strength over minutes needs four or more at different times.`,
    remedy: "Test at 1, 2, 4, 8 and 15 minutes, from one load and without more water.",
  }),
);

export const noBlendSands = issueMessage("log/no-blend-sands", "error", () => ({
  message: "A blend needs two sands or more of this log, so none is worked out.",
  remedy: "Write `of: [ first sand, second sand ]`, with the names as they stand under `sands`.",
}));

export const noBlendAim = issueMessage("log/no-blend-aim", "error", () => ({
  message: "It is not said what the blend is to come to.",
  remedy: "Write `to: { gfn: 60 }`, `to: { like: third sand }` or `to: { band: aluminium }`.",
}));

export const severalBlendAims = issueMessage("log/several-blend-aims", "warning", () => ({
  message: "The blend is to come to several things; only the first is read.",
  remedy: "Take the others out.",
}));

export const humidityFraction = issueMessage(
  "log/humidity-fraction",
  "error",
  (text: string, value: number) => ({
    message: `"${text}" for humidity is below one per cent, which no weather has; percentages run from 0 to 100 here. It is left out.`,
    remedy: `If a fraction was meant, write \`humidity: ${Number((100 * value).toPrecision(4))} %\`.`,
  }),
);

export const burntSand = issueMessage("log/air-too-hot", "warning", (text: string) => ({
  message: `"${text}" is warmer than any day; water lost is worked out for 0 to 50 °C.`,
  remedy: "Check the unit: °F is read as well where it is written.",
}));
