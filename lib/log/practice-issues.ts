// How the sieving was done, where the figures tell: sieves overloaded, a portion too large or too small.

import type { Issue } from "../issue.ts";
import { ledBy } from "../message.ts";
import { overload } from "../sand/overload.ts";
import { portionAdvice } from "../sand/portion.ts";
import type { Sand, Sieving } from "./types.ts";

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
