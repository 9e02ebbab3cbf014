import { expect, test } from "vitest";
import { readLog } from "../../lib/log/read-log.ts";

const read = (lines: string) => {
  const { value, issues } = readLog(`format: 1\nmetal: aluminium\nbond: bentonite\n${lines}`, {
    name: "log.yaml",
  });
  return { log: value!, issues };
};
const pours = `events:
  - { date: 2026-05-02, pour: { metal: 2 kg, alloy: "Al-Si", scrap share: 40 %, at: 720 °C, degassed: yes } }
  - { date: 2026-05-09, pour: { metal: 2 kg, degassed: no } }
  - { date: 2026-05-09, pour: { metal: 1 kg } }
`;

test("castings by date, faults by their usual names, none as none", () => {
  const { log, issues } = read(`${pours}castings:
  - { date: 2026-05-09, name: hinge, of pour: 2, faults: "Blowholes, rough skin" }
  - { date: 2026-05-02, name: lamp base, faults: none, note: "a plain one" }
  - { date: 2026-05-02, name: bracket, faults: [ gas holes, blows, cold shuts ] }
`);
  expect(issues).toEqual([]);
  expect(log.castings.map(({ name, faults, ofPour }) => [name, faults, ofPour])).toEqual([
    ["lamp base", [], 1],
    ["bracket", ["gas holes", "misruns"], 1],
    ["hinge", ["gas holes", "rough skin"], 2],
  ]);
  expect(log.castings[0]!.note).toBe("a plain one");
  expect(log.events.map((event) => (event.kind === "pour" ? event.degassed : ""))).toEqual([
    true,
    false,
    undefined,
  ]);
});

test("every complaint has its code, its place and a remedy; the rest of the log stands", () => {
  const { log, issues } = read(`${pours}castings:
  - { date: 2026-05-02, name: a, faults: [ gas hols, zzz ] }
  - { date: 2026-05-03, name: b, faults: none }
  - { date: 2026-05-09, name: c, faults: none }
  - { date: 2026-05-09, name: d, of pour: 3, faults: none }
  - { date: 2026-05-02, name: e }
  - { name: f, faults: none }
  - { date: 2026-05-02, name: g, faults: [ none, swells ] }
  - { date: 2026-05-02, name: h, fualts: none }
questions:
  - { fault: gas holes, against: moistrue }
  - { fault: gas holes, against: moisture, limit: 4 % }
  - { fault: blows, against: moisture }
  - { fault: gas holes, against: degassed, limit: 3 }
  - { fault: washes, against: green strength, limit: 9 psi }
  - { against: moisture }
  - { fault: swells, against: temperature, limit: 720 °C }
`);
  const at = issues.map(({ code, place }) => [code, place?.line, place?.column]);
  expect(at).toEqual(
    [
      ["log/unknown-choice", 9, 44],
      ["log/unknown-choice", 9, 54],
      ["log/casting-without-pour", 10, 13],
      ["log/which-pour", 11, 13],
      ["log/no-such-pour", 12, 43],
      ["log/faults-not-said", 13, 5],
      ["log/undated", 14, 5],
      ["log/none-and-faults", 15, 50],
      ["log/unknown-key", 16, 34],
      ["log/faults-not-said", 16, 5],
      ["log/unknown-choice", 18, 34],
      ["log/question-lacks", 18, 5],
      ["log/question-twice", 20, 5],
      ["log/limit-of-yes-no", 21, 51],
      ["log/question-lacks", 23, 5],
    ].sort((a, b) => Number(a[1]) - Number(b[1]) || Number(a[2]) - Number(b[2])),
  );
  expect(issues.every(({ remedy }) => remedy !== undefined && remedy !== "")).toBe(true);
  expect(issues[0]!.remedy).toContain('Did you mean "gas holes"?');
  expect(issues.find(({ code }) => code === "log/casting-without-pour")?.remedy).toContain("2026-05-02");
  expect(log.castings.map(({ name, faults, incomplete }) => [name, faults, incomplete])).toEqual([
    ["a", [], true],
    ["e", undefined, false],
    ["g", ["swells"], false],
    ["h", undefined, false],
    ["b", [], false],
    ["c", [], false],
    ["d", [], false],
  ]);
  expect(log.questions.map(({ fault, against, limit }) => [fault, against, limit?.value])).toEqual([
    ["gas holes", "moisture", 4],
    ["gas holes", "degassed", undefined],
    ["washes", "green compression", expect.closeTo(62.0528, 3)],
    ["swells", "pouring temperature", 720],
  ]);
});

test("a misspelt part of a line with commas has its own place, with and without quotes", () => {
  const { issues } = read(`${pours}castings:
  - date: 2026-05-02
    name: a
    faults: gas holes, swels
  - date: 2026-05-02
    name: b
    faults: "gas holes, swels"
`);
  expect(issues.map(({ place }) => [place?.line, place?.column, place?.length])).toEqual([
    [11, 24, 5],
    [14, 25, 5],
  ]);
});

test("odd values make issues and never throw; a log of castings alone is a log", () => {
  for (const odd of [
    "",
    "x",
    "[]",
    "{}",
    "[ x ]",
    "[ { } ]",
    "[ { date: 2026-05-02, faults: { a: b } } ]",
    "[ { date: 2026-05-02, faults: [ [ a ] ] } ]",
    "[ { date: 2026-05-02, of pour: x, faults: [ ] } ]",
  ]) {
    expect(() => read(`castings: ${odd}\nquestions: ${odd}\n`)).not.toThrow();
  }
  const { log, issues } = read("castings:\n  - { date: 2026-05-02, name: a, faults: none }\n");
  expect(log.castings.length).toBe(1);
  expect(issues.map(({ code }) => code)).toEqual(["log/casting-without-pour"]);
  expect(
    read("questions:\n  - { fault: swells, against: moisture }\n").issues.map(({ code }) => code),
  ).toEqual(["log/questions-without-castings"]);
});
