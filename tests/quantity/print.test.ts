import fc from "fast-check";
import { expect, test } from "vitest";
import { type FigureToPrint, printFigure, printNumber, roundTo } from "../../lib/quantity/print.ts";
import { readQuantity } from "../../lib/quantity/read-quantity.ts";

const around = (value: number, half: number, rest: Partial<FigureToPrint> = {}): string =>
  printFigure({ value, low: value - half, high: value + half, ...rest }).text;

test("the Particle Data Group's rule, with examples that others give for it", () => {
  // Review of Particle Physics (2018), Introduction 5.3: 100–354 two digits, 355–949 one, 950–999 up to 1000 with two.
  // The review's own example, from memory: 0.827 ± 0.119 becomes 0.83 ± 0.12, 0.827 ± 0.367 becomes 0.8 ± 0.4.
  expect(around(0.827, 0.119)).toBe("0.83 ± 0.12");
  expect(around(0.827, 0.367)).toBe("0.8 ± 0.4");
  // STAR collaboration's guidance on the rule: errors 0.0123261 and 0.0766099 round to 0.012 and 0.08.
  expect(around(0.279008, 0.0123261)).toBe("0.279 ± 0.012");
  expect(around(0.279008, 0.0766099)).toBe("0.28 ± 0.08");
  // The documentation of the Ruby gem pdground 0.1.4: 12.2135 with 0.03215, and with 0.06515.
  expect(around(12.2135, 0.03215)).toBe("12.214 ± 0.032");
  expect(around(12.2135, 0.06515)).toBe("12.21 ± 0.07");
});

test("the borders of the rule", () => {
  expect(around(5, 0.1)).toBe("5.00 ± 0.10");
  expect(around(5, 0.354)).toBe("5.00 ± 0.35");
  expect(around(5, 0.355)).toBe("5.0 ± 0.4");
  expect(around(5, 0.94)).toBe("5.0 ± 0.9");
  expect(around(5, 0.95)).toBe("5.0 ± 1.0");
  expect(around(50, 9.99)).toBe("50 ± 10");
  expect(around(45_612, 1234)).toBe("45600 ± 1200");
  expect(around(45_612, 620)).toBe("45600 ± 600");
});

// GUM (JCGM 100:2008) 7.2.6: a ± may be rounded up rather than to the nearest digit; its own example is 10.47 to 11.
test("a ± that rounding would narrow by more than a twentieth is rounded up, in the same places", () => {
  expect(around(5, 0.42)).toBe("5.0 ± 0.4");
  expect(around(5, 0.422)).toBe("5.0 ± 0.5");
  expect(around(5, 0.949)).toBe("5.0 ± 1.0");
  expect(around(45_612, 640)).toBe("45600 ± 700");
  expect(around(3e-9, 4.3e-11)).toBe("(3.00 ± 0.05) × 10⁻⁹");
  for (let half = 0.1; half < 1; half += 0.0007) {
    const printed = Number(around(5, half).split("± ")[1]);
    expect(printed / half).toBeGreaterThan(0.949);
    expect(printed / half).toBeLessThan(1.2);
  }
});

test("examples of the design: signs, zeros, units, limits", () => {
  expect(around(69.12, 0.4)).toBe("69.1 ± 0.4");
  expect(around(69.12, 0.4, { atLeast: true })).toBe("69.1 ± at least 0.4");
  expect(around(62, 2.04, { unit: "kPa" })).toBe("62.0 ± 2.0 kPa");
  expect(around(-2.5, 0.2, { unit: { text: "°C" } })).toBe("−2.50 ± 0.20 °C");
  expect(around(-0.001, 0.4)).toBe("0.0 ± 0.4");
  expect(printFigure({ value: 12.4, low: 12.4, high: 12.4 })).toEqual({
    text: "12.4",
    value: "12.4",
    form: "plain",
  });
  expect(around(1 / 3, 0)).toBe("0.333333");
  expect(around(123_456_789, 0)).toBe("123457000");
});

