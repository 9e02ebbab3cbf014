// The record of an experiment: how its lines may be written, and what is said where they are wrong.

import { expect, test } from "vitest";
import { issueText } from "../../lib/issue.ts";
import { readLog } from "../../lib/log/read-log.ts";

const head = "format: 1\nmetal: bronze\nbond: bentonite\n";
const batch = "batches: { W1: { date: 2026-05-09, moisture: 3.1 % ± 0.1 % } }\n";

function read(experiment: string, rest = batch) {
  const { value, issues } = readLog(`${head}${rest}${experiment}\n`, { name: "yard.yaml" });
  return { experiment: value?.experiment, batches: value?.batches.length, said: issues.map(issueText) };
}
const texts = (lines: readonly { readonly text: string }[] | undefined) => lines?.map(({ text }) => text);

test("a line, a list, and names with a line each are all lines", () => {
  const { experiment, said } = read(`experiment:
  question: Does a longer mull help?
  changed: water
  held: [ one bag of sand, 12 min of mulling ]
  measured: { moisture: in the oven, strength: three specimens }
  open:
    - coarser sand
    - next: a colder day
  version: 1.10
  from: 2026-05-09
  to: 2026-05-10`);
  expect(said).toEqual([]);
  expect(experiment!.question!.text).toBe("Does a longer mull help?");
  expect(texts(experiment!.changed)).toEqual(["water"]);
  expect(texts(experiment!.held)).toEqual(["one bag of sand", "12 min of mulling"]);
  expect(texts(experiment!.measured)).toEqual(["moisture: in the oven", "strength: three specimens"]);
  expect(texts(experiment!.open)).toEqual(["coarser sand", "next: a colder day"]);
  expect(experiment!.version!.text).toBe("1.10");
  expect([experiment!.from, experiment!.to]).toEqual(["2026-05-09", "2026-05-10"]);
});

test("every line has the place that it stands at", () => {
  const text = "experiment: { question: Why?, changed: [ water, clay ] }";
  const { experiment } = read(text);
  const { file, line, column } = experiment!.changed[1]!.place;
  expect({ file, line, column }).toEqual({ file: "yard.yaml", line: 5, column: text.indexOf("clay") + 1 });
});

test("what it does not ask and change is worth a note, and nothing else is lost", () => {
  const { experiment, said } = read("experiment: { held: the sand }");
  expect(texts(experiment!.held)).toEqual(["the sand"]);
  expect(said).toHaveLength(2);
  expect(said[0]).toMatch(/^yard\.yaml:5:1: note: .*does not say what it asks.*\n.*`question: /);
  expect(said[1]).toMatch(/^yard\.yaml:5:1: note: .*does not say what was changed/);
});

test("days the wrong way round, a key that is not known, lists in lists, nothing at all: each is told at its place", () => {
  const { experiment, said } = read(
    "experiment: { question: Why?, changed: [ [ water ], clay ], helt: sand, from: 2026-05-10, to: 2026-05-09, open: }",
  );
  expect(texts(experiment!.changed)).toEqual(["clay"]);
  expect([experiment!.from, experiment!.to]).toEqual(["2026-05-09", "2026-05-10"]);
  expect(said).toEqual([
    expect.stringContaining('Something under "changed"'),
    expect.stringContaining('"helt" is not known of an experiment'),
    expect.stringContaining("The experiment is from 2026-05-10 to 2026-05-09"),
    expect.stringContaining('Nothing stands after "open:"'),
  ]);
  expect(said[1]).toContain('Did you mean "held"?');
});

test("a batch of another day is named", () => {
  const { said } = read("experiment: { question: Why?, changed: water, from: 2026-05-10, to: 2026-05-11 }");
  expect(said).toEqual([
    expect.stringMatching(
      /^yard\.yaml:4:12: note: This batch is dated 2026-05-09.*2026-05-10 to 2026-05-11/s,
    ),
  ]);
});

test("a log of an experiment alone is a log, and a log without one has none", () => {
  expect(read("experiment: { question: Why?, changed: water }", "").said).toEqual([]);
  expect(read("").experiment).toBeUndefined();
});
