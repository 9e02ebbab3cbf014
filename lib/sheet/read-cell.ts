// A typed figure, in the unit of its column.

import type { Issue } from "../issue.ts";
import { readQuantity } from "../quantity/read-quantity.ts";
import { convert, convertDifference, sameDimension, type Unit } from "../quantity/unit.ts";
import type { PlusMinus } from "./read-columns.ts";
import { sheetIssue } from "./sheet-issues.ts";

export interface TypedFigure {
  readonly value: number;
  readonly plusMinus?: PlusMinus | undefined;
  /** Only for a value that brings its own. */
  readonly unit?: Unit | undefined;
  readonly warnings: readonly Issue[];
}

const plainFigure = /^-?\d+(?:\.\d+)?$/;
const none: readonly Issue[] = [];

/** kind "any": in its own unit. A bare number is taken in the column's unit. */
export function readFigure(
  typed: string | number,
  kind: "quantity" | "number" | "any",
  unit: Unit | undefined,
): TypedFigure | Issue {
  if (typeof typed === "number" || plainFigure.test(typed)) {
    const value = Number(typed);
    return Number.isFinite(value) ? { value, warnings: none } : sheetIssue.notFinite();
  }
  const { value: quantity, issues } = readQuantity(typed);
  if (!quantity) return issues[0] ?? sheetIssue.notFinite();
  const warnings = issues.filter(({ severity }) => severity !== "error");
  const { value, plusMinus, unit: own } = quantity;
  if (!own || kind === "any") return { value, plusMinus, unit: own, warnings };
  if (!unit)
    return kind === "number" ? sheetIssue.unitOfNumber(typed, own.text) : { value, plusMinus, warnings };
  if (!sameDimension(own, unit)) return sheetIssue.wrongUnit(typed, own.text, unit.text);
  return {
    value: tidy(convert(value, own, unit)),
    plusMinus: plusMinus && {
      size: tidy(convertDifference(plusMinus.size, own, unit)),
      meaning: plusMinus.meaning,
    },
    warnings,
  };
}

/** 0.2 kg is 200 g, not 200.00000000000003 g: conversions are rounded to 13 digits. */
function tidy(value: number): number {
  return Number(value.toPrecision(13));
}
