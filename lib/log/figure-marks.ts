// Signs that slipped into a figure: one too many at its end, another for the decimal point, a space, a sum, digits of another script.

import type { Issue } from "../issue.ts";
import { readQuantity } from "../quantity/read-quantity.ts";
import { oddMark, otherDigits, spaceInFigure, strayMark, sumForFigure } from "./complaints-figure.ts";

/** The fitting answer to a text that cannot be read as a figure because of a sign; undefined where it is something else. */
export function markIn(typed: string): Issue | undefined {
  return foreignDigits(typed) ?? stray(typed) ?? spaced(typed) ?? otherPoint(typed) ?? added(typed);
}

const reads = (text: string): boolean => readQuantity(text).value !== undefined;

/** "3.2," or "3.2 g." or "=3.2" or "3.2?" */
function stray(typed: string): Issue | undefined {
  const end = /^(.*[\p{L}\d%])\s*([.,;:?!*#'"`=]+)$/u.exec(typed);
  if (end?.[1] && end[2] && reads(end[1])) return strayMark(typed, end[2], "end", end[1]);
  const start = /^([=:;*'"`]+)\s*(\S.*)$/.exec(typed);
  return start?.[1] && start[2] && reads(start[2])
    ? strayMark(typed, start[1], "start", start[2])
    : undefined;
}

/** "3. 2" and "3 .2 g" */
function spaced(typed: string): Issue | undefined {
  const better = typed.replace(/^(\d+)(?: +\. *|\. +)(?=\d)/, "$1.");
  return better !== typed && reads(better) ? spaceInFigure(typed, better) : undefined;
}

/** "3:2" or "3·2 g"; not "3'2", which may be feet, nor three digits, which may be parted thousands. */
function otherPoint(typed: string): Issue | undefined {
  const [, whole, mark, rest] = /^(\d+)([:;·•_]|\.\.+|,,+)(\d{1,2}(?!\d).*)$/.exec(typed) ?? [];
  const better = `${whole}.${rest}`;
  return mark !== undefined && reads(better) ? oddMark(typed, mark, better) : undefined;
}

/** "3.2 + 1.1": two dishes of one sieve. */
function added(typed: string): Issue | undefined {
  const [, sum = "", unit = ""] = /^=?\s*([\d.]+(?:\s*\+\s*[\d.]+)+)\s*(\p{L}*)$/u.exec(typed) ?? [];
  const parts = sum.split("+").map(Number);
  if (parts.length < 2 || parts.some((part) => Number.isNaN(part))) return undefined;
  const total = parts.reduce((all, part) => all + part, 0);
  const better = `${Number(total.toPrecision(12))}${unit === "" ? "" : ` ${unit}`}`;
  return reads(better) ? sumForFigure(typed, better) : undefined;
}

/** "٣٫٢" and "３．２": a digit's value is its distance from the zero of its script (Unicode: each ten stands in a row). */
function foreignDigits(typed: string): Issue | undefined {
  if (!/(?![0-9])\p{Nd}/u.test(typed)) return undefined;
  const better = typed.replace(/[٫．]/g, ".").replace(/(?![0-9])\p{Nd}/gu, (digit) => {
    let zero = digit.codePointAt(0)!;
    while (/\p{Nd}/u.test(String.fromCodePoint(zero - 1))) zero--;
    return String((digit.codePointAt(0)! - zero) % 10);
  });
  return reads(better) ? otherDigits(typed, better) : undefined;
}
