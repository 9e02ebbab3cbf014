// What formulas work out, against mathjs as it evaluates them, and the loops over rows.

import fc from "fast-check";
import { evaluate } from "mathjs/number";
import { expect, test } from "vitest";
import type { NameKind } from "../../lib/sheet/formula-type.ts";
import { formula, worked } from "./formula-scope.ts";

const plain: ReadonlyMap<string, NameKind> = new Map([
  ["a", { kind: "number", per: "row" }],
  ["b", { kind: "number", per: "row" }],
  ["c d", { kind: "number", per: "sheet" }],
]);

/** As mathjs writes it; `log` and the name with a space are told apart below. */
const leaf = fc.oneof(
  fc.integer({ min: 0, max: 12 }).map(String),
  fc.constantFrom("0.5", "1.25e1", ".75", "3e-2", "a", "b", "c_d", "pi"),
);
const { tree } = fc.letrec<{ tree: string }>((tie) => {
  const part = tie("tree");
  return {
    tree: fc.oneof(
      { depthSize: "small", withCrossShrink: true },
      leaf,
      fc.tuple(part, fc.constantFrom(" + ", "-", "*", " / ", " ^ "), part).map((parts) => parts.join("")),
      fc
        .tuple(
          fc.constantFrom("-", "(", "abs(", "sqrt(", "exp(", "log(", "round(", "floor(", "ceil(", "cbrt("),
          part,
        )
        .map(([head, inner]) => (head === "-" ? `-${inner}` : `${head}${inner})`)),
      fc.tuple(fc.constantFrom("min", "max"), part, part).map(([name, x, y]) => `${name}(${x}, ${y})`),
      fc
        .tuple(leaf, fc.constantFrom("<", ">", "<=", ">=", "==", "!="), leaf, part, part)
        .map(([x, op, y, yes, no]) => `(${x} ${op} ${y} ? ${yes} : ${no})`),
    ),
  };
});

test("arithmetic gives what mathjs gives, and where it gives nothing there is a reason", () => {
  let compared = 0;
  fc.assert(
    fc.property(tree, (text) => {
      const row = { a: -1.5, b: 2.75, "c d": 4 };
      const ours = text.replaceAll("log(", "ln(").replaceAll("c_d", "c d");
      const { value, why } = worked(ours, row, { names: plain });
      if (!Number.isFinite(value)) {
        expect(why).toBeTypeOf("string");
        return;
      }
      expect(why).toBeUndefined();
      const theirs = evaluate(text, { a: -1.5, b: 2.75, c_d: 4 }) as number;
      compared++;
      expect(Math.abs(value - theirs)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(value), 1));
    }),
    { numRuns: 600, seed: 20260502 },
  );
  expect(compared).toBeGreaterThan(300);
});

test.each([
  ["-2 ^ 2", -4],
  ["2 ^ 3 ^ 2", 512],
  ["2 ** -1", 0.5],
  ["8 / 4 / 2", 1],
  ["8 - 4 - 2", 2],
  ["1 / 2 * 4", 2],
  ["2 × 3 ÷ 4 − 1", 0.5],
  ["2³ + 2⁻¹", 8.5],
  ["= 1 + 1", 2],
  ["1 < 2 < 3 ? 5 : 6", 5],
  ["1 < 3 < 2 ? 5 : 6", 6],
  ["if(1 > 2 or 3 ≥ 3 and not (1 == 2), 7, 8)", 7],
  ["false_ ? 1 : 2".replace("false_", "1 ≠ 1"), 2],
  ["round(1.005, 2)", 1.01],
  ["round(-2.5)", -3],
  ["round(1234.5, -2)", 1200],
  ["round(1e300, 15)", 1e300],
  ["clamp(7, 0, 5) + clamp(-1, 0, 5) + clamp(3, 0, 5)", 8],
  ["min(3, 1, 2) + max(3, 1, 2)", 4],
  ["log10(1000) + log2(8) + ln(exp(1))", 7],
  ["percentOf(1, 8)", 12.5],
])("%s is %d", (text, value) => {
  expect(worked(text).value).toBeCloseTo(value, 12);
});

