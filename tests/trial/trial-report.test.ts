// What a trial says of logs that are short, lopsided, confounded or faulty.

import { expect, test } from "vitest";
import { trialFindings } from "../../lib/finding/trial-findings.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { beforeAfter } from "../../lib/trial/before-after.ts";
import { randomOrder } from "../../lib/trial/confounding.ts";
import { levelCount, responseCurve } from "../../lib/trial/response-curve.ts";
import { trialReport } from "../../lib/trial/trial-report.ts";

interface Row {
  readonly moisture: number;
  readonly compactability?: number;
  readonly strength?: number;
  readonly density?: number;
  readonly more?: string;
}

function logOf(rows: readonly Row[], aims = true): string {
  const lines = rows.map(({ moisture, compactability, strength, density, more = "" }, i) => {
    const tests = [
      `moisture: ${moisture} ± 0.1 %`,
      compactability === undefined ? "" : `compactability: ${compactability} ± 1 %`,
      strength === undefined ? "" : `green compression: ${strength} ± 2 kPa`,
      density === undefined ? "" : `density: ${density} g/cm³`,
      more,
    ].filter((one) => one !== "");
    return `  B${i + 1}: { date: 2026-07-1${i % 10}, ${tests.join(", ")} }`;
  });
  const wanted = aims ? "aims: { compactability: 42 to 48 %, green compression: 60 to 90 kPa }\n" : "";
  return `format: 1\n${wanted}batches:\n${lines.join("\n")}\n`;
}

function report(rows: readonly Row[], aims = true) {
  const { value } = readLog(logOf(rows, aims), { name: "log.yaml" });
  const found = trialReport(value!);
  return { found, codes: trialFindings(found).map(({ code }) => code) };
}

const wet = [2.6, 3, 3.4, 3.8, 4.2, 4.8];
const usual = wet.map(
  (moisture, i): Row => ({
    moisture,
    compactability: 34 + 10 * (moisture - 2.6) + [0.6, -0.9, 0.4, -0.2, 1, -0.8][i]!,
    strength: 75 - 10 * (moisture - 3.3) ** 2 + [1.5, -2, 1, 0.5, -1.5, 1][i]!,
  }),
);

test("six batches from dry to wet: an aim inside the trial, with an interval, a window and a next batch or enough", () => {
  const { found, codes } = report(usual);
  const { aim, window } = found.result!;
  expect(aim.x).toBeGreaterThan(3.2);
  expect(aim.x).toBeLessThan(4);
  expect(aim.low).toBeLessThanOrEqual(aim.x);
  expect(aim.high).toBeGreaterThanOrEqual(aim.x);
  expect(window).not.toBeNull();
  expect(codes.slice(0, 4)).toEqual(["trial/aim", "trial/aim-by-tube", "trial/chance", "trial/window"]);
  expect(codes.some((code) => code === "trial/next-batch" || code === "trial/enough")).toBe(true);
});

test("each side of the window is limited by a named property", () => {
  const { limits } = report(usual).found.result!;
  expect(limits.left).toEqual({ name: "compactability", side: "too low" });
  expect(limits.right).toEqual({ name: "compactability", side: "too high" });
});

test("three batches: points for strength, a line for compactability, no aim and no chance", () => {
  const { found, codes } = report(usual.slice(0, 3));
  expect(found.result).toBeUndefined();
  const forms = Object.fromEntries(found.properties.map(({ test, curve }) => [test, curve.form]));
  expect(forms).toEqual({ compactability: "straight line", "green compression": "points only" });
  expect(codes).toContain("trial/too-few-batches");
});

test("all at one moisture, and two at the same: no curve from one level, repeats welcome", () => {
  const { found, codes } = report(usual.map((row) => ({ ...row, moisture: 3.4 })));
  expect(found.levels).toBe(1);
  expect(found.result).toBeUndefined();
  expect(codes).toContain("trial/too-few-batches");
  const twice = report([...usual, { ...usual[2]!, compactability: 43 }]);
  expect(twice.found.levels).toBe(6);
  expect(twice.found.result).toBeDefined();
});

test("a test that is missing in some batches leaves the rest standing", () => {
  const { found } = report(
    usual.map(({ strength, ...row }, i) => (i % 2 === 0 ? row : { ...row, strength: strength! })),
  );
  const strength = found.properties.find(({ test }) => test === "green compression")!;
  expect(strength.curve.form).toBe("points only");
  expect(found.result).toBeDefined();
});

test("compactability on four batches beside strength on six: a line beside a curve, and no fault", () => {
  const { found } = report(
    usual.map(({ compactability, ...row }, i) => (i < 4 ? { ...row, compactability: compactability! } : row)),
  );
  expect(found.properties.map(({ curve }) => curve.form)).toEqual(["straight line", "curve"]);
  expect(found.result).toBeDefined();
});

test("all too dry: the aim is open at the wet end, has no ±, and nothing says to cast", () => {
  const { found, codes } = report(
    usual.map(({ moisture, compactability }) => ({ moisture, compactability: compactability! - 12 })),
  );
  const text = trialFindings(found)
    .map((finding) => `${finding.text} ${finding.because.join(" ")}`)
    .join(" ");
  expect(text).not.toMatch(/cast with|mould with it\b(?! is)/i);
  expect(codes).not.toContain("trial/aim");
  if (found.result?.window) expect(codes).toContain("trial/aim-open");
  expect(found.result?.aim.open.high).toBe(true);
});

