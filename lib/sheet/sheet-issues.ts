// What can be wrong with a sheet and its cells: one function a code, plain texts in, no places.

import { issueMessage } from "../message.ts";

/** As typed, but never a screenful. */
const shown = (text: string): string => (text.length > 40 ? `"${text.slice(0, 40)}…"` : `"${text}"`);
const meant = (near: string | undefined, known: string): string =>
  near === undefined ? `Known here: ${known}.` : `Write ${near} if that is what is meant.`;

export const sheetIssue = {
  badName: issueMessage("sheet/name", "error", (name: string) => ({
    message: name.trim() === "" ? "A name is empty." : `${shown(name)} cannot be used as a name.`,
    remedy: "Names are letters, digits, spaces and underscores, and begin with a letter.",
  })),
  nameClash: issueMessage("sheet/name-clash", "error", (name: string, other: string) => ({
    message:
      name === other
        ? `The name ${shown(name)} stands twice in this sheet, so a formula could not tell which is meant.`
        : `${shown(name)} and ${shown(other)} could not be told apart in a formula.`,
    remedy:
      name === other
        ? `Columns, values and the foot have names of their own: write another, such as mean ${name} for a mean.`
        : "Names differ in more than capitals, spaces and underscores: write another.",
  })),
  kindAndUnit: issueMessage("sheet/text-with-unit", "warning", (column: string, kind: string) => ({
    message: `The column "${column}" holds ${kind}s, which have no unit or ±.`,
    remedy: "Take them away.",
  })),
  formulaAsUnit: issueMessage("sheet/formula-as-unit", "error", (column: string, text: string) => ({
    message: `${shown(text)} stands where the unit of "${column}" belongs, and is none.`,
    remedy: `If it is a formula, write = before it (${column}: = ${text.slice(0, 60)}), or { formula: ... }; else a unit such as g, kPa or mm.`,
  })),
  noSuchScale: issueMessage(
    "sheet/no-such-scale",
    "error",
    (column: string, scale: string, near: string | undefined, known: string) => ({
      message: `The column "${column}" was weighed on ${shown(scale)}, which is not among the scales.`,
      remedy: known === "" ? "Declare it under scales, with what it reads to." : meant(near, known),
    }),
  ),
  scaleNotMass: issueMessage("sheet/scale-not-mass", "error", (column: string, unit: string) => ({
    message: `The column "${column}" is in ${unit}, which no scale shows.`,
    remedy: "Take the scale away, or give the column a unit of mass.",
  })),
  plusMinusUnit: issueMessage(
    "sheet/plus-minus-unit",
    "error",
    (column: string, text: string, unit: string) => ({
      message: `The ± ${shown(text)} of "${column}" does not go with ${unit}.`,
      remedy: `Write it in ${unit}.`,
    }),
  ),
  noSuchColumn: issueMessage(
    "sheet/no-such-column",
    "error",
    (name: string, near: string | undefined, known: string) => ({
      message: `A row has ${shown(name)}, which is not a column.`,
      remedy: meant(near, known),
    }),
  ),
  typedOver: issueMessage("sheet/typed-over", "warning", (column: string) => ({
    message: `"${column}" is worked out by its formula, so what is typed here is left out.`,
    remedy: "Take it away, or give it a column of its own.",
  })),
  wrongUnit: issueMessage("sheet/cell-unit", "error", (text: string, has: string, wants: string) => ({
    message: `${shown(text)} is in ${has}, and the column is in ${wants}.`,
    remedy: `Write it in ${wants}.`,
  })),
  unitOfNumber: issueMessage("sheet/cell-unit-of-number", "error", (text: string, has: string) => ({
    message: `${shown(text)} is in ${has}, and the column holds plain numbers.`,
    remedy: "Write a number without a unit, or give the column one.",
  })),
  notFinite: issueMessage("sheet/not-finite", "error", () => ({
    message: "This is not a number that can be worked with.",
    remedy: "Write an ordinary number.",
  })),
  noSpread: issueMessage("sheet/spread-in-text", "error", (kind: string) => ({
    message: `A figure stands in a column of ${kind}s.`,
    remedy: "Write a text.",
  })),
  circle: issueMessage("sheet/circle", "error", (members: readonly string[]) => ({
    message:
      members.length === 1
        ? `"${members[0]}" needs itself.`
        : `These need each other in a circle: ${[...members, members[0]].join(" → ")}.`,
    remedy: "Take one of the names out of its formula.",
  })),
  noResult: issueMessage("sheet/no-result", "error", (why: string) => ({
    message: `There is no figure here: ${why}.`,
    remedy: "Check the figures it is made of.",
  })),
  tooLarge: issueMessage("sheet/too-large", "error", () => ({
    message: "The result is too large to be a figure.",
    remedy: "Check the formula and its units.",
  })),
  twoForSd: issueMessage("sheet/one-value", "error", () => ({
    message: "A standard deviation needs two values or more.",
    remedy: "Add a row.",
  })),
  noSuchRow: issueMessage(
    "sheet/no-such-row",
    "error",
    (key: string, sheet: string, near: string | undefined) => ({
      message: `There is no row ${shown(key)} in the sheet "${sheet}".`,
      remedy:
        near === undefined
          ? "Write a text of its first text column."
          : `Write ${near} if that is what is meant.`,
    }),
  ),
  twoRows: issueMessage("sheet/two-rows", "error", (key: string, sheet: string) => ({
    message: `The sheet "${sheet}" has more than one row ${shown(key)}.`,
    remedy: "Give the rows different texts in the first text column.",
  })),
  looksLikeFraction: issueMessage("sheet/looks-like-fraction", "warning", (column: string, unit: string) => ({
    message: `Every value of "${column}" lies within ± 1 and is labelled ${unit}: it looks like a fraction.`,
    remedy: "Percentages run from 0 to 100 here: write 100 * …, or percentOf(part, whole).",
  })),
  unknownChart: issueMessage(
    "sheet/chart-column",
    "warning",
    (name: string, near: string | undefined, known: string) => ({
      message: `A chart asks for ${shown(name)}, which is not a column.`,
      remedy: meant(near, known),
    }),
  ),
  andMore: issueMessage("sheet/and-more", "error", (count: number, column: string) => ({
    message: `${count} more cells of "${column}" have no figure.`,
    remedy: "See the first of them.",
  })),
};
