import { expect, test } from "vitest";
import { normalCumulative } from "../../lib/numbers/normal.ts";
import { aimFor } from "../../lib/trial/aim.ts";
import { blockShare } from "../../lib/trial/block-difference.ts";
import { responseCurve } from "../../lib/trial/response-curve.ts";
import { seeded } from "../seeded.ts";

const x = [2.6, 3.1, 3.1, 3.6, 4.1, 4.6, 2.6, 3.1, 3.1, 3.6, 4.1, 4.6];
const blocks = x.map((_, i) => (i < 6 ? "short" : "long"));
const truth = (at: number, block: string): number => 57 - 9 * (at - 3.2) ** 2 + (block === "long" ? 10 : 0);
const sd = 1.8;

test("a curve in a block: its interval, and that of its share of the first, cover in 95 %", () => {
  const random = seeded(77);
  const trials = 500;
  let [mean, share] = [0, 0];
  for (let n = 0; n < trials; n++) {
    const y = x.map((at, i) => truth(at, blocks[i]!) + sd * random.normal());
    const there = responseCurve({ x, y, blocks }, { peaked: true, block: "long" }).at(3.2)!;
    if (there.low <= 67 && 67 <= there.high) mean++;
    const found = blockShare(responseCurve({ x, y, blocks }, { peaked: true, block: "short" }))!;
    const true_ = (100 * 10) / truth(3.6, "short");
    if (found.low <= true_ && true_ <= found.high) share++;
  }
  // Three standard errors: 3·√(0.05·0.95/500).
  expect(Math.abs(mean / trials - 0.95)).toBeLessThan(0.03);
  expect(Math.abs(share / trials - 0.95)).toBeLessThan(0.03);
});

test("the chance in a block is that of the block, not of the mean of both", () => {
  const random = seeded(78);
  const trials = 80;
  const promised = { short: 0, long: 0 };
  const true_ = { short: 0, long: 0 };
  for (let n = 0; n < trials; n++) {
    const y = x.map((at, i) => truth(at, blocks[i]!) + sd * random.normal());
    for (const block of ["short", "long"] as const) {
      const curve = responseCurve({ x, y, blocks }, { peaked: true, block });
      const { aim, chanceAtAim } = aimFor([{ name: "green compression", curve, low: 56, high: 80 }], 512);
      promised[block] += chanceAtAim / trials;
      true_[block] += (1 - normalCumulative((56 - truth(aim.x, block)) / sd)) / trials;
    }
  }
  expect(true_.short).toBeLessThan(0.75);
  expect(promised.short).toBeGreaterThan(true_.short - 0.06);
  expect(promised.short).toBeLessThan(true_.short + 0.06);
  expect(promised.long).toBeGreaterThan(0.97);
});
