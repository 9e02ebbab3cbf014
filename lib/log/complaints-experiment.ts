// What can be wrong with the record of an experiment.

import { issueMessage } from "../message.ts";

export const experimentAsksNothing = issueMessage("log/experiment-asks-nothing", "note", () => ({
  message: "The experiment does not say what it asks.",
  remedy: "Write the question in one sentence: `question: Does a longer mull raise green strength?`",
}));

export const experimentChangesNothing = issueMessage("log/experiment-changes-nothing", "note", () => ({
  message: "The experiment does not say what was changed from batch to batch.",
  remedy: "Write it as a list: `changed: [ water from 2.5 to 4.5 %, mulling 8 or 16 minutes ]`",
}));

export const notALine = issueMessage("log/not-a-line", "warning", (what: string) => ({
  message: `Something under "${what}" is neither a line of text nor a name with one, so it is left out.`,
  remedy: `Write each as a line of its own that begins with a dash: \`- text\`; in quotes where it holds a colon.`,
}));

export const endsBeforeItBegins = issueMessage(
  "log/ends-before-it-begins",
  "warning",
  (from: string, to: string) => ({
    message: `The experiment is from ${from} to ${to}, which is before it; the two are taken the other way round.`,
    remedy: "Write the first day after from, and the last one after to.",
  }),
);

export const batchOutsideDays = issueMessage(
  "log/batch-outside-days",
  "note",
  (date: string, from: string, to: string) => ({
    message: `This batch is dated ${date}, and the experiment is from ${from} to ${to}.`,
    remedy:
      "Look at the date of the batch and at the days of the experiment; a batch that does not belong to it stands better in a log of its own.",
  }),
);
