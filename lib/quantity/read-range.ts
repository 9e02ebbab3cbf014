// Finds what makes two figures of one: ranges, colons, a dash before a fraction.

import type { Issue } from "../issue.ts";
import { quantityIssue } from "./read-messages.ts";
import { unitNamed } from "./read-unit.ts";

/** What stands after a number, where that makes it one of two: "12 to 14 g", "12 g - 14 g", "1-1/2 in", "1:45". */
export function rangeIssue(text: string, value: number, after: string): Issue | undefined {
  const colon = /^: ?(\d+)/.exec(after);
  if (colon) return quantityIssue.colon(text, `${value}`, `${Number(colon[1])}`);
  const dash = /^[-\u2010\u2011\u2013] ?(\d+) ?\/ ?(\d+)(?![\d.])/.exec(after);
  if (dash && Number.isInteger(value) && Number(dash[1]) < Number(dash[2]))
    return quantityIssue.fractionDash(text, `${value} ${dash[1]}/${dash[2]}`);
  const range = /^(.*?) ?(?:[-\u2010\u2011\u2212\u2013\u2014\u2026]|\bto\b|\.\.+) ?\d/.exec(after);
  return range && (range[1] === "" || unitNamed(range[1]!)) ? quantityIssue.range(text) : undefined;
}