test("a range passed on the way up and on the way down makes two windows, not one across the hole", () => {
  const tall = usual.map((row) => ({ ...row, strength: 110 - 16 * (row.moisture - 3.7) ** 2 }));
  const text = logOf(tall)
    .replace("green compression: 60 to 90 kPa", "green compression: 85 to 100 kPa")
    .replace("compactability: 42 to 48 %, ", "");
  const { result } = trialReport(readLog(text, { name: "log.yaml" }).value!);
  expect(result!.otherWindows.length).toBe(1);
  for (const { x, all } of result!.chances) {
    if (result!.window && x >= result!.window.low && x <= result!.window.high)
      expect(all).toBeGreaterThanOrEqual(0.5);
  }
});

test("no window: no next batch and no enough", () => {
  const { found } = report(usual.map((row) => ({ ...row, strength: row.strength! - 40 })));
  expect(found.next).toBeUndefined();
});

test("no aims, and no metal to take a usual range for: said, and nothing assumed", () => {
  expect(report(usual, false).codes).toEqual(expect.arrayContaining(["trial/no-aims"]));
});

test("aims that cannot be met together: no window, and which falls short", () => {
  const { found, codes } = report(usual.map((row) => ({ ...row, strength: row.strength! - 40 })));
  expect(found.result?.window).toBeNull();
  expect(codes[0]).toBe("trial/no-window");
});

test("one heap wetted step by step: what cannot be told apart is named", () => {
  const { found, codes } = report(
    usual.map((row, i) => (i === 0 ? row : { ...row, more: "same heap: yes" })),
  );
  expect(found.confounded[0]?.companion).toBe("one heap wetted step by step");
  expect(codes).toContain("trial/one-heap");
});

test("trial order that went along with the water is named, a shuffled one is not", () => {
  const along = report(usual.map((row, i) => ({ ...row, more: `order: ${i + 1}` })));
  expect(along.codes).toContain("trial/goes-together");
  const shuffled = report(usual.map((row, i) => ({ ...row, more: `order: ${[3, 1, 6, 4, 2, 5][i]}` })));
  expect(shuffled.codes).not.toContain("trial/goes-together");
});

test("strengths at densities more than 3 % apart are not joined", () => {
  const { found, codes } = report(usual.map((row, i) => ({ ...row, density: i === 2 ? 1.62 : 1.55 })));
  const strength = found.properties.find(({ test }) => test === "green compression")!;
  expect(strength.leftOut).toEqual([false, false, true, false, false, false]);
  expect(strength.curve.used).not.toContain(2);
  expect(codes).toContain("trial/density-apart");
});

test("a batch without moisture stands off the axis, and is named", () => {
  const { value } = readLog(`${logOf(usual)}  dry one: { date: 2026-07-20, compactability: 30 % }\n`, {
    name: "log.yaml",
  });
  expect(trialReport(value!).offAxis).toEqual(["dry one"]);
});

test("an empty log has no trial, and says so without a fault", () => {
  const { value } = readLog("format: 1\n", { name: "log.yaml" });
  const found = trialReport(value!);
  expect(found.why).toBe("no batches");
  expect(trialFindings(found)).toEqual([]);
});

test("levels: moistures within a twenty-fifth of the range are one", () => {
  expect(levelCount([2.6, 2.62, 3.4, 4.2])).toBe(3);
  expect(levelCount([3, 3, 3])).toBe(1);
});

test("blocks get an offset of their own: a day that reads high does not bend the curve", () => {
  const x = [2.6, 3, 3.4, 3.8, 4.2, 2.8, 3.2, 3.6, 4, 4.4];
  const blocks = x.map((_, i) => (i < 5 ? "Saturday" : "Sunday"));
  const y = x.map((at, i) => 40 + 10 * (at - 3.4) + (i < 5 ? 0 : 6) + [0.1, -0.1][i % 2]!);
  const curve = responseCurve({ x, y, blocks }, { peaked: false });
  expect(curve.at(3.4)!.mean).toBeCloseTo(43, 0);
  expect(curve.fit!.residualSd).toBeLessThan(0.3);
});

test("before and after: a difference with its interval; a drift is looked at first", () => {
  const steady = beforeAfter([50, 52, 49, 51], [58, 57, 60, 59]);
  expect(steady.low).toBeGreaterThan(0);
  expect(steady.drift).toEqual({ before: false, after: false });
  expect(beforeAfter([50, 52, 54, 56], [58, 60, 62, 64]).drift).toEqual({ before: true, after: true });
});

test("the shuffled order is the same every time and holds every batch", () => {
  const names = ["W1", "W2", "W3", "W4", "W5"];
  expect(randomOrder(names, "next")).toEqual(randomOrder([...names].reverse(), "next"));
  expect([...randomOrder(names, "next")].sort()).toEqual(names);
  expect(randomOrder(names, "next")).not.toEqual(names);
});
