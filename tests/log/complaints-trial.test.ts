// Every complaint about batches and tests is triggered once, at its place, with its remedy; none is left out.

import { expect, test } from "vitest";
import type { Issue } from "../../lib/issue.ts";
import * as batch from "../../lib/log/complaints-batch.ts";
import * as reading from "../../lib/log/complaints-test.ts";
import { issueOf } from "./helpers.ts";
import { readTrial, soundTrial, swapped } from "./trial-log.ts";

interface Case {
  readonly code: string;
  readonly text: string;
  readonly message: RegExp;
  readonly remedy: RegExp;
  /** The piece of text that the place points at begins so. */
  readonly at: string;
  readonly files?: Readonly<Record<string, string>>;
}

const strength = "green compression: 71 ± 2 kPa";
const wet = "dry: 147.3 g }";
const second = /\n {4}compactability: 45 %\n/;
const instead = (line: string) => swapped(second, `\n    ${line}\n`);
const csvTrial = "format: 1\nbatches file: b.csv\n";

const cases: readonly Case[] = [
  {
    code: "log/psi-for-kpa",
    text: swapped(strength, "green compression: 8"),
    // 1 psi = 6.894757 kPa (NIST SP 811): 8 kPa = 1.16 psi, 8 psi = 55.2 kPa.
    message: /8 kPa is 1\.2 psi.*8 psi would be 55 kPa/,
    remedy: /8 psi or 8 kPa/,
    at: "8",
  },
  {
    code: "log/dry-basis",
    text: instead("moisture: 3.5 % of dry").replace(
      / {4}moisture: \{ method: oven, scale: small scale, damp: 152.4 g, dry: 147.3 g \}\n/,
      "",
    ),
    // 3.5 / 1.035 = 3.38
    message: /3\.5 % of the dry mass is 3\.38 % of the damp mass/,
    remedy: /Write 3\.38 %.*3\.5 %/,
    at: "3.5 % of dry",
  },
  {
    code: "log/wash-basis",
    text: instead("clay by wash: 9 %"),
    // 100 · 9 / 109 = 8.26; 9 / 0.965 = 9.33
    message: /9 % of dry mix.*8\.26 % of dry mix.*9\.33 % of dry mix/,
    remedy: /9 % of dry mix/,
    at: "9 %",
  },
  {
    code: "log/dish-above-dry",
    text: swapped("damp: 152.4 g, dry: 147.3 g", "dish: 150 g, damp: 152.4 g, dry: 147.3 g"),
    message: /150 g.*147\.3 g/,
    remedy: /zero/,
    at: "{ method: oven",
  },
  {
    code: "log/level-not-falling",
    text: instead("permeability: { rig: rain butt, from: 100 mm, to: 200 mm, seconds: 20, height: 50.8 mm }"),
    message: /100 mm to 200 mm/,
    remedy: /`from`/,
    at: "{ rig: rain butt",
  },
  {
    code: "log/density-impossible",
    text: instead("density: { rig: yard tube, scale: small scale, mass: 155 g, height: 5.08 mm }"),
    message: /15 g\/cm³.*155 g in a tube of 50\.8 mm bore, 5\.08 mm high/,
    remedy: /cm in the place of mm/,
    at: "{ rig: yard tube, scale: small scale, mass",
  },
  {
    code: "log/number-overflows",
    text: instead("compactability: { filled: 1e-320 mm, rammed: 6 mm }"),
    message: /readings of compactability give a number that is larger than any/,
    remedy: /next to nothing/,
    at: "{ filled: 1e-320",
  },
  {
    code: "log/missing-field",
    text: instead("compactability: { method: height, filled: 120 mm }"),
    message: /compactability lacks `rammed` \(height after three blows\)/,
    remedy: /`compactability: \.\.\.`/,
    at: "{ method: height",
  },
  {
    code: "log/empty-reading",
    text: instead("compactability:"),
    message: /No figure of compactability/,
    remedy: /filled: \.\.\. mm, rammed/,
    at: "compactability:\n    green compression: 71",
  },
  {
    code: "log/method-unsaid",
    text: swapped(
      /method: oven, scale: small scale, damp: 152.4 g, dry: 147/,
      "scale: small scale, damp: 152.4 g, dry: 147",
    ),
    message: /by which method moisture/,
    remedy: /oven, pan, microwave/,
    at: "{ scale: small scale, damp: 152.4 g, dry: 147",
  },
  {
    code: "log/method-needed",
    text: instead("permeability: { from: 200 mm, to: 100 mm, seconds: 20 }"),
    message: /which method permeability/,
    remedy: /falling column/,
    at: "{ from",
  },
  {
    code: "log/not-a-step",
    text: instead("squeeze: 6"),
    message: /"6" is no step/,
    remedy: /1 falls apart, .*5 smears/,
    at: "6",
  },
  {
    code: "log/figure-unsteady",
    text: instead("permeability: { rig: rain butt, from: 100 mm, to: 99 mm, seconds: 20, height: 50.8 mm }"),
    message: /may come out at anything/,
    remedy: /larger difference/,
    at: "{ rig: rain butt",
  },
  {
    code: "log/no-batch-date",
    text: swapped(/ {4}date: 2026-04-11\n {4}order: 1\n/, "    order: 1\n"),
    message: /no date/,
    remedy: /date: 2026/,
    at: "Heron 2",
  },
  {
    code: "log/no-tests",
    text: `${soundTrial}  Heron 3: { date: 2026-04-12 }\n`,
    message: /Nothing was tested/,
    remedy: /mullbook card/,
    at: "Heron 3",
  },
  {
    code: "log/left-out-without-why",
    text: instead("left out: yes"),
    message: /not said why.*counts like the others/,
    remedy: /Write why/,
    at: "yes",
  },
  {
    code: "log/order-not-whole",
    text: swapped("order: 1", "order: first"),
    message: /"first" is no place/,
    remedy: /Write 1/,
    at: "first",
  },
  {
    code: "log/order-twice",
    text: swapped("order: 1", "order: 2"),
    message: /"Heron 1".*order 2/,
    remedy: /1, 2, 3/,
    at: "Heron 2",
  },
  {
    code: "log/same-batch-twice",
    text: `${soundTrial}batches file: b.csv\n`,
    files: { "b.csv": "batch,date,compactability\nHeron 1,2026-04-11,44 %\n" },
    message: /on line 16 already/,
    remedy: /another name/,
    at: "Heron 1,",
  },
  {
    code: "log/oz-of-water",
    text: swapped("water: 155 g", "water: 5.5 oz"),
    // 5.5 avoirdupois oz = 155.9 g; 5.5 US fl oz of water = 162.7 g; imperial 156.3 g
    message: /156 g.*163 g \(US\) or 156 g \(imperial\)/,
    remedy: /US fl oz/,
    at: "5.5 oz",
  },
  {
    code: "log/clay-basis",
    text: swapped(/bentonite: 320 g, water: 155 g/, "bentonite: 8 %, water: 155 g"),
    // Dry clay in 4 kg of sand: 0.08/0.92 · 4.155 = 0.361; 0.08/0.92 · 4 = 0.348; 0.08 · 4 = 0.32
    message:
      /8 % of damp mass \(0\.361 kg\), 8 % of dry mix \(0\.348 kg\) or 8 per 100 of sand \(0\.320 kg\)/,
    remedy: /`of damp mass` or `of sand`/,
    at: "8 %",
  },
  {
    code: "log/clay-share-alone",
    text: swapped(/sand: 4 kg, bentonite: 320 g, water: 155 g/, "bentonite: 8 % of sand, water: 155 g"),
    message: /cannot be turned into a mass/,
    remedy: /the sand and the water by mass/,
    at: "8 % of sand",
  },
  {
    code: "log/recipe-without-sand",
    text: swapped(/sand: 4 kg, bentonite: 320 g, water: 155 g/, "bentonite: 320 g, water: 155 g"),
    message: /how much sand/,
    remedy: /sand: 10 kg/,
    at: "made of: { bentonite: 320 g, water: 155",
  },
  {
    code: "log/recipe-against-moisture",
    text: swapped(wet, "dry: 144.0 g }"),
    // 155 / (4000 + 320 + 155) = 3.46 %; 100 · 8.4 / 152.4 = 5.51 %
    message:
      /holds 3\.5 % water of its damp mass; the moisture test says 5\.5 %. The sand or the bagged clay/,
    remedy: /`sand moisture:`/,
    at: "{ method: oven, scale: small scale, damp: 152.4 g, dry: 144",
  },
  {
    code: "log/same-axis",
    text: swapped(wet, "dry: 148.6 g }"),
    message: /2\.5 % moisture.*repeat of "Heron 1"/,
    remedy: /wetter or drier/,
    at: "Heron 2",
  },
  {
    code: "log/more-at-one",
    text: `${swapped(wet, "dry: 148.6 g }")}${[3, 4, 5, 6, 7]
      .map((n) => `  Heron ${n}: { date: 2026-04-12, moisture: 2.5 % }\n`)
      .join("")}  Heron 8: { date: 2026-04-12, moisture: 4 % }\n`.replaceAll("method: oven, ", ""),
    message: /^1 more batch from here on/,
    remedy: /Nothing to do/,
    at: "Heron 7",
  },
  {
    code: "log/all-at-one",
    text: `${swapped(wet, "dry: 148.6 g }")}  Heron 3: { date: 2026-04-12, moisture: 2.6 % }\n`.replaceAll(
      "method: oven, ",
      "",
    ),
    message: /All batches stand at about 2\.5 % moisture/,
    remedy: /both sides/,
    at: "Heron 3",
  },
  {
    code: "log/missing-test",
    text: swapped(second, "\n"),
    message: /Compactability was not tested on "Heron 2"/,
    remedy: /every batch/,
    at: "Heron 2",
  },
  {
    code: "log/methods-mixed",
    text: swapped(
      /method: oven, scale: small scale, damp: 152.4 g, dry: 147/,
      "method: pan, scale: small scale, damp: 152.4 g, dry: 147",
    ),
    message: /by pan, elsewhere in the log by oven/,
    remedy: /both ways/,
    at: "{ method: pan",
  },
  {
    code: "log/not-a-range",
    text: swapped("42-48 %", "about 45 %"),
    message: /"about 45 %" for compactability/,
    remedy: /42 to 48 %/,
    at: "about 45",
  },
  {
    code: "log/range-turned",
    text: swapped("3 to 4 %", "4 to 3 %"),
    message: /"4 to 3 %" for moisture/,
    remedy: /lower end first/,
    at: "4 to 3",
  },
  {
    code: "log/csv-no-batch-column",
    text: csvTrial,
    files: { "b.csv": "date,compactability\n2026-04-11,44 %\n" },
    message: /no column `batch`/,
    remedy: /moisture damp/,
    at: "date",
  },
  {
    code: "log/csv-row-without-batch",
    text: csvTrial,
    files: { "b.csv": "batch,compactability\nA,44 %\n,45 %\n" },
    message: /which batch/,
    remedy: /repeats/,
    at: ",45",
  },
  {
    code: "log/csv-rows-disagree",
    text: csvTrial,
    files: { "b.csv": "batch,date,compactability\nA,2026-04-11,44 %\nA,2026-04-12,45 %\n" },
    message: /date is "2026-04-12".*"2026-04-11"/,
    remedy: /first row only/,
    at: "2026-04-12",
  },
];

