// Do the rows of a sieving make sense together: the pan, the spread over sieves, the sum against the start mass.

import type { Place } from "../issue.ts";
import { sum } from "../numbers/sum.ts";
import { amount } from "../quantity/amount.ts";
import { checkPercentSum, checkStartSum, grams } from "./check-sum.ts";
import {
  allOnOne,
  finerThanScale,
  noPan,
  noSand,
  noScale,
  noSieveSet,
  noStart,
  oneSieveOnly,
  panOfZero,
} from "./complaints-sieving.ts";
import type { Report } from "./node.ts";
import type { RetainedEntry, Scale, Sieving } from "./types.ts";

type Rows = Pick<Sieving, "unit" | "retained" | "startG" | "scale">;

export interface Given {
  /** Where the rows stand as a whole, and the sieving. */
  readonly retained: Place;
  readonly sieving: Place;
  readonly mayHavePan: boolean;
  /** A start mass or a scale is named, even if it could not be read. */
  readonly start: boolean;
  readonly scale: boolean;
  readonly set: boolean;
}

/** What is not there: asked for even where other figures are faulty. */
export function checkComplete({ retained, startG, unit }: Rows, given: Given, report: Report): void {
  if (!given.mayHavePan) {
    const missing =
      startG && unit === "g" ? startG.value - sum(retained.map((entry) => entry.mass.value)) : 0;
    report(noPan(missing > 0 ? grams(missing) : ""), given.retained);
  }
  if (unit === "percent") return;
  if (!given.start) report(noStart(), given.sieving);
  if (!given.scale) report(noScale(), given.sieving);
  if (!given.set) report(noSieveSet(), given.sieving);
}

/** What is there, taken together: only where every figure could be read. */
export function checkFigures({ retained, startG, unit, scale }: Rows, given: Given, report: Report): void {
  const total = sum(retained.map((entry) => entry.mass.value));
  const pan = retained.find((entry) => !entry.sieve);
  const sieves = retained.filter((entry) => entry.sieve);
  const holding = retained.filter((entry) => entry.mass.value > 0);

  if (total === 0) {
    report(noSand(), given.retained);
    return;
  }
  if (pan?.mass.value === 0) report(panOfZero(), pan.mass.place);
  if (sieves.length <= 1) report(oneSieveOnly(), given.retained);
  else if (holding.length === 1 && holding[0]) report(allOnOne(holding[0].label), holding[0].mass.place);

  if (unit === "percent") checkPercentSum(retained, total, given.retained, report, startG);
  else if (startG) checkStartSum(retained, total, startG, scale, report);
  if (scale && unit === "g") checkSteps(retained, scale, report);
}

function checkSteps(retained: readonly RetainedEntry[], scale: Scale, report: Report): void {
  const finer = retained.find(({ mass }) => {
    const steps = mass.value / scale.stepG;
    return (
      mass.plusMinus === undefined &&
      Math.abs(steps - Math.round(steps)) > 1e-3 &&
      /^[\d.]+( ?g)?$/.test(mass.text.trim())
    );
  });
  if (finer)
    report(
      finerThanScale(finer.mass.text, finer.label, scale.name, amount(scale.stepG, "g", 10)),
      finer.mass.place,
    );
}
