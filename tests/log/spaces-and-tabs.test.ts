// One slip of the hand at the start of a line: told once, near where it is, and nothing false beside it.

import { expect, test } from "vitest";
import type { Batch } from "../../lib/log/batch.ts";
import { lineList } from "../../lib/log/line-list.ts";
import { indentOf } from "../../lib/log/source.ts";
import type { Log, Sieving } from "../../lib/log/types.ts";
import { brief, issueOf, read, soundLog } from "./helpers.ts";

/** Invented; with a batch, so that every section of a log is there to slip. */
const whole = `${soundLog}rigs:
  home tube: { bore: 50 mm, tube: 120 mm }
batches:
  First batch:
    date: 2026-03-09
    order: 1
    compactability: { rig: home tube, filled: 120 mm, rammed: 66 mm }
    green compression: 71 kPa
`;
const lines = whole.split("\n");
const sound = read(whole).value!;

const slips = {
  "a space more": (line: string) => ` ${line}`,
  "a space less": (line: string) => line.replace(/^ /, ""),
  "tabs for the spaces": (line: string) => line.replace(/^ +/, (run) => "\t".repeat(run.length / 2)),
} as const;

const sievings = (log: Log | undefined): readonly Sieving[] =>
  log?.sands.flatMap((sand) => sand.sievings) ?? [];
const figures = ({ id, startG, retained }: Sieving) =>
  JSON.stringify([id, startG?.value, retained.map(({ label, mass }) => [label, mass.value])]);
const tested = ({ id, readings }: Batch) =>
  JSON.stringify([id, readings.map(({ test, raw, worked }) => [test, worked?.value, raw.rammedMm?.value])]);

test.each(Object.entries(slips))(
  "%s on any one line makes one complaint, there, on the next line or on the next of its kind",
  (_, slip) => {
    lines.forEach((line, index) => {
      const text = lines.with(index, slip(line)).join("\n");
      if (text === whole || line === "") return;
      const { value, issues } = read(text);
      const told = issues.filter(({ severity }) => severity !== "note");
      expect({ line, told: told.map(({ code }) => code) }).toEqual({
        line,
        // A name that alone moves as its section allows is still in line.
        told:
          told.length === 0
            ? []
            : [expect.stringMatching(/^log\/(indent|under-dash|tab-among-spaces|tabs)$/)],
      });
      const indent = indentOf(line);
      const sibling = lines.findIndex((other, k) => k > index && indentOf(other) === indent);
      for (const { place } of told) expect([index + 1, index + 2, sibling + 1]).toContain(place?.line);
      // What lost a line is never taken for whole.
      for (const sieving of sievings(value).filter(({ usable }) => usable))
        expect(sievings(sound).map(figures)).toContain(figures(sieving));
      for (const batch of value?.batches.filter(({ usable }) => usable) ?? [])
        expect(sound.batches.map(tested)).toContain(tested(batch));
    });
  },
);

test("a log that is indented with tabs throughout is read whole, and told once", () => {
  const level = (line: string) => line.replace(/^ +/, (run) => "\t".repeat(run.length / 2));
  const tabbed = lines.map(level).join("\n");
  const { value, issues } = read(tabbed);
  expect(brief(issues)).toEqual(["7:1 log/tabs"]);
  expect(issueOf({ issues }, "log/tabs").message).toMatch(/lines 7, 9, 11 to 38, 40 and 42 to 46/);
  expect(sievings(value).map(figures)).toEqual(sievings(sound).map(figures));
  expect(value?.batches.map(tested)).toEqual(sound.batches.map(tested));
  // Behind a dash two spaces are as good as a tab.
  const mixedBehindDash = tabbed.replace(/^\t\t\t\t(?=[a-z])/gm, "\t\t\t  ");
  expect(mixedBehindDash).not.toBe(tabbed);
  expect(sievings(read(mixedBehindDash).value).map(figures)).toEqual(sievings(sound).map(figures));
});

test("places in a log with tabs are those of the file as it was typed", () => {
  const tabbed = lines.map((line) => line.replace(/^ +/, (run) => "\t".repeat(run.length / 2))).join("\n");
  const { value } = read(tabbed);
  const [first] = sievings(value);
  for (const { label, place, mass } of first!.retained) {
    expect(tabbed.slice(place.offset, place.offset! + place.length!)).toBe(label);
    expect(tabbed.slice(mass.place.offset, mass.place.offset! + mass.place.length!)).toBe(mass.text);
    expect(place.column).toBe(6);
  }
  const faulty = read(tabbed.replace("No. 40: 3.20", "No. 40: 3,20"));
  expect(brief(faulty.issues)).toContain("21:14 log/decimal-comma");
});

test("tabs on some lines of a section are told in one message, and nothing is called empty", () => {
  const some = lines
    .map((line, k) => (k >= 9 && k < 20 ? slips["tabs for the spaces"](line) : line))
    .join("\n");
  const { value, issues } = read(some);
  expect(brief(issues)).toEqual(["11:1 log/tab-among-spaces"]);
  expect(issues[0]?.message).toMatch(/lines 11 to 20 /);
  // The sand that follows has no tab in it.
  expect(sievings(value).filter(({ usable }) => usable)).toHaveLength(1);
  const scales = whole
    .replace("  small scale:", "\tsmall scale:")
    .replace("scales:\n", "scales:\n  old scale: { reads to: 1 g }\n");
  expect(brief(read(scales).issues)).toEqual(["8:1 log/tab-among-spaces"]);
});

test("tabs that YAML takes are left alone", () => {
  const flow = whole.replace("{ bore: 50 mm, tube: 120 mm }", "{ bore: 50 mm,\n    \ttube: 120 mm }");
  expect(brief(read(flow).issues)).toEqual([]);
});

test("numbers of lines in words", () => {
  expect(lineList([5])).toBe("line 5");
  expect(lineList([5, 6, 7])).toBe("lines 5 to 7");
  expect(lineList([5, 6, 9, 12, 13])).toBe("lines 5 to 6, 9 and 12 to 13");
  expect(lineList([1, 3, 5, 7, 9, 11, 13])).toBe("lines 1, 3, 5, 7, 9 and more");
});

test("curly quotes around a name or a value are read as straight ones; within a text they stay", () => {
  const title = (text: string) => read(whole.replace("An invented log", text));
  expect(title("“Yard #3: dry”").value?.title).toBe("Yard #3: dry");
  expect(title("‘Yard #3’").value?.title).toBe("Yard #3");
  for (const text of ["The founder’s “best” sand", '"he said, “dry”, twice"', "“Best” of two", "a # “b”"])
    expect(title(text).issues.map(({ code }) => code)).not.toContain("log/curly-quotes");
  expect(title("The founder’s “best” sand").value?.title).toBe("The founder’s “best” sand");
  const row = read(whole.replace("No. 40: 3.20", "“#40”: “3.20 g”"));
  expect(brief(row.issues)).toEqual(["21:11 log/curly-quotes"]);
  expect(sievings(row.value)[0]?.retained[0]).toMatchObject({
    mass: { value: 3.2 },
    sieve: { label: "No. 40" },
  });
});
