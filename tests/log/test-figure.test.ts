// From raw readings to the trade's number: worked examples from outside, and the budget of doubt.

import { expect, test } from "vitest";
import { testFigure } from "../../lib/log/test-figure.ts";
import { combine } from "../../lib/quantity/combine.ts";
import { figure } from "../../lib/quantity/figure.ts";
import { batchNamed, readTrial, soundTrial, swapped } from "./trial-log.ts";

function figureOf(line: string, more = "") {
  const key = line.slice(0, line.indexOf(":"));
  const text = `${soundTrial}  Heron 3:\n    date: 2026-04-12\n    ${line}\n${more}`;
  const batch = batchNamed(readTrial(text), "Heron 3");
  const reading = batch.readings.find(({ test }) => test === key);
  if (!reading) throw new Error(`no reading: ${readTrial(text).issues.map(({ message }) => message)}`);
  return testFigure(reading, batch);
}

const numberOf = (line: string) => figureOf(line).value!.value;
const at20 = "temperature: 20 °C";

test("raw readings give the published figures", () => {
  // University of Brawijaya lab report, 25 g dried to 23.414 g: 6.344 % of damp mass (recomputed from its masses).
  expect(numberOf("moisture: { method: oven, damp: 25 g, dry: 23.414 g }")).toBeCloseTo(6.344, 3);
  expect(numberOf("moisture: { method: oven, dish: 80 g, damp: 105 g, dry: 103.414 g }")).toBeCloseTo(
    6.344,
    3,
  );
  // Definition of the compactability test, 120 mm to 66 mm: 45 %.
  expect(numberOf("compactability: { filled: 120 mm, rammed: 66 mm }")).toBeCloseTo(45, 12);
  // Loose 0.80, rammed 1.486 g/cm³ (Giesserei lexicon's 65 % and 35 % voids): 46.2 %.
  expect(numberOf("compactability: { loose: 80 g, packed: 148.6 g }")).toBeCloseTo(46.2, 1);
  // 1 kgf on 50.8 mm is 4.838 kPa; 2.42 kPa in splitting on 50.8 × 50.8 mm.
  expect(numberOf("green compression: { load: 1 kg, diameter: 50.8 mm }")).toBeCloseTo(4.838, 3);
  expect(numberOf("green shear: { load: 1 kg, diameter: 50.8 mm }")).toBeCloseTo(4.838, 3);
  expect(numberOf("splitting: { load: 1 kg, diameter: 50.8 mm, height: 50.8 mm }")).toBeCloseTo(2.419, 3);
  // Laboratory manual: 155 g in a 2 in specimen is 1.505 g/cm³.
  expect(numberOf("density: { mass: 155 g, diameter: 2 in, height: 2 in }")).toBeCloseTo(1.505, 3);
  // 2000 cm³, 2 × 2 in, 10 gf/cm², 60 s: 50.13 (printed 50.12 from a truncated constant).
  expect(
    numberOf(
      `permeability: { air: 2000 ml, water: 100 mm, seconds: 60, height: 50.8 mm, diameter: 50.8 mm, ${at20} }`,
    ),
  ).toBeCloseTo(50.128, 2);
  expect(
    numberOf(
      `permeability: { drawn: 2000 ml, suction: 10 gf/cm², seconds: 60, height: 50.8 mm, diameter: 50.8 mm, ${at20} }`,
    ),
  ).toBeCloseTo(50.128, 2);
  // Own vectors of the reference notes: a 100 cm² column from 20 to 10 cm in 20.8 s, and 20 l halving in 4.0 s, are 50.
  expect(
    numberOf(
      `permeability: { rig: rain butt, from: 200 mm, to: 100 mm, seconds: 20.8, height: 50.8 mm, ${at20} }`,
    ),
  ).toBeCloseTo(50.1, 0);
  expect(
    numberOf(
      `permeability: { vessel: 20 l, from: 100 mm, to: 50 mm, seconds: 4.04, height: 50.8 mm, diameter: 50.8 mm, ${at20} }`,
    ),
  ).toBeCloseTo(50, 0);
  expect(numberOf("clay by wash: { dry: 50 g, grain: 46 g }")).toBeCloseTo(8, 12);
});

test("a warmer day is taken back to 20 °C: air at 30 °C is 1.026 times as stiff (Sutherland)", () => {
  const run = (celsius: number) =>
    numberOf(
      `permeability: { air: 2000 ml, water: 100 mm, seconds: 60, height: 50 mm, diameter: 50 mm, temperature: ${celsius} °C }`,
    );
  expect(run(30) / run(20)).toBeCloseTo(1.026, 3);
});

