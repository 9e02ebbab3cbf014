// Gap grading: sieves nearly empty between two full ones.

import type { Issue } from "../issue.ts";
import type { Grading } from "./grading.ts";
import { gapGraded as gapIssue } from "./grain-issues.ts";
import { type GrainClass, grainClasses } from "./mean-size.ts";

export interface Gap {
  /** The sieves that are nearly empty, coarse to fine. */
  readonly labels: readonly string[];
  /** The full ones on either side. */
  readonly coarse: string;
  readonly fine: string;
}

/** A class is full from this share on, as for the screen count. */
const FULL_PERCENT = 10;
/** Nearly empty: less than this part of the lower of its two full neighbours, by density. */
const NEARLY_EMPTY = 0.25;

/**
 * Finds gaps. A class is full if it holds 10 % of the sand or more. Sieves are nearly empty if each holds, for its
 * width in ln d, less than a quarter of what the lower of two full classes on either side holds for its own width;
 * the width keeps a sieve that covers a narrow step from looking empty. The pan can be a full class but not a gap.
 * The thresholds are our own; that a gap is to be avoided is common practice.
 * @example
 * gapGraded(readGrading({ "No. 6": 20, "No. 12": 0, "No. 20": 0, "No. 30": 0, "No. 40": 0,
 *   "No. 50": 26.7, "No. 70": 26.7, "No. 100": 26.6 }).value!).gaps[0]?.labels
 * // ["No. 12", "No. 20", "No. 30", "No. 40"]
 */
export function gapGraded(grading: Grading): {
  readonly gaps: readonly Gap[];
  readonly issues: readonly Issue[];
} {
  const classes = grainClasses(grading);
  const density = ({ mass, upperMm, lowerMm }: GrainClass): number => mass / Math.log(upperMm / lowerMm);
  const full = classes.filter(({ mass }) => (100 * mass) / grading.total >= FULL_PERCENT - 1e-9);
  const gaps: Gap[] = [];
  for (const [i, coarse] of full.entries()) {
    const fine = full[i + 1];
    if (!fine) break;
    const limit = NEARLY_EMPTY * Math.min(density(coarse), density(fine));
    const empty = classes
      .slice(classes.indexOf(coarse) + 1, classes.indexOf(fine))
      .filter((between) => density(between) < limit);
    if (empty.length > 0)
      gaps.push({ labels: empty.map(({ label }) => label), coarse: coarse.label, fine: fine.label });
  }
  return {
    gaps,
    issues: gaps.map(({ labels, coarse, fine }) =>
      gapIssue(`${labels.join(", ")} ${labels.length === 1 ? "is" : "are"}`, coarse, fine),
    ),
  };
}