test("uneven halves and physical limits give a range", () => {
  expect(printFigure({ value: 67, low: 62, high: 75 })).toEqual({
    text: "62 to 75",
    value: "67",
    low: "62",
    high: "75",
    form: "range",
  });
  // Halves of 10 and 8 differ by just a fifth of the larger, 10 and 7.9 by more.
  expect(printFigure({ value: 50, low: 40, high: 58 }).form).toBe("plus-minus");
  expect(printFigure({ value: 50, low: 40, high: 57.9 }).text).toBe("40 to 58");
  expect(around(0.3, 0.41, { min: 0 })).toBe("0.0 to 0.7");
  expect(around(98.2, 2.6, { min: 0, max: 100, unit: "%" })).toBe("95.6 to 100.0 %");
  expect(around(0.3, 0.41, { min: 0, atLeast: true })).toBe("0.0 to 0.7 or wider");
  expect(printFigure({ value: 5, low: 6, high: 8 }).text).toBe("6.0 to 8.0");
  expect(around(-3, 1, { min: 0 })).toBe("0");
});

test("a width that is not known is said, never left out", () => {
  const everything = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
  expect(printFigure({ value: 69.1, ...everything }).text).toBe("69.1 (± not known)");
  expect(printFigure({ value: 69.1, ...everything, min: 0, max: 100 }).text).toBe("0 to 100");
  expect(around(69.1, 0, { atLeast: true, unit: "g" })).toBe("69.1 g (± not known)");
  expect(around(69.1, Number.NaN).endsWith("(± not known)")).toBe(true);
  expect(around(Number.NaN, 1)).toBe("not known");
  expect(() => printFigure({ value: 1, low: 2, high: 0 })).toThrow(RangeError);
});

test("numbers far from the bench take a power of ten", () => {
  expect(around(3.08e-13, 5.2e-15, { unit: "m²" })).toBe("(3.08 ± 0.05) × 10⁻¹³ m²");
  expect(around(1.7e-8, 0)).toBe("1.7 × 10⁻⁸");
  expect(around(2.5e12, 1.2e11)).toBe("(2.50 ± 0.12) × 10¹²");
});

test("rounding goes by the written digits, half away from zero", () => {
  // 2.675 and 1.005 are held as 2.67499999999999982 and 1.00499999999999989: the usual traps of binary rounding.
  expect(roundTo(2.675, 2)).toBe(2.68);
  expect(roundTo(1.005, 2)).toBe(1.01);
  expect(roundTo(-2.5, 0)).toBe(-3);
  expect(roundTo(0.5, 0)).toBe(1);
  expect(roundTo(1.45, 1)).toBe(1.5);
  expect(roundTo(8.345, 2)).toBe(8.35);
  expect(roundTo(1250, -2)).toBe(1300);
  expect(roundTo(1e-7, 3)).toBe(0);
  expect(Object.is(roundTo(-0.001, 2), 0)).toBe(true);
  expect(roundTo(Number.NaN, 2)).toBeNaN();
  expect(() => roundTo(1, 0.5)).toThrow(RangeError);
});

test("numbers are printed with their zeros, a true minus and no exponent", () => {
  expect(printNumber(3.2, 2)).toBe("3.20");
  expect(printNumber(-3.2, 2)).toBe("\u22123.20");
  expect(printNumber(-0.001, 2)).toBe("0.00");
  expect(printNumber(1e21, 0)).toBe("1000000000000000000000");
  expect(printNumber(1234.5, -2)).toBe("1200");
  expect(printNumber(Number.POSITIVE_INFINITY, 2)).toBe("not known");
  // The last bits of two machines may differ; the print may not.
  expect(printNumber(0.285 - 1e-15, 2)).toBe(printNumber(0.285 + 1e-15, 2));
});

