// Numbers beside faults of castings in the units that their page is printed in.

import { type CastingOf, type CastingPrint, differenceWords } from "../finding/casting-print.ts";
import { plainNumber } from "../finding/diary-print.ts";
import {
  differenceInShownUnit,
  inShownUnit,
  type ShownUnits,
  shownUnit,
  type UnitSystem,
} from "./shown-units.ts";

/** Temperature and section go as the recipes do; what is no bench test has one unit. */
export function systemBeside({ unit, test }: CastingOf, units: ShownUnits): UnitSystem {
  if (test !== undefined) return units.of(test);
  return unit === "°C" || unit === "mm" ? units.recipe : "metric";
}

/**
 * How figures of the castings page are printed: in the founder's own units.
 * @example castingFindings(faultsAndSand(log), log, castingPrintIn(shownUnits(log)))
 */
export function castingPrintIn(units: ShownUnits): CastingPrint {
  return {
    number: (value, of) => {
      const shown = inShownUnit(value, of.unit, systemBeside(of, units));
      return `${plainNumber(shown.value)} ${shown.unit}`.trimEnd();
    },
    numbers: (values, of) => {
      const shown = values.map((value) => inShownUnit(value, of.unit, systemBeside(of, units)).value);
      return `${shown.map(plainNumber).join(", ")} ${shownUnit(of.unit, systemBeside(of, units))}`.trimEnd();
    },
    difference: ({ value, low, high }, of) => {
      const system = systemBeside(of, units);
      const to = (one: number | undefined) =>
        one === undefined ? undefined : differenceInShownUnit(one, of.unit, system);
      return differenceWords({ value: to(value)!, low: to(low), high: to(high) }, shownUnit(of.unit, system));
    },
  };
}
