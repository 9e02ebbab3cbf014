// A complaint's place lies in the text that it names, also where there is next to no text to point at.

import { expect, test } from "vitest";
import { issueOf, read } from "./helpers.ts";

test("an empty log and an empty CSV file: the place is no longer than the text", () => {
  expect(issueOf(read(""), "log/empty-file").place).toMatchObject({
    line: 1,
    column: 1,
    offset: 0,
    length: 0,
  });
  const log = "format: 1\nsands:\n  A:\n    state: new\n    sievings file: rows.csv\n";
  const { place } = issueOf(read(log, { "rows.csv": "" }), "log/empty-file");
  expect(place).toMatchObject({ file: "rows.csv", offset: 0, length: 0 });
});

test("a chart that says neither x nor y is found at its own place", () => {
  const text = "format: 1\nsheets:\n  bags:\n    columns: { wet: g }\n    charts: {}\n";
  const { issues } = read(text);
  const unsaid = issues.filter(({ code }) => code === "log/sheet-chart-unsaid");
  expect(unsaid.map(({ place }) => [place?.file, place?.line])).toEqual([
    ["log.yaml", 5],
    ["log.yaml", 5],
  ]);
});

test("a formula with signs behind \\ at the end of its log: the place ends with the text", () => {
  const text = 'format: 1\nsheets:\n  bags:\n    columns: { wet: g }\n    foot:\n      sum: "\\""';
  const { foot } = read(text).value!.sheets[0]!;
  expect(foot[0]!.formula.text).toBe('"');
  expect(foot[0]!.formula.place).toMatchObject({ line: 6, offset: text.length - 3, length: 3 });
});
