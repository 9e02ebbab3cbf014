// Numbers as text.

/**
 * Ten significant digits: what differs beyond them between one machine and another is not printed. The same number as
 * Number(value.toPrecision(10)), without a text where the tenth digit is clear of a tie: a whole number below 2^53 over,
 * or times, a power of ten that a computer holds exactly is rounded once (W. D. Clinger, PLDI 1990).
 * @example tenDigits(1 / 3) // 0.3333333333
 */
export function tenDigits(value: number): number {
  const size = Math.abs(value);
  const places = 9 - Math.floor(Math.log10(size));
  if (places >= -22 && places <= 22) {
    const power = powers[Math.abs(places)]!;
    const scaled = places < 0 ? size / power : size * power;
    const whole = Math.floor(scaled);
    const rest = scaled - whole;
    if (whole >= 1e9 && whole < 1e10 && Math.abs(rest - 0.5) > 1e-4) {
      const digits = rest < 0.5 ? whole : whole + 1;
      const rounded = places < 0 ? digits * power : digits / power;
      return value < 0 ? -rounded : rounded;
    }
  }
  return Number.isFinite(value) ? Number(value.toPrecision(10)) : value;
}

/** Powers of ten that are exact. */
const powers = Array.from({ length: 23 }, (_, k) => Number(`1e${k}`));

/**
 * Rounds to a number of decimals, half away from zero, going by the digits that the number is written with:
 * 2.675 to 2 decimals is 2.68 although the computer holds 2.67499999999999982. Negative decimals round to tens, hundreds.
 * Decimals: a whole number from −300 to 300, else throws. NaN and infinity stay as they are; −0 becomes 0.
 * @example roundTo(1.005, 2) // 1.01
 */
export function roundTo(value: number, decimals: number): number {
  if (!Number.isInteger(decimals) || Math.abs(decimals) > 300) {
    throw new RangeError(`a number is rounded to a whole number of decimals, not ${decimals}`);
  }
  if (!Number.isFinite(value)) return value;
  const shifted = Math.round(shift(Math.abs(value), decimals));
  const size = shift(shifted, -decimals);
  return value < 0 && size !== 0 ? -size : size;
}

/** Moves the decimal point in the written digits: a multiplication would bring the binary rounding back in. */
function shift(size: number, places: number): number {
  const [digits, exponent] = size.toExponential().split("e") as [string, string];
  return Number(`${digits}e${Number(exponent) + places}`);
}

/**
 * The number with that many decimals, trailing zeros kept, a true minus sign and no exponent; rounded first to ten
 * significant digits, then as roundTo. Negative decimals give whole tens or hundreds. NaN and infinity: "not known".
 * @example printNumber(-2.675, 2) // "−2.68"
 */
export function printNumber(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return "not known";
  const rounded = roundTo(tenDigits(value), decimals);
  // Above 1e21 toFixed would fall back on an exponent.
  const size = Math.abs(rounded);
  const text = size < 1e21 ? size.toFixed(Math.min(100, Math.max(0, decimals))) : BigInt(size).toString();
  return rounded < 0 ? `−${text}` : text;
}
