// The sections of a heap and its season: read whole, each fault at its place, the rest kept. Invented figures.

import { expect, test } from "vitest";
import { hasError, type Issue } from "../../lib/issue.ts";
import * as recipe from "../../lib/log/complaints-recipe.ts";
import * as season from "../../lib/log/complaints-season.ts";
import { seeded } from "../seeded.ts";
import { issueOf } from "./helpers.ts";
import { readSeason, seasonLog, spoiltSeason } from "./season-log.ts";

const heapIssues = (issues: readonly Issue[]) =>
  issues.filter(({ code }) => code !== "log/no-sievings").map(({ code }) => code);

test("every section is read, in the units of its names", () => {
  const { value, issues } = readSeason();
  expect(heapIssues(issues)).toEqual([]);
  expect(value?.heap).toMatchObject({
    heapKg: { value: 120, plusMinus: { size: 5 } },
    clayKind: "sodium bentonite",
    shape: "heap",
    cover: "sheet",
  });
  expect(value?.recipe).toMatchObject({
    basis: "sand",
    clayPercent: { value: 8.7 },
    additives: [{ name: "coal dust", percent: { value: 0.5 } }],
    moisturePercent: { value: 3.4 },
    sandMoisturePercent: { value: 0.5 },
    clayMoisturePercent: { value: 9 },
    makeKg: { value: 120 },
    mullerPanKg: { value: 12 },
    buckets: [{ of: "sand", kg: { value: 13.5, plusMinus: { size: 0.3 } } }, { of: "clay" }],
  });
  expect(value?.prices).toMatchObject({
    currency: "pounds",
    of: [{ name: "sand", cost: { value: 9.5 }, forKg: { value: 25 } }, {}, { name: "coal dust" }],
  });
  expect(value?.wanted).toMatchObject({ liveClay: { value: 8, of: "dry mix" }, gfn: { value: 60 } });
  expect(value?.measured).toMatchObject([
    { date: "2026-05-09", liveClay: { value: 6.8, plusMinus: { size: 0.5 } }, finesPercent: { value: 4 } },
  ]);
  // 1.8 km/h is 0.5 m/s.
  expect(value?.weather).toMatchObject({ airC: { value: 18 }, windMS: { value: 0.5 }, hours: { value: 16 } });
  expect(value?.flask).toMatchObject({ volumeL: { value: 14 }, castingVolumeL: { value: 0.9 } });
  expect(value?.events.map(({ kind }) => kind)).toEqual([
    "pour",
    "lost",
    "rebond",
    "new sand",
    "water",
    "tested",
  ]);
  expect(value?.events[0]).toMatchObject({
    metalKg: { value: 2.4 },
    alloy: "casting alloy",
    atC: { value: 720 },
    scrapSharePercent: { value: 40 },
  });
  expect(value?.planned).toMatchObject({ pours: { value: 30 }, everyDays: { value: 7 } });
  expect(value?.mulling).toMatchObject([{ name: "by hand", loadKg: { value: 5 } }]);
  expect(value?.mulling[0]?.readings.map(({ minutes }) => minutes.value)).toEqual([2, 4, 8, 15]);
  expect(value?.muller).toMatchObject({ motorRpm: { value: 1450 }, reduction: { value: 60 } });
  expect(value?.blend).toMatchObject({
    of: ["Coppice Lane sand", "Brickfield sand"],
    to: { kind: "gfn", gfn: { value: 60 } },
  });
});

