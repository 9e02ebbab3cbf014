// The sentences of a before and an after: what is said, and what is held back.

import { expect, test } from "vitest";
import { blockFinding, comparisonFinding } from "../../lib/finding/comparison-findings.ts";
import { beforeAfter, conditionsTold } from "../../lib/trial/before-after.ts";
import type { Conditions } from "../../lib/trial/like-conditions.ts";

const old = [50, 52, 49, 51];
const mended = [58, 57, 60, 59];
const say = (conditions: Conditions, property = "green compression", unit = "kPa") =>
  comparisonFinding(property, unit, "old mix", "new mix", beforeAfter(old, mended, conditions));

const compactability = { before: [44, 45, 46, 45], after: [51, 52, 53, 52] };
const moisture = { before: [3.4, 3.4, 3.5, 3.5], after: [3.9, 4.0, 3.9, 4.0] };

test("alike in all that is known: the figure, and no doubt", () => {
  const found = say({ compactability: { before: [44, 45, 46, 45], after: [45, 44, 46, 45] } });
  expect(found).toMatchObject({ code: "comparison/differs", tone: "good" });
  expect(found.text).toMatch(/^8\.0 ± 2\.2 kPa: new mix differs/);
});

test("strength at unlike compactability is not compared, and the finding says what to do", () => {
  const found = say({ compactability });
  expect(found).toMatchObject({ code: "comparison/not-comparable", tone: "doubt" });
  expect(found.text).toMatch(/^7\.0 ± 1\.\d points:/);
  expect(found.text).not.toContain("kPa");
  expect(found.because.join(" ")).toContain("Temper both to one compactability");
});

test("unlike moisture casts doubt on the change; less is said as less", () => {
  const wetter = say({ moisture });
  expect(wetter).toMatchObject({ code: "comparison/unlike", tone: "doubt" });
  expect(wetter.because.join(" ")).toMatch(/Moisture: new mix had 0\.50 ± 0\.10 points more than old mix/);
  const drier = say({ moisture: { before: moisture.after, after: moisture.before } });
  expect(drier.because.join(" ")).toMatch(/0\.50 ± 0\.10 points less/);
});

test("compactability compared with itself is no unlike condition", () => {
  const found = say({ compactability }, "compactability", "%");
  expect(found.code).toBe("comparison/differs");
});

test("neighbours that go together: said, with how many they count as", () => {
  const runs = [1, 1, 1, 1, -1, -1, -1, -1, 1, 1, 1, 1, -1, -1, -1, -1];
  const higher = runs.map((value) => value + 3);
  const { because } = comparisonFinding("permeability", "", "old", "new", beforeAfter(runs, higher));
  expect(because.join(" ")).toMatch(
    /autocorrelation 0\.56\), so they count as 4\.5 and 4\.5 independent ones/,
  );
});

test("moisture that follows a change at the same compactability is told, and is no doubt", () => {
  const found = say({ moisture, compactability: { before: [44, 45, 46, 45], after: [45, 44, 46, 45] } });
  expect(found.code).toBe("comparison/differs");
  expect(found.because.join(" ")).toContain("points more than old mix, at the same compactability.");
});

test("blocks on one curve: unlike compactability is a doubt, a difference along the axis is not", () => {
  const offset = { difference: 8, low: 5, high: 11, p: 0.001, df: 6 };
  const of = (conditions: Conditions) =>
    blockFinding("permeability", "", "old", "new", "clay", offset, conditionsTold(conditions));
  expect(of({ clay: { before: [6, 7, 8], after: [9, 10, 11] } })).toMatchObject({ tone: "good" });
  const found = of({ compactability });
  expect(found).toMatchObject({ code: "comparison/blocks-unlike", tone: "doubt" });
  expect(found.text).toContain("they differ in compactability as well");
  expect(blockFinding("permeability", "", "old", "new", "clay", offset).code).toBe(
    "comparison/blocks-differ",
  );
});
