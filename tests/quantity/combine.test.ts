import { inspect } from "node:util";
import { expect, test } from "vitest";
import { combine, lift } from "../../lib/quantity/combine.ts";
import { spread } from "../../lib/quantity/spread-of.ts";

test("x − x is 0 ± 0", () => {
  const x = spread("12.4 ± 0.1 g");
  const { mean, sd, low, high } = combine(({ a, b }) => a - b, { a: x, b: x });
  expect([mean, sd, low, high]).toEqual([0, 0, 0, 0]);
});

test("two spreads of one text are two sources; of one named source, one", () => {
  const own = combine(({ a, b }) => a - b, { a: spread("12.4 ± 0.1 g"), b: spread("12.4 ± 0.1 g") });
  expect(own.high).toBeGreaterThan(0.13);
  const named = { mean: 12.4, halfWidth: 0.1, source: "bias of the kitchen scale" };
  expect(combine(({ a, b }) => a - b, { a: spread(named), b: spread(named) }).high).toBe(0);
});

test("sources stay shared through an earlier combine", () => {
  const bias = spread({ mean: 0, halfWidth: 0.2, source: "bias" });
  const wet = combine(({ bias }) => 52.4 + bias, { bias });
  const dry = combine(({ bias }) => 50.6 + bias, { bias });
  const water = combine(({ wet, dry }) => wet - dry, { wet, dry });
  expect(water.mean).toBeCloseTo(1.8, 10);
  expect(water.sd).toBeLessThan(1e-9);
});

test("a list gives the digits that names give", () => {
  const [a, b] = [spread({ mean: 3, sd: 0.1, source: "a" }), spread({ mean: 2, sd: 0.2, source: "b" })];
  const named = combine(({ a, b }) => a / b, { a, b });
  const listed = combine((v) => v[0]! / v[1]!, [a, b]);
  expect([listed.mean, listed.sd, listed.low, listed.high]).toEqual([
    named.mean,
    named.sd,
    named.low,
    named.high,
  ]);
});

// JCGM 101:2008 (GUM Supplement 1), 9.2.2: four normals of u = 1.
test("Supplement 1, 9.2.2: sum of four normals, u 2.0, 95 % −3.92 to 3.92", () => {
  const parts = [1, 2, 3, 4].map(() => spread({ mean: 0, sd: 1 }));
  const { sd, low, high } = combine((v) => v[0]! + v[1]! + v[2]! + v[3]!, parts, { draws: 65_536 });
  expect(Math.abs(sd - 2)).toBeLessThan(0.02);
  expect(Math.abs(low + 3.92)).toBeLessThan(0.05);
  expect(Math.abs(high - 3.92)).toBeLessThan(0.05);
});

// JCGM 101:2008, 9.2.3: four rectangular of u = 1 (half-width √3).
test("Supplement 1, 9.2.3: sum of four rectangular, 95 % −3.88 to 3.88", () => {
  const parts = [1, 2, 3, 4].map(() => spread({ mean: 0, halfWidth: Math.sqrt(3) }));
  const { sd, low, high } = combine((v) => v[0]! + v[1]! + v[2]! + v[3]!, parts, { draws: 65_536 });
  expect(Math.abs(sd - 2)).toBeLessThan(0.02);
  expect(Math.abs(low + 3.88)).toBeLessThan(0.05);
  expect(Math.abs(high - 3.88)).toBeLessThan(0.05);
});

// JCGM 101:2008, 9.2.4: one of them ten times as wide (the interval from memory).
test("Supplement 1, 9.2.4: one rectangular of u 10, 95 % −17.0 to 17.0", () => {
  const parts = [1, 1, 1, 10].map((u) => spread({ mean: 0, halfWidth: u * Math.sqrt(3) }));
  const { low, high } = combine((v) => v[0]! + v[1]! + v[2]! + v[3]!, parts, { draws: 65_536 });
  expect(Math.abs(low + 17)).toBeLessThan(0.1);
  expect(Math.abs(high - 17)).toBeLessThan(0.1);
});

