// What a log of trials is read as.

import { expect, test } from "vitest";
import { beginLog } from "../../lib/log/begin.ts";
import { filesNamedIn } from "../../lib/log/files-named.ts";
import { batchNamed, readTrial, soundTrial, swapped } from "./trial-log.ts";

const sound = readTrial(soundTrial);

test("rigs, aims, axis and batches stand in the log, in the library's units", () => {
  const { value } = sound;
  expect(value?.rigs.map(({ name }) => name)).toEqual(["yard tube", "rain butt"]);
  expect(value?.rigs[0]?.fields.boreMm).toMatchObject({
    value: 50.8,
    plusMinus: { size: 0.2, meaning: "surely" },
  });
  expect(value?.axis).toBe("moisture");
  expect(value?.aims.map(({ test, low, high }) => [test, low, high])).toEqual([
    ["moisture", 3, 4],
    ["compactability", 42, 48],
    ["green compression", 50, 100],
  ]);
  const first = batchNamed(sound, "Heron 1");
  expect(first).toMatchObject({ id: "Heron 1 / 2026-04-11", order: 2, sameHeap: false, usable: true });
  expect(first.stoodMin?.value).toBe(120);
  expect(first.recipe?.clayKg?.value).toBe(0.32);
  expect(first.readings.map(({ test, method }) => [test, method])).toEqual([
    ["moisture", "oven"],
    ["compactability", undefined],
    ["green compression", undefined],
  ]);
  expect(first.readings[2]?.raw.loadKg?.value).toBe(14.2);
});

test("a log without a trial has empty lists, and a trial needs no sand", () => {
  const plain = readTrial("format: 1\nsands: { S: { state: new } }\n").value;
  expect(plain).toMatchObject({ rigs: [], aims: [], batches: [] });
  expect(plain).not.toHaveProperty("axis");
  expect(
    readTrial("format: 1\nmetal: steel\nbond: natural\nbatches: { A: { date: 2026-04-11, squeeze: 3 } }\n")
      .issues,
  ).toEqual([]);
});

test("repeats stand as a list; squeeze is a step or its words; psi is turned into kPa", () => {
  const text = swapped(
    "compactability: 45 %",
    "compactability: [45 %, 46 %, { rig: yard tube, rammed: 66 mm }]",
  ).replace("green compression: 71 ± 2 kPa", "green compression: 10 psi\n    squeeze: snaps clean");
  const readings = batchNamed(readTrial(text), "Heron 2").readings;
  expect(readings.filter(({ test }) => test === "compactability")).toHaveLength(3);
  // 1 psi = 6.894757 kPa, NIST SP 811.
  expect(readings.find(({ test }) => test === "green compression")?.worked?.value).toBeCloseTo(68.94757, 5);
  expect(readings.find(({ test }) => test === "squeeze")?.worked?.value).toBe(3);
});

test("a clay share is turned into mass by its basis, with the water of sand and bag", () => {
  const clay = (made: string) =>
    batchNamed(
      readTrial(`format: 1\nbatches: { A: { date: 2026-04-11, made of: ${made}, squeeze: 3 } }\n`),
      "A",
    ).recipe?.clayKg?.value;
  expect(clay("{ sand: 10 kg, bentonite: 8 % of sand, water: 500 g }")).toBeCloseTo(0.8, 12);
  // c/(10 + c) = 0.08; c/(10.5 + c) = 0.08
  expect(clay("{ sand: 10 kg, bentonite: 8 % of dry mix, water: 500 g }")).toBeCloseTo(0.8 / 0.92, 12);
  expect(clay("{ sand: 10 kg, bentonite: 8 % of damp mass, water: 0.5 l }")).toBeCloseTo(0.84 / 0.92, 12);
  // 10.2 kg of sand at 100/51 % hold 0.2 kg of water: 10 kg dry; 0.8 kg dry clay at 20 % is 1 kg from the bag.
  const damp =
    "{ sand: 10.2 kg, sand moisture: 1.9607843137 %, bentonite: 8 % of sand, bentonite moisture: 20 % }";
  expect(clay(damp)).toBeCloseTo(1, 8);
});

