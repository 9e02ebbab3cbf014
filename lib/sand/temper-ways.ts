// The single ways to a temper moisture: each with its range, source and tag.

import { equilibriumMoistureIssues, equilibriumRelation } from "./equilibrium-moisture.ts";
import { temperOutside } from "./typical-issues.ts";
import { noTypicalFigure, type TypicalOrigin, type TypicalValue, typicalFigure } from "./typical-value.ts";

export const clayKinds = Object.freeze(["sodium", "calcium", "not known"] as const);
export type ClayKind = (typeof clayKinds)[number];

export const temperWayNames = Object.freeze([
  "equilibrium moisture",
  "water per clay",
  "offset and slope",
  "common rule",
] as const);

export interface TemperWay extends TypicalValue {
  readonly way: (typeof temperWayNames)[number];
  /** Water per clay only: the two peaks that temper lies between, % of damp mass. */
  readonly strengthPeak?: number;
  readonly permeabilityPeak?: number;
}

const percent = { unit: "%", basis: "damp mass" } as const;

export const temperOrigins: Readonly<Record<(typeof temperWayNames)[number], TypicalOrigin>> = Object.freeze({
  "equilibrium moisture": {
    ...percent,
    holds: "our own: 5 points of compactability either way, within 30 to 55 %",
    source:
      "Equilibrium moisture for 7 to 11 % methylene-blue clay, ICRI Report 610 (2003); from iron system sands, kind of clay not told apart",
    tag: "read",
  },
  "water per clay": {
    ...percent,
    holds: "from strength's peak (0.4 of the clay) to permeability's (0.6); hand temper lies between the two",
    source:
      "Subbarao & Rammohan, J. Indian Inst. Sci. (abstract); 10 : 4 also in Die Wasserbindung an Tonen, 1966 (publisher's summary); hand temper: Giesserei-Praxis lexicon",
    tag: "read",
  },
  "offset and slope": {
    ...percent,
    holds: "from the dry to the wet end of the working windows, straight between 4 and 8 % clay",
    source:
      "Windows 3 to 5.5 % at 4 % clay and 3.75 to 6.5 % at 8 %: Abdullah et al., Pertanika J. Sci. Technol. 21(2) 2013; slopes by hand, basis of the water not said",
    tag: "derived",
  },
  "common rule": {
    ...percent,
    holds:
      "from 0.5 to 1 part of water for sand and fines per 100 dry, kinds of clay not told apart where not known",
    source: "0.3 part of water per part of sodium bentonite, 0.25 of calcium: common rule, from memory",
    tag: "from memory",
  },
});

/** All four, in the order of temperWayNames. Arguments come checked from temperMoisture. */
export function temperWays(clay: number, kind: ClayKind, compactability: number): readonly TemperWay[] {
  return [equilibrium(clay, compactability), perClay(clay), offsetSlope(clay), remembered(clay, kind)];
}

function equilibrium(clay: number, compactability: number): TemperWay {
  const way = "equilibrium moisture";
  const question = { liveClayPercent: clay, compactabilityPercent: compactability };
  const issues = equilibriumMoistureIssues(question);
  if (issues.length > 0) return { way, ...noTypicalFigure(temperOrigins[way], issues) };
  const at = (percent: number) => equilibriumRelation({ ...question, compactabilityPercent: percent });
  const ends = {
    value: at(compactability),
    low: at(Math.max(30, compactability - 5)),
    high: at(Math.min(55, compactability + 5)),
  };
  return { way, ...typicalFigure(temperOrigins[way], ends) };
}

function perClay(clay: number): TemperWay {
  const way = "water per clay";
  const ends = { value: damp(0.5 * clay), low: damp(0.4 * clay), high: damp(0.6 * clay) };
  return {
    way,
    ...typicalFigure(temperOrigins[way], ends),
    strengthPeak: ends.low,
    permeabilityPeak: ends.high,
  };
}

function offsetSlope(clay: number): TemperWay {
  const way = "offset and slope";
  if (!(clay >= 4 && clay <= 8))
    return {
      way,
      ...noTypicalFigure(temperOrigins[way], [temperOutside("Offset and slope", String(clay), "4", "8")]),
    };
  const along = (four: number, eight: number) => four + ((eight - four) * (clay - 4)) / 4;
  const ends = { low: along(3, 3.75), high: along(5.5, 6.5) };
  return { way, ...typicalFigure(temperOrigins[way], { ...ends, value: (ends.low + ends.high) / 2 }) };
}

function remembered(clay: number, kind: ClayKind): TemperWay {
  const way = "common rule";
  const least = kind === "sodium" ? 0.3 : 0.25;
  const most = kind === "calcium" ? 0.25 : 0.3;
  const ends = { low: damp(0.5 + least * clay), high: damp(1 + most * clay) };
  return { way, ...typicalFigure(temperOrigins[way], { ...ends, value: (ends.low + ends.high) / 2 }) };
}

/** Parts of water on 100 parts of dry sand and clay, as a percentage of damp mass. */
function damp(parts: number): number {
  return (100 * parts) / (100 + parts);
}
