// Clay against green compression strength, from the published bond relations solved for strength.

import type { Issue } from "../issue.ts";
import { KPA_PER_PSI } from "./bond-state.ts";
import { moistureDisagrees, outsideCurve, strengthBeyond, strengthLevelsOff } from "./typical-issues.ts";
import {
  combinedFactor,
  noTypicalFigure,
  type TypicalOrigin,
  type TypicalValue,
  typicalFigure,
} from "./typical-value.ts";

export const typicalStrengthRange = Object.freeze({
  /** Live bentonite, % of dry sand and clay: our own, about the clays that bentonite sands are run at. */
  clayPercent: Object.freeze({ low: 3, high: 12 }),
  moisturePercent: Object.freeze({ low: 2, high: 5 }),
  compactabilityPercent: Object.freeze({ low: 30, high: 55 }),
  /** 5 to 35 psi. */
  strengthKPa: Object.freeze({ low: 5 * KPA_PER_PSI, high: 35 * KPA_PER_PSI }),
  mullingEfficiencyPercent: Object.freeze({ low: 10, high: 100 }),
});
/** Where it was not stated. 55 to 70 in iron shops (from memory); sands mixed by hand stand far below: our own. */
const usualMullingPercent = Object.freeze({ low: 20, middle: 40, high: 70 });
/** The relation itself, all three stated: our own, none was printed with it. */
const ownFactor = 1.15;
/** Strength stops rising beyond about this much bentonite: Subbarao & Rammohan, J. Indian Inst. Sci. (abstract). */
const LEVELS_OFF_PERCENT = 7;

export const typicalStrengthOrigin: TypicalOrigin = Object.freeze({
  unit: "kPa",
  holds:
    "our own: 15 % for the relation; mulling efficiency 20 to 70 % where it was not stated; beyond 7 % clay the low end stays at 7 %",
  source:
    "Working bond % = 15.29 GCS/(132.1 − C), GCS in psi: ICRI Report 610 (2003) and Honeyman, Modern Casting, Dec 2014, p. 29; solved for strength",
  tag: "derived",
});

export interface TypicalStrength extends TypicalValue {
  /**
   * The second opinion: strength by which the available-bond relation, clay = 0.105 GCS + 1.316 M, accounts for all
   * the clay at the stated moisture, kPa; undefined outside 5 to 35 psi. A tenth of a percent of water moves it by 9 kPa.
   */
  readonly byAvailableBondKPa: number | undefined;
}

/**
 * Green compression strength that goes with a bentonite content at a stated moisture, compactability and mulling:
 * GCS = (E/100) · clay · (132.1 − C)/15.29 psi, that is the working-bond relation with a share E of the clay at work.
 *
 * clayPercent: live bentonite, % of dry sand and clay, 3 to 12. moistureOfDampPercent: 2 to 5; it does not move the
 * figure, but must go with it by the available-bond relation, else a warning. compactabilityPercent: 30 to 55.
 * mullingEfficiencyPercent: 10 to 100; without it 40, with 20 to 70 in the range. A result outside 5 to 35 psi, or an
 * argument outside its range: no figure, and an issue. Bentonite only: in natural sands clay does not order strength.
 * low and high: our own, see typicalStrengthOrigin. Ranges of moisture, compactability and strength: our own judgement.
 * Source: see typicalStrengthOrigin.
 *
 *     typicalStrength({ clayPercent: 7.23, moistureOfDampPercent: 3.5, compactabilityPercent: 40,
 *       mullingEfficiencyPercent: 57.4 })   // 172 kPa (25 psi)
 */
export function typicalStrength({
  clayPercent,
  moistureOfDampPercent,
  compactabilityPercent,
  mullingEfficiencyPercent,
}: {
  clayPercent: number;
  moistureOfDampPercent: number;
  compactabilityPercent: number;
  mullingEfficiencyPercent?: number;
}): TypicalStrength {
  const efficiency = mullingEfficiencyPercent ?? usualMullingPercent.middle;
  const given: Readonly<Record<Exclude<keyof typeof typicalStrengthRange, "strengthKPa">, number>> = {
    clayPercent,
    moisturePercent: moistureOfDampPercent,
    compactabilityPercent,
    mullingEfficiencyPercent: efficiency,
  };
  for (const [key, what] of Object.entries(argumentNames) as [keyof typeof given, string][]) {
    const { low, high } = typicalStrengthRange[key];
    if (!(given[key] >= low && given[key] <= high))
      return none([outsideCurve(what, String(given[key]), String(low), String(high), "%")]);
  }
  const psi = ((efficiency / 100) * clayPercent * (132.1 - compactabilityPercent)) / 15.29;
  const value = psi * KPA_PER_PSI;
  const { low: least, high: most } = typicalStrengthRange.strengthKPa;
  // A hair of slack, so that 35 psi itself is not lost to rounding.
  if (!(value >= least - 1e-6 && value <= most + 1e-6))
    return none([strengthBeyond(value.toFixed(0), least.toFixed(0), most.toFixed(0))]);

  const stated = mullingEfficiencyPercent !== undefined;
  const levelling = clayPercent > LEVELS_OFF_PERCENT;
  const { low, middle, high } = usualMullingPercent;
  const { down, up } = combinedFactor([
    { down: 1 / ownFactor, up: ownFactor },
    ...(stated ? [] : [{ down: low / middle, up: high / middle }]),
    ...(levelling ? [{ down: LEVELS_OFF_PERCENT / clayPercent, up: 1 }] : []),
  ]);
  const ends = { value, low: value * down, high: value * up };
  const implied = [ends.high, ends.low].map((kPa) => impliedMoisture(clayPercent, kPa));
  const agrees = moistureOfDampPercent >= implied[0]! && moistureOfDampPercent <= implied[1]!;
  const issues = [
    ...(levelling ? [strengthLevelsOff()] : []),
    ...(agrees
      ? []
      : [
          moistureDisagrees(
            moistureOfDampPercent.toFixed(1),
            implied.map((each) => Math.max(0, each).toFixed(1)).join(" to "),
          ),
        ]),
  ];
  const second = ((clayPercent - 1.316 * moistureOfDampPercent) / 0.105) * KPA_PER_PSI;
  const held = second >= least - 1e-6 && second <= most + 1e-6;
  return Object.freeze({
    ...typicalFigure(typicalStrengthOrigin, ends, issues),
    byAvailableBondKPa: held ? second : undefined,
  });
}

const argumentNames = {
  clayPercent: "Clay",
  moisturePercent: "Moisture",
  compactabilityPercent: "Compactability",
  mullingEfficiencyPercent: "A mulling efficiency",
} as const;

/** Water that the available-bond relation leaves when clay and strength are given, % of damp mass. */
function impliedMoisture(clayPercent: number, strengthKPa: number): number {
  return (clayPercent - (0.105 * strengthKPa) / KPA_PER_PSI) / 1.316;
}

function none(issues: readonly Issue[]): TypicalStrength {
  return Object.freeze({ ...noTypicalFigure(typicalStrengthOrigin, issues), byAvailableBondKPa: undefined });
}
