// Permeability from grain size: a model of clean packed grains, as a guide.

import { airViscosityUPaS } from "./air.ts";
import {
  modelIsUpperGuide,
  modelWantsLowClay,
  outsideCurve,
  porosityAssumed,
  shapeAssumed,
} from "./typical-issues.ts";
import {
  combinedFactor,
  noTypicalFigure,
  type TypicalOrigin,
  type TypicalValue,
  typicalFigure,
} from "./typical-value.ts";

/** One permeability number as a permeability of air, m²/(Pa·s): 1 cm³/min through 1 cm² × 1 cm under 1 gf/cm². */
const NUMBER_M2_PA_S = ((1e-6 / 60) * 1e-2) / (1e-4 * 98.0665);
/** The same as a property of the sand alone, m²: 3.08e-13. */
const NUMBER_M2 = NUMBER_M2_PA_S * airViscosityUPaS(20) * 1e-6;
/** Sauter size times fineness number, mm: a rule for moulding sands. */
const SAUTER_MM_GFN = 12.5;

export const permeabilityModelRange = Object.freeze({
  gfn: Object.freeze({ low: 35, high: 150 }),
  porosity: Object.freeze({ low: 0.36, high: 0.47 }),
  angularity: Object.freeze({ low: 1, high: 1.7 }),
  /** Our own: above the clay of any bentonite sand in use; from here on clay sets the figure. */
  clayPercent: 12,
});
const usualPorosity = { low: 0.36, middle: 0.4, high: 0.44 };
const usualAngularity = { low: 1.1, middle: 1.3, high: 1.5 };
/** The relation itself, voids and shape taken as given: our own, wide enough for the published points. */
const ownFactor = 2;

export const permeabilityModelOrigin: TypicalOrigin = Object.freeze({
  unit: "permeability number",
  holds:
    "our own: a factor of 2 for the relation; voids 0.36 to 0.44 and angularity 1.1 to 1.5 where not given",
  source:
    "Model, not measured: Kozeny–Carman, k = d²ε³/(180(1 − ε)²), with the Sauter size 12.5 mm/GFN over the angularity",
  tag: "derived",
});

/**
 * Permeability number of clean packed sand by Kozeny–Carman: k = (d32/E)² ε³ / (180 (1 − ε)²), d32 = 12.5 mm/GFN, and
 * one permeability number = 3.08e-13 m² (air of 20 °C). A pure number; see permeabilityModel for its range and doubt.
 *
 * gfn: > 0; porosity ε: share of voids, 0 to 1, both excluded; angularity E: 1 or more. Else RangeError.
 * Source: Kozeny–Carman in the form with the Sauter size; 12.5 mm/GFN derived from moulding sands.
 *
 *     kozenyCarmanNumber({ gfn: 60, porosity: 0.40, angularity: 1.3 })   // 82
 */
export function kozenyCarmanNumber({
  gfn,
  porosity,
  angularity,
}: {
  gfn: number;
  porosity: number;
  angularity: number;
}): number {
  if (!(gfn > 0 && porosity > 0 && porosity < 1 && angularity >= 1))
    throw new RangeError(
      `kozenyCarmanNumber: got fineness ${gfn}, voids ${porosity}, angularity ${angularity}`,
    );
  const grainM = SAUTER_MM_GFN / gfn / 1000 / angularity;
  return (grainM ** 2 * porosity ** 3) / (180 * (1 - porosity) ** 2) / NUMBER_M2;
}

/**
 * A guide to the permeability number from the fineness: Kozeny–Carman (see kozenyCarmanNumber) with a range. It is a
 * model of dry sand without clay, and never a measured figure.
 *
 * gfn: 35 to 150. clayPercent: % of dry sand and clay; up to 1 it counts as none, up to 12 the figure comes with a
 * warning that it is a guide from above, beyond 12 it is refused: clay, not grain, then sets the number.
 * porosity: share of voids of the rammed sand, 0.36 to 0.47; without it 0.40, with 0.36 to 0.44 in the range.
 * angularity: 1 to 1.7; without it 1.3, with 1.1 to 1.5 in the range. Outside any of these: no figure, and an issue.
 * low and high: our own, a factor of 2 for the relation, with voids and shape where they were not given.
 * Source: see permeabilityModelOrigin. Angularity classes: Giesserei-Lexikon, "Eckigkeitsgrad".
 *
 *     permeabilityModel({ gfn: 60, clayPercent: 0, porosity: 0.40, angularity: 1.3 })   // { value: 82, low: 41, high: 165 }
 */
export function permeabilityModel({
  gfn,
  clayPercent,
  porosity,
  angularity,
}: {
  gfn: number;
  clayPercent: number;
  porosity?: number;
  angularity?: number;
}): TypicalValue {
  const { gfn: fine, porosity: voids, angularity: shape, clayPercent: most } = permeabilityModelRange;
  const refuse = (what: string, value: number, range: { low: number; high: number }) =>
    noTypicalFigure(permeabilityModelOrigin, [
      outsideCurve(what, String(value), String(range.low), String(range.high), "as a bare number"),
    ]);
  if (!(clayPercent >= 0 && clayPercent <= most))
    return noTypicalFigure(permeabilityModelOrigin, [modelWantsLowClay(String(clayPercent), String(most))]);
  if (!inside(gfn, fine)) return refuse("A fineness", gfn, fine);
  if (porosity !== undefined && !inside(porosity, voids)) return refuse("A share of voids", porosity, voids);
  if (angularity !== undefined && !inside(angularity, shape))
    return refuse("An angularity", angularity, shape);

  const at = { porosity: porosity ?? usualPorosity.middle, angularity: angularity ?? usualAngularity.middle };
  const value = kozenyCarmanNumber({ gfn, ...at });
  const factor = (other: Partial<typeof at>) => kozenyCarmanNumber({ gfn, ...at, ...other }) / value;
  const { down, up } = combinedFactor([
    { down: 1 / ownFactor, up: ownFactor },
    ...(porosity === undefined
      ? [{ down: factor({ porosity: usualPorosity.low }), up: factor({ porosity: usualPorosity.high }) }]
      : []),
    ...(angularity === undefined
      ? [
          {
            down: factor({ angularity: usualAngularity.high }),
            up: factor({ angularity: usualAngularity.low }),
          },
        ]
      : []),
  ]);
  const { low, high } = usualPorosity;
  return typicalFigure(permeabilityModelOrigin, { value, low: value * down, high: value * up }, [
    ...(clayPercent > 1 ? [modelIsUpperGuide(String(clayPercent))] : []),
    ...(porosity === undefined ? [porosityAssumed(String(low), String(high))] : []),
    ...(angularity === undefined ? [shapeAssumed()] : []),
  ]);
}

function inside(value: number, { low, high }: { low: number; high: number }): boolean {
  return value >= low && value <= high;
}
