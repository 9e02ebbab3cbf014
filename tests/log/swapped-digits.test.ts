// Which figure has its digits swapped, told from the sum alone.

import fc from "fast-check";
import { expect, test } from "vitest";
import { slippedPoint, unitOfAll } from "../../lib/log/slipped-point.ts";
import { swappedDigits } from "../../lib/log/swapped-digits.ts";
import { brief, issueOf, spoilt } from "./helpers.ts";

const figures = (start: string, ...rows: string[]) => [
  { text: start, value: Number.parseFloat(start), sign: -1 as const },
  ...rows.map((text) => ({ text, value: Number.parseFloat(text), sign: 1 as const })),
];

test("worked by hand: 41.25 + 35.75 is 77.00; with 14.25 it is 50.00", () => {
  expect(swappedDigits(figures("50.0", "41.25", "35.75"), 0.5)).toEqual([
    { index: 1, typed: "41.25", swapped: "14.25", difference: 0 },
  ]);
});

test("the start mass may be the one: 45.0 for 54.0", () => {
  expect(swappedDigits(figures("45.0", "20.0", "34.0"), 0.5)).toMatchObject([
    { index: 0, typed: "45.0", swapped: "54.0" },
  ]);
});

test("swaps that explain the sum equally well are all named, also across the point", () => {
  // 7.85 + 1.25 is 9.10: 8.75 + 1.25 and 7.85 + 2.15 are both 10.00.
  const swaps = swappedDigits(figures("10.0", "7.85", "1.25"), 0.1);
  expect(swaps.map((swap) => swap.swapped)).toEqual(["8.75", "2.15"]);
});

test("what is no plain number counts in the sum and keeps its digits", () => {
  const ounces = { text: "1 lb 4 oz", value: 566.99, sign: 1 as const };
  expect(
    swappedDigits([{ text: "667 g", value: 667, sign: -1 }, ounces, { text: "10.0", value: 10, sign: 1 }], 1),
  ).toEqual([]);
  const swaps = swappedDigits(
    [{ text: "667 g", value: 667, sign: -1 }, ounces, { text: "010 g", value: 10, sign: 1 }],
    1,
  );
  expect(swaps.map((swap) => swap.swapped)).toEqual(["100"]);
});

test("no swap is found where none explains the sum", () => {
  expect(swappedDigits(figures("50.0", "30.00", "33.33"), 0.5)).toEqual([]);
});

test("a swap made on purpose is always found, or one that explains the sum as well", () => {
  const mass = fc.integer({ min: 1000, max: 9899 });
  fc.assert(
    fc.property(fc.array(mass, { minLength: 3, maxLength: 9 }), fc.nat(), (cents, pick) => {
      const texts = cents.map((value) => (value / 100).toFixed(2));
      const total = cents.reduce((sum, value) => sum + value, 0) / 100;
      const index = pick % texts.length;
      const [a, b, ...rest] = texts[index]!;
      fc.pre(a !== b);
      texts[index] = [b, a, ...rest].join("");
      const found = swappedDigits(figures(total.toFixed(2), ...texts), total / 100);
      expect(Math.abs(found[0]?.difference ?? Number.NaN)).toBeLessThan(0.01);
    }),
  );
});

test("in a log: more than went on is an error that names the figure, whatever its unit", () => {
  const grams = spoilt("No. 40: 3.20", "No. 40: 32.0");
  // No digits are swapped, but its decimal point slipped.
  expect(issueOf(grams, "log/sum-above-start").message).toMatch(/ 32\.0 may be 3\.2\.$/);
  const neither = spoilt("No. 40: 3.20", "No. 40: 39.0");
  expect(issueOf(neither, "log/sum-above-start").message).not.toMatch(/may be/);
  const start = spoilt("start: 50.0 g", "start: 05.0 g");
  expect(issueOf(start, "log/sum-above-start").message).toMatch(/05\.0 may be 50\.0/);
  const kilograms = spoilt("No. 50: 12.60", "No. 50: 0.0216 kg");
  expect(issueOf(kilograms, "log/sum-above-start").message).toMatch(/0\.0216 may be 0\.0126/);
});

test("a loss, and a gain that the scale's steps explain, are left to the mass balance", () => {
  expect(brief(spoilt("No. 70: 20.10", "No. 70: 17.00").issues)).toEqual([]);
  // 13 % more, but each of seven weighings is read to 5 g only.
  const coarse = spoilt("reads to: 0.01 g", "reads to: 5 g").text.replace("No. 70: 20.10", "No. 70: 26.60");
  expect(coarse).toContain("26.60");
  expect(brief(spoilt("reads to: 0.01 g", "reads to: 5 g").issues)).toEqual([]);
});

// French concrete-sand sheet (Scribd 369097913): cumulative grams to 1423, sample printed as 1406 g; its printed
// percents fit 1460 g.
test("published: a sample mass with its digits transposed, 1406 for 1460", () => {
  const cumulative = [56, 118, 180, 197, 288, 498, 657, 666, 908, 1343, 1404, 1422, 1423];
  const held = cumulative.map((mass, k) => mass - (cumulative[k - 1] ?? 0));
  const washedOut = 1460 - 1423;
  const swaps = swappedDigits(figures("1406", ...held.map(String), String(washedOut)), 1);
  expect(swaps.some(({ typed, swapped }) => typed === "1406" && swapped === "1460")).toBe(true);
});

test("no figure is told to begin with a zero that nobody writes", () => {
  const swapped = swappedDigits(
    [
      { text: "500 g", value: 500, sign: -1 },
      { text: "50.0", value: 50, sign: 1 },
    ],
    1,
  );
  expect(swapped).toEqual([]);
});

test("a slip that more than one figure explains explains nothing; half of the start mass is a loss that no page takes", () => {
  const mass = (text: string) => ({ text, valueG: Number.parseFloat(text) });
  expect(slippedPoint(mass("50"), [mass("184"), mass("31.6")])).toEqual({
    index: 1,
    typed: "184",
    meant: "18.4",
  });
  expect(slippedPoint(mass("55"), [mass("5"), mass("5")])).toBeUndefined();
  expect(slippedPoint(mass("50"), [mass("20"), mass("20")])).toBeUndefined();
  expect(unitOfAll(mass("50"), [mass("1.0"), mass("0.75")])).toBe("oz");
  expect(unitOfAll(mass("50"), [mass("1.0 g"), mass("0.75")])).toBeUndefined();
  const codes = (start: string) => spoilt("start: 50.0 g", `start: ${start}`).issues.map(({ code }) => code);
  expect(codes("99.8 g")).not.toContain("log/sum-far-below-start");
  expect(codes("100.0 g")).toContain("log/sum-far-below-start");
});
