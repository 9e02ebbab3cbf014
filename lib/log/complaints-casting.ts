// What can be wrong with castings and the questions about them.

import type { Issue, Severity } from "../issue.ts";

const issue = (severity: Severity, code: string, message: string, remedy: string): Issue => ({
  code: `log/${code}`,
  severity,
  message,
  remedy,
});

export const faultsNotSaid = (name: string): Issue =>
  issue(
    "warning",
    "faults-not-said",
    `It is not said what was found on "${name}", so it counts neither with faults nor without.`,
    "Write `faults: none` if it was looked over and nothing was found, else `faults: [ gas holes ]`.",
  );

export const noneAndFaults = (faults: string): Issue =>
  issue(
    "warning",
    "none-and-faults",
    `"none" stands beside ${faults}; the faults are read.`,
    "Take one of the two out.",
  );

export const noPourThatDay = (date: string, nearest: string): Issue =>
  issue(
    "note",
    "casting-without-pour",
    `The log has no pour on ${date}, so alloy, temperature, scrap and degassing of this casting are not known.`,
    nearest === ""
      ? `Add \`- { date: ${date}, pour: { metal: 2.0 kg } }\` to events.`
      : `Its nearest pour is on ${nearest}: look at the date of both, or add the pour to events.`,
  );

export const whichPour = (date: string, count: string): Issue =>
  issue(
    "note",
    "which-pour",
    `The log has ${count} pours on ${date}, and it is not said which one this casting is of.`,
    "Add `of pour: 1`, counted in the order in which they stand.",
  );

export const noSuchPour = (typed: string, date: string, count: string): Issue =>
  issue(
    "warning",
    "no-such-pour",
    `"${typed}" is no pour of ${date}: the log has ${count} on that day.`,
    "Pours of a day count from 1, in the order in which they stand under events.",
  );

export const questionLacks = (what: string): Issue =>
  issue(
    "warning",
    "question-lacks",
    `This question does not say ${what} in words that are known, so it is left out.`,
    "Write `{ fault: gas holes, against: moisture }`.",
  );

export const questionTwice = (line: string): Issue =>
  issue(
    "warning",
    "question-twice",
    `This pair stands already on line ${line}; asked twice it would count twice, so the second is left out.`,
    "Take one of the two out; of several limits the one that was meant beforehand is kept.",
  );

export const limitOfYesNo = (): Issue =>
  issue(
    "warning",
    "limit-of-yes-no",
    "Degassed is yes or no, so the limit beside it is left out.",
    "Take the limit out.",
  );

export const questionsWithoutCastings = (): Issue =>
  issue(
    "note",
    "questions-without-castings",
    "Questions are named, and no casting stands in the log yet: they wait.",
    "Write `castings: [ { date: 2026-05-02, name: lamp base, faults: none } ]`.",
  );
