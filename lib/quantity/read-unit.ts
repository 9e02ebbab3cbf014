// Reads the text of a unit: "g", "kg/m^3", "US fl oz", "% of damp mass".

import type { Checked } from "../issue.ts";
import { nearest } from "../numbers/nearest.ts";
import { quantityIssue } from "./read-messages.ts";
import type { Unit } from "./unit.ts";
import { compoundUnit } from "./unit-compound.ts";
import { plainUnitText, simpleUnit, simpleUnitNames } from "./unit-simple.ts";
import { measures } from "./unit-table-volume.ts";

const longestUnit = 60;

/** Bases of percent that are near enough to a misspelt one to ask about; any other words are taken as they are. */
const usualBases = ["damp mass", "dry mix", "dry sand", "sand", "height", "sample", "clay", "start mass"];

/** Offered for a misspelt compound. */
const usualCompounds = [
  "kg/m³",
  "g/cm³",
  "lb/ft³",
  "N/cm²",
  "kgf/cm²",
  "gf/cm²",
  "cm²/g",
  "cm²",
  "in²",
  "in³",
  "ft³",
  "mPa·s",
];

/**
 * The unit that a text names, or undefined. Metric and US spellings, powers as cm2, cm^2 or cm², "/" or " per ",
 * "·" or "*" between factors, brackets after a "/", both micro signs; percent with "of ..." after it.
 * In capitals or not where that cannot be mistaken ("KPA" is kPa, "MPA" is nothing). In a compound °C, °F and K are differences.
 * A gallon, quart, pint, cup or fluid ounce needs US or imp; bare it is undefined, as is ton. "oz" is a mass.
 * @example unitNamed("kg/m^3")?.text // "kg/m³"
 */
export function unitNamed(text: string): Unit | undefined {
  if (text.length > longestUnit) return undefined;
  const plain = plainUnitText(text);
  return simpleUnit(plain) ?? percentUnit(plain) ?? compoundUnit(plain);
}

/**
 * unitNamed with what is wrong: an unknown unit with the nearest known one, an ambiguous one with the two that it may be,
 * a basis of percent that looks misspelt (a warning: the unit is given all the same).
 * @example readUnit("gal").issues[0]?.message // "\"gal\" may be US gal or imp gal, which differ."
 */
export function readUnit(text: string): Checked<Unit> {
  const unit = unitNamed(text);
  if (unit) {
    const near =
      unit.of === undefined || usualBases.includes(unit.of) ? undefined : nearest(unit.of, usualBases);
    return { value: unit, issues: near === undefined ? [] : [quantityIssue.unknownBasis(unit.text, near)] };
  }
  const word = plainUnitText(text).toLowerCase();
  for (const measure of measures) {
    if ([measure.text, ...measure.names].some((name) => name === word)) {
      return { issues: [quantityIssue.ambiguousUnit(text, `US ${measure.text}`, `imp ${measure.text}`)] };
    }
  }
  if (word === "ton" || word === "tons") {
    return { issues: [quantityIssue.ambiguousUnit(text, "t (1000 kg)", "2000 lb")] };
  }
  if (/^(?:°|deg|degrees?)$/.test(word)) return { issues: [quantityIssue.ambiguousUnit(text, "°C", "°F")] };
  const known = [...simpleUnitNames, ...usualCompounds];
  const [first, second] = known.filter((name) => name.toLowerCase() === word);
  if (first !== undefined && second !== undefined) {
    return { issues: [quantityIssue.ambiguousUnit(text, first, second)] };
  }
  // Of a single letter every other is one slip away.
  const near = first ?? (word.length > 1 ? nearest(text.trim(), known) : undefined);
  return { issues: [quantityIssue.unknownUnit(text, near)] };
}

/** The factor is only for those who leave percent behind on purpose: percent is a label, never algebra. */
function percentUnit(plain: string): Unit | undefined {
  const match = /^(?:%|percent|per cent|pct)(?: ?of (?:the )?([a-z][a-z -]*))?$/i.exec(plain);
  if (!match) return undefined;
  const of = match[1]?.toLowerCase().trim();
  return Object.freeze({
    text: of === undefined ? "%" : `% of ${of}`,
    dimension: [0, 0, 0, 0] as const,
    factor: 0.01,
    offset: 0,
    kind: "percent" as const,
    ...(of === undefined ? {} : { of }),
  });
}
