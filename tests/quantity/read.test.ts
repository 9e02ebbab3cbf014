import fc from "fast-check";
import { expect, test } from "vitest";
import { convertQuantity, readQuantity } from "../../lib/quantity/read-quantity.ts";
import { unitNamed } from "../../lib/quantity/read-unit.ts";

/** "value unit", and " ± size meaning" where there is one. */
function said(text: string): string {
  const { value: q, issues } = readQuantity(text);
  expect(issues, text).toEqual([]);
  expect(q?.text).toBe(text);
  const spread = q?.plusMinus ? ` ± ${q.plusMinus.size} ${q.plusMinus.meaning}` : "";
  return `${q?.value} ${q?.unit?.text ?? "-"}${spread}`;
}

test.each([
  ["12.4", "12.4 -"],
  ["12.4 g", "12.4 g"],
  ["12.4g", "12.4 g"],
  ["+4.5 kPa", "4.5 kPa"],
  ["1.2e3 g", "1200 g"],
  [".5 l", "0.5 l"],
  ["12.4\u202fg", "12.4 g"],
  ["12.4\u00a0g", "12.4 g"],
  ["\u22125 °C", "-5 °C"],
  ["13/32 in", "0.40625 in"],
  ['3/8"', "0.375 in"],
  ["1 1/2 lb", "1.5 lb"],
  ["-1 1/2 in", "-1.5 in"],
  ["1½ lb", "1.5 lb"],
  ["¾ in", "0.75 in"],
  ["3 lb 4 oz", "3.25 lb"],
  ["3 lb 4 1/2 oz", "3.28125 lb"],
  ["-3 lb 4 oz", "-3.25 lb"],
  ["5' 3\"", "5.25 ft"],
  ["5'3\"", "5.25 ft"],
  ["5’ 3”", "5.25 ft"],
  ["5'3''", "5.25 ft"],
  ["2 h 30 min", "2.5 h"],
  ["1.6 g/cm3", "1.6 g/cm³"],
  ["38 mm H2O", "38 mmH2O"],
  ["2 gal (US)", "2 US gal"],
  ["3.2 % of damp mass", "3.2 % of damp mass"],
  ["12.4 ± 0.1 g", "12.4 g ± 0.1 surely"],
  ["12.4 g ± 0.1 g", "12.4 g ± 0.1 surely"],
  ["12.4 g ± 0.1", "12.4 g ± 0.1 surely"],
  ["12.4±0.1g", "12.4 g ± 0.1 surely"],
  ["12.4 +/- 0.1 g", "12.4 g ± 0.1 surely"],
  ["12.4+-0.1 g", "12.4 g ± 0.1 surely"],
  [" 12.4  +  /  -  0.1\tg ", "12.4 g ± 0.1 surely"],
  ["12.4 ± 0.1 g (sd)", "12.4 g ± 0.1 sd"],
  ["12.4 ± 0.1 (SD) g", "12.4 g ± 0.1 sd"],
  ["3.20 ± 0.05 % (95 %)", "3.2 % ± 0.05 95 %"],
  ["12.4 ± 0.1 g (95%)", "12.4 g ± 0.1 95 %"],
  ["12.4 g ± 0 g", "12.4 g ± 0 surely"],
  ["12.4 g ± 100 mg", "12.4 g ± 0.1 surely"],
  ["3 lb 4 oz ± 1 oz", "3.25 lb ± 0.0625 surely"],
  ["4 in ± 1/32 in", "4 in ± 0.03125 surely"],
  ["700 ± 10 °C", "700 °C ± 10 surely"],
  ["700 °C ± 18 °F", "700 °C ± 10 surely"],
  ["700 °C ± 10 K", "700 °C ± 10 surely"],
  // Full-width, squared and raised signs, hyphens that are no hyphen, what has no width.
  ["１２.４ ｇ", "12.4 g"],
  ["12．4 ± ０.１ ㎏", "12.4 kg ± 0.1 surely"],
  ["－3 ℃", "-3 °C"],
  ["\u20103 °C", "-3 °C"],
  ["- 3 °C", "-3 °C"],
  ["\u200e12.4\u200b\u00ad g", "12.4 g"],
  ["1⅕ in", "1.2 in"],
  ["5lb3oz", "5.1875 lb"],
  ["1h30min", "1.5 h"],
  // As pages print them.
  ["5.08826 × 10⁻¹⁰ g", "5.08826e-10 g"],
  ["5 x 10^3 g", "5000 g"],
  ["(6.4 ± 2.5) × 10⁻⁶ cm²/g", "0.0000064 cm²/g ± 0.0000025 surely"],
  ["(\u22121.51285 ± 0.00011) × 10⁹", "-1512850000 - ± 110000 surely"],
  ["(12.4 ± 0.1) g", "12.4 g ± 0.1 surely"],
  ["12.4 g (± not known)", "12.4 g"],
])("%s", (typed, read) => {
  expect(said(typed)).toBe(read);
});

