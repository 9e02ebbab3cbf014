// Units made of others: powers, products, one division.

import type { Dimension, Unit } from "./unit.ts";
import { unitRow } from "./unit-simple.ts";
import type { UnitRow } from "./unit-table-row.ts";

interface Factor {
  readonly row: UnitRow;
  /** Below 0 under the line. */
  readonly power: number;
}

const wordPowers: Record<string, number> = { sq: 2, square: 2, cu: 3, cubic: 3 };

/** A unit in plain spelling such as "kg/m^3", "mPa·s" or "W/(m·K)"; undefined where a part is unknown. */
export function compoundUnit(plain: string): Unit | undefined {
  const factors = factorsOf(plain);
  if (!factors || factors.length === 0) return undefined;
  const dimension = [0, 0, 0, 0] as [number, number, number, number];
  let over = 1;
  let under = 1;
  for (const { row, power } of factors) {
    row.dimension.forEach((exponent, i) => {
      dimension[i as 0 | 1 | 2 | 3] += exponent * power;
    });
    const [up, down] = power > 0 ? row.ratio : [row.ratio[1], row.ratio[0]];
    over *= up ** Math.abs(power);
    under *= down ** Math.abs(power);
  }
  return Object.freeze({
    text: compoundText(factors),
    dimension: Object.freeze(dimension) as Dimension,
    factor: over / under,
    offset: 0,
    kind: "plain" as const,
  });
}

/** Undefined where a part is unknown, or where brackets are needed to tell what stands under the line. */
function factorsOf(plain: string): Factor[] | undefined {
  const [above, below, ...more] = plain.split("/");
  if (above === undefined || more.length > 1) return undefined;
  const parts: [text: string, sign: number][] =
    above === "1" && below ? [] : productOf(above).map((p) => [p, 1]);
  for (const divisor of [below, ...more]) {
    if (divisor === undefined) continue;
    const bracketed = /^\((.+)\)$/.exec(divisor)?.[1];
    if (bracketed === undefined && divisor.includes("·")) return undefined;
    // Within brackets a space stands for a product.
    parts.push(
      ...productOf(bracketed?.replaceAll(" ", "·") ?? divisor).map((p): [string, number] => [p, -1]),
    );
  }
  const factors = parts.map(([text, sign]) => factorOf(text, sign));
  return factors.every((factor) => factor !== undefined) ? factors : undefined;
}

function productOf(text: string): string[] {
  return text.replace(/^(m?Pa) s$/, "$1·s").split("·");
}

function factorOf(text: string, sign: number): Factor | undefined {
  const whole = unitRow(text);
  if (whole) return { row: whole, power: sign };
  const words = /^(sq|square|cu|cubic)\.? (.+)$/i.exec(text);
  if (words) {
    const row = unitRow(words[2]!);
    return row?.dimension.join() === "0,1,0,0"
      ? { row, power: sign * wordPowers[words[1]!.toLowerCase()]! }
      : undefined;
  }
  const raised = /^(.*?) ?(?:\^(-?[1-4])|([1-4]))$/.exec(text);
  const row = raised ? unitRow(raised[1]!) : undefined;
  return row && { row, power: sign * Number(raised![2] ?? raised![3]) };
}

function compoundText(factors: readonly Factor[]): string {
  const part = (sign: number): string[] =>
    factors
      .filter(({ power }) => Math.sign(power) === sign)
      .map(({ row, power }) => symbolOf(row) + (Math.abs(power) === 1 ? "" : "⁰¹²³⁴"[Math.abs(power)]));
  const [above, below] = [part(1), part(-1)];
  if (below.length === 0) return above.join("·");
  const divisor = below.length === 1 ? below[0] : `(${below.join("·")})`;
  return `${above.length === 0 ? "1" : above.join("·")}/${divisor}`;
}

/** In a compound a degree is a difference, so the word is dropped. */
function symbolOf(row: UnitRow): string {
  return row.text.replace(" difference", "");
}
