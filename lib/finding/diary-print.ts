// How a diary's numbers are told: the page says in which unit, else the library's own.

import type { DiaryProperty } from "../log/diary-properties.ts";
import { printFigure } from "../quantity/print.ts";
import type { DiarySeries } from "../trial/control-series.ts";
import type { Ends } from "./ends.ts";

type Of = Pick<DiarySeries, "unit" | "test">;

export interface DiaryPrint {
  /** A number or a difference of two, with its unit: "73.6 kPa". */
  number(value: number, of: Of): string;
  /** A half-width, to two figures: "2.4 kPa". */
  about(value: number, of: Of): string;
  /** Without its unit, for the first of two: "69.3". */
  bare(value: number, of: Of): string;
  /** With its ±: "73.6 ± 0.7 kPa". */
  figure(of: Of, at: Ends & { readonly value: number }, atLeast?: boolean): string;
}

export const diaryInOwnUnits: DiaryPrint = {
  about: (value, { unit }) => `${twoFigures(value)} ${unit}`.trimEnd(),
  bare: threeFigures,
  number: (value, { unit }) => `${threeFigures(value)} ${unit}`.trimEnd(),
  figure: ({ unit }, { value, low, high }, atLeast = false) =>
    figureWords({ value, low, high }, unit, atLeast),
};

/** Three figures, four from 1000 on. */
export function plainNumber(value: number): string {
  return String(Number(value.toPrecision(Math.abs(value) >= 1000 ? 4 : 3))).replace("-", "−");
}

export function twoFigures(value: number): string {
  return plainNumber(Number(value.toPrecision(2)));
}

/** With their zeros, so that two of a sentence read alike: "73.1 to 64.0". */
export function threeFigures(value: number): string {
  const size = Math.abs(value);
  const text = size >= 1000 ? value.toFixed(0) : size < 1e-3 ? String(value) : value.toPrecision(3);
  return text.replace("-", "−");
}

export function figureWords(
  { value, low, high }: Ends & { readonly value: number },
  unit: string,
  atLeast: boolean,
): string {
  if (!(low < high)) return `${plainNumber(value)} ${unit}`.trimEnd();
  return printFigure({ value, low: Math.min(low, value), high: Math.max(high, value), unit, atLeast }).text;
}

/** "Fineness" is told as the trade does. */
export function propertyName(property: DiaryProperty): string {
  return property === "fineness" ? "fineness (GFN)" : property;
}

export function capitalName(property: DiaryProperty): string {
  const name = propertyName(property);
  return name.charAt(0).toUpperCase() + name.slice(1);
}
