// What the published curves say of one batch, at its own clay, water and compactability.

import type { TestName } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import { permeabilityModel } from "../sand/permeability-model.ts";
import { temperMoisture } from "../sand/temper-moisture.ts";
import { typicalPermeability } from "../sand/typical-permeability.ts";
import { typicalStrength } from "../sand/typical-strength.ts";
import { noTypicalFigure, type TypicalValue, typicalFigure } from "../sand/typical-value.ts";
import { type ClayMeant, clayMeant } from "./clay-meant.ts";

export interface TypicalAtBatch {
  readonly test: TestName & ("green compression" | "permeability" | "moisture");
  /** What the curve is called on a page: "strength by clay". */
  readonly curve: string;
  /** Which clay it was asked at. */
  readonly clay: ClayMeant;
  readonly typical: TypicalValue;
}

const temperOrigin = {
  unit: "%",
  basis: "damp mass",
  holds: "from the lowest to the highest of the ways that were found in print",
  source:
    "Equilibrium moisture, water per clay, offset and slope, common rule: the temper chart's own sources",
  tag: "derived",
} as const;

/**
 * The typical curves that a batch can be held against: strength by clay, permeability by clay and water (one published
 * sand), moisture by clay (temper), permeability by fineness. Only those whose tested figure and arguments the batch
 * has; outside a curve's range the value is undefined and its issues say why. Bentonite alone; gfn: the sand's fineness.
 */
export function typicalAtBatch(
  row: BatchFigures,
  more: { readonly gfn?: number | undefined },
): readonly TypicalAtBatch[] {
  const clay = clayMeant(row);
  if (!clay) return [];
  const { tests } = row;
  const clayPercent = plain(clay.ofDryMixPercent.value);
  const [moisture, compactability] = [tests.moisture, tests.compactability].map(
    (one) => one && plain(one.value),
  );
  const found: TypicalAtBatch[] = [];
  if (tests.moisture) {
    const height =
      compactability !== undefined && compactability >= 30 && compactability <= 55 ? compactability : 45;
    found.push({ test: "moisture", curve: "temper by clay", clay, typical: temper(clayPercent, height) });
  }
  if (tests["green compression"] && moisture !== undefined && compactability !== undefined) {
    const question = {
      clayPercent,
      moistureOfDampPercent: moisture,
      compactabilityPercent: compactability,
    };
    found.push({
      test: "green compression",
      curve: "strength by clay",
      clay,
      typical: typicalStrength(question),
    });
  }
  if (tests.permeability && moisture !== undefined) {
    const typical = typicalPermeability({ clayPercent, moistureOfDampPercent: moisture });
    found.push({ test: "permeability", curve: "permeability by clay and water", clay, typical });
  }
  if (tests.permeability && more.gfn !== undefined) {
    const typical = permeabilityModel({ gfn: more.gfn, clayPercent });
    found.push({ test: "permeability", curve: "permeability by fineness", clay, typical });
  }
  return found;
}

function temper(clayPercent: number, compactabilityPercent: number): TypicalValue {
  if (!(clayPercent > 0 && clayPercent <= 20)) return noTypicalFigure(temperOrigin, []);
  const { between } = temperMoisture({ clayPercent, clayKind: "not known", compactabilityPercent });
  if (!between) return noTypicalFigure(temperOrigin, []);
  return typicalFigure(temperOrigin, { value: (between.low + between.high) / 2, ...between });
}

/** Four figures: a curve's messages print what it was asked. */
const plain = (value: number): number => Number(value.toPrecision(4));
