// What can stand where a figure is expected.

import { issueMessage } from "../message.ts";

export const letterForDigit = issueMessage(
  "log/letter-for-digit",
  "error",
  (text: string, better: string) => ({
    message: `"${text}" has a letter where a digit belongs.`,
    remedy: `Write ${better}`,
  }),
);

export const unitSpelt = issueMessage("log/unit-spelt", "error", (unit: string, better: string) => ({
  message: `"${unit}" is not how the unit is written.`,
  remedy: `Write ${better}`,
}));

export const remarkInFigure = issueMessage(
  "log/remark-in-figure",
  "error",
  (figure: string, remark: string) => ({
    message: `After the figure ${figure} stands a remark: "${remark}".`,
    remedy: `Write ${figure} alone, and the remark on a line of its own: \`note: ${remark}\` (in a CSV file, in a column note).`,
  }),
);

export const traceOnly = issueMessage("log/trace-only", "error", (text: string, example: string) => ({
  message: `"${text}" is no figure, but it says that there was less than the scale shows.`,
  remedy: `Write half of what the scale reads to, with as much ±: ${example}.`,
}));

export const wordForZero = issueMessage("log/word-for-zero", "error", (text: string) => ({
  message: `"${text}" is a word for nothing.`,
  remedy: "Write 0 if it was looked at and held nothing.",
}));

export const noFigure = issueMessage("log/no-figure", "error", (text: string) => ({
  message: `"${text}" says that there is no figure.`,
  remedy:
    "Leave the line out if it was not measured, or if the sieve was not on the stack (in a CSV file, write - for the sieve); write 0 only if nothing was found.",
}));

export const roughFigure = issueMessage("log/rough-figure", "error", (text: string, figure: string) => ({
  message: `"${text}" does not say how far off it may be.`,
  remedy: `Write ${figure} with how far it is surely right, such as 12.4 ± 0.5 g.`,
}));

export const strayMark = issueMessage(
  "log/stray-mark",
  "error",
  (text: string, mark: string, where: "start" | "end", figure: string) => ({
    message: `The ${mark} at the ${where} of "${text}" is no part of a figure.`,
    remedy: mark.includes("?")
      ? `Write ${figure}; where you are not sure of it, with how far it is surely right, such as 12.4 ± 0.5 g.`
      : `Write ${figure}`,
  }),
);

export const oddMark = issueMessage(
  "log/odd-mark",
  "error",
  (text: string, mark: string, better: string) => ({
    message: `"${text}" has ${mark} where a decimal point is expected.`,
    remedy:
      mark === ":" ? `Write ${better}; or a time with its units, such as 1 min 30 s.` : `Write ${better}`,
  }),
);

export const spaceInFigure = issueMessage("log/space-in-figure", "error", (text: string, better: string) => ({
  message: `"${text}" has a space beside its decimal point.`,
  remedy: `Write ${better}`,
}));

export const sumForFigure = issueMessage("log/sum-for-figure", "error", (text: string, better: string) => ({
  message: `"${text}" is a sum, and nothing is added up here.`,
  remedy: `Write ${better}`,
}));

export const otherDigits = issueMessage("log/other-digits", "error", (text: string, better: string) => ({
  message: `The digits of "${text}" are of another script than 0 to 9.`,
  remedy: `Write ${better}`,
}));

export const basisUnclear = issueMessage("log/basis-unclear", "error", (text: string, better: string) => ({
  message: `"${text}" does not say of what it is a percentage: dry sand and damp sand give two figures.`,
  remedy: `Write ${better}, whichever it was worked out by.`,
}));
