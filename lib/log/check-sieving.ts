// Do the rows of a sieving make sense together: the pan, the spread over sieves, the sum against the start mass.

import type { Place } from "../issue.ts";
import { sum } from "../numbers/sum.ts";
import {
  allOnOne,
  digitsSwapped,
  finerThanScale,
  noPan,
  noSand,
  noScale,
  noStart,
  oneSieveOnly,
  panOfZero,
  percentSumAbove,
  percentSumBelow,
  sumAboveStart,
} from "./complaints-sieving.ts";
import type { Report } from "./node.ts";
import { swappedDigits } from "./swapped-digits.ts";
import type { Measured, RetainedEntry, Scale, Sieving } from "./types.ts";

type Rows = Pick<Sieving, "unit" | "retained" | "startG" | "scale">;

export interface Given {
  /** Where the rows stand as a whole, and the sieving. */
  readonly retained: Place;
  readonly sieving: Place;
  readonly mayHavePan: boolean;
  /** A start mass or a scale is named, even if it could not be read. */
  readonly start: boolean;
  readonly scale: boolean;
}

/** What is not there: asked for even where other figures are faulty. */
export function checkComplete({ retained, startG, unit }: Rows, given: Given, report: Report): void {
  if (!given.mayHavePan) {
    const missing =
      startG && unit === "g" ? startG.value - sum(retained.map((entry) => entry.mass.value)) : 0;
    report(noPan(missing > 0 ? `${shown(missing)} g` : ""), given.retained);
  }
  if (unit === "percent") return;
  if (!given.start) report(noStart(), given.sieving);
  if (!given.scale) report(noScale(), given.sieving);
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

  if (unit === "percent") checkPercentSum(retained, total, given.retained, report);
  else if (startG) checkSum(retained, total, startG, scale, report);
  if (scale && unit === "g") checkSteps(retained, scale, report);
}

/**
 * More than went on by 1 % and by what the scale's steps explain (3 sd of all weighings) is an error;
 * less by as much is a warning only if swapped digits explain it. Losses as such are for the mass balance.
 */
function checkSum(
  retained: readonly RetainedEntry[],
  total: number,
  start: Measured,
  scale: Scale | undefined,
  report: Report,
): void {
  const readings = 3 * (scale?.stepG ?? 0) * Math.sqrt((retained.length + 1) / 12);
  const allowed = Math.max(0.01 * start.value, readings);
  const excess = total - start.value;
  if (Math.abs(excess) <= allowed + 1e-9) return;
  const swap = swapIn([start, ...retained.map((entry) => entry.mass)], total - excess, excess);
  const hint = swap === undefined ? "" : `${swap.typed} may be ${swap.swapped}.`;
  const place = swap?.place ?? start.place;
  if (excess > 0) report(sumAboveStart(`${shown(total)} g`, `${shown(start.value)} g`, hint), place);
  else if (hint !== "") report(digitsSwapped(`${shown(total)} g`, `${shown(start.value)} g`, hint), place);
}

function swapIn(masses: readonly Measured[], start: number, excess: number) {
  const figures = masses.map((mass, index) => {
    const typed = Number(/^\s*\d+(?:\.\d+)?/.exec(mass.text)?.[0] ?? Number.NaN);
    // A figure that is no plain number (3 lb 4 oz) stands in by its value and has no digits to swap.
    const plain = typed > 0 && mass.value > 0 && /^\s*[\d.]+\s*(?:[a-z%]+\s*)?(?:±.*)?$/i.test(mass.text);
    const scale = plain ? mass.value / typed : 1;
    return {
      text: plain ? mass.text : "",
      sign: index === 0 ? (-1 as const) : (1 as const),
      scale,
      rest: plain ? 0 : mass.value,
    };
  });
  if (figures.some((figure) => figure.rest > 0)) return undefined;
  const swap = swappedDigits(figures, Math.min(0.01 * start, Math.abs(excess)));
  const mass = swap && masses[swap.index];
  return swap && mass && { ...swap, place: mass.place };
}

/** 99 to 100.5 % is rounding; clay that was washed out leaves less. */
function checkPercentSum(
  retained: readonly RetainedEntry[],
  total: number,
  rowsPlace: Place,
  report: Report,
): void {
  if (total > 100.5) {
    const hundred: Measured = { value: 100, text: "100", place: rowsPlace };
    const swap = swapIn([hundred, ...retained.map((entry) => entry.mass)], 100, total - 100);
    const found = swap !== undefined && swap.index > 0 ? swap : undefined;
    const hint = found ? `${found.typed} may be ${found.swapped}.` : "";
    report(percentSumAbove(shown(total), hint), found?.place ?? rowsPlace);
  } else if (total < 99) report(percentSumBelow(shown(total)), rowsPlace);
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
    report(finerThanScale(finer.mass.text, finer.label, scale.name, String(scale.stepG)), finer.mass.place);
}

function shown(value: number): string {
  return String(Number(value.toPrecision(5)));
}
