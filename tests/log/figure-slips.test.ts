// What stands in a figure's place gets an answer that fits, and the answer reads.

import { expect, test } from "vitest";
import { slipIn } from "../../lib/log/figure-slips.ts";
import { readQuantity } from "../../lib/quantity/read-quantity.ts";
import { issueOf, read, soundLog } from "./helpers.ts";

/** What the remedy says to write, up to its next word. */
const written = (text: string) =>
  /^Write ([\d.]+(?: ± [\d.]+)?(?: (?:g|kg|oz|ml|s|min|h|lb)\b)?)/.exec(slipIn(text)?.remedy ?? "")?.[1];

test.each([
  ["O.5", "0.5"],
  ["8l.2", "81.2"],
  ["1O g", "10 g"],
  ["12.4grms", "12.4 g"],
  ["12.4 GRM.", "12.4 g"],
  ["2 kgs", "2 kg"],
  ["30 ccs", "30 ml"],
  ["9.8 (spilled some)", "9.8"],
  ["9.8 g (spilled some)", "9.8 g"],
  ["9.8 g, sieve was clogged", "9.8 g"],
  ["~ 9.8 g", "9.8 g"],
  ["9.8,", "9.8"],
  ["9.8 g.", "9.8 g"],
  ["9.8;", "9.8"],
  ["9.8#", "9.8"],
  ["9.8 g ?", "9.8 g"],
  ["=9.8", "9.8"],
  ["9. 8", "9.8"],
  ["9 .8 g", "9.8 g"],
  ["9..8", "9.8"],
  ["9:8", "9.8"],
  ["9·8 g", "9.8 g"],
  ["9.8 + 1.15", "10.95"],
  ["=0.1+0.2 g", "0.3 g"],
  ["٩٫٨", "9.8"],
  ["９．８ g", "9.8 g"],
])("%j: write %s", (text, better) => {
  expect(written(text)).toBe(better);
  expect(readQuantity(better).value).toBeDefined();
});

test.each(["trace", "tr.", "Traces", "hardly any", "<0.1", "< 0.1 g", "less than 0.1"])(
  "%j is less than the scale shows: half of it, with as much ±",
  (text) => {
    expect(slipIn(text)?.code).toBe("log/trace-only");
    expect(slipIn(text)?.remedy).toContain("0.05 ± 0.05");
  },
);

test.each(["n/a", "N.A.", "-", "?", "not measured", "unknown", "lost"])("%j is no figure", (text) => {
  expect(slipIn(text)?.code).toBe("log/no-figure");
});

test.each([
  "",
  "abc",
  "12.4 furlongs",
  "12,4",
  "6'2",
  "1:234",
  "9.8 + x",
  "4 fl oz",
  "3 lb 4 ounce",
  "12 g 5 kg",
  "gr",
])("of %j nothing is known here: the reader of quantities answers", (text) => {
  expect(slipIn(text)).toBeUndefined();
});

test("half with as much ± is taken as a mass, and does not pass for finer than the scale", () => {
  const { value, issues } = read(
    soundLog.replace("No. 140: 1.90", "No. 140: 1.90\n          No. 200: 0.005 ± 0.005 g"),
  );
  expect(issues.filter(({ place }) => place?.line === 26)).toEqual([]);
  expect(value?.sands[0]?.sievings[0]?.retained[5]?.mass).toMatchObject({
    value: 0.005,
    plusMinus: { size: 0.005, meaning: "surely" },
  });
});

test("a lone dash, which YAML cannot take for a value, is answered like n/a", () => {
  for (const row of ["No. 40: -", "No. 40: - # not there"]) {
    const code = issueOf(read(soundLog.replace("No. 40: 3.20", row)), "log/no-figure");
    expect(code.place?.line).toBe(21);
  }
  const flow = soundLog.replace("{ reads to: 0.01 g,", "{ reads to: -,");
  expect(issueOf(read(flow), "log/no-figure").place?.line).toBe(7);
});

test("a lone question mark, which begins a name for YAML, is answered like n/a, on its own line", () => {
  for (const row of ["No. 40: ?", "No. 40: ? # not weighed"]) {
    const found = read(soundLog.replace("No. 40: 3.20", row));
    expect(issueOf(found, "log/no-figure").place).toMatchObject({ line: 21, column: 19 });
    expect(found.issues.filter(({ severity }) => severity === "error")).toHaveLength(1);
    expect(found.value?.sands.map(({ name }) => name)).toEqual(["Dune sand", "Pit sand"]);
  }
});

test.each(['""', "|", ">", "''"])(
  "%s after a sieve is no mass: the sieve is not dropped in silence",
  (nothing) => {
    const found = read(soundLog.replace("No. 40: 3.20", `No. 40: ${nothing}`));
    expect(issueOf(found, "log/empty-mass").place).toMatchObject({ line: 21, column: 19 });
    expect(found.value?.sands[0]?.sievings[0]?.usable).toBe(false);
  },
);

test("three digits behind a comma may be thousands: both readings are told", () => {
  const remedy = (start: string) =>
    read(soundLog.replace("start: 50.0 g", `start: ${start}`)).issues.find(({ place }) => place?.line === 19)
      ?.remedy;
  expect(remedy("1,050 g")).toBe("Write 1.050 or 1050.");
  expect(remedy("0,050 kg")).toBe("Write 0.050 kg");
  expect(remedy(",050 kg")).toBe("Write 0.050 kg");
  expect(remedy("1'050.5 g")).toBe("Write 1050.5.");
  expect(remedy("50,0 g")).toBe("Write 50.0 g");
});
