// Every published figure: one test a row. Then the table that is written from the rows, against the one in the folder.

import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type Judged, judge, type Published, printed } from "./published.ts";
import { sections } from "./rows.ts";
import { sources } from "./sources.ts";
import { countsOf, readme, sourcesOf } from "./table.ts";
import { simulated } from "./unchecked.ts";

const done = new Map<Published, Judged>();

describe.each(sections)("$title", ({ rows }) => {
  test.each(rows.map((row) => [row.figure, row] as const))("%s", (_, row) => {
    const judged = judge(row);
    done.set(row, judged);
    expect(judged.faults).toEqual([]);
  });
});

const rows = sections.flatMap((section) => section.rows);

test("80 printed figures or more from 30 sources or more, each named once and every source used", () => {
  const counts = countsOf(rows);
  expect(counts.printedRows).toBeGreaterThanOrEqual(80);
  expect(counts.printedSources).toBeGreaterThanOrEqual(30);
  const names = rows.map(({ figure }) => figure);
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
  const used = new Set(rows.flatMap(sourcesOf));
  expect(Object.keys(sources).filter((key) => !used.has(key as keyof typeof sources))).toEqual([]);
  const citations = Object.values(sources);
  expect(new Set(citations).size).toBe(citations.length);
});

test("what is read, remembered or misprinted names its source; the files that are named are there", () => {
  for (const row of rows)
    if (["read", "from memory", "misprint"].includes(row.tag))
      expect(sourcesOf(row), row.figure).not.toEqual([]);
  for (const { file } of sections) expect(existsSync(join(import.meta.dirname, file)), file).toBe(true);
  for (const [what, , , where] of simulated)
    expect(existsSync(join(import.meta.dirname, "..", `${where}.test.ts`)), what).toBe(true);
});

test("README.md is what these rows give: npm run references", () => {
  const judged = sections.map((section) => ({
    ...section,
    judged: section.rows.map((row) => done.get(row) ?? judge(row)),
  }));
  expect(readFileSync(join(import.meta.dirname, "README.md"), "utf8")).toBe(readme(judged));
});

describe("the judge", () => {
  const row = (theirs: string[], ours: (number | string)[], rest: Partial<Published> = {}): Judged =>
    judge({ figure: "x", theirs, ours: () => ours, tag: "by hand", ...rest });
  test("numbers as printed: digits, and one unit of the last", () => {
    expect(printed("99.0")).toEqual({ value: 99, digits: 3, step: 0.1 });
    expect(printed("−0.0050")).toMatchObject({ value: -0.005, digits: 2, step: 1e-4 });
    expect(printed("15 243")).toMatchObject({ value: 15243, digits: 5 });
    expect(printed("1.7266e-5")).toMatchObject({ digits: 5, step: 1e-9 });
    expect(printed("0.83 ± 0.12")).toBeUndefined();
  });
  test("half of the last digit is let through, more is not", () => {
    expect(row(["2.68"], [2.6751])).toMatchObject({ faults: [], agreed: "all 3" });
    expect(row(["2.68"], [2.6749]).faults).not.toEqual([]);
    expect(row(["2.68"], [2.6749], { agree: { digits: 2 } })).toMatchObject({ faults: [], agreed: "2 of 3" });
    expect(row(["2.68"], [2.6], { agree: { digits: 2 } }).faults).not.toEqual([]);
    expect(row(["2.68"], [Number.NaN], { agree: { within: 9 } }).faults).not.toEqual([]);
    expect(row(["2.68", "3"], [2.68]).faults).not.toEqual([]);
    expect(row(["a"], ["b"]).faults).not.toEqual([]);
  });
  test("within, a share, a span", () => {
    expect(row(["100"], [103], { agree: { within: 3 } }).faults).toEqual([]);
    expect(row(["100"], [104], { agree: { share: 0.03 } }).faults).not.toEqual([]);
    expect(row(["2", "9"], [1, 8], { agree: { between: "ours" } }).faults).not.toEqual([]);
    expect(row(["1", "8"], [2, 3], { agree: { between: "theirs" } }).faults).toEqual([]);
    expect(row(["9"], [2, 3], { agree: { beyond: "ours" } }).faults).toEqual([]);
    expect(row(["2.5"], [2, 3], { agree: { beyond: "ours" } }).faults).not.toEqual([]);
    expect(row(["no number"], [2, 3], { agree: { beyond: "ours" } }).faults).not.toEqual([]);
  });
  test("a misprint that follows from its input is none, and none may pass for a figure", () => {
    const misprint = { tag: "misprint", agree: { instead: ["58.62"] } } as const;
    expect(row(["58.94"], [58.62], misprint)).toMatchObject({ faults: [], agreed: "2 of 4" });
    expect(row(["58.62"], [58.62], misprint).faults).not.toEqual([]);
    expect(row(["58.94"], [58.94], misprint).faults).not.toEqual([]);
    expect(row(["58.94"], [58.94], { tag: "misprint" }).faults).not.toEqual([]);
  });
});
