// Figures of a trial in the units that its page is printed in.

import type { PrintTest } from "../finding/trial-print.ts";
import type { TestName } from "../log/batch.ts";
import { workedUnits } from "../log/worked-units.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import { inShownUnit, type ShownUnits, shownUnit, type UnitSystem } from "./shown-units.ts";

export interface Ends {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** "19 g", "1.35 kg", "0.7 oz": a mass at the size that a scale shows it; three figures at most. */
export function massText(kg: number, system: UnitSystem): string {
  const { factor, unit } = massUnit(kg, system);
  return `${printMass(kg * factor, unit)} ${unit}`;
}

/** The same with its ±: "33 ± 9 g", "20 to 50 g". */
export function massFigureText({ value, low, high }: Ends, system: UnitSystem, atLeast = false): string {
  const { factor, unit } = massUnit(value, system);
  if (!(low < high)) return massText(value, system);
  return printFigure({
    value: value * factor,
    low: Math.min(low, value) * factor,
    high: Math.max(high, value) * factor,
    min: 0,
    atLeast,
    unit,
  }).text;
}

function massUnit(kg: number, system: UnitSystem): { readonly factor: number; readonly unit: string } {
  const small = Math.abs(kg) < (system === "US" ? 0.45 : 1);
  const metric = small ? "g" : "kg";
  const factor = inShownUnit(1, metric, system).value * (small ? 1000 : 1);
  return { factor, unit: shownUnit(metric, system) };
}

function printMass(value: number, unit: string): string {
  const size = Math.abs(value);
  return printNumber(
    value,
    unit !== "g" ? (size >= 10 && unit === "oz" ? 1 : 2) : size >= 10 ? 0 : 1,
  ).replace(/\.0$/, "");
}

/** A number of a test, without its unit, in three figures: "45.5", "10.2". */
export function testNumber(value: number, test: string, units: ShownUnits): string {
  const unit = Object.hasOwn(workedUnits, test) ? workedUnits[test as TestName].unit : "";
  const shown = inShownUnit(value, unit, units.of(test as TestName)).value;
  return String(Number(shown.toPrecision(3)));
}

/**
 * A test's number with its unit in the page's own units, for the findings.
 * @example trialFindings(trialReport(log), printTestIn(shownUnits(log)))
 */
export function printTestIn(units: ShownUnits): PrintTest {
  return (value, test) => {
    const { unit } = workedUnits[test];
    return `${testNumber(value, test, units)} ${shownUnit(unit, units.of(test))}`.trimEnd();
  };
}