test("US measures, temperatures and speeds come out in the unit of the name", () => {
  const us = seasonLog
    .replace("make: 120 kg", "make: 264.5547 lb")
    .replace("air: 18 °C", "air: 64.4 °F")
    .replace("wind: 1.8 km/h", "wind: 1.118468 mph")
    .replace("casting volume: 0.9 L", "casting volume: 54.92 in3")
    .replace("pan diameter: 500 mm", "pan diameter: 19.685 in")
    .replace("every: 7 days", "every: 168 h")
    .replace("green compression: 62 kPa", "green compression: 8.99234 psi");
  const { value, issues } = readSeason(us);
  expect(heapIssues(issues)).toEqual([]);
  expect(value?.recipe?.makeKg?.value).toBeCloseTo(120, 3);
  expect(value?.weather?.airC?.value).toBeCloseTo(18, 8);
  expect(value?.weather?.windMS?.value).toBeCloseTo(0.5, 5);
  expect(value?.flask?.castingVolumeL?.value).toBeCloseTo(0.9, 3);
  expect(value?.muller?.panDiameterMm?.value).toBeCloseTo(500, 2);
  expect(value?.planned?.everyDays?.value).toBeCloseTo(7, 10);
  expect(value?.events.at(-1)).toMatchObject({ kind: "tested" });
});

test("a log that says nothing of a heap has empty lists and no sections", () => {
  const { value } = readSeason("format: 1\nsands: { A sand: { state: new } }\n");
  expect([value?.measured, value?.events, value?.mulling]).toEqual([[], [], []]);
  expect(value).not.toHaveProperty("recipe");
});

test("a log may hold a recipe and nothing else", () => {
  const { value, issues } = readSeason(
    "format: 1\nrecipe: { basis: of dry mix, clay: 8, moisture: 3 %, make: 20 kg }\n",
  );
  expect(hasError(issues)).toBe(false);
  expect(value?.recipe?.basis).toBe("dry mix");
});

test("a clay that says of what it is names the basis of the recipe", () => {
  const by = (clay: string) =>
    readSeason(`format: 1\nrecipe: { clay: ${clay}, moisture: 3 %, make: 20 kg }\n`).value?.recipe;
  expect(by("8.7 per 100 of sand")).toMatchObject({ basis: "sand", clayPercent: { value: 8.7 } });
  expect(by("8 % of dry mix")).toMatchObject({ basis: "dry mix", clayPercent: { value: 8 } });
  expect(by("7.7 % of damp mass")).toMatchObject({ basis: "damp mass", clayPercent: { value: 7.7 } });
});

test("a share without its basis shows the three readings, at its place", () => {
  const { value, issues } = spoiltSeason("live clay: 8 % of dry mix, gfn", "live clay: 8 %, gfn");
  const { message, remedy, severity, place } = issueOf({ issues }, "log/share-basis");
  // 8 per 100 of sand: 800/108 = 7.41; of damp mass: 8/0.965 = 8.29.
  expect(message).toContain("per 100 of sand it is 7.41 % of dry mix, of dry mix 8 %, of damp mass 8.29 %");
  expect(remedy).toBe("Write the one that is meant, e.g. `live clay: 8 % of dry mix`.");
  expect([severity, place?.line]).toEqual(["error", 30]);
  expect(value?.wanted?.liveClay).toBeUndefined();
  expect(value?.wanted?.gfn?.value).toBe(60);
});

test("a recipe by weight becomes shares of its dry sand; its water, its moisture", () => {
  const recipeOf = (lines: string) => readSeason(`format: 1\nrecipe: { ${lines} }\n`).value?.recipe;
  // By hand: 1.5/25, 0.5/25, and 0.5 of water in 27.5; 500 mL is half a kilogram.
  const dry = recipeOf(
    "basis: by weight, sand: 25 kg, clay: 1.5 kg, additives: { flour: 500 g }, water: 500 mL",
  );
  expect(dry).toMatchObject({ basis: "sand", clayPercent: { value: 6 }, sandKg: { value: 25 } });
  expect(dry?.additives[0]?.percent.value).toBeCloseTo(2, 10);
  expect(dry?.moisturePercent?.value).toBeCloseTo(50 / 27.5, 10);
  // Damp as they lie: 24.875 dry sand, 1.365 dry clay; 0.5 + 0.125 + 0.135 of water in 27.5.
  const damp = recipeOf(
    "sand: 25 kg, clay: 1.5 kg, additives: { flour: 0.5 kg }, water: 0.5 kg, sand moisture: 0.5 %, clay moisture: 9 %",
  );
  expect(damp?.clayPercent?.value).toBeCloseTo(136.5 / 24.875, 10);
  expect(damp?.moisturePercent?.value).toBeCloseTo(76 / 27.5, 10);
  // Six buckets of 13.5 kg to half a bucket of 8.4: 4.2/81; to make 40 kg the sand says only how much clay goes to it.
  const buckets = recipeOf(
    "sand: 6 buckets, clay: 1/2 bucket, moisture: 3.4 %, bucket of: { sand: 13.5 kg, clay: 8.4 kg }, make: 40 kg",
  );
  expect(buckets?.clayPercent?.value).toBeCloseTo(420 / 81, 10);
  expect(buckets?.makeKg?.value).toBe(40);
  expect(buckets).not.toHaveProperty("sandKg");
});

