// Does the advice of where to make the next batch save batches? Over 100 founders it saves 0.84 of about three, with a
// standard error of 0.15 (tests/bench/next-trial.ts); here the first of them.

import { expect, test } from "vitest";
import { batchesSaved } from "./next-trial.ts";

test("advised founders reach the width of the aim in fewer batches than those who go on evenly", () => {
  const tried = batchesSaved(900, 20);
  const saved = tried.map(({ advised, evenly }) => evenly - advised);
  const mean = saved.reduce((all, one) => all + one, 0) / saved.length;
  // 0.84 less two standard errors of 20 founders, 0.15·√(100/20) each.
  expect(mean).toBeGreaterThan(0.84 - 2 * 0.335);
  expect(saved.filter((one) => one > 0).length).toBeGreaterThan(saved.filter((one) => one < 0).length);
});