test("the ± of a moisture is two roundings of two weighings and what clay may hold, by hand", () => {
  const { value } = figureOf("moisture: { method: oven, scale: small scale, damp: 152.4 g, dry: 147.3 g }");
  const { sd, shares } = figure(value!.spread);
  // d/dDamp = 100·147.3/152.4² = 0.6342, d/dDry = −100/152.4 = −0.6562; triangular ± 0.1 g has sd 0.1/√6 = 0.04082 g;
  // the bias (± 0.2 g, sd 0.1155 g) enters by the difference of the two, −0.02196; the oven: 105 ± 5 °C with 8 % clay,
  // 8 · 5 · (2.5/45)/100 = 0.0222 rectangular, sd 0.0128.
  const byHand = Math.hypot(0.6342 * 0.04082, 0.6562 * 0.04082, 0.02196 * 0.1155, 0.0222 / Math.sqrt(3));
  expect(sd).toBeCloseTo(byHand, 3);
  expect(shares.map(({ source }) => source.kind).sort()).toEqual(["method", "reading", "reading", "rig"]);
  expect(value?.missing).toEqual([]);
  expect(value?.assumed).toEqual(["8 % clay, for the water that it binds"]);
});

test("what belongs to the rig is shared, so that the difference of two readings does not hold it", () => {
  const line = (load: string) =>
    `    green compression: { scale: pail scale, rig: yard tube, load: ${load} }`;
  const text = `${soundTrial}  A:\n    date: 2026-04-12\n${line("14 kg")}\n  B:\n    date: 2026-04-12\n${line("14.0 kg")}\n`;
  const result = readTrial(text);
  const [a, b] = ["A", "B"].map((name) => {
    const batch = batchNamed(result, name);
    return testFigure(batch.readings[0]!, batch).value!;
  });
  expect(figure(a!.shared).sd).toBeGreaterThan(0.1);
  const shared = combine((pair) => pair[0]! - pair[1]!, [a!.shared, b!.shared]);
  expect(shared.sd).toBe(0);
  const whole = combine((pair) => pair[0]! - pair[1]!, [a!.spread, b!.spread]);
  expect(whole.sd).toBeGreaterThan(0);
  expect(whole.sd).toBeLessThan(0.2 * figure(a!.spread).sd);
});

test("two readings alike in every figure are two readings still", () => {
  const text = swapped(
    "compactability: 45 %",
    "compactability: [{ filled: 120 mm, rammed: 66 mm }, { filled: 120 mm, rammed: 66 mm }]",
  );
  const batch = batchNamed(readTrial(text), "Heron 2");
  const [one, other] = batch.readings
    .filter(({ test }) => test === "compactability")
    .map((reading) => testFigure(reading, batch).value!);
  expect(combine((pair) => pair[0]! - pair[1]!, [one!.spread, other!.spread]).sd).toBeGreaterThan(0.1);
});

test("what is not known is said as missing, what was assumed in words", () => {
  expect(figureOf("compactability: 45 %").value?.missing).toEqual(["reading"]);
  expect(figureOf("compactability: 45 ± 1 %").value?.missing).toEqual([]);
  expect(
    figureOf("moisture: { method: microwave, scale: small scale, damp: 152.4 g, dry: 147.3 g }").value
      ?.missing,
  ).toEqual(["method"]);
  expect(figureOf("moisture: { method: oven, damp: 152.4 g, dry: 147.3 g }").value?.missing).toEqual([
    "weighing",
  ]);
  const flow = figureOf(
    "permeability: { air: 2000 ml, water: 100 mm, seconds: 60, height: 50 mm, diameter: 50 mm }",
  ).value!;
  expect(flow.missing).toEqual(["blank run"]);
  expect(flow.assumed).toContain("air at 20 ± 10 °C");
  expect(flow.rigWords).toBe("Air let through the specimen, at a steady pressure.");
});

test("a difference of levels that the ruler cannot see gives no figure", () => {
  const { value, issues } = figureOf(
    "permeability: { rig: rain butt, from: 100 mm, to: 99 mm, seconds: 20, height: 50.8 mm }",
  );
  expect(value).toBeUndefined();
  expect(issues.map(({ code }) => code)).toEqual(["log/figure-unsteady"]);
  expect(issues[0]?.place?.file).toBe("trial.yaml");
});

test("a blank run is taken off", () => {
  const run = (blank: string) =>
    valueOfWith(
      blank,
      `permeability: { rig: rain butt, from: 200 mm, to: 100 mm, seconds: 20.8, height: 50.8 mm, ${at20} }`,
    );
  expect(run("2.8 s") / run("0 s")).toBeCloseTo(20.8 / 18, 6);
});

function valueOfWith(blank: string, line: string): number {
  const text = `${soundTrial.replace("blank time: 0 s", `blank time: ${blank}`)}  Heron 3:\n    date: 2026-04-12\n    ${line}\n`;
  const batch = batchNamed(readTrial(text), "Heron 3");
  return testFigure(batch.readings[0]!, batch).value!.value;
}
