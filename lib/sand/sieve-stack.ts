// A stack of sieves, read once from its labels and put in order.

import { type Issue, invariant } from "../issue.ts";
import { misplacedSieve, panMissing, panNotLast, repeatedSieve } from "./grading-issues.ts";
import { sameSieve } from "./same-sieve.ts";
import type { Sieve } from "./sieve.ts";
import { readSieveLabel } from "./sieve-label.ts";

export interface SieveStack {
  /** Coarse to fine, without the pan and without what could not be read or stood twice. */
  readonly sieves: readonly Sieve[];
  readonly hasPan: boolean;
  /** Places in the labels, coarse to fine, the pan last: order[k] is where sieves[k] stood. */
  readonly order: readonly number[];
  readonly issues: readonly Issue[];
}

interface Listed {
  readonly index: number;
  readonly label: string;
  readonly sieve: Sieve | "pan";
}

const openingMm = ({ sieve }: Listed) => (sieve === "pan" ? 0 : sieve.openingMm);

/**
 * Reads the labels of a stack of sieves and sorts them coarse to fine.
 *
 * labels: as readSieveLabel takes them, in any order. Issues: a label that cannot be read and a sieve listed
 * twice (openings within 1.5 %; the first is kept) are errors; two sieves that stand fine above coarse, a pan
 * that is not last and a missing pan are warnings, and the stack is sorted all the same.
 * A list that is not an array of text throws.
 *
 *     sieveStack(["No. 40", "No. 50", "pan"]).sieves.map((s) => s.openingMm)   // [0.425, 0.3]
 */
export function sieveStack(labels: readonly string[]): SieveStack {
  invariant(Array.isArray(labels), "sieveStack takes an array of labels.");
  const issues: Issue[] = [];
  const kept: Listed[] = [];
  labels.forEach((label, index) => {
    const read = readSieveLabel(label);
    issues.push(...read.issues);
    if (read.value === undefined) return;
    const listed = { index, label: label.trim(), sieve: read.value };
    const twin = kept.find((other) => sameSieve(openingMm(other), openingMm(listed)));
    if (twin) issues.push(repeatedSieve(listed.label, twin.label));
    else kept.push(listed);
  });
  issues.push(...orderIssues(kept));
  const sorted = kept.toSorted((a, b) => openingMm(b) - openingMm(a));
  return Object.freeze({
    sieves: Object.freeze(sorted.flatMap(({ sieve }) => (sieve === "pan" ? [] : [sieve]))),
    hasPan: sorted.at(-1)?.sieve === "pan",
    order: Object.freeze(sorted.map(({ index }) => index)),
    issues: Object.freeze(issues),
  });
}

function orderIssues(listed: readonly Listed[]): Issue[] {
  const sieves = listed.filter(({ sieve }) => sieve !== "pan");
  const misplaced = sieves.slice(1).flatMap((lower, k) => {
    const upper = sieves[k]!;
    return openingMm(lower) > openingMm(upper) ? [misplacedSieve(upper.label, lower.label)] : [];
  });
  const pan = listed.findIndex(({ sieve }) => sieve === "pan");
  if (pan < 0) return listed.length > 0 ? [...misplaced, panMissing()] : misplaced;
  return pan === listed.length - 1 ? misplaced : [...misplaced, panNotLast(listed[pan + 1]!.label)];
}