test("the fields and the rig tell the method where it is not said", () => {
  const method = (line: string) => {
    const text = swapped("compactability: 45 %", line);
    return batchNamed(readTrial(text), "Heron 2").readings.find(({ test }) => line.startsWith(test))?.method;
  };
  expect(method("compactability: { filled: 120 mm, rammed: 66 mm }")).toBe("height");
  expect(method("compactability: { loose: 190 g, packed: 350 g }")).toBe("two weighings");
  expect(
    method("permeability: { rig: rain butt, from: 200 mm, to: 100 mm, seconds: 21, height: 50.8 mm }"),
  ).toBe("falling column");
  expect(
    method("permeability: { drawn: 1 l, suction: 100 mmH2O, seconds: 21, height: 2 in, diameter: 2 in }"),
  ).toBe("aspirator");
});

test("rows of a CSV file are batches, rows of one name repeats", () => {
  const text = soundTrial.replace(/batches:[\s\S]*/, "batches file: trial.csv\n");
  expect(filesNamedIn(text)).toEqual(["trial.csv"]);
  const csv = `batch,date,order,made of sand,made of water,moisture method,moisture scale,moisture damp,moisture dry,compactability,green compression
A,2026-04-11,1,4 kg,150 g,oven,small scale,152.4,147.3,45 %,71 kPa
A,2026-04-11,1,,,,,,,46 %,
B,2026-04-11,2,4 kg,190 g,oven,small scale,152.4,146.0,52 %,-
`;
  const result = readTrial(text, { "trial.csv": csv });
  expect(result.issues.map(({ code }) => code)).toEqual(["log/no-usual-ranges", "log/missing-test"]);
  const a = batchNamed(result, "A");
  expect(a.readings.map(({ test }) => test)).toEqual([
    "moisture",
    "compactability",
    "compactability",
    "green compression",
  ]);
  expect(a.readings[0]).toMatchObject({ method: "oven", scale: { name: "small scale" } });
  expect(a.recipe?.waterKg?.value).toBe(0.15);
  expect(batchNamed(result, "B").order).toBe(2);
});

test("of a CSV file of batches, what is wrong with a column is told in the first row, once; remarks of repeats are joined", () => {
  const text = soundTrial.replace(/batches:[\s\S]*/, "batches file: trial.csv\n");
  const csv = `batch,date,compactabilty,moisture wet,squeeze,notes
A,2026-04-11,45 %,1,3,first
A,2026-04-11,46 %,1,3,second
B,2026-04-11,52 %,1,4,
`;
  const result = readTrial(text, { "trial.csv": csv });
  const unknown = result.issues.filter(({ code }) => code === "log/unknown-key");
  expect(unknown.map(({ place }) => [place?.line, place?.column])).toEqual([
    [1, 12],
    [1, 26],
  ]);
  expect(result.issues.map(({ code }) => code)).not.toContain("log/csv-rows-disagree");
  expect(batchNamed(result, "A").note).toBe("first; second");
});

test("a fault in the writing of one batch leaves the others as they were", () => {
  const torn = swapped(
    "    mulled: 10 min\n    stood: 2 h\n    moisture: { method: oven, scale: small scale, damp: 152.4 g, dry: 148.6 g }",
    "    mulled 10 min\n    stood: 2 h\n    moisture: { method: oven, scale: small scale, damp: 152.4 g, dry: 148.6 g",
  );
  const result = readTrial(torn);
  expect(result.issues.some(({ severity, about }) => severity === "error" && about === "Heron 1")).toBe(true);
  expect(
    batchNamed(result, "Heron 2").readings.map(({ raw, worked }) => [
      Object.values(raw).map(({ value }) => value),
      worked?.value,
    ]),
  ).toEqual(
    batchNamed(sound, "Heron 2").readings.map(({ raw, worked }) => [
      Object.values(raw).map(({ value }) => value),
      worked?.value,
    ]),
  );
  expect(batchNamed(result, "Heron 2").usable).toBe(true);
});

test("the trial in the starter log is read without a complaint once its # are taken away", () => {
  const at = beginLog().indexOf("# trial: {");
  const text = beginLog().slice(0, at) + beginLog().slice(at).replace(/^# /gm, "");
  const { value, issues } = readTrial(text);
  expect(issues.filter(({ code }) => code !== "log/missing-test")).toEqual([]);
  expect(value?.batches.map(({ readings }) => readings.length)).toEqual([5, 4]);
  expect(readTrial(beginLog()).issues).toEqual([]);
});