test("a pour and a rebond of which only the mass is known are read from the mass alone", () => {
  const { value, issues } = readSeason(
    "format: 1\nevents:\n  - { date: 2026-05-02, pour: 5 lb }\n  - { date: 2026-05-03, rebond: 0.5 kg }\n",
  );
  expect(issues.filter(({ code }) => /event|map|pour/.test(code))).toEqual([]);
  expect(value?.events).toMatchObject([
    { kind: "pour", metalKg: { value: 2.26796185 } },
    { kind: "rebond", clayKg: { value: 0.5 } },
  ]);
});

test("a reduction is read as its makers write it, a cover and a shape by their other names", () => {
  for (const text of ["60", "60:1", "60 : 1", "60 to 1"]) {
    const { value } = readSeason(`format: 1\nmuller: { motor: 1450 rpm, reduction: "${text}" }\n`);
    expect(value?.muller?.reduction?.value, text).toBe(60);
  }
  expect(
    readSeason("format: 1\nheap: { mass: 90 kg, shape: cone, cover: tarp }\n").value?.heap,
  ).toMatchObject({
    shape: "heap",
    cover: "sheet",
  });
});

test("a recipe without its basis is complained of once, not again at what hangs on it", () => {
  const { issues } = spoiltSeason("basis: per 100 of sand\n  ", "");
  expect(heapIssues(issues)).toEqual(["log/share-basis"]);
});

test("events out of order are put in order, and the one ahead of the rest is named, not those below it", () => {
  const swapped = spoiltSeason("{ date: 2026-05-03, water", "{ date: 2026-05-01, water");
  expect(swapped.value?.events.map(({ kind }) => kind)[0]).toBe("water");
  expect(heapIssues(swapped.issues)).toEqual(["log/out-of-order"]);
  const ahead = spoiltSeason("{ date: 2026-05-02, lost", "{ date: 2062-05-02, lost");
  expect(heapIssues(ahead.issues)).toEqual(["log/far-ahead"]);
  expect(ahead.value?.events.at(-1)?.kind).toBe("lost");
});

test("several things of one day on one line happen as they stand", () => {
  const { value } = spoiltSeason(
    "- { date: 2026-05-03, water: 1.1 kg }",
    "- { date: 2026-05-03, water: 500 ml, new sand: { mass: 1 kg, moisture: 4 % }, lost: { mass: 2 kg, as: damp } }",
  );
  expect(value?.events.slice(4, 7)).toMatchObject([
    { kind: "water", massKg: { value: 0.5 } },
    { kind: "new sand", massKg: { value: 1 }, moisturePercent: { value: 4 } },
    { kind: "lost", massKg: { value: 2 }, as: "damp" },
  ]);
});

