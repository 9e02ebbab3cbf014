// A figure with its ±, as it stands on a page.

import { printNumber, roundTo, tenDigits } from "./print-number.ts";

export { printNumber, roundTo } from "./print-number.ts";

export interface FigureToPrint {
  readonly value: number;
  /** Ends of the 95 % interval. */
  readonly low: number;
  readonly high: number;
  /** Not printed; there so that a figure can be passed whole. */
  readonly mean?: number;
  /** Stands after the figure. */
  readonly unit?: string | { readonly text: string } | undefined;
  /** True where a part of the doubt is not known, so that the ± is a lower bound. */
  readonly atLeast?: boolean;
  /** What the quantity cannot go below or above: 0 for a mass, 0 and 100 for a share. */
  readonly min?: number;
  readonly max?: number;
}

export interface PrintedFigure {
  /** "69.1 ± 0.4", "69.1 ± at least 0.4 kPa", "62 to 75", "12.4". */
  readonly text: string;
  /** The value alone, to the same place; trailing zeros kept. */
  readonly value: string;
  readonly plusMinus?: string;
  /** The ends alone, where the form is a range. */
  readonly low?: string;
  readonly high?: string;
  readonly form: "plus-minus" | "range" | "plain";
}

/**
 * Prints a value with the half-width of its 95 % interval (high − low)/2, rounded to two significant digits when its
 * leading three digits are 100 to 354 and to one when they are 355 to 949; 950 to 999 rounds up to the next power of
 * ten with two digits. Where that would narrow it by more than a twentieth (0.043 to 0.04) it is rounded up, or what is
 * promised for 95 of 100 would hold for 92. The value is rounded to the same place. Where the two halves differ by more than a fifth of the larger, or an
 * end passes min or max: "low to high", held to the limits. No width: the value at up to six significant digits.
 * A width that is not known (an end not finite, or no width with atLeast) is said in words, never left out.
 * Everything is first rounded to ten significant digits, so that node and browsers print the same. low above high: throws.
 * Outside 1e-5 to 1e9 the figure is given with a power of ten.
 * Source: Particle Data Group, Review of Particle Physics, Introduction 5.3 (rounding); GUM (JCGM 100:2008) 7.2.6.
 * @example printFigure({ value: 69.12, low: 68.72, high: 69.5 }).text // "69.1 ± 0.4"
 */
export function printFigure(figure: FigureToPrint): PrintedFigure {
  const [value, low, high] = [tenDigits(figure.value), tenDigits(figure.low), tenDigits(figure.high)];
  if (low > high) throw new RangeError(`a figure from ${low} to ${high} has its ends the wrong way round`);
  const unitText = typeof figure.unit === "string" ? figure.unit : figure.unit?.text;
  const unit = unitText === undefined || unitText === "" ? "" : ` ${unitText}`;
  if (!Number.isFinite(value)) return { text: "not known", value: "not known", form: "plain" };

  const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY, atLeast = false } = figure;
  const ends = { low: Math.max(low, min), high: Math.min(high, max) };
  // Halved first: the width of the largest figures is no number.
  const half = tenDigits(ends.high / 2 - ends.low / 2);
  if (!Number.isFinite(half)) {
    const plain = printPlain(value);
    return { text: `${plain}${unit} (± not known)`, value: plain, form: "plain" };
  }
  if (!(half > 0)) {
    const plain = printPlain(Math.min(Math.max(value, min), max));
    return { text: `${plain}${unit}${atLeast ? " (± not known)" : ""}`, value: plain, form: "plain" };
  }

  const power = powerOfTen(Math.max(Math.abs(value), half));
  const scaled = (x: number): number => tenDigits(x / 10 ** power);
  const decimals = decimalsFor(scaled(half));
  const print = (x: number): string => printNumber(scaled(x), decimals);
  const printed = print(value);
  const times = power === 0 ? "" : ` × 10${superscript(power)}`;
  const bracketed = (text: string): string => `${times === "" ? text : `(${text})${times}`}${unit}`;
  if (low < min || high > max || unevenHalves(low, value, high)) {
    const range = { low: print(ends.low), high: print(ends.high) };
    const text = bracketed(`${range.low} to ${range.high}`) + (atLeast ? " or wider" : "");
    return { text, value: printed, ...range, form: "range" };
  }
  const plusMinus = printNumber(halfRounded(scaled(half), decimals), decimals);
  const text = bracketed(`${printed} ± ${atLeast ? "at least " : ""}${plusMinus}`);
  return { text, value: printed, plusMinus, form: "plus-minus" };
}

/** More than a fifth of the larger apart; also where the value lies outside its interval. */
function unevenHalves(low: number, value: number, high: number): boolean {
  const [below, above] = [value - low, high - value];
  // Ten digits of each leave the difference of the halves uncertain by this much.
  const slack = 2e-9 * Math.max(Math.abs(low), Math.abs(high));
  return Math.abs(below - above) > 0.2 * Math.max(below, above) + slack;
}

/** Decimals to which a half-width is rounded; negative for tens and more. */
function decimalsFor(half: number): number {
  const [digits, exponent] = half.toExponential(9).split("e") as [string, string];
  const leading = Number(digits.replace(".", "").slice(0, 3));
  return (leading <= 354 ? 1 : 0) - Number(exponent);
}

/** How much narrower than it is a ± may be printed. */
const mostNarrowed = 0.05;

/** To the nearest, or up where that takes too much off. */
function halfRounded(half: number, decimals: number): number {
  const nearest = roundTo(half, decimals);
  return nearest < (1 - mostNarrowed) * half ? roundTo(nearest + 10 ** -decimals, decimals) : nearest;
}

/** Six significant digits at most, without trailing zeros. */
function printPlain(value: number): string {
  const power = powerOfTen(Math.abs(value));
  const shown = Number((value / 10 ** power).toPrecision(6));
  const decimals = Math.max(0, (`${shown}`.split(".")[1] ?? "").length);
  return printNumber(shown, decimals) + (power === 0 ? "" : ` × 10${superscript(power)}`);
}

/** 0 for numbers that a bench has to do with; the power of ten of very large and very small ones. */
function powerOfTen(size: number): number {
  if (size === 0 || (size >= 1e-5 && size < 1e9)) return 0;
  // Powers below are not exact, then nothing: what is smaller keeps zeros in front.
  return Math.max(-300, Number(size.toExponential(9).split("e")[1]));
}

function superscript(power: number): string {
  return [...`${power}`].map((c) => (c === "-" ? "⁻" : "⁰¹²³⁴⁵⁶⁷⁸⁹"[Number(c)])).join("");
}
