// What the labels of an axis say, as d3 and Vega write numbers.

import type { PlainScale } from "./plain-spec.ts";

/**
 * Writes the numbers at the ticks of a scale. "~f" gives as many decimals as tell so many ticks apart, twelve on a
 * logarithmic scale, and leaves idle noughts off; no format gives the same decimals and leaves the noughts. Undefined
 * where Vega would write thousands with commas.
 */
export function tickTexts(
  { type, domain: [from, to] }: Pick<PlainScale, "type" | "domain">,
  values: readonly number[],
  { format, count }: { readonly format: "~f" | undefined; readonly count: number },
): readonly string[] | undefined {
  if (format === undefined && (type === "log" || values.some((value) => Math.abs(value) >= 999)))
    return undefined;
  const decimals = type === "log" ? 12 : decimalsOf(Math.min(from, to), Math.max(from, to), count);
  return values.map((value) => {
    const text = value.toFixed(decimals);
    const short = format && text.includes(".") ? text.replace(/\.?0+$/, "") : text;
    // A minus before nought is none.
    return Number(text) === 0 ? short.replace("-", "") : short.replace("-", "−");
  });
}

/** Decimals of the step of so many round ticks between two numbers. */
function decimalsOf(from: number, to: number, count: number): number {
  const step = roundStep(from, to, count);
  return step > 0 ? Math.max(0, -Number(step.toExponential().split("e")[1])) : 0;
}

/** d3's step: 1, 2 or 5 times a power of ten, whichever is nearest in logarithm. */
function roundStep(from: number, to: number, count: number): number {
  const step = (to - from) / count;
  const power = Math.floor(Math.log10(step));
  const error = step / 10 ** power;
  const factor = error >= Math.sqrt(50) ? 10 : error >= Math.sqrt(10) ? 5 : error >= Math.sqrt(2) ? 2 : 1;
  // Through its inverse below one, as d3 does it for the sake of the last digit.
  const round = power < 0 ? 1 / (10 ** -power / factor) : 10 ** power * factor;
  const none = Math.floor(to / round) < Math.ceil(from / round);
  return none && count < 2 ? roundStep(from, to, count * 2) : round;
}