/** What is spoilt, into what, and where the complaint points. */
const cases: readonly (readonly [code: string, from: string, to: string, at: string])[] = [
  ["log/share-basis", "basis: per 100 of sand\n  ", "", "8.7"],
  ["log/unknown-share-basis", "live clay: 8 % of dry mix, gfn", "live clay: 8 % of clay, gfn", "8 % of clay"],
  ["log/two-bases", "clay: 8.7\n", "clay: 8 % of dry mix\n", "8 % of dry mix"],
  ["log/share-too-large", "clay: 8.7\n", "clay: 870\n", "870"],
  ["log/mass-for-share", "clay: 8.7\n", "clay: 8.7 lb\n", "8.7 lb"],
  ["log/weights-without-sand", "basis: per 100 of sand", "basis: by weight", "recipe:"],
  [
    "log/no-bucket-weighed",
    "basis: per 100 of sand\n  clay: 8.7\n  additives: { coal dust: 0.5 }",
    "basis: by weight\n  sand: 100 kg\n  clay: 8 kg\n  additives: { coal dust: 1/2 bucket }",
    "1/2 bucket",
  ],
  [
    "log/moisture-and-water",
    "basis: per 100 of sand",
    "basis: by weight\n  sand: 100 kg\n  water: 3 kg",
    "water: 3 kg",
  ],
  ["log/water-by-share", "clay: 8.7\n", "clay: 8.7\n  water: 3 kg\n", "water: 3 kg"],
  ["log/recipe-of-nothing", "  make: 120 kg\n", "", "recipe:"],
  ["log/make-and-sand", "make: 120 kg", "make: 120 kg\n  sand: 100 kg", "sand: 100 kg"],
  ["log/recipe-without-moisture", "  moisture: 3.4 % of damp mass\n", "", "recipe:"],
  ["log/recipe-without-clay", "  clay: 8.7\n", "", "recipe:"],
  ["log/pan-above-heap", "muller pan: 12 kg", "muller pan: 400 kg", "400 kg"],
  ["log/bucket-of-unknown", "clay: 8.6 kg }", "gravel: 8.6 kg }", "gravel"],
  ["log/price-of-unknown", "  coal dust: { cost", "  cole dust: { cost", "cole dust"],
  ["log/price-incomplete", "{ cost: 14, for: 25 kg }", "{ cost: 14 }", "bentonite: { cost: 14 }"],
  [
    "log/not-a-list",
    "events:\n  - { date: 2026-05-02, pour",
    "events: none\nnote:\n  - { date: 2026-05-02, pour",
    "none",
  ],
  ["log/humidity-fraction", "humidity: 60 %", "humidity: 0.6", "0.6"],
  ["log/undated", "{ date: 2026-05-03, new sand: 2 kg }", "{ new sand: 2 kg }", "{ new sand"],
  ["log/undated", "{ date: 2026-05-09, moisture", "{ moisture", "{ moisture"],
  ["log/out-of-order", "2026-05-03, water", "2026-05-01, water", "water"],
  ["log/far-ahead", "2026-05-02, lost", "2062-05-02, lost", "lost"],
  ["log/long-gap", "2026-05-09, tested", "2036-05-09, tested", "tested"],
  [
    "log/event-of-nothing",
    "{ date: 2026-05-03, new sand: 2 kg }",
    "{ date: 2026-05-03 }",
    "{ date: 2026-05-03 }",
  ],
  ["log/event-faulty", "new sand: 2 kg", "new sand: two", "new sand"],
  ["log/more-than-heap", "water: 1.1 kg", "water: 1100 kg", "1100 kg"],
  ["log/pour-without-metal", "pour: { metal: 2.4 kg, ", "pour: { ", "pour"],
  [
    "log/state-of-nothing",
    "tested: { green compression: 62 kPa, compactability: 44 %, moisture: 3.3 % }",
    "tested: { note: dry }",
    "{ note",
  ],
  ["log/casting-above-flask", "casting volume: 0.9 L", "casting volume: 90 L", "90 L"],
  ["log/mulling-too-few", "      - { minutes: 8, green compression: 60 kPa }\n", "", "by hand"],
  [
    "log/no-blend-sands",
    "of: [ Coppice Lane sand, Brickfield sand ]",
    "of: [ Coppice Lane sand ]",
    "[ Coppice",
  ],
  ["log/no-blend-aim", "  to: { gfn: 60 }\n", "", "blend:"],
  ["log/several-blend-aims", "to: { gfn: 60 }", "to: { gfn: 60, band: aluminium }", "band"],
  ["log/air-too-hot", "air: 18 °C", "air: 55 °C", "55 °C"],
  // What the readers of single figures say, at the same places.
  ["log/negative", "lost: 1.5 kg", "lost: -1.5 kg", "-1.5 kg"],
  ["log/not-above-zero", "water: 1.1 kg", "water: 0 kg", "0 kg"],
  ["log/wrong-unit", "motor: 1450 rpm", "motor: 1450 kg", "1450 kg"],
  ["log/too-much", "humidity: 60 %", "humidity: 600 %", "600 %"],
  ["log/dry-basis", "moisture: 2.6 %", "moisture: 2.6 % of dry mass", "2.6 % of dry mass"],
  ["log/fraction-for-percent", "moisture: 2.6 %", "moisture: 0.026", "0.026"],
  ["log/fraction-for-percent", "clay: 8.7\n", "clay: 0.087\n", "0.087"],
  ["log/psi-for-kpa", "green compression: 62 kPa", "green compression: 9", "9"],
  ["log/unknown-key", "humidity: 60 %", "humidty: 60 %", "humidty"],
  ["log/unknown-key", "planned:", "plannned:", "plannned"],
  ["log/unknown-key", "pour: { metal", "poor: { metal", "poor"],
  ["log/unknown-choice", "cover: sheet", "cover: shete", "shete"],
  ["log/unknown-choice", "basis: per 100 of sand", "basis: per bucket", "per bucket"],
  ["log/unknown-choice", "lost: 1.5 kg", "lost: { mass: 1.5 kg, as: dryy }", "dryy"],
  ["log/undeclared", "of: [ Coppice Lane sand,", "of: [ Copice Lane sand,", "Copice"],
  ["log/bad-date", "2026-05-03, water", "3/5/2026, water", "3/5/2026"],
  ["log/decimal-comma", "air: 18 °C", 'air: "18,5 °C"', '"18,5'],
];