/** Those that a figure brings up, not the reader, are tried in test-figure.test.ts. */
const ofFigures = ["log/figure-unsteady"];

test("the sound trial has nothing wrong with it", () => {
  expect(readTrial(soundTrial).issues.map(({ code }) => code)).toEqual(["log/no-usual-ranges"]);
});

test.each(cases.filter(({ code }) => !ofFigures.includes(code)))(
  "$code",
  ({ code, text, message, remedy, at, files = {} }) => {
    const found = issueOf(readTrial(text, files), code);
    expect(found.message).toMatch(message);
    expect(found.remedy).toMatch(remedy);
    const whole = found.place?.file === "trial.yaml" ? text : files[found.place?.file ?? ""]!;
    expect(
      whole.slice(found.place?.offset).startsWith(at),
      whole.slice(found.place?.offset).slice(0, 60),
    ).toBe(true);
  },
);

test("every complaint of the two catalogues has its case above, in whole sentences", () => {
  const catalogue = [batch, reading].flatMap((part) => Object.values(part)) as ((
    ...words: string[]
  ) => Issue)[];
  const made = catalogue.map((complaint) =>
    complaint(...Array.from({ length: complaint.length }, () => "x")),
  );
  const codes = made.map(({ code }) => code);
  expect(new Set(codes).size).toBe(codes.length);
  const triggered = new Set(cases.map(({ code }) => code));
  expect(codes.filter((code) => !triggered.has(code))).toEqual([]);
  for (const { code, message, remedy } of made) {
    expect(message, code).toMatch(/[.x]$/);
    expect(remedy, code).toMatch(/[.x]$/);
  }
});

