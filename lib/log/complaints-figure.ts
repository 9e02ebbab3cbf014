// What can stand where a figure is expected.

import type { Issue } from "../issue.ts";

const error = (code: string, message: string, remedy: string): Issue => ({
  code: `log/${code}`,
  severity: "error",
  message,
  remedy,
});

export const letterForDigit = (text: string, better: string): Issue =>
  error("letter-for-digit", `"${text}" has a letter where a digit belongs.`, `Write ${better}`);

export const unitSpelt = (unit: string, better: string): Issue =>
  error("unit-spelt", `"${unit}" is not how the unit is written.`, `Write ${better}`);

export const remarkInFigure = (figure: string, remark: string): Issue =>
  error(
    "remark-in-figure",
    `After the figure ${figure} stands a remark: "${remark}".`,
    `Write ${figure} alone, and the remark on a line of its own: \`note: ${remark}\` (in a CSV file, in a column note).`,
  );

export const traceOnly = (text: string, example: string): Issue =>
  error(
    "trace-only",
    `"${text}" is no figure, but it says that there was less than the scale shows.`,
    `Write half of what the scale reads to, with as much ±: ${example}.`,
  );

export const wordForZero = (text: string): Issue =>
  error("word-for-zero", `"${text}" is a word for nothing.`, "Write 0 if it was looked at and held nothing.");

export const noFigure = (text: string): Issue =>
  error(
    "no-figure",
    `"${text}" says that there is no figure.`,
    "Leave the line out if it was not measured, or if the sieve was not on the stack (in a CSV file, write - for the sieve); write 0 only if nothing was found.",
  );

export const roughFigure = (text: string, figure: string): Issue =>
  error(
    "rough-figure",
    `"${text}" does not say how far off it may be.`,
    `Write ${figure} with how far it is surely right, such as 12.4 ± 0.5 g.`,
  );
