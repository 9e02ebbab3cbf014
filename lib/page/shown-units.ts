// The unit that a figure is printed in: as the log asks for, else as most of its readings were typed.

import type { Batch, Recipe, TestName, TestReading } from "../log/batch.ts";
import type { Log, Measured, UnitSystem } from "../log/types.ts";
import { workedUnits } from "../log/worked-units.ts";
import { readQuantity } from "../quantity/read-quantity.ts";
import { unitNamed } from "../quantity/read-unit.ts";
import { convert, convertDifference } from "../quantity/unit.ts";

export type { UnitSystem };

/** The system of each test and of what went into the batches. */
export interface ShownUnits {
  of(test: TestName): UnitSystem;
  readonly recipe: UnitSystem;
}

/** Everything as the library works it out. */
export const metric: ShownUnits = { of: () => "metric", recipe: "metric" };

/** The library's own unit, and what stands for it in US measures. Whatever is not here is printed as it is. */
const pairs: { readonly [metric: string]: string } = {
  kPa: "psi",
  kg: "lb",
  g: "oz",
  mm: "in",
  ml: "US fl oz",
  "°C": "°F",
  "g/cm³": "lb/ft³",
  "m/s": "ft/s",
};
const typedInUs = /^(psi|lbf?|oz|in|ft|inH2O|°F( difference)?|US .*|lb\/(ft|in)³|oz\/in³)$/;
/** Counted alike everywhere: they tell nothing of a founder's system. */
const neutral = /^(s|min|h|d)$/;

/**
 * The unit that stands for a metric one in a system.
 * @example shownUnit("kPa", "US") // "psi"
 */
export function shownUnit(unit: string, system: UnitSystem): string {
  return system === "US" ? (pairs[unit] ?? unit) : unit;
}

/**
 * A number of a metric unit in the unit that is printed for it: kPa ↔ psi, kg ↔ lb, g ↔ oz, mm ↔ in, ml ↔ US fl oz,
 * °C ↔ °F, g/cm³ ↔ lb/ft³, m/s ↔ ft/s; exact factors of the unit table. Any value; another unit stays as it is.
 * @example inShownUnit(68.9476, "kPa", "US") // { value: 10.00000…, unit: "psi" }
 */
export function inShownUnit(
  value: number,
  unit: string,
  system: UnitSystem,
): { readonly value: number; readonly unit: string } {
  const shown = shownUnit(unit, system);
  return shown === unit
    ? { value, unit }
    : { value: convert(value, unitNamed(unit)!, unitNamed(shown)!), unit: shown };
}

/** As inShownUnit for a difference, such as a ±: 10 °C of difference are 18 °F. */
export function differenceInShownUnit(value: number, unit: string, system: UnitSystem): number {
  const shown = shownUnit(unit, system);
  return shown === unit ? value : convertDifference(value, unitNamed(unit)!, unitNamed(shown)!);
}

/**
 * A figure's number and the ends of its interval, all in the unit that is printed.
 * @example
 * figureInShownUnit({ value: 68.9476, low: 62.0528, high: 75.8423 }, "kPa", "US")
 * // { value: 10.0, low: 9.0, high: 11.0, unit: "psi" }
 */
export function figureInShownUnit<
  F extends { readonly value: number; readonly low: number; readonly high: number },
>(
  { value, low, high }: F,
  unit: string,
  system: UnitSystem,
): { readonly value: number; readonly low: number; readonly high: number; readonly unit: string } {
  const to = (x: number) => (Number.isFinite(x) ? inShownUnit(x, unit, system).value : x);
  return { value: to(value), low: to(low), high: to(high), unit: shownUnit(unit, system) };
}

/**
 * What a log is printed in: its `units` if it says them; else each test, and the recipes, in the system that most
 * readings were typed in (a reading counts once, by most of its figures). Bare numbers, seconds, percentages and ties
 * count as metric. A test that nobody typed in units of its own, such as a permeability read as a number, has none to show.
 * @example shownUnits(log).of("green compression")
 */
export function shownUnits({ units, batches }: Pick<Log, "units" | "batches">): ShownUnits {
  if (units !== undefined) return { of: () => units, recipe: units };
  const systems = new Map<TestName, UnitSystem>();
  const tests = Object.keys(workedUnits) as TestName[];
  for (const test of tests) {
    const readings = batches.flatMap((batch) => batch.readings.filter((reading) => reading.test === test));
    systems.set(test, most(readings.flatMap((reading) => systemOf(reading) ?? [])));
  }
  return { of: (test) => systems.get(test) ?? "metric", recipe: most(batches.flatMap(recipeSystems)) };
}

/**
 * What sievings are printed in: as the log asks for, else as most of their masses were typed.
 * @example sievedUnits(log) // "metric"
 */
export function sievedUnits({ units, sands }: Pick<Log, "units" | "sands">): UnitSystem {
  const masses = sands.flatMap(({ sievings }) =>
    sievings.flatMap(({ startG, retained }) => [startG, ...retained.map(({ mass }) => mass)]),
  );
  return units ?? most(masses.flatMap((mass) => (mass ? (typedSystem(mass) ?? []) : [])));
}

/** A number that is given outright says it all; readings of a rig vote among themselves. */
function systemOf({ worked, raw }: TestReading): UnitSystem | undefined {
  const given = worked && typedSystem(worked);
  if (given) return given;
  const typed = Object.values(raw).flatMap((one) => typedSystem(one) ?? []);
  return typed.length === 0 ? undefined : most(typed);
}

function recipeSystems({ recipe }: Batch): UnitSystem[] {
  const masses: readonly (keyof Recipe)[] = ["sandKg", "clayKg", "waterKg", "additiveKg"];
  return masses.flatMap((part) => {
    const mass = recipe?.[part] as Measured | undefined;
    return (mass && typedSystem(mass)) ?? [];
  });
}

function typedSystem({ text }: Measured): UnitSystem | undefined {
  const unit = readQuantity(text).value?.unit;
  if (!unit || unit.kind === "percent" || neutral.test(unit.text)) return undefined;
  return typedInUs.test(unit.text) ? "US" : "metric";
}

function most(systems: readonly UnitSystem[]): UnitSystem {
  const us = systems.filter((system) => system === "US").length;
  return us > systems.length - us ? "US" : "metric";
}
