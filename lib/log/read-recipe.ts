// What went into a batch: masses, and clay as a share where the share says of what.

import { printNumber } from "../quantity/print.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Recipe } from "./batch.ts";
import { soundMasses } from "./check-recipe-masses.ts";
import { fractionOrPercent } from "./complaints-agreement.ts";
import { clayBasis, clayShareAlone, ozOfWater, recipeWithoutSand } from "./complaints-batch.ts";
import { type Fields, fieldsOf, mapOf } from "./fields.ts";
import { recipeKeys } from "./log-keys.ts";
import { inUnit, type MeasuredField, measuredOf, quantityOf } from "./measured.ts";
import type { Entry, LogNode, Report } from "./node.ts";
import { declared } from "./read-rig.ts";
import type { Instruments } from "./read-test.ts";
import type { Measured } from "./types.ts";

const mass = (what: string): MeasuredField => ({ what, unit: "kg", most: 100_000 });
const share = (what: string, of: string): MeasuredField => ({ what, unit: `% of ${of}`, most: 60 });

export function readRecipe(
  entry: Entry | undefined,
  instruments: Pick<Instruments, "scales" | "scaleSection">,
  report: Report,
): Recipe | undefined {
  const map = mapOf(entry?.value, "made of", report);
  if (!map || !entry) return undefined;
  const fields = fieldsOf(map, recipeKeys, "under made of", report);
  const sandKg = measuredOf(fields.get("sand"), { ...mass("sand"), aboveZero: true }, report);
  const waterKg = waterOf(fields, report);
  const additiveKg = measuredOf(fields.get("additive"), mass("additive"), report);
  const sandMoisturePercent = measuredOf(
    fields.get("sand moisture"),
    share("sand moisture", "damp mass"),
    report,
  );
  const clay = fields.get("bentonite") ? "bentonite" : "clay";
  const moistureKey = `${clay} moisture`;
  const clayMoisturePercent = measuredOf(fields.get(moistureKey), share(moistureKey, "damp mass"), report);
  const before = { sandKg, waterKg, additiveKg, sandMoisturePercent, clayMoisturePercent };
  const clayKg = clayOf(fields, clay, before, report);
  const { scales, scaleSection } = instruments;
  const scale = declared(fields.get("scale"), "scale", scales, scaleSection, report);
  if (!fields.get("sand") && map.entries.length > 0) report(recipeWithoutSand(), entry.keyPlace);
  warnOfFraction(fields.get("sand moisture"), "sand moisture", sandMoisturePercent, report);
  warnOfFraction(fields.get(moistureKey), moistureKey, clayMoisturePercent, report);
  const recipe = { ...defined({ ...before, clayKg }), ...(scale ? { scale } : {}) };
  return soundMasses(recipe, clay, report);
}

/** A bare number below this for water in sand or bagged clay is as likely a fraction of one (our own). */
const fractionBelow = 0.2;

function warnOfFraction(
  node: LogNode | undefined,
  what: string,
  percent: Measured | undefined,
  report: Report,
): void {
  if (!percent || node?.kind !== "text" || !/^\d*\.?\d+$/.test(node.text.trim())) return;
  const { value, text, place } = percent;
  if (value > 0 && value < fractionBelow)
    report(fractionOrPercent(what, text, `${Number((100 * value).toPrecision(6))} %`), place);
}

type Parts = { readonly [name in Exclude<keyof Recipe, "scale">]?: Measured | undefined };

function waterOf(fields: Fields, report: Report): Measured | undefined {
  const quantity = quantityOf(fields.get("water"), "water", report);
  if (!quantity) return undefined;
  if (quantity.unit?.text === "oz") {
    const grams = (perOz: number) => printNumber(quantity.value * perOz, 0);
    report(ozOfWater(quantity.text, grams(28.3495), grams(29.5735), grams(28.4131)), quantity.place);
  }
  return inUnit(quantity, quantity.place, { ...mass("water"), alsoIn: ["l"] }, report);
}

function clayOf(fields: Fields, key: string, parts: Parts, report: Report): Measured | undefined {
  const quantity = quantityOf(fields.get(key), key, report);
  if (!quantity) return undefined;
  if (quantity.unit?.kind !== "percent") return inUnit(quantity, quantity.place, mass(key), report);
  const { value, text, place } = quantity;
  const of = quantity.unit.of;
  const dry = dryMasses(parts);
  if (of === undefined) {
    const reading = (basis: string, words: string) => {
      const kg = dry && clayFromShare(value, basis, dry);
      return kg === undefined ? words : `${words} (${printNumber(kg, kg < 1 ? 3 : 2)} kg)`;
    };
    const damp = reading("damp mass", `${value} % of damp mass`);
    const mix = reading("dry mix", `${value} % of dry mix`);
    report(clayBasis(key, text, damp, mix, reading("sand", `${value} per 100 of sand`)), place);
    return undefined;
  }
  const dryKg = dry && clayFromShare(value, of, dry);
  if (dryKg === undefined) {
    report(clayShareAlone(key, text), place);
    return undefined;
  }
  // The share counts dry clay; the recipe keeps what was weighed.
  const weighed = 1 / (1 - (parts.clayMoisturePercent?.value ?? 0) / 100);
  const scaled = (kg: number): number => Number((kg * weighed).toPrecision(13));
  return { value: scaled(dryKg), text, place, ...plusMinusOf(quantity, scaled(dryKg)) };
}

/** The ± of a share, carried over in proportion. */
function plusMinusOf({ value, plusMinus }: Quantity, kg: number): Pick<Measured, "plusMinus"> {
  if (!plusMinus || value === 0) return {};
  return { plusMinus: { ...plusMinus, size: (plusMinus.size * kg) / value } };
}

interface DryMasses {
  readonly sandKg: number;
  readonly waterKg: number;
  readonly additiveKg: number;
  /** Of the bagged clay, as a fraction of its own mass. */
  readonly clayWater: number;
}

function dryMasses({
  sandKg,
  waterKg,
  additiveKg,
  sandMoisturePercent,
  clayMoisturePercent,
}: Parts): DryMasses | undefined {
  if (!sandKg) return undefined;
  const brought = (sandKg.value * (sandMoisturePercent?.value ?? 0)) / 100;
  return {
    sandKg: sandKg.value - brought,
    waterKg: (waterKg?.value ?? 0) + brought,
    additiveKg: additiveKg?.value ?? 0,
    clayWater: (clayMoisturePercent?.value ?? 0) / 100,
  };
}

/** Dry clay in kg from its share: of sand x = ps; of dry mix x = p(s + a + x); of damp mass x = p(s + a + w + x/(1 − m)). */
function clayFromShare(percent: number, of: string, dry: DryMasses): number | undefined {
  const p = percent / 100;
  const { sandKg, waterKg, additiveKg, clayWater } = dry;
  if (p >= 1 - clayWater) return undefined;
  if (/^(the |dry )?sand$/.test(of)) return p * sandKg;
  if (/^dry (mix|mass)$/.test(of)) return (p / (1 - p)) * (sandKg + additiveKg);
  if (/^(damp|wet) (mass|mix|sand)$/.test(of))
    return (p / (1 - p / (1 - clayWater))) * (sandKg + additiveKg + waterKg);
  return undefined;
}

function defined(parts: Parts): Recipe {
  return Object.fromEntries(Object.entries(parts).filter(([, part]) => part !== undefined)) as Recipe;
}
