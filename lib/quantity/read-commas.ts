// Finds decimal commas and parted thousands, which cannot be told apart for sure.

import type { Issue } from "../issue.ts";
import { quantityIssue } from "./read-messages.ts";

/** What is wrong with the commas, points and spaces between the digits of a text; undefined if nothing is. */
export function commaIssue(text: string): Issue | undefined {
  for (const [run] of text.matchAll(/\d[\d.,' ]*[.,' ] ?\d[\d.,]*/g)) {
    const issue = /^\d+\.\d*$/.test(run) ? undefined : issueOfRun(run);
    if (issue) return issue;
  }
  return undefined;
}

function issueOfRun(run: string): Issue | undefined {
  if (/[.,]$/.test(run)) return quantityIssue.twoMarks(run);
  const whole = run.replaceAll(" ", "");
  // 1.234.567 and 1 234 and 1'234 part thousands; so does the first kind of mark where two kinds stand.
  const marks = [...whole.matchAll(/[.,']/g)].map(([mark]) => mark);
  const kinds = new Set(marks);
  const spaced = /^\d{1,3}(?: \d{3})+(?:[.,]\d+)?$/.test(run);
  if (spaced) return quantityIssue.thousands(run, whole.replace(",", "."));
  if (run.includes(" ")) return undefined;
  if (kinds.size === 2 && !kinds.has("'") && marks.slice(0, -1).every((mark) => mark === marks[0])) {
    const last = Math.max(whole.lastIndexOf("."), whole.lastIndexOf(","));
    return quantityIssue.thousands(run, `${digits(whole.slice(0, last))}.${whole.slice(last + 1)}`);
  }
  const [thousands = "", ...tail] = whole.split(".");
  if (/^\d{1,3}(?:'\d{3})+$/.test(thousands) && tail.length === 1) {
    return quantityIssue.thousands(run, `${digits(thousands)}.${tail[0]}`);
  }
  if (/^\d{1,3}(?:[.,]\d{3}){2,}$/.test(whole) || /^\d{1,3}(?:'\d{3})+$/.test(whole)) {
    return quantityIssue.thousands(run, digits(whole));
  }
  if (marks.length > 1) return quantityIssue.twoMarks(run);
  if (marks[0] !== ",") return undefined;
  const [left, right] = whole.split(",") as [string, string];
  const mayBeThousands = /^\d{3}$/.test(right) && /^[1-9]\d{0,2}$/.test(left);
  return quantityIssue.decimalComma(
    run,
    mayBeThousands ? `${left}.${right} or ${left}${right}` : `${left}.${right}`,
  );
}

function digits(text: string): string {
  return text.replace(/[.,']/g, "");
}
