// What a page says of heat and burn-out, in its own units.

import type { Finding } from "../finding/finding.ts";
import { type Ends, type HeatFigures, type HeatSection, heatFigures } from "../finding/heat-figures.ts";
import * as say from "../finding/heat-messages.ts";
import type { Log } from "../log/types.ts";
import { printNumber } from "../quantity/print.ts";
import { digits, hotText, lengthRange, lengthText, two } from "./heat-print.ts";
import { inShownUnit, type ShownUnits, shownUnit, shownUnits } from "./shown-units.ts";

type System = ShownUnits["recipe"];
const KG_PER_LB = 0.45359237;

/**
 * The findings of heat and burn-out, the answer first; none where nothing is poured or planned.
 * @example heatFindings(log).map(({ text }) => text)
 */
export function heatFindings(
  log: Log,
  units: ShownUnits = shownUnits(log),
  figures = heatFigures(log),
): readonly Finding[] {
  const pours = log.events.some(({ kind }) => kind === "pour") || log.planned !== undefined;
  if (!figures) return pours ? [say.metalUnknown()] : [];
  const system = units.recipe;
  const { burnt, clayKind, mostWaterKg, metal } = figures;
  const kg = shownUnit("kg", system);
  return [
    say.burntSand(
      `${two(burnt)} ${kg}`,
      `${kg} of ${metal}`,
      clayKind ?? "clay of a kind that the log does not say",
      clayPerKg(figures, system),
      soFar(figures, system),
      burnt.source,
    ),
    ...(clayKind ? [] : [say.kindUnknown()]),
    ...(figures.sandToMetal === undefined
      ? []
      : [
          say.shareOfMould(
            `${two({ low: (100 * burnt.low) / figures.sandToMetal, high: Math.min(100, (100 * burnt.high) / figures.sandToMetal) })} %`,
            `${digits(figures.sandToMetal)} ${kg}`,
          ),
        ]),
    ...sectionFindings(figures, system),
    say.waterDriven(`${digits(mostWaterKg)} ${kg}`, `${kg} of ${metal}`),
  ];
}

/** ": at 6.8 % live clay (measured …) that is 1.4 to 17 g of clay". */
function clayPerKg({ burnt, liveClay }: HeatFigures, system: System): string {
  if (!liveClay) return "";
  // For a pound or a kilogram, as the page prints it.
  const range = clayRange(burnt, (liveClay.percent / 100) * (system === "US" ? KG_PER_LB : 1), system);
  return `: at ${printNumber(liveClay.percent, 1)} % of the dry mix (${liveClay.from}) that is ${range} of clay`;
}

function soFar({ burnt, liveClay, pouredKg, pours }: HeatFigures, system: System): string {
  if (!(pouredKg > 0) || !liveClay) return "";
  const metal = inShownUnit(pouredKg, "kg", system);
  const range = clayRange(burnt, pouredKg * (liveClay.percent / 100), system);
  const of = `${pours} ${pours === 1 ? "pour" : "pours"} of ${digits(metal.value)} ${metal.unit} in all`;
  return ` So far, ${of}: ${range} of clay.`;
}

/** In grams or ounces up to two kilograms. */
function clayRange(burnt: Ends, clayKg: number, system: System): string {
  const small = burnt.high * clayKg < 2;
  const unit = small ? "g" : "kg";
  const to = (x: number): number => inShownUnit(x * clayKg * (small ? 1000 : 1), unit, system).value;
  return `${two({ low: to(burnt.low), high: to(burnt.high) })} ${shownUnit(unit, system)}`;
}

function sectionFindings({ sections, constant }: HeatFigures, system: System): Finding[] {
  const [thin, thick] = [sections[0], sections.at(-1)];
  if (!thin || !thick) return [];
  const name = ({ sectionMm }: HeatSection): string => lengthText(sectionMm, system);
  const seconds = (section: HeatSection): string => `${two(section.freezing)} s for ${name(section)}`;
  const depths = ({ depthMm }: HeatSection): string => lengthRange(depthMm[500], system);
  const several = thin !== thick;
  const ratio = several
    ? `, ${digits((thick.sectionMm / thin.sectionMm) ** 2)} times as long for ${name(thick)}`
    : "";
  return [
    ...(several
      ? [
          say.sectionNoMatter(
            name(thin),
            name(thick),
            `${depths(thin)} and ${depths(thick)}`,
            hotText(500, system),
          ),
        ]
      : []),
    say.freezingCompared(seconds(thin), ratio, constant.source),
  ];
}