// Eurachem/CITAC QUAM 2012, example A1: cadmium standard, 1002.70 mg/L, u 0.8352.
test("Eurachem A1: a weighed standard in a flask", () => {
  const { mean, sd, shares } = combine(
    ({ m, p, calibration, fill, warm }) => (1000 * m * p) / (100 + calibration + fill + warm),
    {
      m: spread({ mean: 100.28, sd: 0.05, source: "mass" }),
      p: spread({ mean: 0.9999, halfWidth: 0.0001, source: "purity" }),
      calibration: spread({ mean: 0, halfWidth: 0.1, kind: "triangular", source: "flask" }),
      fill: spread({ mean: 0, sd: 0.02, source: "filling" }),
      warm: spread({ mean: 0, halfWidth: 0.084, source: "temperature" }),
    },
    { draws: 65_536 },
  );
  expect(Math.abs(mean - 1002.7)).toBeLessThan(0.005);
  expect(Math.abs(sd - 0.8352)).toBeLessThan(0.008);
  expect(shares.map(({ id }) => id).slice(0, 3)).toEqual(["mass", "temperature", "flask"]);
});

test("shares: percent of the variance with that source alone; for a sum they make up the whole", () => {
  const { shares, actTogether } = combine(({ a, b }) => a + b, {
    a: spread({ mean: 1, sd: 3, source: "large" }),
    b: spread({ mean: 1, sd: 1, source: "small" }),
  });
  expect(shares.map(({ id }) => id)).toEqual(["large", "small"]);
  expect(Math.abs(shares[0]!.percent - 90)).toBeLessThan(2);
  expect(actTogether).toBe(false);
});

test("a product about zero: no source moves it alone, and the figure says that they act together", () => {
  const { shares, actTogether, sd } = combine(({ a, b }) => a * b, {
    a: spread({ mean: 0, sd: 1, source: "a" }),
    b: spread({ mean: 0, sd: 1, source: "b" }),
  });
  expect(Math.abs(sd - 1)).toBeLessThan(0.05);
  expect(shares.every(({ percent }) => percent === 0)).toBe(true);
  expect(actTogether).toBe(true);
});

test("two degrees of freedom or fewer: an interval by Student's t, and no sd (GUM table G.2: t95(2) = 4.30)", () => {
  const { sd, high } = combine(({ x }) => x, { x: spread({ mean: 0, sd: 1, df: 2 }) });
  expect(sd).toBeNaN();
  expect(Math.abs(high - 4.303)).toBeLessThan(0.02);
});

test("an inserted input shifts no digit of the others", () => {
  const a = spread({ mean: 5, sd: 1, source: "weighing of No. 40" });
  const b = spread({ mean: 7, sd: 1, source: "weighing of No. 50" });
  const alone = combine(({ a }) => a, { a });
  const beside = combine(({ a }) => a, { b, a });
  expect(beside.low).toBe(alone.low);
});

test("a number without doubt is exact; nonsense throws", () => {
  const { mean, sd, low, high, shares } = combine(({ a }) => 2 * a, { a: 3 });
  expect([mean, sd, low, high, shares]).toEqual([6, 0, 6, 6, []]);
  expect(() => combine(({ a }) => a, { a: "3" as unknown as number })).toThrow("inputs are");
  expect(() => spread({ mean: 1, sd: -1 })).toThrow("zero or more");
  expect(() => spread({ mean: 1, sd: 1, halfWidth: 1 })).toThrow("either sd or halfWidth");
  expect(() => spread("twelve grams")).toThrow();
});

test("a lifted spread can stand inside another", () => {
  const half = lift(({ x }) => x / 2, { x: spread({ mean: 10, sd: 1, source: "x" }) });
  const whole = combine(({ half, x }) => 2 * half - x, {
    half,
    x: spread({ mean: 10, sd: 1, source: "x" }),
  });
  expect(whole.sd).toBe(0);
});

test("functions of the same names don't disturb one another: one in another, one after another, one that throws", () => {
  const a = spread("10 ± 1");
  const b = spread("4 ± 1");
  const inner = ({ a, b }: { readonly a: number; readonly b: number }) => a - b;
  const alone = combine(inner, { a, b }).sd;
  const nested = combine(
    ({ a, b }) => {
      const within = combine(inner, { a: 100, b: 1 });
      expect(within.value).toBe(99);
      return a - b;
    },
    { a, b },
    { draws: 16 },
  );
  expect(nested.sd).toBeCloseTo(combine(inner, { a, b }, { draws: 16 }).sd, 12);
  expect(() =>
    combine(
      ({ a, b }): number => {
        throw new Error(`${a} ${b}`);
      },
      { a, b },
    ),
  ).toThrow("10 4");
  expect(combine(inner, { a, b }).sd).toBe(alone);
  expect(combine(({ b, a }) => b - a, { b: 1, a: 3 }).value).toBe(-2);
});