test.each([
  ["12,4", "decimal-comma", "Write 12.4."],
  ["12,4 g", "decimal-comma", "Write 12.4."],
  ["12 ± 1,5 g", "decimal-comma", "Write 1.5."],
  ["0,123", "decimal-comma", "Write 0.123."],
  ["1,234", "decimal-comma", "Write 1.234 or 1234."],
  ["1,234.5", "thousands-separator", "Write 1234.5."],
  ["1 234,5", "thousands-separator", "Write 1234.5."],
  ["1.234,5 g", "thousands-separator", "Write 1234.5."],
  ["12\u202f000 g", "thousands-separator", "Write 12000."],
  ["1,234,567", "thousands-separator", "Write 1234567."],
  ["1'234 g", "thousands-separator", "Write 1234."],
  ["1.2.3 g", "two-marks", "Write one decimal point"],
  ["12..4", "two-marks", "Write one decimal point"],
  ["12.4 grms", "unknown-unit", "Write"],
  ["12.4 kgg", "unknown-unit", "Write kg if that is what is meant."],
  ["2 gal", "ambiguous-unit", "Write US gal or imp gal."],
  ["3 fl oz", "ambiguous-unit", "Write US fl oz or imp fl oz."],
  ["5 g ± 1 fl oz", "ambiguous-unit", "Write US fl oz or imp fl oz."],
  ["NaN", "not-finite", "Write an ordinary number"],
  [".inf", "not-finite", "Write an ordinary number"],
  ["-Infinity", "not-finite", "Write an ordinary number"],
  ["1e999 g", "not-finite", "Write an ordinary number"],
  ["5 g ± 1e999", "not-finite", "Write an ordinary number"],
  ["x".repeat(81), "too-long", "at most 80 characters"],
  ["", "empty", "Write a number"],
  ["about 12", "not-a-number", "Write the number first"],
  ["± 5", "not-a-number", "Write the number first"],
  ["1/0 in", "zero-denominator", "Write the fraction again"],
  ["12 ±", "no-plus-minus", "how far the figure may be off"],
  ["12 ± -1 g", "negative-plus-minus", "0 or more"],
  ["12 g ± 1 cm", "plus-minus-dimension", "Write the ± in g."],
  ["12 g ± 2 %", "plus-minus-dimension", "Write the ± in g."],
  ["12 ± 0.1 g (k=2)", "plus-minus-meaning", "Write (sd)"],
  ["12 ± 0.1 g (90 %)", "plus-minus-meaning", "Write (sd)"],
  ["12 ± 1 ± 2", "trailing-text", "Write it as a note"],
  ["12.4 g or so", "trailing-text", "Write it as a note"],
  ["12.4 g 5", "trailing-text", "Write it as a note"],
  ["12 g (sd)", "trailing-text", "Write it as a note"],
  ["12 - 14 g", "range", "Write the middle"],
  ["12\u201314 g", "range", "Write the middle"],
  ["12 g to 14 g", "range", "Write the middle"],
  ["3 lb 4 cm", "mixed-units", "Write one unit"],
  ["3 oz 4 lb", "mixed-units", "a larger and a smaller"],
  ["20 °C 5 °C", "mixed-units", "Write one unit"],
  ["-300 °C", "below-absolute-zero", "Check the sign"],
  ["0x10", "unknown-unit", "Write"],
  ["12.4 ± 0,1 g", "decimal-comma", "Write 0.1."],
  ["1.5e", "unknown-unit", "Write a unit such as"],
  ["12 ∓", "unknown-unit", "Write a unit such as"],
  ["12 deg", "ambiguous-unit", "Write °C or °F."],
  ["12 °", "ambiguous-unit", "Write °C or °F."],
  ["1:45", "colon", "Write 1 min 45 s or 1 h 45 min"],
  ["12:05 min", "colon", "Write 12 min 5 s"],
  ["1-1/2 in", "fraction-dash", "Write 1 1/2 if that is meant"],
  ["12…14 g", "range", "Write the middle"],
  ["12 g \u2212 14 g", "range", "Write the middle"],
  ["12 g -14 g", "range", "Write the middle"],
  ["12\u201014 g", "range", "Write the middle"],
  ["(12 to 14) × 10⁻⁶ g", "not-a-number", "Write the number first"],
  ["69.1 ± at least 0.4 kPa", "plus-minus-at-least", "surely be off"],
  ["(0.0 ± at least 3.0) × 10⁹ °C", "plus-minus-at-least", "surely be off"],
  ["12 ± 0.1 g (n = 5)", "trailing-text", "Write it as a note"],
  ["1.7e308 lb 1.7e308 oz", "not-finite", "Write an ordinary number"],
  ["1 mg ± 1e308 t", "not-finite", "Write an ordinary number"],
])("%s is refused: %s", (typed, code, remedy) => {
  const { value, issues } = readQuantity(typed);
  expect(value).toBeUndefined();
  expect(issues).toHaveLength(1);
  expect(issues[0]).toMatchObject({ code: `quantity/${code}`, severity: "error" });
  expect(issues[0]?.remedy).toContain(remedy);
  expect(issues[0]?.message).toMatch(/[.]$/);
  expect(issues[0]).not.toHaveProperty("place");
});

