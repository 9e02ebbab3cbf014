// What can be wrong with a formula as it is read: one function a code, plain texts in.

import type { Issue } from "../issue.ts";

const error = (code: string, message: string, remedy: string): Issue => ({
  code: `sheet/formula-${code}`,
  severity: "error",
  message,
  remedy,
});

/** As typed, but never a screenful. */
const shown = (text: string): string => (text.length > 40 ? `“${text.slice(0, 40)}…”` : `“${text}”`);

export const formulaIssue = {
  empty: () =>
    error(
      "empty",
      "There is no formula here.",
      "Write one, such as 100 * (wet - dry) / wet, or take it away.",
    ),
  tooLong: (limit: number) =>
    error(
      "too-long",
      `The formula is longer than ${limit} characters.`,
      "Work parts of it out in columns of their own, and name those here.",
    ),
  tooDeep: (limit: number) =>
    error(
      "too-deep",
      `The formula has more than ${limit} steps inside one another.`,
      "Work parts of it out in columns of their own, and name those here.",
    ),
  strange: (sign: string) =>
    error(
      "sign",
      `${shown(sign)} means nothing in a formula.`,
      "Use + - * / ^, brackets, comparisons, names, numbers, and the functions of the list.",
    ),
  signToWrite: (sign: string, write: string) =>
    error("sign", `${shown(sign)} means nothing in a formula.`, `Write ${write}.`),
  percentSign: (before: string | undefined) =>
    error(
      "percent-sign",
      "% does not stand in a formula: it could mean a hundredth, or a remainder.",
      before === undefined
        ? "Percentages are numbers from 0 to 100 here: write 100 * part / whole, or percentOf(part, whole)."
        : `Write ${before} for a percentage, ${before} / 100 for the share that it is.`,
    ),
  decimalComma: (typed: string, write: string) =>
    error(
      "decimal-comma",
      `${shown(typed)} has a comma, which parts the arguments of a function.`,
      `Write ${write} with a point.`,
    ),
  commaInArguments: (typed: string): Issue => ({
    ...error(
      "comma-in-arguments",
      `${shown(typed)} was read as two figures.`,
      "Write a space after the comma if that is meant, else a decimal point.",
    ),
    severity: "warning",
  }),
  comma: () =>
    error(
      "comma",
      "A comma stands outside the brackets of a function.",
      "Take it away, or write a decimal point.",
    ),
  oneEquals: () =>
    error(
      "one-equals",
      "A single = gives a name to something, which a formula cannot do.",
      "Write == to ask whether two figures are equal.",
    ),
  openText: (text: string) =>
    error("open-text", `${shown(text)} has no closing quotation mark.`, "Close it."),
  brackets: (sign: string) =>
    error(
      "brackets",
      sign === "(" ? "A bracket is opened and not closed." : "A bracket is closed that was not opened.",
      sign === "(" ? "Add the ) where it belongs." : "Take the ) away, or add the ( where it belongs.",
    ),
  hugeNumber: (text: string) =>
    error("huge-number", `${shown(text)} is too large to work with.`, "Write an ordinary number."),
  noSuchName: (name: string, nearest: string | undefined, known: string) =>
    error(
      "no-such-name",
      `There is no ${shown(name)} here.`,
      nearest === undefined ? known : `Write ${nearest} if that is what is meant.`,
    ),
  noSuchUnit: (text: string, what: string) =>
    error("no-such-unit", `${shown(text)} after a number is not a unit that is known here.`, what),
  nameIsUnit: (literal: string, name: string, number: string) =>
    error(
      "name-is-unit",
      `${shown(name)} is a name here, so ${shown(literal)} cannot be read as a quantity.`,
      `Write ${number} * ${name} if the named figure is meant; else give that column another name than a unit's.`,
    ),
  sideBySide: (left: string, right: string) =>
    error(
      "side-by-side",
      `Between ${shown(left)} and ${shown(right)} there is no sign.`,
      `Write ${left} * ${right} if they are to be multiplied.`,
    ),
  missing: (where: string) =>
    error("missing", `Something is missing ${where}.`, "A number, a name or a bracket should stand there."),
  noSuchFunction: (name: string, nearest: string | undefined) =>
    error(
      "no-such-function",
      `There is no function ${shown(name)} that a formula may use.`,
      nearest === undefined
        ? "Arithmetic, sqrt, round, if, sum, mean and the models of the sand are there."
        : `Write ${nearest} if that is what is meant.`,
    ),
  notAFunction: (name: string) =>
    error(
      "not-a-function",
      `${shown(name)} is a figure here, not a function.`,
      `Write ${name} * (…) if it is to be multiplied.`,
    ),
  functionAlone: (name: string) =>
    error("function-alone", `${shown(name)} is a function and needs its brackets.`, `Write ${name}(…).`),
  whichLog: () =>
    error(
      "which-log",
      "There are several logarithms, so “log” alone is not used here.",
      "Write ln for the natural one, log10 or log2.",
    ),
  howMany: (call: string, has: number) =>
    error(
      "how-many",
      `There ${has === 1 ? "is 1 argument" : `are ${has} arguments`} here, which ${call} does not take.`,
      "Part the arguments by commas; a decimal mark is a point.",
    ),
  differ: (what: string, left: string, right: string, remedy: string) =>
    error("units-differ", `${left} and ${right} cannot be ${what}.`, remedy),
  needsNumber: (what: string, has: string, remedy: string) =>
    error("needs-plain-number", `${what} needs a plain number, and this is ${has}.`, remedy),
  needsUnit: (what: string, wants: string, has: string) =>
    error(
      "argument-unit",
      `${what} is counted in ${wants}, and this is ${has}.`,
      `Give it in ${wants} or a unit of that kind.`,
    ),
  needs: (what: string, wants: string, has: string, remedy: string) =>
    error("kind", `${what} needs ${wants}, and this is ${has}.`, remedy),
  temperatures: (message: string, remedy: string) => error("temperatures", message, remedy),
  exponent: (base: string) =>
    error(
      "exponent",
      `A figure in ${base} can only be raised to a power that is written as a number.`,
      "Write the power as a number, or divide by the unit first.",
    ),
  textPlace: () =>
    error(
      "text-place",
      "A text in quotation marks can only be compared with a text, or name the sheet, key and column of lookUp.",
      "A name of a column stands without quotation marks.",
    ),
  bareColumn: (name: string) =>
    error(
      "bare-column",
      `${shown(name)} has a figure in every row, and a foot has one figure.`,
      `Write mean(${name}), sum(${name}) or another figure over the rows.`,
    ),
  nested: (inner: string) =>
    error(
      "nested",
      `${inner} stands inside another figure over the rows.`,
      "Give the inner one a name in the foot, and use that name.",
    ),
  noRows: (name: string) =>
    error(
      "no-rows",
      `There is no column in ${name}.`,
      `Write ${name} of something that differs from row to row.`,
    ),
  quantileShare: () =>
    error(
      "quantile-share",
      "The second figure of quantile is the share below it, a number from 0 to 1.",
      "Write quantile(x, 0.9) for the value that nine tenths lie below.",
    ),
  digits: () =>
    error(
      "digits",
      "The second figure of round is how many decimals to keep, a whole number from -15 to 15.",
      "Write round(x, 1) to keep one.",
    ),
  noOtherSheets: () =>
    error("no-other-sheets", "There is no other sheet to look anything up in.", "Add the sheet to the log."),
  noSuchSheet: (name: string, nearest: string | undefined) =>
    error(
      "no-such-sheet",
      `There is no other sheet ${shown(name)}.`,
      nearest === undefined
        ? "Write the name of a sheet of this log."
        : `Write "${nearest}" if that is meant.`,
    ),
  noSuchColumn: (sheet: string, name: string, nearest: string | undefined) =>
    error(
      "no-such-column",
      `The sheet ${shown(sheet)} has no column ${shown(name)}.`,
      nearest === undefined
        ? "Write the name of one of its columns."
        : `Write "${nearest}" if that is meant.`,
    ),
  wantsOther: (wants: string, has: string, remedy: string) =>
    error("wanted-unit", `The formula gives ${has}, and ${wants} is asked for.`, remedy),
};
