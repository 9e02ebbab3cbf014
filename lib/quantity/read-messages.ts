// What can be wrong with a typed quantity or unit: one function a code, plain texts in. No place: the log adds it.

import { issueMessage } from "../message.ts";

/** As typed, but never a screenful. */
function shown(text: string): string {
  return text.length > 40 ? `"${text.slice(0, 40)}…"` : `"${text}"`;
}

export const quantityIssue = {
  empty: issueMessage("quantity/empty", "error", () => ({
    message: "There is no figure here.",
    remedy: "Write a number, such as 12.4 g.",
  })),
  tooLong: issueMessage("quantity/too-long", "error", (text: string, limit: number) => ({
    message: `${shown(text)} is too long for a figure.`,
    remedy: `Write the figure alone, in at most ${limit} characters, and the rest as a note.`,
  })),
  notANumber: issueMessage("quantity/not-a-number", "error", (text: string) => ({
    message: `${shown(text)} does not begin with a number.`,
    remedy: "Write the number first, then its unit, such as 12.4 g or 7 days.",
  })),
  notFinite: issueMessage("quantity/not-finite", "error", (text: string) => ({
    message: `${shown(text)} is not a number that can be worked with.`,
    remedy: "Write an ordinary number, or leave the field out where nothing was measured.",
  })),
  decimalComma: issueMessage("quantity/decimal-comma", "error", (text: string, write: string) => ({
    message: `${shown(text)} has a comma, which may stand for a decimal point or part thousands.`,
    remedy: `Write ${write}.`,
  })),
  thousands: issueMessage("quantity/thousands-separator", "error", (text: string, write: string) => ({
    message: `${shown(text)} has its thousands parted.`,
    remedy: `Write ${write}.`,
  })),
  twoMarks: issueMessage("quantity/two-marks", "error", (text: string) => ({
    message: `${shown(text)} has more than one decimal mark.`,
    remedy: "Write one decimal point, such as 12.4.",
  })),
  zeroDenominator: issueMessage("quantity/zero-denominator", "error", (text: string) => ({
    message: `${shown(text)} divides by zero.`,
    remedy: "Write the fraction again, such as 13/32 in.",
  })),
  range: issueMessage("quantity/range", "error", (text: string) => ({
    message: `${shown(text)} is a range, not a figure.`,
    remedy: "Write the middle and how far it may be off, such as 12.5 ± 0.5 g.",
  })),
  fractionDash: issueMessage("quantity/fraction-dash", "error", (text: string, write: string) => ({
    message: `${shown(text)} may be a whole number with a fraction, or a range.`,
    remedy: `Write ${write} if that is meant, and of a range the middle and how far it may be off.`,
  })),
  colon: issueMessage("quantity/colon", "error", (text: string, first: string, second: string) => ({
    message: `${shown(text)} has a colon, which may stand for a time or for a ratio.`,
    remedy: `Write ${first} min ${second} s or ${first} h ${second} min for a time, and a percentage for a ratio.`,
  })),
  unknownUnit: issueMessage(
    "quantity/unknown-unit",
    "error",
    (unit: string, nearest: string | undefined) => ({
      message: `${shown(unit)} is not a unit that is known here.`,
      remedy:
        nearest === undefined
          ? "Write a unit such as g, kg, lb, oz, mm, in, ml, kPa, psi, min or °C."
          : `Write ${nearest} if that is what is meant.`,
    }),
  ),
  ambiguousUnit: issueMessage(
    "quantity/ambiguous-unit",
    "error",
    (unit: string, first: string, second: string) => ({
      message: `${shown(unit)} may be ${first} or ${second}, which differ.`,
      remedy: `Write ${first} or ${second}.`,
    }),
  ),
  unknownBasis: issueMessage("quantity/unknown-basis", "warning", (unit: string, nearest: string) => ({
    message: `${shown(unit)} counts percent of something unknown.`,
    remedy: `Write % of ${nearest} if that is meant.`,
  })),
  mixedUnits: issueMessage("quantity/mixed-units", "error", (first: string, second: string) => ({
    message: `${first} and ${second} do not make one figure.`,
    remedy: "Write one unit, or a larger and a smaller of the same kind, such as 3 lb 4 oz.",
  })),
  trailing: issueMessage("quantity/trailing-text", "error", (rest: string) => ({
    message: `${shown(rest)} after the figure cannot be read.`,
    remedy: "Write it as a note, or take it away.",
  })),
  plusMinusMissing: issueMessage("quantity/no-plus-minus", "error", (text: string) => ({
    message: `${shown(text)} has a ± without a number after it.`,
    remedy: "Write how far the figure may be off, such as 12.4 ± 0.1 g, or take the ± away.",
  })),
  plusMinusAtLeast: issueMessage("quantity/plus-minus-at-least", "error", (text: string) => ({
    message: `${shown(text)} says the least that the figure may be off, not the most.`,
    remedy: "Write how far it may surely be off, such as 12.4 ± 0.1 g, or take the ± away.",
  })),
  plusMinusNegative: issueMessage("quantity/negative-plus-minus", "error", (text: string) => ({
    message: `${shown(text)} has a ± below zero.`,
    remedy: "Write the ± as a number of 0 or more.",
  })),
  plusMinusMeaning: issueMessage("quantity/plus-minus-meaning", "error", (meaning: string) => ({
    message: `${shown(meaning)} after a ± is not known here.`,
    remedy:
      "Write (sd) for one standard deviation, (95 %) for a 95 % interval, or nothing where it is surely within.",
  })),
  plusMinusUnit: issueMessage(
    "quantity/plus-minus-dimension",
    "error",
    (figure: string, plusMinus: string) => ({
      message: `The figure is in ${figure} but its ± is in ${plusMinus}.`,
      remedy: `Write the ± in ${figure}.`,
    }),
  ),
  belowAbsoluteZero: issueMessage("quantity/below-absolute-zero", "error", (text: string) => ({
    message: `${shown(text)} is colder than anything can be.`,
    remedy: "Check the sign and the unit.",
  })),
  otherDimension: issueMessage(
    "quantity/other-dimension",
    "error",
    (text: string, from: string, to: string) => ({
      message: `${shown(text)} is in ${from}, which cannot be turned into ${to}.`,
      remedy: `Write the figure in ${to}, or in a unit of the same kind.`,
    }),
  ),
};
