// Words that every object of the language has are typed words like any other: no choice, no unit, no alias.

import { expect, test } from "vitest";
import { issueText } from "../../lib/issue.ts";
import { readFormula } from "../../lib/sheet/formula.ts";
import { read } from "./helpers.ts";

const places: readonly (readonly [where: string, log: (word: string) => string])[] = [
  ["what a fault is held against", (word) => `questions: [ { fault: gas holes, against: ${word} } ]`],
  ["a clay kind", (word) => `heap: { mass: 90 kg, clay kind: ${word} }`],
  ["a heap's shape", (word) => `heap: { mass: 90 kg, shape: ${word} }`],
  ["a heap's cover", (word) => `heap: { mass: 90 kg, cover: ${word} }`],
  ["a reminder", (word) => `remind: { moisture: ${word} }`],
  ["the units", (word) => `units: ${word}`],
  ["a unit", (word) => `heap: { mass: 90 ${word} }`],
];

test.each(places)("%s", (_, log) => {
  for (const word of ["constructor", "__proto__", "toString", "valueOf"]) {
    const { issues } = read(`format: 1\n${log(word)}\n`);
    expect(
      issues.some(({ severity }) => severity !== "note"),
      word,
    ).toBe(true);
    for (const issue of issues) expect(issueText(issue)).not.toMatch(/native code|\[object|function Object/);
  }
});

test("a function of a formula", () => {
  const { issues } = readFormula("constructor(1)", { names: new Map(), in: "column" });
  expect(`${issues[0]?.message} ${issues[0]?.remedy}`).not.toMatch(/native code|function Object/);
});
