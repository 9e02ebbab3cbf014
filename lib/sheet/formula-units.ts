// What units do when figures are multiplied, divided and raised.

import { unitNamed } from "../quantity/read-unit.ts";
import type { Dimension, Unit } from "../quantity/unit.ts";

/** A unit of a product, and what the product of the plain numbers is to be multiplied by to be in it. */
export interface Product {
  /** Undefined: a plain number. */
  readonly unit: Unit | undefined;
  readonly scale: number;
}

interface Part {
  readonly unit: Unit;
  readonly power: number;
}

const superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const raised = /^(.*?)(⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+|\^-?[\d.]+)?$/u;

/**
 * The unit of a product (sign 1) or a quotient (sign −1). Units of the same kind become one, that of the left: mm · cm
 * is mm² with scale 10, g / kg a plain number with scale 0.001. Percent is no unit here: 3.2 % counts as 3.2.
 * Degrees in a product are degrees of difference.
 */
export function productUnit(left: Unit | undefined, right: Unit | undefined, sign: 1 | -1): Product {
  const parts = partsOf(left);
  let scale = 1;
  for (const { unit, power } of partsOf(right)) {
    const k = parts.findIndex((part) => sameDirection(part.unit, unit));
    const mine = parts[k];
    if (!mine) {
      parts.push({ unit, power: sign * power });
      continue;
    }
    scale *= (unit.factor / mine.unit.factor) ** (sign * power);
    parts[k] = { unit: mine.unit, power: mine.power + sign * power };
  }
  return built(parts, scale);
}

/** The unit of a power: cm raised to 2 is cm², m² raised to 0.5 is m. */
export function powerUnit(base: Unit | undefined, exponent: number): Product {
  return built(
    partsOf(base).map(({ unit, power }) => ({ unit, power: power * exponent })),
    1,
  );
}

/** Degrees between two temperatures, in steps of the unit. */
export function differenceUnit(temperature: Unit): Unit {
  return unitNamed(temperature.factor === 1 ? "°C difference" : "°F difference")!;
}

/** Percent with no basis said. */
export const percent: Unit = unitNamed("%")!;

function partsOf(unit: Unit | undefined): Part[] {
  if (!unit || unit.kind === "percent") return [];
  const [above = "", below = ""] = unit.text.split("/");
  const read = (text: string, sign: number): (Part | undefined)[] =>
    text === "" || text === "1" ? [] : text.split("·").map((part) => partOf(part, sign));
  const parts = [...read(above, 1), ...read(below.replace(/^\((.*)\)$/, "$1"), -1)];
  return parts.every((part) => part !== undefined) ? parts : [{ unit, power: 1 }];
}

function partOf(text: string, sign: number): Part | undefined {
  const [, name = "", power] = raised.exec(text)!;
  const unit = unitNamed(name);
  return unit && { unit, power: sign * numberOf(power) };
}

function numberOf(power: string | undefined): number {
  if (power === undefined) return 1;
  if (power.startsWith("^")) return Number(power.slice(1));
  return Number([...power].map((c) => (c === "⁻" ? "-" : superscripts.indexOf(c))).join(""));
}

function sameDirection(a: Unit, b: Unit): boolean {
  return a.dimension.every((exponent, k) => exponent === b.dimension[k]);
}

function built(all: readonly Part[], scale: number): Product {
  const parts = all
    .map(({ unit, power }) => ({ unit, power: Math.round(power * 1e9) / 1e9 }))
    .filter(({ power }) => power !== 0);
  const dimension = [0, 1, 2, 3].map((k) =>
    parts.reduce((sum, { unit, power }) => sum + unit.dimension[k as 0 | 1 | 2 | 3] * power, 0),
  ) as unknown as Dimension;
  const factor = parts.reduce((product, { unit, power }) => product * unit.factor ** power, 1);
  if (dimension.every((exponent) => exponent === 0)) return { unit: undefined, scale: scale * factor };
  const [only] = parts;
  const simple =
    parts.length === 1 && only?.power === 1
      ? dimension.join() === "0,0,0,1"
        ? differenceUnit(only.unit)
        : only.unit
      : undefined;
  return {
    unit: simple ?? { text: textOf(parts), dimension, factor, offset: 0, kind: "plain" },
    scale,
  };
}

function textOf(parts: readonly Part[]): string {
  const side = (sign: number): string[] =>
    parts
      .filter(({ power }) => Math.sign(power) === sign)
      .map(({ unit, power }) => unit.text.replace(" difference", "") + powerText(Math.abs(power)));
  const [above, below] = [side(1), side(-1)];
  const top = above.length === 0 ? "1" : above.join("·");
  if (below.length === 0) return top;
  return `${top}/${below.length === 1 ? below[0] : `(${below.join("·")})`}`;
}

function powerText(power: number): string {
  if (power === 1) return "";
  return Number.isInteger(power)
    ? [...String(power)].map((digit) => superscripts[Number(digit)]).join("")
    : `^${power}`;
}
