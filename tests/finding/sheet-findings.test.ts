// What the fits and feet of a founder's own sheets say.

import { expect, test } from "vitest";
import { sheetFindings } from "../../lib/finding/sheet-findings.ts";
import { sheetFit } from "../../lib/finding/sheet-fit.ts";
import type { SheetPoint } from "../../lib/finding/sheet-points.ts";
import { figure } from "../../lib/quantity/figure.ts";
import { linear } from "../../lib/quantity/spread-of.ts";
import { sheet } from "../../lib/sheet/sheet.ts";
import { promisesIn } from "../forbidden-words.ts";
import { nistSet } from "../reference/nist-data.ts";

const exact = (value: number): SheetPoint => ({ value, low: value, high: value });

test("a straight line has the certified slope and standard error of NIST's Norris data", () => {
  const { rows } = nistSet("Norris");
  const { slope, course, form } = sheetFit(
    rows.map(([, x]) => exact(x!)),
    rows.map(([y]) => exact(y!)),
    "straight",
  );
  expect(form).toBe("straight");
  // B1 = 1.00211681802045, its standard error 0.429796848199937E-03 (NIST StRD, Norris); t₀.₉₇₅(34) = 2.0322445 (tables).
  expect(slope!.value).toBeCloseTo(1.00211681802045, 11);
  expect((slope!.high - slope!.low) / 2).toBeCloseTo(2.0322445 * 0.429796848199937e-3, 9);
  expect(course[0]!.newHigh - course[0]!.newLow).toBeGreaterThan(course[0]!.high - course[0]!.low);
});

test("a bias that all rows share moves the slope only where it is more than a shift, and is then added", () => {
  const bias = { id: "bias of a ruler", kind: "rig", shape: { kind: "normal" } } as const;
  const xs = [1, 2, 3, 4, 5].map(exact);
  const ys = (scale: (y: number) => number) =>
    [2.1, 3.9, 6.1, 7.9, 10.1].map((y): SheetPoint => {
      const made = figure(linear(y, [{ scale: scale(y), source: bias }]));
      return { value: y, low: made.low, high: made.high, figure: made };
    });
  const half = (scale: (y: number) => number) => {
    const { slope } = sheetFit(xs, ys(scale), "straight");
    return (slope!.high - slope!.low) / 2;
  };
  const alone = half(() => 0);
  expect(half(() => 0.5)).toBeCloseTo(alone, 9);
  // A scale that is off by 5 % (sd) of what it shows turns the slope of 2 by sd 0.1.
  expect(half((y) => 0.05 * y)).toBeCloseTo(Math.hypot(alone, 1.96 * 0.05 * 2), 2);
});

test("too few rows leave the points alone, and it is said how many are needed", () => {
  const of = (n: number, line: "straight" | "curve") =>
    sheetFit(
      Array.from({ length: n }, (_, k) => exact(k)),
      Array.from({ length: n }, (_, k) => exact(k * k)),
      line,
    ).form;
  expect([of(3, "straight"), of(4, "straight")]).toEqual(["points only", "straight"]);
  expect([of(5, "curve"), of(6, "curve")]).toEqual(["points only", "curve"]);
  const alike = sheetFit([1, 1, 2, 2, 2].map(exact), [1, 2, 3, 4, 5].map(exact), "straight");
  expect(alike).toMatchObject({ form: "points only", different: 2 });
});

const made = (y: readonly number[], line: "straight" | "curve") =>
  sheet({
    name: "trial",
    columns: { share: "% of dry mix", strength: "kPa" },
    rows: y.map((strength, k) => ({ share: k + 3, strength })),
    charts: [{ x: "share", y: "strength", line }],
  });

test("a slope is told with its ±, one that may be none as such", () => {
  const [rises] = sheetFindings(made([30, 41, 49, 61, 70], "straight"));
  expect(rises).toMatchObject({ code: "sheet/slope", tone: "note" });
  // By hand: residuals −0.2, 0.8, −1.2, 0.8, −0.2; s² = 2.8/3, se = √(s²/10) = 0.3055, times t(3) = 3.182.
  expect(rises!.text).toMatch(
    /^10\.0 ± 1\.0 kPa per % of dry mix: so much does strength rise for each step of share\.$/,
  );
  const [falls] = sheetFindings(made([70, 61, 49, 41, 30], "straight"));
  expect(falls!.text).toMatch(/^10\.0 ± 1\.0 .*fall/);
  const [none] = sheetFindings(made([50, 41, 52, 44, 49], "straight"));
  expect(none).toMatchObject({ code: "sheet/no-slope" });
  expect(none!.text).toContain("cannot be told");
});

test("a curve is told by where it turns, or that no turning shows", () => {
  const peak = [0, 1, 2, 3, 4, 5, 6].map((k) => 60 - 3 * (k - 3) ** 2 + (k % 2 === 0 ? 0.4 : -0.4));
  const [turns] = sheetFindings(made(peak, "curve"));
  expect(turns!.text).toMatch(
    /^6\.0\d* ± 0\.\d+ % of dry mix: there the curve through strength against share is highest\.$/,
  );
  const [straight] = sheetFindings(made([30, 41, 49, 61, 70, 79], "curve"));
  expect(straight!.code).toBe("sheet/no-turning");
});

test("what the doubt of a foot figure comes from is named, or that nothing stands out", () => {
  const foot = (rows: readonly { readonly [name: string]: string }[]) =>
    sheetFindings(
      sheet({ name: "s", columns: { bag: "text", wet: "g" }, rows, foot: { total: "sum(wet)" } }),
    );
  const [one] = foot([
    { bag: "A", wet: "10 ± 1 g" },
    { bag: "B", wet: "10 ± 0.1 g" },
  ]);
  // By hand: 1² of 1² + 0.1² is 99 %.
  expect(one!.text).toMatch(/^99 % of the doubt about "total" \(s\) comes from one source: wet of A\.$/);
  const [none] = foot(["A", "B", "C"].map((bag) => ({ bag, wet: "10 ± 1 g" })));
  expect(none!.code).toBe("sheet/doubt-spread");
  for (const { text, because } of [one!, none!]) expect(promisesIn([text, ...because].join(" "))).toEqual([]);
  expect(foot([{ bag: "A", wet: "10 g" }])).toEqual([]);
});
