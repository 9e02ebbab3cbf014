// How the sieving was done, where the figures tell: sand lost, sieves overloaded, a portion too large or too small.

import type { Issue } from "../issue.ts";
import { ledBy } from "../message.ts";
import { overload } from "../sand/overload.ts";
import { portionAdvice } from "../sand/portion.ts";
import { sievingBalance } from "./sieved-portion.ts";
import type { Sand, Sieving } from "./types.ts";

/**
 * At the start mass: more of it lost or gained than a sieving may, 1 %, and more than the scale explains. Else its sum
 * is for the page to judge.
 */
export function balanceIssues(sand: Sand, sieving: Sieving): Issue[] {
  const balance = sievingBalance(sieving);
  if (balance?.verdict !== "redo" || balance.withinScale === true) return [];
  return balance.issues.map((issue) => ({ ...issue, place: sieving.startG!.place, about: sand.name }));
}

/** Overloaded sieves at their masses, and a portion that does not suit the frame at its sieving; none where no frame is declared. */
export function practiceIssues(sand: Sand, sieving: Sieving): Issue[] {
  const { set, startG, scale, retained, unit, place } = sieving;
  const frameMm = set?.frameMm;
  if (frameMm === undefined || unit !== "g") return [];
  const about = sand.name;
  const portionG = startG?.value ?? retained.reduce((all, { mass }) => all + mass.value, 0);
  const advice =
    portionG > 0 ? portionAdvice({ frameMm, portionG, ...(scale ? { stepG: scale.stepG } : {}) }).issues : [];
  const crowded = retained.flatMap((entry, k): Issue[] => {
    if (!entry.sieve) return [];
    const nextOpeningMm = retained[k - 1]?.sieve?.openingMm;
    const { issues } = overload({
      openingMm: entry.sieve.openingMm,
      frameMm,
      massG: entry.mass.value,
      ...(nextOpeningMm === undefined ? {} : { nextOpeningMm }),
    });
    return issues.map((issue) => ({ ...ledBy(issue, entry.label), place: entry.mass.place }));
  });
  return [...advice.map((issue) => ({ ...issue, place })), ...crowded].map((issue) => ({ ...issue, about }));
}
