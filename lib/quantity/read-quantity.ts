// Reads a figure as a founder types it: "12.4 ± 0.1 g", "13/32 in", "3 lb 4 oz".

import type { Checked, Issue } from "../issue.ts";
import type { PlusMinusMeaning, Quantity } from "./quantity.ts";
import { commaIssue } from "./read-commas.ts";
import { quantityIssue } from "./read-messages.ts";
import { numberAtHead, plainFigureText } from "./read-number.ts";
import { rangeIssue } from "./read-range.ts";
import { readUnit, unitNamed } from "./read-unit.ts";
import { convert, convertDifference, sameDifference, sameDimension, type Unit } from "./unit.ts";

const longest = 80;

/**
 * A number with its unit and its ±, as typed: "12.4", "12.4g", "12.4 ± 0.1 g", "12.4 g +/- 0.1 g", "± 0.1 g (sd)",
 * "± 0.1 g (95 %)", "13/32 in", "1 1/2 lb", "1.2e3 g", "(6.4 ± 2.5) × 10⁻⁶ m", "3 lb 4 oz" (then in the first unit). A ± without
 * (sd) or (95 %) means surely within. The ± comes out in the unit of the figure. A unit written only after the ± holds for both.
 * "(± not known)", as it is printed, says no more than no ±.
 * Refused, with what to write instead: decimal commas, parted thousands, unknown or ambiguous units, ranges, colons, NaN and
 * infinity, a ± below zero, of another kind or "at least" so much, anything left over, more than 80 characters. Issues have
 * no place.
 * @example readQuantity("12.4 ± 0.1 g").value // { value: 12.4, plusMinus: { size: 0.1, meaning: "surely" } }
 */
export function readQuantity(text: string): Checked<Quantity> {
  if (text.length > longest) return refused(quantityIssue.tooLong(text, longest));
  const plain = plainFigureText(text).replace(/ ?\(± not known\)$/, "");
  if (plain === "") return refused(quantityIssue.empty());
  const comma = commaIssue(plain);
  if (comma) return refused(comma);
  const [head, tail, ...more] = plain.split("±").map((part) => part.trim());
  if (more.length > 0) return refused(quantityIssue.trailing(`± ${more.join(" ± ")}`));
  if (head === "") return refused(quantityIssue.notANumber(text.trim()));
  const middle = readParts(head!);
  if (!middle.value) return { issues: middle.issues };
  if (tail === undefined) return finished(text, middle.value, undefined, middle.issues);
  const spread = readSpread(tail, text);
  const issues = [...middle.issues, ...spread.issues];
  if (!spread.value) return { issues };
  return finished(text, middle.value, spread.value, issues);
}

/**
 * The quantity in another unit; its ± goes along (a ± of temperature as a difference). A quantity without a unit is taken
 * to be in the target unit already. A unit of another kind is an issue.
 * @example convertQuantity(readQuantity("0.5 ± 0.1 oz").value!, unitNamed("g")!).value?.value // 14.17...
 */
export function convertQuantity(quantity: Quantity, to: Unit): Checked<Quantity> {
  const { value, plusMinus, unit = to, text } = quantity;
  if (!sameDimension(unit, to)) return refused(quantityIssue.otherDimension(text, unit.text, to.text));
  const size = plusMinus && convertDifference(plusMinus.size, unit, to);
  const converted = convert(value, unit, to);
  if (!Number.isFinite(converted + (size ?? 0))) return refused(quantityIssue.notFinite(text));
  return {
    value: {
      value: converted,
      unit: to,
      ...(plusMinus && size !== undefined ? { plusMinus: { size, meaning: plusMinus.meaning } } : {}),
      text,
    },
    issues: [],
  };
}

interface Parts {
  readonly value: number;
  readonly unit?: Unit;
}
interface SpreadParts extends Parts {
  readonly meaning: PlusMinusMeaning;
}

function refused(issue: Issue): { readonly issues: readonly Issue[] } {
  return { issues: [issue] };
}

/** One number with or without a unit, or several that add up: "3 lb 4 oz". */
function readParts(text: string): Checked<Parts> {
  const first = readPart(text);
  if (!first.value) return { issues: first.issues };
  let { value, unit, rest } = first.value;
  let smallest = unit;
  while (rest !== "") {
    const next = /^\d/.test(rest) ? readPart(rest) : undefined;
    if (!next || !unit || !smallest || (next.value && !next.value.unit))
      return refused(quantityIssue.trailing(rest));
    if (!next.value) return { issues: next.issues };
    const further = next.value.unit!;
    if (unit.kind !== "plain" || !sameDimension(unit, further) || further.factor >= smallest.factor) {
      return refused(quantityIssue.mixedUnits(smallest.text, further.text));
    }
    const more = convert(next.value.value, further, unit);
    value += Object.is(value, -0) || value < 0 ? -more : more;
    smallest = further;
    rest = next.value.rest;
  }
  return { value: { value, ...(unit ? { unit } : {}) }, issues: first.issues };
}