test("what the models of sand object to is said at the reading, and the rest stands", () => {
  const objections: readonly (readonly [code: string, line: string])[] = [
    ["sand/compactability-impossible", "compactability: 120 %"],
    ["sand/compactability-impossible", "compactability: { filled: 66 mm, rammed: 120 mm }"],
    [
      "sand/compactability-impossible",
      "compactability: { method: two weighings, loose: 200 g, packed: 150 g }",
    ],
    ["sand/dry-above-damp", "moisture: { method: oven, damp: 147.3 g, dry: 152.4 g }"],
    [
      "log/not-above-zero",
      "permeability: { method: constant head, air: 2000 ml, water: 100 mm, seconds: 0, height: 50 mm, diameter: 50 mm }",
    ],
    [
      "sand/permeability-pressure-refused",
      "permeability: { air: 2000 ml, water: 1200 mm, seconds: 9, height: 50 mm, diameter: 50 mm }",
    ],
    ["sand/density-unlikely", "density: 1.1 g/cm³"],
    ["sand/grain-above-start", "clay by wash: { dry: 50 g, grain: 51 g }"],
  ];
  for (const [code, line] of objections) {
    const key = line.slice(0, line.indexOf(":"));
    const text = `${soundTrial}  Heron 3:\n    date: 2026-04-12\n    ${line}\n`;
    const result = readTrial(text);
    const found = issueOf(result, code);
    expect(found.about).toBe("Heron 3");
    expect(found.place?.line).toBe(soundTrial.split("\n").length + 2);
    expect(result.value?.batches.slice(0, 2).map(({ readings }) => readings.length)).toEqual([3, 3]);
    if (found.severity === "error")
      expect(result.value?.batches[2]?.readings.filter(({ test }) => test === key)).toEqual([]);
  }
});

test("a rig, a scale, a field and a sand that are not known are said with the nearest", () => {
  const near = (text: string, code: string) => issueOf(readTrial(text), code);
  expect(near(swapped("rig: yard tube, load", "rig: yard tubes, load"), "log/undeclared").remedy).toMatch(
    /"yard tube"/,
  );
  expect(near(swapped("dry: 147.3", "dri: 147.3"), "log/unknown-key").remedy).toMatch(/"dry"/);
  expect(
    near(swapped("    compactability: 45 %", "    compactibility: 45 %"), "log/unknown-key").remedy,
  ).toMatch(/"compactability"/);
});
