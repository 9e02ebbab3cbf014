// Figures of a diary in the units that its page is printed in.

import { type DiaryPrint, figureWords, threeFigures, twoFigures } from "../finding/diary-print.ts";
import type { DiarySeries } from "../trial/control-series.ts";
import { inShownUnit, type ShownUnits, shownUnit, type UnitSystem } from "./shown-units.ts";

/** The system of a series: that of its bench test; live clay, fineness and fines have none. */
export function systemOf({ test }: Pick<DiarySeries, "test">, units: ShownUnits): UnitSystem {
  return test === undefined ? "metric" : units.of(test);
}

/**
 * No unit of a diary has a zero of its own, so a difference is converted as a number is.
 * @example diaryFindings(controlReport(log), diaryPrintIn(shownUnits(log)))
 */
export function diaryPrintIn(units: ShownUnits): DiaryPrint {
  const to = (value: number, of: Pick<DiarySeries, "unit" | "test">): number =>
    inShownUnit(value, of.unit, systemOf(of, units)).value;
  const unit = (of: Pick<DiarySeries, "unit" | "test">): string => shownUnit(of.unit, systemOf(of, units));
  return {
    about: (value, of) => `${twoFigures(to(value, of))} ${unit(of)}`.trimEnd(),
    bare: (value, of) => threeFigures(to(value, of)),
    number: (value, of) => `${threeFigures(to(value, of))} ${unit(of)}`.trimEnd(),
    figure: (of, { value, low, high }, atLeast = false) =>
      figureWords({ value: to(value, of), low: to(low, of), high: to(high, of) }, unit(of), atLeast),
  };
}
