// What a trial's report is worded as: aims out of reach, wild batches, misfit, what was not checked, unlike methods.

import { expect, test } from "vitest";
import { reachFindings } from "../../lib/finding/trial-reach-findings.ts";
import { type Finding, trialFindings, trialReport } from "../../lib/index.ts";
import type { TrialReport } from "../../lib/trial/trial-report.ts";
import { type InventedBatch, logOf } from "./trial-logs.ts";

const x = [2.6, 2.9, 3.2, 3.5, 3.8, 4.1, 4.4, 4.7];
const noise = [0.4, -0.5, 0.3, -0.3, 0.5, -0.4, 0.2, -0.2];
function batches(strengthOf: (at: number, k: number) => number): InventedBatch[] {
  return x.map((at, k) => ({
    name: `W${k + 1}`,
    moisture: `${at} ± 0.05 %`,
    compactability: `${(45 + 11 * (at - 3.5) + noise[k]!).toFixed(1)} ± 0.5 %`,
    strength: `${(strengthOf(at, k) + noise[k]!).toFixed(1)} ± 2 kPa`,
  }));
}
const hill = (at: number): number => 75 - 20 * (at - 3.5) ** 2;
const withCode = (found: readonly Finding[], code: string) => found.find((one) => one.code === code);

test("an aim that no water meets is said, with how far, and what usually mends it", () => {
  const log = logOf(batches(hill), ["aims: { green compression: 120 to 150 kPa }"]);
  const found = withCode(trialFindings(trialReport(log)), "trial/unreachable")!;
  expect(found.tone).toBe("doubt");
  expect(found.text).toMatch(
    /^75\.?\d* kPa at 3\.\d+ % moisture of damp mass is as near as green compression comes/,
  );
  expect(found.text).toContain("more or less water will not mend it");
  expect(found.because.join(" ")).toContain("longer mulling first, then more clay (common practice)");
});

test("nearest at an end of what was tried: it may be met beyond, and water is not ruled out", () => {
  const report = {
    ...trialReport(logOf(batches(hill), ["aims: { compactability: 42 to 48 % }"])),
    unreachable: [
      {
        test: "permeability",
        best: 60,
        at: 4.7,
        short: { value: 10, low: -2, high: 22 },
        side: "too low",
        onlyThis: true,
      },
    ],
  } as TrialReport;
  const [found] = reachFindings(report);
  expect(found!.text).toContain("at the wetter end of what was tried");
  expect(found!.text).not.toContain("will not mend");
  expect(found!.because.join(" ")).toContain("By its interval it may just be met");
});

test("a wild batch is named and kept; an honest trial has none", () => {
  const spoilt = logOf(batches((at, k) => hill(at) + (k === 4 ? 25 : 0)));
  const found = withCode(trialFindings(trialReport(spoilt)), "trial/wild-batch")!;
  expect(found.text).toContain("green compression of W5");
  expect(found.text).toContain("kept until you decide");
  expect(trialReport(spoilt).rows.map(({ batch }) => batch.name)).toContain("W5");
  expect(withCode(trialFindings(trialReport(logOf(batches(hill)))), "trial/wild-batch")).toBeUndefined();
});

test("a misfit with a small p is worded, one with a large p is not", () => {
  const report = trialReport(logOf(batches(hill)));
  const with_ = (p: number) =>
    trialFindings({ ...report, lackOfFit: [{ test: "green compression", p, f: 9.1, df: [3, 4] }] });
  expect(withCode(with_(0.02), "trial/misfit")!.text).toContain("F = 9.10 with 3 and 4 degrees of freedom");
  expect(withCode(with_(0.4), "trial/misfit")).toBeUndefined();
});

test("aims that are met apart name both places", () => {
  const report = {
    ...trialReport(logOf(batches(hill))),
    apart: [
      {
        tests: ["green compression", "compactability"],
        aAt: { low: 2.6, high: 3.1 },
        bAt: { low: 3.6, high: 4.2 },
      },
    ],
  } as TrialReport;
  const [found] = reachFindings(report).filter(({ code }) => code === "trial/only-apart");
  expect(found!.text).toContain("never together");
});

test("what the log does not say was not checked, and that is said", () => {
  const report = trialReport(logOf(batches(hill)));
  expect(withCode(trialFindings(report), "trial/unchecked")!.text).toContain("the minutes mulled");
});

test("a leak along the wall and strengths without a density are said with what would tell", () => {
  const withAir = batches(hill).map((one, k) => ({ ...one, permeability: `${50 + k} ± 2` }));
  const found = trialFindings(trialReport(logOf(withAir)));
  expect(withCode(found, "rig/wall-leak")!.because[0]).toContain("sealed plug");
  expect(withCode(found, "trial/density-unknown")).toBeDefined();
});

test("the place of the aim and its window are printed to the same digits", () => {
  const log = logOf(batches(hill), ["aims: { compactability: 40 to 50 %, green compression: 60 to 90 kPa }"]);
  const report = trialReport(log);
  const found = trialFindings(report);
  const decimals = (text: string) => [...text.matchAll(/\d+\.(\d+)/g)].map(([, after]) => after!.length);
  const places = ["trial/aim", "trial/window"].flatMap((code) =>
    decimals(withCode(found, code)!.text.split("%")[0]!),
  );
  const all = [...places, ...decimals(withCode(found, "trial/aim")!.text)];
  expect(new Set(all).size).toBe(1);
});
