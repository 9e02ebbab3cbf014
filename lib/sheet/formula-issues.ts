// What can be wrong with a formula as it is read: one function a code, plain texts in.

import { issueMessage } from "../message.ts";

/** As typed, but never a screenful. */
const shown = (text: string): string => (text.length > 40 ? `"${text.slice(0, 40)}…"` : `"${text}"`);

export const formulaIssue = {
  empty: issueMessage("sheet/formula-empty", "error", () => ({
    message: "There is no formula here.",
    remedy: "Write one, such as 100 * (wet - dry) / wet, or take it away.",
  })),
  tooLong: issueMessage("sheet/formula-too-long", "error", (limit: number) => ({
    message: `The formula is longer than ${limit} characters.`,
    remedy: "Work parts of it out in columns of their own, and name those here.",
  })),
  tooDeep: issueMessage("sheet/formula-too-deep", "error", (limit: number) => ({
    message: `The formula has more than ${limit} steps inside one another.`,
    remedy: "Work parts of it out in columns of their own, and name those here.",
  })),
  strange: issueMessage("sheet/formula-sign", "error", (sign: string) => ({
    message: `${shown(sign)} means nothing in a formula.`,
    remedy: "Use + - * / ^, brackets, comparisons, names, numbers, and the functions of the list.",
  })),
  signToWrite: issueMessage("sheet/formula-other-sign", "error", (sign: string, write: string) => ({
    message: `${shown(sign)} means nothing in a formula.`,
    remedy: `Write ${write}.`,
  })),
  percentSign: issueMessage("sheet/formula-percent-sign", "error", (before: string | undefined) => ({
    message: "% does not stand in a formula: it could mean a hundredth, or a remainder.",
    remedy:
      before === undefined
        ? "Percentages are numbers from 0 to 100 here: write 100 * part / whole, or percentOf(part, whole)."
        : `Write ${before} for a percentage, ${before} / 100 for the share that it is.`,
  })),
  decimalComma: issueMessage("sheet/formula-decimal-comma", "error", (typed: string, write: string) => ({
    message: `${shown(typed)} has a comma, which parts the arguments of a function.`,
    remedy: `Write ${write} with a point.`,
  })),
  commaInArguments: issueMessage("sheet/formula-comma-in-arguments", "warning", (typed: string) => ({
    message: `${shown(typed)} was read as two figures.`,
    remedy: "Write a space after the comma if that is meant, else a decimal point.",
  })),
  comma: issueMessage("sheet/formula-comma", "error", () => ({
    message: "A comma stands outside the brackets of a function.",
    remedy: "Take it away, or write a decimal point.",
  })),
  oneEquals: issueMessage("sheet/formula-one-equals", "error", () => ({
    message: "A single = gives a name to something, which a formula cannot do.",
    remedy: "Write == to ask whether two figures are equal.",
  })),
  openText: issueMessage("sheet/formula-open-text", "error", (text: string) => ({
    message: `${shown(text)} has no closing quotation mark.`,
    remedy: "Close it.",
  })),
  brackets: issueMessage("sheet/formula-brackets", "error", (sign: string) => ({
    message:
      sign === "(" ? "A bracket is opened and not closed." : "A bracket is closed that was not opened.",
    remedy: sign === "(" ? "Add the ) where it belongs." : "Take the ) away, or add the ( where it belongs.",
  })),
  hugeNumber: issueMessage("sheet/formula-huge-number", "error", (text: string) => ({
    message: `${shown(text)} is too large to work with.`,
    remedy: "Write an ordinary number.",
  })),
  noSuchName: issueMessage(
    "sheet/formula-no-such-name",
    "error",
    (name: string, nearest: string | undefined, known: string) => ({
      message: `There is no ${shown(name)} here.`,
      remedy: nearest === undefined ? known : `Write ${nearest} if that is what is meant.`,
    }),
  ),
  noSuchUnit: issueMessage("sheet/formula-no-such-unit", "error", (text: string, what: string) => ({
    message: `${shown(text)} after a number is not a unit that is known here.`,
    remedy: what,
  })),
  nameIsUnit: issueMessage(
    "sheet/formula-name-is-unit",
    "error",
    (literal: string, name: string, number: string) => ({
      message: `${shown(name)} is a name here, so ${shown(literal)} cannot be read as a quantity.`,
      remedy: `Write ${number} * ${name} if the named figure is meant; else give that column another name than a unit's.`,
    }),
  ),
  sideBySide: issueMessage("sheet/formula-side-by-side", "error", (left: string, right: string) => ({
    message: `Between ${shown(left)} and ${shown(right)} there is no sign.`,
    remedy: `Write ${left} * ${right} if they are to be multiplied.`,
  })),
  missing: issueMessage("sheet/formula-missing", "error", (where: string) => ({
    message: `Something is missing ${where}.`,
    remedy: "A number, a name or a bracket should stand there.",
  })),
  noSuchFunction: issueMessage(
    "sheet/formula-no-such-function",
    "error",
    (name: string, nearest: string | undefined) => ({
      message: `There is no function ${shown(name)} that a formula may use.`,
      remedy:
        nearest === undefined
          ? "Arithmetic, sqrt, round, if, sum, mean and the models of the sand are there."
          : `Write ${nearest} if that is what is meant.`,
    }),
  ),
  notAFunction: issueMessage("sheet/formula-not-a-function", "error", (name: string) => ({
    message: `${shown(name)} is a figure here, not a function.`,
    remedy: `Write ${name} * (…) if it is to be multiplied.`,
  })),
  functionAlone: issueMessage("sheet/formula-function-alone", "error", (name: string) => ({
    message: `${shown(name)} is a function and needs its brackets.`,
    remedy: `Write ${name}(…).`,
  })),
  whichLog: issueMessage("sheet/formula-which-log", "error", () => ({
    message: 'There are several logarithms, so "log" alone is not used here.',
    remedy: "Write ln for the natural one, log10 or log2.",
  })),
  howMany: issueMessage("sheet/formula-how-many", "error", (call: string, has: number) => ({
    message: `There ${has === 1 ? "is 1 argument" : `are ${has} arguments`} here, which ${call} does not take.`,
    remedy: "Part the arguments by commas; a decimal mark is a point.",
  })),
  differ: issueMessage(
    "sheet/formula-units-differ",
    "error",
    (what: string, left: string, right: string, remedy: string) => ({
      message: `${left} and ${right} cannot be ${what}.`,
      remedy,
    }),
  ),
  needsNumber: issueMessage(
    "sheet/formula-needs-plain-number",
    "error",
    (what: string, has: string, remedy: string) => ({
      message: `${what} needs a plain number, and this is ${has}.`,
      remedy,
    }),
  ),
  needsUnit: issueMessage(
    "sheet/formula-argument-unit",
    "error",
    (what: string, wants: string, has: string) => ({
      message: `${what} is counted in ${wants}, and this is ${has}.`,
      remedy: `Give it in ${wants} or a unit of that kind.`,
    }),
  ),
  needs: issueMessage(
    "sheet/formula-kind",
    "error",
    (what: string, wants: string, has: string, remedy: string) => ({
      message: `${what} needs ${wants}, and this is ${has}.`,
      remedy,
    }),
  ),
  temperatures: issueMessage("sheet/formula-temperatures", "error", (message: string, remedy: string) => ({
    message,
    remedy,
  })),
  exponent: issueMessage("sheet/formula-exponent", "error", (base: string) => ({
    message: `A figure in ${base} can only be raised to a power that is written as a number.`,
    remedy: "Write the power as a number, or divide by the unit first.",
  })),
  textPlace: issueMessage("sheet/formula-text-place", "error", () => ({
    message:
      "A text in quotation marks can only be compared with a text, or name the sheet, key and column of lookUp.",
    remedy: "A name of a column stands without quotation marks.",
  })),
  bareColumn: issueMessage("sheet/formula-bare-column", "error", (name: string) => ({
    message: `${shown(name)} has a figure in every row, and a foot has one figure.`,
    remedy: `Write mean(${name}), sum(${name}) or another figure over the rows.`,
  })),
  nested: issueMessage("sheet/formula-nested", "error", (inner: string) => ({
    message: `${inner} stands inside another figure over the rows.`,
    remedy: "Give the inner one a name in the foot, and use that name.",
  })),
  noRows: issueMessage("sheet/formula-no-rows", "error", (name: string) => ({
    message: `There is no column in ${name}.`,
    remedy: `Write ${name} of something that differs from row to row.`,
  })),
  quantileShare: issueMessage("sheet/formula-quantile-share", "error", () => ({
    message: "The second figure of quantile is the share below it, a number from 0 to 1.",
    remedy: "Write quantile(x, 0.9) for the value that nine tenths lie below.",
  })),
  digits: issueMessage("sheet/formula-digits", "error", () => ({
    message: "The second figure of round is how many decimals to keep, a whole number from -15 to 15.",
    remedy: "Write round(x, 1) to keep one.",
  })),
  noOtherSheets: issueMessage("sheet/formula-no-other-sheets", "error", () => ({
    message: "There is no other sheet to look anything up in.",
    remedy: "Add the sheet to the log.",
  })),
  noSuchSheet: issueMessage(
    "sheet/formula-no-such-sheet",
    "error",
    (name: string, nearest: string | undefined) => ({
      message: `There is no other sheet ${shown(name)}.`,
      remedy:
        nearest === undefined
          ? "Write the name of a sheet of this log."
          : `Write "${nearest}" if that is meant.`,
    }),
  ),
  noSuchColumn: issueMessage(
    "sheet/formula-no-such-column",
    "error",
    (sheet: string, name: string, nearest: string | undefined) => ({
      message: `The sheet ${shown(sheet)} has no column ${shown(name)}.`,
      remedy:
        nearest === undefined
          ? "Write the name of one of its columns."
          : `Write "${nearest}" if that is meant.`,
    }),
  ),
  wantsOther: issueMessage(
    "sheet/formula-wanted-unit",
    "error",
    (wants: string, has: string, remedy: string) => ({
      message: `The formula gives ${has}, and ${wants} is asked for.`,
      remedy,
    }),
  ),
};
