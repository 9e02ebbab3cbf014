// The table of a grain curve: what passes each sieve, and where the curve may run between two of them.

import { sameSieve } from "../sand/same-sieve.ts";
import type { ChartTable } from "./chart.ts";
import { cell } from "./data.ts";
import type { GrainCurveSand } from "./grain-input.ts";

const unit = "% of the sand by mass";

export function grainTable(sands: readonly GrainCurveSand[]): ChartTable {
  return {
    columns: [
      { name: "sand" },
      { name: "sieve" },
      { name: "opening", unit: "mm" },
      { name: "passing", unit },
      { name: "low end of 95 %", unit },
      { name: "high end of 95 %", unit },
      { name: "lowest between sieves", unit },
      { name: "highest between sieves", unit },
    ],
    rows: sands.flatMap((sand) => [
      ...sand.points.map((point) => [
        sand.name,
        point.label,
        ...[point.openingMm, point.passingPercent, point.low, point.high].map(cell),
        ...[null, null],
      ]),
      ...betweenSieves(sand).map(({ openingMm, low, high }) => [
        sand.name,
        "between sieves",
        cell(openingMm),
        ...[null, null, null],
        ...[low, high].map(cell),
      ]),
    ]),
  };
}

type Between = NonNullable<GrainCurveSand["interval"]>[number];

/**
 * Each end of a gap once. A drawing closes the fill of a gap with corners of no width a thousandth beside the sieve;
 * in a table these are the sieve itself and nothing between sieves.
 */
function betweenSieves({ points, interval = [] }: GrainCurveSand): Between[] {
  const ends = interval
    .filter(({ low, high }) => !(low === high))
    .map((at) => {
      const sieve = points.find(({ openingMm }) => sameSieve(openingMm, at.openingMm));
      return { ...at, openingMm: sieve?.openingMm ?? at.openingMm };
    });
  return ends.filter(
    (at, i) =>
      !ends
        .slice(0, i)
        .some((one) => one.openingMm === at.openingMm && one.low === at.low && one.high === at.high),
  );
}
