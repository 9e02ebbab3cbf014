// Clay against permeability, from the one published series that varies both clay and water.

import { fitLinear } from "../numbers/least-squares.ts";
import { predictAt } from "../numbers/predict-at.ts";
import { studentTQuantile } from "../numbers/student-t.ts";
import { onePublishedSand, outsideCurve } from "./typical-issues.ts";
import { permeabilitySeries } from "./typical-points.ts";
import { noTypicalFigure, type TypicalOrigin, type TypicalValue, typicalFigure } from "./typical-value.ts";

// Least squares through the nine readings (the cell that two groups print differently stands twice):
// PN = b0 + b1 (c − 7) + b2 (w − 4.5) + b3 (w − 4.5)² + b4 (c − 7)(w − 4.5), c % bentonite, w % water.
const rowAt = (clay: number, water: number): number[] => {
  const [c, w] = [clay - 7, water - 4.5];
  return [1, c, w, w * w, c * w];
};
const fit = fitLinear(
  permeabilitySeries.map(({ clayPercent, moisturePercent }) => rowAt(clayPercent, moisturePercent)),
  permeabilitySeries.map(({ permeability }) => permeability),
);

export const typicalPermeabilityRange = Object.freeze({
  clayPercent: Object.freeze({ low: 6, high: 8 }),
  moisturePercent: Object.freeze({ low: 3, high: 6 }),
  /** Lowest and highest permeability number of the published bentonite sands held here. */
  published: Object.freeze({ low: 80, high: 240 }),
});

export const typicalPermeabilityOrigin: TypicalOrigin = Object.freeze({
  unit: "permeability number",
  holds:
    "95 % for one more batch of that sand, from the scatter of nine readings about the surface (4 degrees of freedom)",
  source:
    "Fitted to the series of Universitas Brawijaya, 6 and 8 % bentonite at 3 to 6 % water (student report)",
  tag: "derived",
});

/**
 * Permeability number against bentonite and water, from one published sand: more clay closes the pores, and the gap
 * closes as water rises. Its level belongs to that sand, whose fineness was not printed: the slope is what carries over.
 *
 * clayPercent: bentonite added, % (the source does not say of what), 6 to 8. moistureOfDampPercent: 3 to 6. Outside
 * either: no figure, and an issue. low and high: 95 % for a new batch of that sand,
 * value ± t(4) s √(1 + x(XᵀX)⁻¹xᵀ), s = 4.4.
 * Source: see typicalPermeabilityOrigin.
 *
 *     typicalPermeability({ clayPercent: 6, moistureOfDampPercent: 4 })   // { value: 236.9, low: 222.1, high: 251.6 }
 */
export function typicalPermeability({
  clayPercent,
  moistureOfDampPercent,
}: {
  clayPercent: number;
  moistureOfDampPercent: number;
}): TypicalValue {
  const { clayPercent: clay, moisturePercent: water, published } = typicalPermeabilityRange;
  const refuse = (what: string, value: number, { low, high }: { low: number; high: number }) =>
    noTypicalFigure(typicalPermeabilityOrigin, [
      outsideCurve(what, String(value), String(low), String(high), "%"),
    ]);
  if (!(clayPercent >= clay.low && clayPercent <= clay.high)) return refuse("Bentonite", clayPercent, clay);
  if (!(moistureOfDampPercent >= water.low && moistureOfDampPercent <= water.high))
    return refuse("Moisture", moistureOfDampPercent, water);
  const { value, newSe } = predictAt(fit, rowAt(clayPercent, moistureOfDampPercent));
  const half = studentTQuantile(0.975, fit.degreesOfFreedom) * newSe;
  return typicalFigure(typicalPermeabilityOrigin, { value, low: value - half, high: value + half }, [
    onePublishedSand(String(published.low), String(published.high)),
  ]);
}
