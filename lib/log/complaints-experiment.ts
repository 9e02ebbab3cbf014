// What can be wrong with the record of an experiment.

import type { Issue, Severity } from "../issue.ts";

const issue = (severity: Severity, code: string, message: string, remedy: string): Issue => ({
  code: `log/${code}`,
  severity,
  message,
  remedy,
});

export const experimentAsksNothing = (): Issue =>
  issue(
    "note",
    "experiment-asks-nothing",
    "The experiment does not say what it asks.",
    "Write the question in one sentence: `question: Does a longer mull raise green strength?`",
  );

export const experimentChangesNothing = (): Issue =>
  issue(
    "note",
    "experiment-changes-nothing",
    "The experiment does not say what was changed from batch to batch.",
    "Write it as a list: `changed: [ water from 2.5 to 4.5 %, mulling 8 or 16 minutes ]`",
  );

export const notALine = (what: string): Issue =>
  issue(
    "warning",
    "not-a-line",
    `Something under "${what}" is neither a line of text nor a name with one, so it is left out.`,
    `Write each as a line of its own that begins with a dash: \`- text\`; in quotes where it holds a colon.`,
  );

export const endsBeforeItBegins = (from: string, to: string): Issue =>
  issue(
    "warning",
    "ends-before-it-begins",
    `The experiment is from ${from} to ${to}, which is before it; the two are taken the other way round.`,
    "Write the first day after from, and the last one after to.",
  );

export const batchOutsideDays = (date: string, from: string, to: string): Issue =>
  issue(
    "note",
    "batch-outside-days",
    `This batch is dated ${date}, and the experiment is from ${from} to ${to}.`,
    "Look at the date of the batch and at the days of the experiment; a batch that does not belong to it stands better in a log of its own.",
  );
