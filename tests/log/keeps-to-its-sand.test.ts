// A fault spoils its sieving, at worst its sand; the others are worked out as if nothing were wrong.

import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { hasError, type Issue } from "../../lib/issue.ts";
import { brief, read, sandNamed, soundLog, spoilt } from "./helpers.ts";

vi.setConfig({ testTimeout: 60_000 });

const figures = (log: ReturnType<typeof read>["value"], name: string) =>
  sandNamed(log, name)?.sievings.map(({ usable, retained }) => [
    usable,
    ...retained.map(({ mass }) => mass.value),
  ]);
const sound = read(soundLog).value;

const faults: readonly (readonly [what: string, from: string, to: string])[] = [
  ["a row that is a comment", "No. 40: 3.20", "#40: 3.20"],
  ["the last row a comment, at the line's start", "          pan: 0.15", "#270: 0.15"],
  ["a row without a space", "No. 50: 12.60", "No. 50:12.60"],
  ["the last row without a colon", "pan: 0.15", "pan 0.15"],
  ["a decimal comma", "No. 40: 3.20", "No. 40: 3,20"],
  ["a label that nobody knows", "No. 40: 3.20", "fine one: 3.20"],
  ["a figure that is none", "No. 40: 3.20", "No. 40: about three"],
  ["a quote that is never closed", "No. 40: 3.20", 'No. 40: "3.20'],
  ["a bracket that is never closed", "retained:", "retained: {"],
  ["a row too far in", "          No. 50: 12.60", "            No. 50: 12.60"],
  ["a row too far out", "          No. 50: 12.60", "         No. 50: 12.60"],
  ["a tab", "          No. 50: 12.60", "\tNo. 50: 12.60"],
  ["a dash without a space", "- date: 2026-03-02", "-date: 2026-03-02"],
  ["no pan", "          pan: 0.15\n", ""],
];

test.each(faults)("%s: the sieving is not usable, the other sand is", (_, from, to) => {
  const { value, issues } = spoilt(from, to);
  expect(issues.filter((issue) => issue.severity === "error").map((issue) => issue.about)).toContain(
    "Dune sand",
  );
  expect(issues.some((issue) => issue.about === "Pit sand")).toBe(false);
  expect(sandNamed(value, "Dune sand")?.sievings.some((sieving) => sieving.usable) ?? false).toBe(false);
  expect(figures(value, "Pit sand")).toEqual(figures(sound, "Pit sand"));
});

test.each(faults.slice(0, 13))("%s: one complaint, and none that only follows from it", (_, from, to) => {
  const { issues } = spoilt(from, to);
  expect(brief(issues).length).toBe(1);
});

test("a note with a colon costs the note, not the sand's figures", () => {
  const { value, issues } = spoilt("    state: new", "    state: new\n    note: drew 3: too wet");
  expect(brief(issues)).toEqual(["13:11 log/colon-in-text"]);
  expect(figures(value, "Dune sand")).toEqual(figures(sound, "Dune sand"));
});

test("an ordinary comment with a colon is no complaint, nor a # within a text", () => {
  const comments =
    "    # note: weighed twice\n    # 3 bags: all from one pit\n    state: new\n    note: >\n      sieves:\n      #40: 0.15\n";
  const { issues } = spoilt("    state: new\n", comments);
  expect(issues).toEqual([]);
});

test("dashes in a longer note are text", () => {
  const { issues } = spoilt(
    "    state: new\n",
    "    state: new\n    note: |\n      - one bag\n        - two bags\n",
  );
  expect(issues).toEqual([]);
});

test("of two sievings of one sand, the fault keeps to one", () => {
  const second = soundLog
    .slice(soundLog.indexOf("      - date: 2026-03-03"))
    .replace("2026-03-03", "2026-03-04");
  const { value } = read(`${soundLog}${second}`.replace("No. 70: 20.00", "No. 70: 2o.00"));
  expect(sandNamed(value, "Pit sand")?.sievings.map((sieving) => sieving.usable)).toEqual([false, true]);
});

test("sieves fine to coarse throughout are as good as the other way round", () => {
  const rows = /(?: {10}.*\n)+/.exec(soundLog)?.[0] ?? "";
  const reversed = `${rows.trimEnd().split("\n").reverse().join("\n")}\n`;
  const { value, issues } = spoilt(rows, reversed);
  expect(issues).toEqual([]);
  expect(figures(value, "Dune sand")).toEqual(figures(sound, "Dune sand"));
});

const complaintsHavePlaces = (text: string, issues: readonly Issue[]) => {
  for (const { severity, place, code } of issues) {
    if (severity === "note") continue;
    expect(place?.line, code).toBeGreaterThan(0);
    expect(place?.column, code).toBeGreaterThan(0);
    expect(place?.offset, code).toBeLessThanOrEqual(text.length);
  }
};

const signs = fc.constantFrom(..."0159.,:;#-+*&!%@'\"{}[]|>? \t\r\n±gAzµ\\\0\uFEFF");
const edits = fc.array(fc.tuple(fc.nat(soundLog.length), fc.nat(6), fc.array(signs, { maxLength: 6 })), {
  minLength: 1,
  maxLength: 6,
});

test("whatever is done to a log: an answer, and a place for each complaint", () => {
  fc.assert(
    fc.property(edits, (list) => {
      const text = list.reduce(
        (old, [at, cut, put]) => old.slice(0, at) + put.join("") + old.slice(at + cut),
        soundLog,
      );
      complaintsHavePlaces(text, read(text).issues);
    }),
    { numRuns: 150 },
  );
});

test("any text at all: an answer, and a place for each complaint", () => {
  fc.assert(
    fc.property(fc.string({ unit: signs, maxLength: 200 }), (text) =>
      complaintsHavePlaces(text, read(text).issues),
    ),
    { numRuns: 150 },
  );
});

test("one slip inside a sand's rows never changes the other sand's figures", () => {
  // Slips that stay on their line, in the rows of the first sand; a sign may be changed, added or lost.
  const start = soundLog.indexOf("          No. 40: 3.20");
  const end = soundLog.indexOf("  Pit sand:") - 1;
  const slip = fc.tuple(
    fc.integer({ min: start, max: end - 1 }),
    fc.nat(1),
    fc.constantFrom(..."0,:#-*&!%'\"{}[]|>g \t", ""),
  );
  fc.assert(
    fc.property(slip, ([at, cut, put]) => {
      fc.pre(!soundLog.slice(at, at + cut).includes("\n"));
      const { value, issues } = read(soundLog.slice(0, at) + put + soundLog.slice(at + cut));
      expect(figures(value, "Pit sand")).toEqual(figures(sound, "Pit sand"));
      // Its own sieving is either what was written, or not usable and complained about.
      const own = sandNamed(value, "Dune sand")?.sievings[0];
      if (own?.usable !== true) expect(hasError(issues)).toBe(true);
    }),
    { numRuns: 300 },
  );
});

test("a scale whose own line is at fault is complained about there, not at every sieving", () => {
  const { issues } = spoilt("{ reads to: 0.01 g, within: 0.02 g }", "{ reads to: 0,01, within: 0.02 g }");
  expect(brief(issues)).toEqual(["7:28 log/decimal-comma"]);
});

test("a row without a mass is never left out in silence", () => {
  const { value, issues } = spoilt("No. 50: 12.60", "No. 50:");
  expect(brief(issues)).toEqual(["22:18 log/empty-mass"]);
  expect(sandNamed(value, "Dune sand")?.sievings[0]?.usable).toBe(false);
});
