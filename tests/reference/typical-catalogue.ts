// Every typical curve in one list: what the docs and a page of sources show.

import { permeabilityModelOrigin, permeabilityModelRange } from "../../lib/sand/permeability-model.ts";
import { temperOrigins } from "../../lib/sand/temper-ways.ts";
import { typicalPermeabilityOrigin, typicalPermeabilityRange } from "../../lib/sand/typical-permeability.ts";
import { typicalStrengthOrigin, typicalStrengthRange } from "../../lib/sand/typical-strength.ts";
import type { TypicalOrigin } from "../../lib/sand/typical-value.ts";

export interface CatalogueEntry extends TypicalOrigin {
  readonly curve: string;
  /** The relation in plain signs. */
  readonly figure: string;
  /** Arguments within which it gives a figure. */
  readonly within: string;
}

const span = ({ low, high }: { readonly low: number; readonly high: number }, digits = 3): string =>
  `${Number(low.toPrecision(digits))} to ${Number(high.toPrecision(digits))}`;

const strength = typicalStrengthRange;
const series = typicalPermeabilityRange;
const model = permeabilityModelRange;
const [equilibrium, perClay, offset, rule] = [
  temperOrigins["equilibrium moisture"],
  temperOrigins["water per clay"],
  temperOrigins["offset and slope"],
  temperOrigins["common rule"],
];

export const typicalCatalogue: readonly CatalogueEntry[] = Object.freeze([
  {
    curve: "green compression strength against live bentonite",
    figure: "GCS = 6.894757 · (E/100) · clay · (132.1 − C)/15.29 kPa",
    within: `clay ${span(strength.clayPercent)} % of dry sand and clay, water ${span(strength.moisturePercent)} % of damp mass, compactability ${span(strength.compactabilityPercent)} %, result ${span(strength.strengthKPa)} kPa; bentonite`,
    ...typicalStrengthOrigin,
  },
  {
    curve: "permeability number against bentonite and water",
    figure:
      "225.3 − 7.68 (c − 7) − 5.48 (w − 4.5) − 2.32 (w − 4.5)² + 3.38 (c − 7)(w − 4.5), one sand of unknown fineness",
    within: `bentonite ${span(series.clayPercent)} % (of what is not said), water ${span(series.moisturePercent)} %; bentonite`,
    ...typicalPermeabilityOrigin,
  },
  {
    curve: "permeability number against grain fineness number",
    figure: "k = (12.5 mm/GFN/E)² ε³/(180(1 − ε)²), 3.08e-13 m² for each number",
    within: `fineness ${span(model.gfn)}, voids ${span(model.porosity)}, angularity ${span(model.angularity)}, clay up to ${model.clayPercent} %`,
    ...permeabilityModelOrigin,
  },
  {
    curve: "temper: equilibrium moisture",
    figure: "clay/(2.583 − 0.01185 C) up to C = 47.5, clay/(3.213 − 0.02525 C) above",
    within: "live clay 7 to 11 %, compactability 30 to 55 %; bentonite",
    ...equilibrium,
  },
  {
    curve: "temper: water per clay",
    figure: "0.4 of the clay at strength's peak, 0.6 at permeability's, by mass",
    within: "clay above 0 to 20 % of dry sand and clay; bentonite",
    ...perClay,
  },
  {
    curve: "temper: offset and slope",
    figure: "3 to 5.5 % at 4 % clay, 3.75 to 6.5 % at 8 %; middle 4.25 + 0.219 (clay − 4)",
    within: "clay 4 to 8 %, silica tailing sand",
    ...offset,
  },
  {
    curve: "temper: common rule",
    figure: "parts of water per 100 dry = 0.5 to 1 + 0.3 clay (sodium) or 0.25 clay (calcium)",
    within: "clay above 0 to 20 % of dry sand and clay; bentonite",
    ...rule,
  },
]);
