// A figure of the log, read into the unit of its field.

import { invariant, type Place } from "../issue.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { readQuantity } from "../quantity/read-quantity.ts";
import { unitNamed } from "../quantity/read-unit.ts";
import { convert, sameDimension } from "../quantity/unit.ts";
import { decimalComma, negative, notAboveZero, tooMuch, wrongUnit } from "./complaints-field.ts";
import { textNodeOf } from "./fields.ts";
import type { LogNode, Report } from "./node.ts";
import type { Measured } from "./types.ts";

export interface MeasuredField {
  /** As it is called in the log, e.g. "start". */
  readonly what: string;
  /** Unit of the value, and of a bare number: "g", "mm", "min". */
  readonly unit: string;
  /** More than this cannot be. */
  readonly most: number;
  /** True where zero cannot be. */
  readonly aboveZero?: boolean;
}

/** A quantity as written, with its unit if it has one; what is wrong with the writing is reported. */
export function quantityOf(
  node: LogNode | undefined,
  what: string,
  report: Report,
): (Quantity & { place: Place }) | undefined {
  const text = textNodeOf(node, what, report);
  if (!text) return undefined;
  const comma = /^([-+]?\d*),(\d{1,2}|\d{4,}|0\d*)(?!\d|[.,])(.*)$/.exec(text.text.trim());
  if (comma) {
    report(decimalComma(text.text, `${comma[1] || "0"}.${comma[2]}${comma[3]}`), text.place);
    return undefined;
  }
  const read = readQuantity(text.text);
  for (const issue of read.issues) report(issue, text.place);
  return read.value && { ...read.value, place: text.place };
}

export function measuredOf(
  node: LogNode | undefined,
  field: MeasuredField,
  report: Report,
): Measured | undefined {
  const quantity = quantityOf(node, field.what, report);
  return quantity && inUnit(quantity, quantity.place, field, report);
}

/** The quantity in the field's unit, within its limits; otherwise reported. */
export function inUnit(
  quantity: Quantity,
  place: Place,
  field: MeasuredField,
  report: Report,
): Measured | undefined {
  const { what, unit, most } = field;
  const target = unitNamed(unit);
  invariant(target, `${unit} is no unit.`);
  if (quantity.unit && !(quantity.unit.kind === target.kind && sameDimension(quantity.unit, target))) {
    report(wrongUnit(what, quantity.text, unit), place);
    return undefined;
  }
  const from = quantity.unit ?? target;
  const value = tidy(convert(quantity.value, from, target));
  const complaint =
    value < 0
      ? negative(what, quantity.text)
      : value === 0 && field.aboveZero
        ? notAboveZero(what, quantity.text)
        : value > most
          ? tooMuch(what, quantity.text, `${most} ${unit}`)
          : undefined;
  if (complaint) {
    report(complaint, place);
    return undefined;
  }
  const spread = quantity.plusMinus;
  const plusMinus = spread && { size: tidy(convert(spread.size, from, target)), meaning: spread.meaning };
  return { value, text: quantity.text, place, ...(plusMinus ? { plusMinus } : {}) };
}

/** 0.2 kg is 200 g, not 200.00000000000003 g: conversions are rounded to 13 digits. */
function tidy(value: number): number {
  return Number(value.toPrecision(13));
}
