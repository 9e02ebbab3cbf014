// The exponent that the benchmark prints, and the table of its targets.

import { expect, test } from "vitest";
import { growth } from "./growth.ts";
import { isMet, markdownTable, skipped } from "./row.ts";
import { summary } from "./summary.ts";
import { targets } from "./targets.ts";

test("a power law gives its exponent, without doubt", () => {
  const { exponent, half } = growth([20, 200, 2000], [3 * 20 ** 1.5, 3 * 200 ** 1.5, 3 * 2000 ** 1.5]);
  expect(exponent).toBeCloseTo(1.5, 12);
  expect(half).toBeCloseTo(0, 10);
});

// By hand: log10 of the values is 0, 1.30103 and 2 at 0, 1 and 2: slope 1, residuals -0.10034, 0.20069, -0.10034, so
// a standard error of 0.17380; Student's t for one degree of freedom is 12.706 in any printed table.
test("what strays from a power law is in the ±", () => {
  const { exponent, half } = growth([1, 10, 100], [1, 20, 100]);
  expect(exponent).toBeCloseTo(1, 10);
  expect(half).toBeCloseTo(0.1738 * 12.706, 3);
});

test("every target stands in the summary once; one that was missed names the row, one that was skipped says why", () => {
  const row = {
    work: "w",
    measured: "5 ms",
    against: "",
    figure: 5,
    target: { most: 4, unit: "ms" },
  } as const;
  const text = summary([
    { ...row, of: "sheet" },
    { ...row, of: "sheet", figure: 3 },
    skipped("live page", "no Chromium", "live size"),
  ]);
  for (const words of Object.values(targets)) expect(text.split(`| ${words} |`)).toHaveLength(2);
  expect(text).toContain(`| ${targets.sheet} | 1 of 2 rows | NO | w: 5 ms |`);
  expect(text).toContain(`| ${targets["live size"]} | skipped: no Chromium |  |  |`);
  expect(text).toContain(`| ${targets.check} | not in this run |`);
});

test("a row is met within its target, ends included, and neither where there is none", () => {
  const row = (figure: number) => ({
    work: "",
    measured: "",
    against: "",
    figure,
    target: { least: 93, most: 97, unit: "%" },
  });
  expect([92.9, 93, 97, 97.1].map((figure) => isMet(row(figure)))).toEqual([false, true, true, false]);
  expect(isMet({ work: "", measured: "", against: "" })).toBeUndefined();
  expect(markdownTable([row(98)])).toContain("| 98 % | 93–97 % | NO |");
});