test.each([
  ["a / (b - b)", 'division by zero: "b - b" is 0'],
  ["1 / (1 / 0)", 'division by zero: "0" is 0'],
  ["1 + sqrt(a - 5)", 'root of a negative number: "a - 5" is below 0'],
  ["ln(a - a)", 'logarithm of 0 or less: "a - a" is not above 0'],
  ["(a - 5) ^ 0.5", '"a - 5" is below 0, and only whole powers can be taken of it'],
  ["(a - a) ^ -1", 'division by zero: "a - a" is 0'],
  ["exp(1000 * a)", "the figure is too large to work with"],
  ["10 ^ 400 / a", "the figure is too large to work with"],
  ["clamp(a, 5, 1)", '"5" is above "1"'],
  ["permeabilityNumber(2000, 50, 50, 100, a - a)", "permeabilityNumber: seconds must be above 0, got 0"],
  [
    "equilibriumMoisturePercent(20, 45)",
    "equilibriumMoisturePercent gives no figure so far from what it was found on",
  ],
  ["if(a > 0, a / (b - b), ln(0))", 'division by zero: "b - b" is 0'],
])("%s says why it is no figure", (text, why) => {
  const result = worked(text, { a: 1, b: 2 }, { names: plain });
  expect(result).toMatchObject({ value: Number.NaN, why });
});

test("what was not asked for gives no reason", () => {
  expect(worked("if(a > 0, a, ln(0))", { a: 1 }, { names: plain })).toMatchObject({
    value: 1,
    why: undefined,
  });
  expect(worked("a > 0 or ln(0) > 1", { a: 1 }, { names: plain })).toMatchObject({
    value: 1,
    why: undefined,
  });
  expect(worked("a / b", { a: Number.NaN, b: 0 }, { names: plain })).toMatchObject({
    value: Number.NaN,
    why: undefined,
  });
});

test("many rows give what each gives alone, whatever the length, and out may be a column", () => {
  const text = "if(a > b, (a - b) / a * 100 + c d, permeabilityFromGd(max(a, 1))) + round(a / b, 1) + 0 * a";
  const rows = formula(text, { names: plain });
  for (const length of [0, 1, 2, 1023, 1024, 1025, 2500]) {
    const a = Float64Array.from({ length }, (_, i) => (i * 37) % 101);
    const b = Float64Array.from({ length }, (_, i) => (i % 13 === 5 ? Number.NaN : (i * 17) % 89));
    const out = new Float64Array(length);
    rows.run([a, b, 4], out);
    const one = new Float64Array(1);
    const alone = Array.from(a, (x, i) => {
      rows.run([Float64Array.of(x), b[i]!, 4], one);
      return one[0]!;
    });
    // Against the same read anew, here and there.
    for (let i = 0; i < length; i += 97)
      expect(worked(text, { a: a[i]!, b: b[i]!, "c d": 4 }, { names: plain }).value).toBe(alone[i]);
    expect([...out]).toEqual(alone);
    rows.run([a, b, 4], a);
    expect([...a]).toEqual(alone);
  }
});

test("one formula runs again over other inputs, and a number stands for all rows", () => {
  const sum = formula("a + b * c d", { names: plain });
  const out = new Float64Array(3);
  sum.run([Float64Array.of(1, 2, 3), 10, Float64Array.of(1, 2, 3)], out);
  expect([...out]).toEqual([11, 22, 33]);
  sum.run([1, 2, 3], out);
  expect([...out]).toEqual([7, 7, 7]);
  const long = new Float64Array(3000);
  sum.run([new Float64Array(3000).fill(1), 2, 3], long);
  expect(long.every((x) => x === 7)).toBe(true);
  expect(() => sum.run([1, 2], out)).toThrow("the formula has 3 inputs, and 2 were given");
  expect(() => sum.run([Float64Array.of(1), 2, 3], out)).toThrow("input 0 has 1 rows, and the result has 3");
});

test("x − x is 0, and a missing figure stays missing", () => {
  expect(worked("a - a", { a: 0.1 }, { names: plain }).value).toBe(0);
  for (const text of [
    "a + 1",
    "a > 1",
    "not (a > 1)",
    "if(a > 1, 2, 3)",
    "min(a, 1)",
    "round(a)",
    "rammerEnergyJ(a, 50)",
  ]) {
    expect(worked(text, { a: Number.NaN }, { names: plain }).value, text).toBeNaN();
  }
});
