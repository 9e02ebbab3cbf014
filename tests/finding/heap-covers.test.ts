// The water that a season takes: the settled balance against the season worked through, and under a cover.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { heapReport } from "../../lib/finding/heap-report.ts";
import { readLog } from "../../lib/log/read-log.ts";

const name = "data-demo/heap/summer-of-pours.yaml";
const text = readFileSync(join(import.meta.dirname, "..", "..", name), "utf8");
const log = readLog(text, { name }).value!;
const { season } = heapReport(log);

test("the settled water is what the season worked through comes to, pour for pour", () => {
  const { points } = season!.mended;
  const [late, last] = [points.at(-11)!, points.at(-1)!];
  const perPour = (last.waterKg.value - late.waterKg.value) / 10;
  const settled = (season!.whatIf[0]!.waterKg.value * season!.plan.metalKg) / 1000;
  // Medians of draws, and dead clay not settled yet.
  expect(settled / perPour).toBeGreaterThan(0.97);
  expect(settled / perPour).toBeLessThan(1.03);
});

test("under a sheet a heap takes less water than uncovered, and no other amount moves", () => {
  const [planned] = season!.whatIf;
  const under = (cover: string) => season!.whatIf.find((one) => one.name.includes(cover))!;
  expect(under("sheet").waterKg.high).toBeLessThan(under("uncovered").waterKg.low);
  for (const one of [under("sheet"), under("uncovered")]) {
    expect(one.clayKg).toEqual(planned!.clayKg);
    expect(one.newSandKg).toEqual(planned!.newSandKg);
  }
});

test("without weather nothing is said of covers", () => {
  const without = heapReport(readLog(text.replace(/^weather:/m, "note 2:"), { name }).value!);
  expect(without.season!.whatIf.filter((one) => /cover|sheet/.test(one.name))).toEqual([]);
});