test("any text gives a figure or an issue, and never throws", () => {
  const typed = fc.oneof(
    fc.string(),
    fc.string({ unit: fc.constantFrom(..."0123456789.,'/-+±e ()%gklboz°C²½\u2009\u2212") }),
  );
  fc.assert(
    fc.property(typed, (text) => {
      const { value, issues } = readQuantity(text);
      expect(value !== undefined || issues.some((issue) => issue.severity === "error")).toBe(true);
      if (value) expect(Number.isFinite(value.value)).toBe(true);
      if (value?.plusMinus) expect(value.plusMinus.size).toBeGreaterThanOrEqual(0);
    }),
    { numRuns: 2000 },
  );
});

test("what a number, a unit and a ± make is read as they are", () => {
  const decimal = fc.integer({ min: -1_000_000, max: 1_000_000 }).map((n) => n / 1000);
  const size = fc.integer({ min: 0, max: 10_000 }).map((n) => n / 100);
  const unit = fc.constantFrom("g", "lb", "mm", "psi", "kg/m³", "% of sand", "US fl oz", "°F difference");
  fc.assert(
    fc.property(decimal, size, unit, fc.constantFrom("±", "+/-", "+-"), (value, half, text, sign) => {
      const read = readQuantity(`${value} ${sign} ${half} ${text}`).value;
      expect(read?.value).toBe(value);
      expect(read?.plusMinus?.size).toBe(half);
      expect(read?.unit?.text).toBe(text);
    }),
  );
});

test("a quantity in another unit keeps its ± and its text", () => {
  const half = readQuantity("0.5 ± 0.1 oz (sd)").value!;
  const inGrams = convertQuantity(half, unitNamed("g")!).value!;
  expect(inGrams.value).toBeCloseTo(14.1747615625, 10);
  expect(inGrams.plusMinus).toEqual({ size: expect.closeTo(2.8349523125, 10), meaning: "sd" });
  expect(inGrams.text).toBe("0.5 ± 0.1 oz (sd)");
  const warm = convertQuantity(readQuantity("1400 ± 18 °F").value!, unitNamed("°C")!).value!;
  expect([warm.value, warm.plusMinus?.size]).toEqual([760, 10]);
  expect(convertQuantity(readQuantity("12.4").value!, unitNamed("g")!).value?.unit?.text).toBe("g");
  for (const far of ["1e308 t", "1 ± 1e308 t"])
    expect(convertQuantity(readQuantity(far).value!, unitNamed("mg")!).issues[0]?.code).toBe(
      "quantity/not-finite",
    );
  const refused = convertQuantity(readQuantity("4 psi").value!, unitNamed("g")!);
  expect(refused.value).toBeUndefined();
  expect(refused.issues[0]).toMatchObject({
    code: "quantity/other-dimension",
    message: '"4 psi" is in psi, which cannot be turned into g.',
  });
});