test("shares are those of drawing each source alone, through functions of functions and lists", () => {
  const named = (source: string, mean: number, sd: number) => spread({ mean, sd, source });
  const [a, b, c] = [named("a", 3, 0.1), named("b", 5, 0.2), named("c", 2, 0.3)];
  const inner = lift((v) => v[0]! / v[1]!, [a, b]);
  const whole = combine(({ inner, b, c }) => inner * b + Math.max(c, 2), { inner, b, c });
  const held = (only: string) => {
    const at = (one: typeof a, name: string) => (name === only ? one : one.value);
    const part = lift((v) => v[0]! / v[1]!, [at(a, "a"), at(b, "b")]);
    return combine(({ part, b, c }) => part * b + Math.max(c, 2), { part, b: at(b, "b"), c: at(c, "c") });
  };
  for (const { id, percent } of whole.shares) {
    const alone = (100 * held(id).sd ** 2) / whole.sd ** 2;
    // b divides and multiplies: it cancels, and what is left of it is rounding.
    expect(percent).toBeCloseTo(id === "b" ? 0 : alone, 6);
  }
  expect(whole.shares.map(({ id }) => id)).toEqual(["c", "a", "b"]);
});

test("a figure can be printed and copied: by its numbers, for its ends are worked out when they are read", () => {
  const moisture = combine(({ a }) => 2 * a, { a: spread("12.4 ± 0.1 g") });
  expect(JSON.parse(JSON.stringify(moisture))).toEqual(moisture.toJSON());
  expect(structuredClone(moisture.toJSON()).low).toBe(moisture.low);
  expect(inspect(moisture)).toMatch(/low: 24\.6.*high: 24\.9/s);
  expect({ ...moisture }.low).toBeUndefined();
});

test("a kind is a shape of scatter or a kind of doubt; any other is refused by name", () => {
  const only = (of: Parameters<typeof spread>[0]) => spread(of).sources[0]!;
  expect(only({ mean: 3, sd: 0.1, kind: "model" })).toMatchObject({
    kind: "model",
    shape: { kind: "normal" },
  });
  expect(only({ mean: 3, halfWidth: 0.1, kind: "rig" })).toMatchObject({
    kind: "rig",
    shape: { kind: "rectangular" },
  });
  expect(only({ mean: 3, sd: 0.1, kind: "repeat", df: 4 }).shape).toEqual({ kind: "t", df: 4 });
  expect(() => spread({ mean: 3, sd: 0.1, kind: "gaussian" as "normal" })).toThrow(
    /one of normal, t, rectangular.*one of reading.*not "gaussian"/,
  );
  expect(() => spread({ mean: 3, sd: 0.1, kind: "rig", doubt: "model" })).toThrow(/not of rig and model/);
});

test("a unit may be a text, as a log writes it", () => {
  expect(spread({ mean: 3, sd: 0.1, unit: "% of damp mass" }).unit).toEqual(
    spread("3 ± 0.1 % of damp mass").unit,
  );
  expect(() => spread({ mean: 3, sd: 0.1, unit: "gal" })).toThrow(/US gal or imp gal/);
});

test("a share names the inputs that it came in by", () => {
  const bottle = spread({ mean: 0, sd: 0.1, source: "bottle" });
  const figure = combine(({ wet, dry, blank }) => wet - dry - blank, {
    wet: spread("52.4 ± 0.3 g"),
    dry: bottle,
    blank: combine(({ x }) => 2 * x, { x: bottle }),
  });
  expect(figure.shares.map(({ id, inputs }) => [id, inputs])).toEqual([
    ["bottle", ["dry", "blank"]],
    ["", ["wet"]],
  ]);
  expect(combine(([a, b]) => a! - b!, [spread("5 ± 1 g"), 2]).shares[0]!.inputs).toEqual(["0"]);
});
