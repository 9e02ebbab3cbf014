// What can be wrong with a sheet and its cells: one function a code, plain texts in, no places.

import type { Issue } from "../issue.ts";

const error = (code: string, message: string, remedy: string): Issue => ({
  code: `sheet/${code}`,
  severity: "error",
  message,
  remedy,
});
const warning = (code: string, message: string, remedy: string): Issue => ({
  ...error(code, message, remedy),
  severity: "warning",
});

/** As typed, but never a screenful. */
const shown = (text: string): string => (text.length > 40 ? `“${text.slice(0, 40)}…”` : `“${text}”`);
const meant = (near: string | undefined, known: string): string =>
  near === undefined ? `Known here: ${known}.` : `Write ${near} if that is what is meant.`;

export const sheetIssue = {
  badName: (name: string) =>
    error(
      "name",
      name.trim() === "" ? "A name is empty." : `${shown(name)} cannot be used as a name.`,
      "Names are letters, digits, spaces and underscores, and begin with a letter.",
    ),
  nameClash: (name: string, other: string) =>
    error(
      "name-clash",
      name === other
        ? `The name ${shown(name)} stands twice in this sheet, so a formula could not tell which is meant.`
        : `${shown(name)} and ${shown(other)} could not be told apart in a formula.`,
      name === other
        ? `Columns, values and the foot have names of their own: write another, such as mean ${name} for a mean.`
        : "Names differ in more than capitals, spaces and underscores: write another.",
    ),
  kindAndUnit: (column: string, kind: string) =>
    warning(
      "text-with-unit",
      `The column “${column}” holds ${kind}s, which have no unit or ±.`,
      "Take them away.",
    ),
  formulaAsUnit: (column: string, text: string) =>
    error(
      "formula-as-unit",
      `${shown(text)} stands where the unit of “${column}” belongs, and is none.`,
      `If it is a formula, write = before it (${column}: = ${text.slice(0, 60)}), or { formula: ... }; else a unit such as g, kPa or mm.`,
    ),
  noSuchScale: (column: string, scale: string, near: string | undefined, known: string) =>
    error(
      "no-such-scale",
      `The column “${column}” was weighed on ${shown(scale)}, which is not among the scales.`,
      known === "" ? "Declare it under scales, with what it reads to." : meant(near, known),
    ),
  scaleNotMass: (column: string, unit: string) =>
    error(
      "scale-not-mass",
      `The column “${column}” is in ${unit}, which no scale shows.`,
      "Take the scale away, or give the column a unit of mass.",
    ),
  plusMinusUnit: (column: string, text: string, unit: string) =>
    error(
      "plus-minus-unit",
      `The ± ${shown(text)} of “${column}” does not go with ${unit}.`,
      `Write it in ${unit}.`,
    ),
  noSuchColumn: (name: string, near: string | undefined, known: string) =>
    error("no-such-column", `A row has ${shown(name)}, which is not a column.`, meant(near, known)),
  typedOver: (column: string) =>
    warning(
      "typed-over",
      `“${column}” is worked out by its formula, so what is typed here is left out.`,
      "Take it away, or give it a column of its own.",
    ),
  wrongUnit: (text: string, has: string, wants: string) =>
    error(
      "cell-unit",
      `${shown(text)} is in ${has}, and the column is in ${wants}.`,
      `Write it in ${wants}.`,
    ),
  unitOfNumber: (text: string, has: string) =>
    error(
      "cell-unit",
      `${shown(text)} is in ${has}, and the column holds plain numbers.`,
      "Write a number without a unit, or give the column one.",
    ),
  notFinite: () =>
    error("not-finite", "This is not a number that can be worked with.", "Write an ordinary number."),
  noSpread: (kind: string) =>
    error("spread-in-text", `A figure stands in a column of ${kind}s.`, "Write a text."),
  circle: (members: readonly string[]) =>
    error(
      "circle",
      members.length === 1
        ? `“${members[0]}” needs itself.`
        : `These need each other in a circle: ${[...members, members[0]].join(" → ")}.`,
      "Take one of the names out of its formula.",
    ),
  noResult: (why: string) =>
    error("no-result", `There is no figure here: ${why}.`, "Check the figures it is made of."),
  tooLarge: () =>
    error("too-large", "The result is too large to be a figure.", "Check the formula and its units."),
  twoForSd: () => error("one-value", "A standard deviation needs two values or more.", "Add a row."),
  noSuchRow: (key: string, sheet: string, near: string | undefined) =>
    error(
      "no-such-row",
      `There is no row ${shown(key)} in the sheet “${sheet}”.`,
      near === undefined
        ? "Write a text of its first text column."
        : `Write ${near} if that is what is meant.`,
    ),
  twoRows: (key: string, sheet: string) =>
    error(
      "two-rows",
      `The sheet “${sheet}” has more than one row ${shown(key)}.`,
      "Give the rows different texts in the first text column.",
    ),
  looksLikeFraction: (column: string, unit: string) =>
    warning(
      "looks-like-fraction",
      `Every value of “${column}” lies within ± 1 and is labelled ${unit}: it looks like a fraction.`,
      "Percentages run from 0 to 100 here: write 100 * …, or percentOf(part, whole).",
    ),
  unknownChart: (name: string, near: string | undefined, known: string) =>
    warning("chart-column", `A chart asks for ${shown(name)}, which is not a column.`, meant(near, known)),
  andMore: (count: number, column: string) =>
    error("and-more", `${count} more cells of “${column}” have no figure.`, "See the first of them."),
};