test.each(cases)("%s: %s -> %s", (code, from, to, at) => {
  const result = spoiltSeason(from, to);
  const found = issueOf(result, code);
  expect(result.text.slice(found.place?.offset)).toMatch(
    new RegExp(`^${at.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}`),
  );
  expect(found.remedy).not.toBe("");
  // One fault leaves the other sections read.
  expect(result.value?.sands).toHaveLength(3);
  expect(result.value?.muller?.reduction?.value).toBe(60);
});

test("a near name is asked about", () => {
  const near = (from: string, to: string, code: string) => issueOf(spoiltSeason(from, to), code).remedy;
  expect(near("humidity: 60 %", "humidty: 60 %", "log/unknown-key")).toContain('"humidity"');
  expect(near("planned:", "plannned:", "log/unknown-key")).toContain('"planned"');
  expect(near("  coal dust: { cost", "  cole dust: { cost", "log/price-of-unknown")).toContain('"coal dust"');
  expect(near("cover: sheet", "cover: shete", "log/unknown-choice")).toContain('"sheet"');
});

test("whatever stands in the place of a value, nothing throws, and each complaint has its place", () => {
  const random = seeded(7);
  const odd = ["[]", "{}", "-5", "{ a: 1 }", "[1, 2]", "", "\n", "9999999", "±", "NaN", "~", "- "];
  for (let k = 0; k < 60; k++) {
    const words = [...seasonLog.matchAll(/[^\s{}[\],:]+/g)];
    const word = random.pick(words);
    const after = word.index + word[0].length;
    const text = seasonLog.slice(0, word.index) + random.pick(odd) + seasonLog.slice(after);
    for (const issue of readSeason(text).issues) expect(issue.place, issue.message).toBeDefined();
  }
});

test("every complaint has its case above", () => {
  type Say = (...words: string[]) => Issue;
  const made = [recipe, season].flatMap((said) =>
    (Object.values(said) as Say[]).map((one) => one("x", "x", "x", "x", "x", "x")),
  );
  const triggered = new Set(cases.map(([code]) => code));
  expect(made.map(({ code }) => code).filter((code) => !triggered.has(code))).toEqual([]);
});