const benchValue = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const benchHalf = fc.double({ min: -4, max: 5, noNaN: true }).map((e) => 10 ** e);

test("what is printed is read back to the printed digits, and within half a place of the truth", () => {
  fc.assert(
    fc.property(benchValue, benchHalf, (value, half) => {
      const printed = printFigure({ value, low: value - half, high: value + half, unit: "g" });
      expect(printed.form).toBe("plus-minus");
      const read = readQuantity(printed.text).value!;
      const decimals = (printed.plusMinus!.split(".")[1] ?? "").length;
      expect(printNumber(read.value, decimals)).toBe(printed.value);
      expect(printNumber(read.plusMinus!.size, decimals)).toBe(printed.plusMinus);
      expect(read.unit?.text).toBe("g");
      // Ten digits are kept of each end.
      const noise = 1e-9 * (Math.abs(value) + half);
      // 949 rounds to 9 and 355 to 4: never more than an eighth off; the value never by more than half a place,
      // which is at most a seventh of the half-width (0.5/3.55).
      expect(Math.abs(read.plusMinus!.size - half)).toBeLessThanOrEqual(half * 0.13 + noise);
      expect(Math.abs(read.value - value)).toBeLessThanOrEqual(half * 0.142 + noise);
      expect(printed.value.split(".")[1]?.length).toBe(printed.plusMinus!.split(".")[1]?.length);
    }),
  );
});

test("so is what is printed with a power of ten, and a figure alone", () => {
  const value = fc.tuple(fc.double({ min: -9, max: 9, noNaN: true }), fc.integer({ min: -250, max: 250 }));
  fc.assert(
    fc.property(value, fc.double({ min: -7, max: 1, noNaN: true }), fc.boolean(), ([m, e], share, exact) => {
      const middle = m * 10 ** e;
      const half = exact ? 0 : Math.abs(middle) * 10 ** share;
      const unit = "cm²/g";
      const { text } = printFigure({ value: middle, low: middle - half, high: middle + half, unit });
      const parts = /^\(?(\u2212?)([\d.]+)(?: ± ([\d.]+))?\)?(?: × 10(\S+))? cm²\/g$/.exec(text)!;
      const power = [...(parts[4] ?? "⁰")]
        .map((c) => "⁰¹²³⁴⁵⁶⁷⁸⁹⁻".indexOf(c))
        .map((k) => (k === 10 ? "-" : k));
      const { value: read, issues } = readQuantity(text);
      expect(issues, text).toEqual([]);
      expect(read!.value, text).toBe(Number(`${parts[1] && "-"}${parts[2]}e${power.join("")}`));
      expect(read!.plusMinus?.size, text).toBe(parts[3] && Number(`${parts[3]}e${power.join("")}`));
    }),
  );
});

test("rounding is at most half a place off, and rounding again changes nothing", () => {
  fc.assert(
    fc.property(benchValue, fc.integer({ min: -3, max: 8 }), (value, decimals) => {
      const rounded = roundTo(value, decimals);
      expect(Math.abs(rounded - value)).toBeLessThanOrEqual(
        0.5 * 10 ** -decimals * (1 + 1e-9) + 1e-15 * Math.abs(value),
      );
      expect(roundTo(rounded, decimals)).toBe(rounded);
      expect(roundTo(-value, decimals)).toBe(rounded === 0 ? 0 : -rounded);
    }),
  );
});

test("the width of the largest figures overflows; its half does not", () => {
  const { text } = printFigure({ value: 1, low: -1e308, high: 1e308 });
  expect(text).toBe("(0.0 ± 1.0) × 10³⁰⁸");
});

test("the smallest numbers are beyond the powers of ten that a number holds, and are printed all the same", () => {
  const { text } = printFigure({ value: 5e-324, low: 0, high: 1e-323 });
  expect(text).toBe("(0.000000000000000000000005 ± 0.000000000000000000000005) × 10⁻³⁰⁰");
});
