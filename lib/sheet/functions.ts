// The functions that a formula may call; the models of the sand stand beside them in functions-sand.ts.

import type { AggregateName } from "./formula-type.ts";
import { sandModels } from "./functions-sand.ts";

export interface FormulaFunction {
  readonly name: string;
  /** Its arguments, for a reader: "x, digits". */
  readonly takes: string;
  readonly least: number;
  readonly most: number;
  /** What it gives, in words. */
  readonly gives: string;
}

const one = { takes: "x", least: 1, most: 1 };
const many = Number.POSITIVE_INFINITY;

export const plainFunctions: readonly FormulaFunction[] = [
  { name: "sqrt", ...one, gives: "square root, of its unit too: of cm² in cm" },
  { name: "cbrt", ...one, gives: "cube root, of its unit too" },
  { name: "abs", ...one, gives: "size without its sign" },
  { name: "exp", ...one, gives: "e to a plain number" },
  { name: "ln", ...one, gives: "natural logarithm of a plain number above 0" },
  { name: "log10", ...one, gives: "logarithm to base 10 of a plain number above 0" },
  { name: "log2", ...one, gives: "logarithm to base 2 of a plain number above 0" },
  {
    name: "round",
    takes: "x, digits",
    least: 1,
    most: 2,
    gives: "rounded to so many decimals, none unless said; halves away from 0",
  },
  { name: "floor", ...one, gives: "whole number at or below" },
  { name: "ceil", ...one, gives: "whole number at or above" },
  {
    name: "clamp",
    takes: "x, low, high",
    least: 3,
    most: 3,
    gives: "x, but no less than low and no more than high",
  },
  { name: "if", takes: "condition, a, b", least: 3, most: 3, gives: "a where the condition holds, else b" },
  { name: "percentOf", takes: "part, whole", least: 2, most: 2, gives: "100 part / whole, in percent" },
  {
    name: "lookUp",
    takes: '"sheet", key, "column"',
    least: 3,
    most: 3,
    gives: "the figure in that column of the other sheet's row with that key",
  },
];

export const aggregateFunctions: readonly (FormulaFunction & { readonly name: AggregateName })[] = [
  { name: "sum", ...one, gives: "sum over the rows" },
  { name: "mean", ...one, gives: "mean over the rows" },
  { name: "sd", ...one, gives: "standard deviation over the rows, with n − 1" },
  { name: "median", ...one, gives: "middle value over the rows" },
  { name: "count", ...one, gives: "how many rows have a figure, or meet a condition" },
  {
    name: "quantile",
    takes: "x, p",
    least: 2,
    most: 2,
    gives: "value that a share p of the rows lies below, p from 0 to 1",
  },
  {
    name: "min",
    takes: "x or x, y, …",
    least: 1,
    most: many,
    gives: "least over the rows; with several, the least of them",
  },
  {
    name: "max",
    takes: "x or x, y, …",
    least: 1,
    most: many,
    gives: "largest over the rows; with several, the largest of them",
  },
];

export const functionByName: ReadonlyMap<string, FormulaFunction> = new Map(
  [...plainFunctions, ...aggregateFunctions].map((each) => [each.name, each]),
);

/** The whole list, for a reader: arithmetic, figures over the rows, then the models of the sand. */
export const formulaFunctions: readonly FormulaFunction[] = [
  ...plainFunctions,
  ...aggregateFunctions,
  ...sandModels.map(({ name, args, unit }) => ({
    name,
    takes: args
      .map((arg) => `${arg.name}${arg.unit ? ` (${arg.unit.text})` : ""}${arg.optional ? " or nothing" : ""}`)
      .join(", "),
    least: args.filter(({ optional }) => !optional).length,
    most: args.length,
    gives: unit?.text ?? "a plain number",
  })),
];
