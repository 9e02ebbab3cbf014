// A figure of the log, read into the unit of its field.

import { invariant, type Place } from "../issue.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { readQuantity } from "../quantity/read-quantity.ts";
import { unitNamed } from "../quantity/read-unit.ts";
import { convert, convertDifference, sameDimension, type Unit } from "../quantity/unit.ts";
import { decimalComma, negative, notAboveZero, tooMuch, wrongUnit } from "./complaints-field.ts";
import { textNodeOf } from "./fields.ts";
import { slipIn } from "./figure-slips.ts";
import type { LogNode, Report } from "./node.ts";
import type { Measured } from "./types.ts";

export interface MeasuredField {
  /** As it is called in the log, e.g. "start". */
  readonly what: string;
  /** Unit of the value, and of a bare number: "g", "mm", "min". */
  readonly unit: string;
  /** More than this cannot be. */
  readonly most: number;
  /** Less than this cannot be; 0 unless said otherwise. */
  readonly least?: number;
  /** True where zero cannot be. */
  readonly aboveZero?: boolean;
  /** Units of another kind in which the number counts the same: mmH2O for mm, l for kg of water. */
  readonly alsoIn?: readonly string[];
}

/** A quantity as written, with its unit if it has one; what is wrong with the writing is reported. */
export function quantityOf(
  node: LogNode | undefined,
  what: string,
  report: Report,
): (Quantity & { place: Place }) | undefined {
  const text = textNodeOf(node, what, report);
  if (!text) return undefined;
  // Three digits behind a comma may be thousands, unless a zero or nothing stands before it: the reader asks then.
  const comma = /^([-+]?(?:\d+|)),(\d{1,2}|\d{4,}|(?<=^[-+]?0*,)\d{3})(?!\d|[.,])(.*)$/.exec(
    text.text.trim(),
  );
  if (comma) {
    report(decimalComma(text.text, `${comma[1] || "0"}.${comma[2]}${comma[3]}`), text.place);
    return undefined;
  }
  const read = readQuantity(text.text);
  const slip = read.value ? undefined : slipIn(text.text);
  for (const issue of slip ? [slip] : read.issues) report(issue, text.place);
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
  const { what, unit } = field;
  if (unit === "") return bareNumber(quantity, place, field, report);
  const targets = [unit, ...(field.alsoIn ?? [])].map((text) => {
    const target = unitNamed(text);
    invariant(target, `${text} is no unit.`);
    return target;
  });
  const target = targets.find((one) => quantity.unit && fits(quantity.unit, one)) ?? targets[0]!;
  if (quantity.unit && !fits(quantity.unit, target)) {
    report(wrongUnit(what, quantity.text, unit), place);
    return undefined;
  }
  const from = quantity.unit ?? target;
  const value = tidy(convert(quantity.value, from, target));
  if (!withinLimits(value, quantity, place, field, report)) return undefined;
  const spread = quantity.plusMinus;
  const plusMinus = spread && {
    size: tidy(convertDifference(spread.size, from, target)),
    meaning: spread.meaning,
  };
  return { value, text: quantity.text, place, ...(plusMinus ? { plusMinus } : {}) };
}

/** A count or a number of the trade that has no unit. */
function bareNumber(
  quantity: Quantity,
  place: Place,
  field: MeasuredField,
  report: Report,
): Measured | undefined {
  const { value, text, plusMinus } = quantity;
  if (quantity.unit) report(wrongUnit(field.what, text, "a bare number, without a unit"), place);
  else if (withinLimits(value, quantity, place, field, report)) {
    return { value, text, place, ...(plusMinus ? { plusMinus } : {}) };
  }
  return undefined;
}

function withinLimits(
  value: number,
  { text }: Quantity,
  place: Place,
  { what, unit, most, least = 0, aboveZero }: MeasuredField,
  report: Report,
): boolean {
  const complaint =
    value < least
      ? negative(what, text)
      : value === 0 && aboveZero
        ? notAboveZero(what, text)
        : value > most
          ? tooMuch(what, text, `${most} ${unit}`.trim())
          : undefined;
  if (complaint) report(complaint, place);
  return complaint === undefined;
}

function fits(unit: Unit, target: Unit): boolean {
  return unit.kind === target.kind && sameDimension(unit, target);
}

/** 0.2 kg is 200 g, not 200.00000000000003 g: conversions are rounded to 13 digits. */
function tidy(value: number): number {
  return Number(value.toPrecision(13));
}