function readPart(text: string): Checked<Parts & { readonly rest: string }> {
  const number = numberAtHead(text);
  if (!number) {
    const notFinite = /^[+-]?\.?(nan|inf|infinity|∞)\b/i.test(text) || text.startsWith("∞");
    return refused(notFinite ? quantityIssue.notFinite(text) : quantityIssue.notANumber(text));
  }
  if (Number.isNaN(number.value)) return refused(quantityIssue.zeroDenominator(text));
  if (!Number.isFinite(number.value)) return refused(quantityIssue.notFinite(text));
  const after = number.rest.trim();
  const range = rangeIssue(text, number.value, after);
  if (range) return refused(range);
  if (after === "" || /^\d/.test(after)) return { value: { value: number.value, rest: after }, issues: [] };
  // A further number begins after a space, or straight after the sign for feet.
  const end = after.search(/(?<=['′’] ?)\d| (?=\d)/);
  const unitText = end < 0 ? after : after.slice(0, end);
  const unit = readUnit(unitText.trim());
  if (!unit.value) {
    // "5lb3oz".
    const [, glued, next] = /^([^\d\s]+)(\d.*)$/.exec(after) ?? [];
    const first = glued === undefined ? undefined : unitNamed(glued);
    if (first) return { value: { value: number.value, unit: first, rest: next! }, issues: [] };
    const extra = /^(\S+) (.+)$/.exec(after);
    const known = extra && unitNamed(extra[1]!);
    return known ? refused(quantityIssue.trailing(extra[2]!)) : { issues: unit.issues };
  }
  const rest = end < 0 ? "" : after.slice(end).trim();
  return { value: { value: number.value, unit: unit.value, rest }, issues: unit.issues };
}

/** What stands after the ±: a number, perhaps a unit, perhaps what it means. */
function readSpread(text: string, whole: string): Checked<SpreadParts> {
  const sd = /\( ?(?:1 )?s\.? ?d\.? ?\)/i;
  const interval = /\( ?95 ?% ?\)/;
  const meaning: PlusMinusMeaning = sd.test(text) ? "sd" : interval.test(text) ? "95 %" : "surely";
  const bare = text
    .replace(meaning === "sd" ? sd : interval, " ")
    .replace(/ +/g, " ")
    .trim();
  const unknown = /\([^)]*(?:%|sd|sigma|σ|k|se|cl|ci)[^)]*\)$/i.exec(bare)?.[0];
  if (unknown !== undefined) return refused(quantityIssue.plusMinusMeaning(unknown));
  if (/^at least\b/i.test(bare)) return refused(quantityIssue.plusMinusAtLeast(whole));
  if (bare === "" || /^[^\d.+-]/.test(bare)) return refused(quantityIssue.plusMinusMissing(whole));
  const parts = readParts(bare);
  if (!parts.value) return { issues: parts.issues };
  if (parts.value.value < 0) return refused(quantityIssue.plusMinusNegative(whole));
  return { value: { ...parts.value, meaning }, issues: parts.issues };
}

function finished(
  text: string,
  middle: Parts,
  spread: SpreadParts | undefined,
  issues: readonly Issue[],
): Checked<Quantity> {
  const { value } = middle;
  const unit = middle.unit ?? spread?.unit;
  if (unit?.kind === "temperature" && value * unit.factor + unit.offset < 0) {
    return refused(quantityIssue.belowAbsoluteZero(text));
  }
  if (!Number.isFinite(value)) return refused(quantityIssue.notFinite(text));
  const quantity = { value, ...(unit ? { unit } : {}), text };
  if (!spread) return { value: quantity, issues };
  if (unit && spread.unit && !sameDifference(unit, spread.unit)) {
    return refused(quantityIssue.plusMinusUnit(unit.text, spread.unit.text));
  }
  const size = unit && spread.unit ? convertDifference(spread.value, spread.unit, unit) : spread.value;
  if (!Number.isFinite(size)) return refused(quantityIssue.notFinite(text));
  return { value: { ...quantity, plusMinus: { size, meaning: spread.meaning } }, issues };
}
