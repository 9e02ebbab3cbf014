// Which figure, with its decimal point elsewhere or in another unit, would make a sieving agree with what went on.

import { figureTyped } from "./swapped-digits.ts";

export interface MassTyped {
  /** As typed: "3.2 kg". */
  readonly text: string;
  readonly valueG: number;
}

export interface Slip {
  /** 0 is the start mass, 1 the first row. */
  readonly index: number;
  readonly typed: string;
  /** What may have been meant: "18.4" for "184", "3.2 g" for "3.2 kg", "0.05 kg" for "0.05". */
  readonly meant: string;
}

/** Grams in one of each, for a mass that was written in another unit than it was weighed in. */
const units = { kg: 1000, oz: 28.349523125, lb: 453.59237 } as const;

/**
 * The one mass that by a slip of its decimal point (one or two places), or in another unit, makes the rows agree with
 * the start mass. Undefined where none does, or more than one: then nothing is known.
 * A text that is not a plain number with perhaps a unit is passed over.
 *
 *     slippedPoint({ text: "50.0", valueG: 50 }, [{ text: "184", valueG: 184 }, { text: "31.6", valueG: 31.6 }])
 *     // { index: 1, typed: "184", meant: "18.4" }
 */
export function slippedPoint(start: MassTyped, rows: readonly MassTyped[]): Slip | undefined {
  const total = rows.reduce((sum, { valueG }) => sum + valueG, 0);
  const slips = [start, ...rows].flatMap(({ text, valueG }, index) => {
    const typed = figureTyped(text);
    if (typed === undefined || valueG === 0) return [];
    const agrees = ({ factor, within }: { readonly factor: number; readonly within: number }) =>
      index === 0
        ? near(total, valueG * factor, within)
        : near(total + valueG * (factor - 1), start.valueG, within);
    const moved = [0.01, 0.1, 10, 100].map((factor) => ({
      factor,
      within: pointWithin,
      meant: text.trim().replace(typed, String(Number((Number(typed) * factor).toPrecision(12)))),
    }));
    const meant = [...inOtherUnits(typed, unitOf(text)), ...moved].find(agrees)?.meant;
    return meant === undefined ? [] : [{ index, typed: text.trim(), meant }];
  });
  return slips.length === 1 ? slips[0] : undefined;
}

/**
 * The unit in which all rows together would come to the start mass, where they are bare numbers or all in one unit: "kg"
 * for 0.0499 of 50 g, "g" for masses that were written with kg. Undefined where there is none.
 */
export function unitOfAll(start: MassTyped, rows: readonly MassTyped[]): string | undefined {
  const total = rows.reduce((sum, { valueG }) => sum + valueG, 0);
  const typed = new Set(rows.filter(({ valueG }) => valueG > 0).map(({ text }) => unitOf(text)));
  const [only] = typed;
  if (only === undefined || typed.size > 1) return undefined;
  return inOtherUnits("", only).find(({ factor }) => near(total * factor, start.valueG, unitWithin))?.unit;
}

/** Shares of the start mass (our own): as much as a sum may differ, and for ounces what one decimal rounds away. */
const pointWithin = 0.01;
const unitWithin = 0.03;

const near = (a: number, b: number, share: number): boolean => Math.abs(a - b) <= share * b;

const unitOf = (text: string): string => /^\s*[\d.]+\s*([a-z]*)/i.exec(text)?.[1]?.toLowerCase() ?? "";

/** What a bare number, or one in grams, comes to in another unit; and one in another unit, in grams. */
function inOtherUnits(typed: string, unit: string) {
  const known = Object.entries(units);
  if (unit === "" || unit === "g")
    return known.map(([other, factor]) => ({
      unit: other,
      meant: `${typed} ${other}`,
      factor,
      within: unitWithin,
    }));
  const inGrams = known.find(([other]) => other === unit)?.[1];
  return inGrams === undefined
    ? []
    : [{ unit: "g", meant: `${typed} g`, factor: 1 / inGrams, within: unitWithin }];
}
