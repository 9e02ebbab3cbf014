// What can be wrong with castings and the questions about them.

import { issueMessage } from "../message.ts";

export const faultsNotSaid = issueMessage("log/faults-not-said", "warning", (name: string) => ({
  message: `It is not said what was found on "${name}", so it counts neither with faults nor without.`,
  remedy: "Write `faults: none` if it was looked over and nothing was found, else `faults: [ gas holes ]`.",
}));

export const noneAndFaults = issueMessage("log/none-and-faults", "warning", (faults: string) => ({
  message: `"none" stands beside ${faults}; the faults are read.`,
  remedy: "Take one of the two out.",
}));

export const noPourThatDay = issueMessage(
  "log/casting-without-pour",
  "note",
  (date: string, nearest: string) => ({
    message: `The log has no pour on ${date}, so alloy, temperature, scrap and degassing of this casting are not known.`,
    remedy:
      nearest === ""
        ? `Add \`- { date: ${date}, pour: { metal: 2.0 kg } }\` to events.`
        : `Its nearest pour is on ${nearest}: look at the date of both, or add the pour to events.`,
  }),
);

export const whichPour = issueMessage("log/which-pour", "note", (date: string, count: string) => ({
  message: `The log has ${count} pours on ${date}, and it is not said which one this casting is of.`,
  remedy: "Add `of pour: 1`, counted in the order in which they stand.",
}));

export const noSuchPour = issueMessage(
  "log/no-such-pour",
  "warning",
  (typed: string, date: string, count: string) => ({
    message: `"${typed}" is no pour of ${date}: the log has ${count} on that day.`,
    remedy: "Pours of a day count from 1, in the order in which they stand under events.",
  }),
);

export const questionLacks = issueMessage("log/question-lacks", "warning", (what: string) => ({
  message: `This question does not say ${what} in words that are known, so it is left out.`,
  remedy: "Write `{ fault: gas holes, against: moisture }`.",
}));

export const questionTwice = issueMessage("log/question-twice", "warning", (line: string) => ({
  message: `This pair stands already on line ${line}; asked twice it would count twice, so the second is left out.`,
  remedy: "Take one of the two out; of several limits the one that was meant beforehand is kept.",
}));

export const limitOfYesNo = issueMessage("log/limit-of-yes-no", "warning", () => ({
  message: "Degassed is yes or no, so the limit beside it is left out.",
  remedy: "Take the limit out.",
}));

export const questionsWithoutCastings = issueMessage("log/questions-without-castings", "note", () => ({
  message: "Questions are named, and no casting stands in the log yet: they wait.",
  remedy: "Write `castings: [ { date: 2026-05-02, name: lamp base, faults: none } ]`.",
}));
