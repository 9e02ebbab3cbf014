// The unit that a column asks for, put on what its formula gives.

import { sameDimension, type Unit } from "../quantity/unit.ts";
import { type Context, fault } from "./formula-context.ts";
import { inUnit, isNumber } from "./formula-convert.ts";
import { formulaIssue } from "./formula-issues.ts";
import { type Typed, typeText } from "./formula-node.ts";
import type { Span } from "./formula-type.ts";

export interface Wanted {
  readonly typed: Typed;
  /** A plain number became a percentage by its label alone. */
  readonly percentPutOn: boolean;
}

/** In the wanted unit; a plain number takes a percentage's label. Anything else of another kind is a fault. */
export function wanted(
  context: Context,
  typed: Typed,
  wants: Unit | undefined,
  whole: Span,
): Wanted | undefined {
  if (!wants) return { typed, percentPutOn: false };
  const refuse = (remedy: string): undefined =>
    fault(context, whole, formulaIssue.wantsOther(wants.text, typeText(typed.type), remedy));
  if (!isNumber(typed)) return refuse("Take the unit off the column, or write a formula of figures.");
  const { unit, literal } = typed.type;
  const as = (node: Typed["node"], percentPutOn = false): Wanted => ({
    typed: { node, at: typed.at, type: { kind: "number", unit: wants } },
    percentPutOn,
  });
  if (unit && sameDimension(unit, wants)) return as(inUnit(typed.node, unit, wants));
  const isZero = literal === true && typed.node.op === "constant" && typed.node.value === 0;
  if (!unit && wants.kind === "percent") return as(typed.node, true);
  if (!unit && isZero && wants.kind !== "temperature") return as(typed.node);
  if (unit?.kind === "percent" && wants.kind === "percent")
    return refuse("They are shares of different wholes: turn one into the other first.");
  if (unit?.kind === "temperature difference" && wants.kind === "temperature")
    return refuse("Add it to a temperature, or ask for °C difference.");
  if (unit?.kind === "temperature" && wants.kind === "temperature difference")
    return refuse("Subtract another temperature from it, or ask for a unit of temperature.");
  if (!unit)
    return refuse(
      `Multiply by what carries the unit, such as 1 ${wants.text}, or take the unit off the column.`,
    );
  return refuse(
    "Look whether something is to be multiplied or divided, or whether the column asks for the right unit.",
  );
}
