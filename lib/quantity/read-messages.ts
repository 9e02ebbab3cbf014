// What can be wrong with a typed quantity or unit: one function a code, plain texts in. No place: the log adds it.

import type { Issue } from "../issue.ts";

const error = (code: string, message: string, remedy: string): Issue => ({
  code: `quantity/${code}`,
  severity: "error",
  message,
  remedy,
});

/** As typed, but never a screenful. */
function shown(text: string): string {
  return text.length > 40 ? `“${text.slice(0, 40)}…”` : `“${text}”`;
}

export const quantityIssue = {
  empty: () => error("empty", "There is no figure here.", "Write a number, such as 12.4 g."),
  tooLong: (text: string, limit: number) =>
    error(
      "too-long",
      `${shown(text)} is too long for a figure.`,
      `Write the figure alone, in at most ${limit} characters, and the rest as a note.`,
    ),
  notANumber: (text: string) =>
    error(
      "not-a-number",
      `${shown(text)} does not begin with a number.`,
      "Write the number first, such as 12.4 g.",
    ),
  notFinite: (text: string) =>
    error(
      "not-finite",
      `${shown(text)} is not a number that can be worked with.`,
      "Write an ordinary number, or leave the field out where nothing was measured.",
    ),
  decimalComma: (text: string, write: string) =>
    error(
      "decimal-comma",
      `${shown(text)} has a comma, which may stand for a decimal point or part thousands.`,
      `Write ${write}.`,
    ),
  thousands: (text: string, write: string) =>
    error("thousands-separator", `${shown(text)} has its thousands parted.`, `Write ${write}.`),
  twoMarks: (text: string) =>
    error(
      "two-marks",
      `${shown(text)} has more than one decimal mark.`,
      "Write one decimal point, such as 12.4.",
    ),
  zeroDenominator: (text: string) =>
    error(
      "zero-denominator",
      `${shown(text)} divides by zero.`,
      "Write the fraction again, such as 13/32 in.",
    ),
  range: (text: string) =>
    error(
      "range",
      `${shown(text)} is a range, not a figure.`,
      "Write the middle and how far it may be off, such as 12.5 ± 0.5 g.",
    ),
  unknownUnit: (unit: string, nearest: string | undefined) =>
    error(
      "unknown-unit",
      `${shown(unit)} is not a unit that is known here.`,
      nearest === undefined
        ? "Write a unit such as g, kg, lb, oz, mm, in, ml, kPa, psi, min or °C."
        : `Write ${nearest} if that is what is meant.`,
    ),
  ambiguousUnit: (unit: string, first: string, second: string) =>
    error(
      "ambiguous-unit",
      `${shown(unit)} may be ${first} or ${second}, which differ.`,
      `Write ${first} or ${second}.`,
    ),
  unknownBasis: (unit: string, nearest: string): Issue => ({
    ...error(
      "unknown-basis",
      `${shown(unit)} counts percent of something unknown.`,
      `Write % of ${nearest} if that is meant.`,
    ),
    severity: "warning",
  }),
  mixedUnits: (first: string, second: string) =>
    error(
      "mixed-units",
      `${first} and ${second} do not make one figure.`,
      "Write one unit, or a larger and a smaller of the same kind, such as 3 lb 4 oz.",
    ),
  trailing: (rest: string) =>
    error(
      "trailing-text",
      `${shown(rest)} after the figure cannot be read.`,
      "Write it as a note, or take it away.",
    ),
  plusMinusMissing: (text: string) =>
    error(
      "no-plus-minus",
      `${shown(text)} has a ± without a number after it.`,
      "Write how far the figure may be off, such as 12.4 ± 0.1 g, or take the ± away.",
    ),
  plusMinusNegative: (text: string) =>
    error(
      "negative-plus-minus",
      `${shown(text)} has a ± below zero.`,
      "Write the ± as a number of 0 or more.",
    ),
  plusMinusMeaning: (meaning: string) =>
    error(
      "plus-minus-meaning",
      `${shown(meaning)} after a ± is not known here.`,
      "Write (sd) for one standard deviation, (95 %) for a 95 % interval, or nothing where it is surely within.",
    ),
  plusMinusUnit: (figure: string, plusMinus: string) =>
    error(
      "plus-minus-dimension",
      `The figure is in ${figure} but its ± is in ${plusMinus}.`,
      `Write the ± in ${figure}.`,
    ),
  belowAbsoluteZero: (text: string) =>
    error(
      "below-absolute-zero",
      `${shown(text)} is colder than anything can be.`,
      "Check the sign and the unit.",
    ),
  otherDimension: (text: string, from: string, to: string) =>
    error(
      "other-dimension",
      `${shown(text)} is in ${from}, which cannot be turned into ${to}.`,
      `Write the figure in ${to}, or in a unit of the same kind.`,
    ),
};
