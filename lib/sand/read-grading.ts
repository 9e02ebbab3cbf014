// A grading, read from what a script gives: a record of sieve label and mass.

import { type Checked, hasError, type Issue, invariant } from "../issue.ts";
import { type Grading, gradingOf, type Held } from "./grading.ts";
import { massesTooLarge, massNegative, massNotNumber, nothingRetained } from "./grading-issues.ts";
import { sieveStack } from "./sieve-stack.ts";

/**
 * Builds a grading from masses by sieve label, sorted coarse to fine.
 *
 * retained: label as readSieveLabel takes it → mass in grams or percent (one unit for all), 0 or above.
 * The order of a record says nothing, so no sieve is misplaced in it. Labels that cannot be read or repeat an
 * opening, masses that are negative or no number, and a record without any mass are errors: no grading then.
 * A missing pan is a warning. An argument that is not a record throws.
 *
 *     readGrading({ "No. 40": 0.15, "No. 50": 0.65, pan: 0.25 }).value?.total   // 1.05
 */
export function readGrading(retained: Readonly<Record<string, number>>): Checked<Grading> {
  const isRecord = typeof retained === "object" && retained !== null && !Array.isArray(retained);
  invariant(isRecord, 'retained must be a record such as { "No. 40": 0.15, pan: 0.25 }.');
  const entries = Object.entries(retained);
  const stack = sieveStack(entries.map(([label]) => label));
  const ordered = new Set(["sand/sieve-misplaced", "sand/pan-not-last"]);
  const issues: Issue[] = stack.issues.filter(({ code }) => !ordered.has(code));
  for (const [label, mass] of entries) issues.push(...massIssues(label, mass));
  if (entries.every(([, mass]) => mass === 0)) issues.push(nothingRetained());
  if (hasError(issues)) return { issues };
  if (entries.reduce((all, [, mass]) => all + mass, 0) > most)
    return { issues: [...issues, massesTooLarge()] };
  const held = stack.order.map((place, k): Held => {
    const [label, mass] = entries[place]!;
    const sieve = stack.sieves[k];
    return sieve ? { label, sieve, mass } : { label, mass };
  });
  return { value: gradingOf(held), issues };
}

/** Sums above this would overflow when they are multiplied. */
const most = 1e300;

function massIssues(label: string, mass: unknown): Issue[] {
  if (typeof mass === "string") return [massNotNumber(label, `the text "${mass}"`)];
  if (typeof mass !== "number" || !Number.isFinite(mass)) return [massNotNumber(label, String(mass))];
  return mass < 0 ? [massNegative(label, String(mass))] : [];
}
