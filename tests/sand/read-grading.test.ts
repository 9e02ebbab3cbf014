import fc from "fast-check";
import { expect, test } from "vitest";
import { gradingOf } from "../../lib/sand/grading.ts";
import { readGrading } from "../../lib/sand/read-grading.ts";

const codes = (retained: Record<string, number>) => readGrading(retained).issues.map(({ code }) => code);

test("a record in any order becomes a grading coarse to fine, labels as typed", () => {
  const { value, issues } = readGrading({ Pan: 0.25, "212 µm": 16.55, "#40": 0.15, "0.297 mm": 0.65 });
  expect(issues.map(({ code }) => code)).toEqual(["sand/sieve-older-print"]);
  expect(value!.fractions.map(({ label, openingMm, mass }) => [label, openingMm, mass])).toEqual([
    ["#40", 0.425, 0.15],
    ["0.297 mm", 0.3, 0.65],
    ["212 µm", 0.212, 16.55],
    ["Pan", 0, 0.25],
  ]);
  expect(value!.total).toBeCloseTo(17.6, 12);
  expect(value!.hasPan).toBe(true);
  expect(value!.fractions.at(-1)!.sieve).toBeUndefined();
});

test("the total loses no digits: 0.1 + 0.2 + 0.3 is 0.6", () => {
  expect(readGrading({ "No. 40": 0.1, "No. 50": 0.2, pan: 0.3 }).value!.total).toBe(0.6);
});

test("a missing pan is a doubt, not an end", () => {
  const { value } = readGrading({ "No. 40": 1, "No. 50": 2 });
  expect(value!.hasPan).toBe(false);
  expect(codes({ "No. 40": 1, "No. 50": 2 })).toEqual(["sand/pan-missing"]);
});

test.each<[string, Record<string, number>, string[]]>([
  ["a negative mass", { "No. 40": -0.1, pan: 1 }, ["sand/mass-negative"]],
  ["no number", { "No. 40": Number.NaN, pan: 1 }, ["sand/mass-not-number"]],
  ["an endless mass", { "No. 40": Number.POSITIVE_INFINITY, pan: 1 }, ["sand/mass-not-number"]],
  ["text for a mass", { "No. 40": "0.15" as never, pan: 1 }, ["sand/mass-not-number"]],
  ["masses whose sum overflows", { "No. 40": 1e308, "No. 50": 1e308, pan: 1 }, ["sand/masses-too-large"]],
  ["masses whose products overflow", { "No. 40": 1e307, pan: 1 }, ["sand/masses-too-large"]],
  ["nothing weighed", { "No. 40": 0, pan: 0 }, ["sand/nothing-retained"]],
  ["an empty record", {}, ["sand/nothing-retained"]],
  ["an opening twice", { "No. 40": 1, "0.425 mm": 2, pan: 1 }, ["sand/sieve-repeated"]],
  ["an unknown sieve", { "No. 41": 1, pan: 1 }, ["sand/sieve-number-unknown"]],
])("%s is an issue and gives no grading", (_, retained, expected) => {
  expect(readGrading(retained).value).toBeUndefined();
  expect(codes(retained)).toEqual(expected);
});

test.each([null, undefined, 3, "No. 40", [1, 2]])("%j instead of a record throws", (retained) => {
  expect(() => readGrading(retained as never)).toThrow();
});

test("the order of the record changes nothing, and the record is not touched", () => {
  const entries = Object.entries({ "No. 20": 1, "No. 40": 5, "No. 70": 9, "No. 140": 2, pan: 0.5 });
  const wanted = readGrading(Object.fromEntries(entries)).value;
  fc.assert(
    fc.property(fc.shuffledSubarray(entries, { minLength: entries.length }), (shuffled) => {
      const retained = Object.freeze(Object.fromEntries(shuffled));
      expect(readGrading(retained)).toEqual({ value: wanted, issues: [] });
    }),
  );
});

test("gradingOf is for sieves that were checked: it throws on what is not one sieving", () => {
  expect(() => gradingOf([{ label: "pan", mass: -1 }])).toThrow();
  expect(() => gradingOf([{ label: "pan", mass: 0 }])).toThrow();
  expect(() => gradingOf([{ label: "pan", mass: 1 }, { label: "tray", mass: 1 }])).toThrow(); // biome-ignore format: short
  expect(gradingOf([{ label: "pan", mass: 1 }]).hasPan).toBe(true);
});

test("text in place of a number is called text: 3 is a number", () => {
  const { issues } = readGrading({ "No. 40": "3" as never, pan: 1 });
  expect(issues[0]!.message).toBe('The mass on "No. 40" is the text "3", which is not a number.');
});
