// Check and page tell the same story.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { sandReports } from "../../lib/finding/sand-report.ts";
import { batchFigures } from "../../lib/log/batch-figures.ts";
import { filesNamedIn } from "../../lib/log/files-named.ts";
import { checkIssues, pageIssues } from "../../lib/log/page-issues.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { read } from "./helpers.ts";
import { readTrial, swapped } from "./trial-log.ts";

const demo = join(import.meta.dirname, "..", "..", "data-demo");
const logs = readdirSync(demo, { recursive: true, encoding: "utf8" }).filter((file) =>
  file.endsWith(".yaml"),
);

const sorted = (issues: ReturnType<typeof pageIssues>) => issues.map((issue) => JSON.stringify(issue)).sort();

test.each(logs)("%s: the pages' own complaints are all of them", (file) => {
  const text = readFileSync(join(demo, file), "utf8");
  const beside = filesNamedIn(text).map((name) => [name, readFileSync(join(demo, file, "..", name), "utf8")]);
  const log = readLog(text, { name: file, files: Object.fromEntries(beside) }).value!;
  const ofPages = [...sandReports(log).flatMap(({ issues }) => issues), ...batchFigures(log).issues];
  expect(sorted(pageIssues(log))).toEqual(sorted(ofPages));
});

test("a reading that gives no figure, and a sieve that holds too much", () => {
  // Within ± 5 mm of the two heights the compactability may be anything.
  const trial = readTrial(
    swapped("compactability: 45 %", "compactability: { filled: 120 ± 120 mm, rammed: 66 ± 60 mm }"),
  ).value!;
  expect(pageIssues(trial)).toEqual(batchFigures(trial).issues);
  expect(pageIssues(trial).map(({ code, about }) => [code, about])).toEqual([
    ["log/figure-unsteady", "Heron 2"],
  ]);
  const csv = "date,scale,sieve set,start,No. 40,No. 50,No. 70,pan\n2026-03-02,s,r,120,5,20,94,1\n";
  const sieved = read(
    "format: 1\nscales: { s: { reads to: 0.1 g } }\nsieve sets: { r: { frame: 100 mm } }\nsands:\n  Dune sand:\n    state: new\n    sievings file: s.csv\n",
    { "s.csv": csv },
  ).value!;
  // At the figure, not at the name of its column.
  expect(pageIssues(sieved).filter(({ message }) => message.startsWith("No. 70"))).toMatchObject([
    { place: { file: "s.csv", line: 2 }, about: "Dune sand" },
  ]);
});

// The limit of 1 % is that of EN 933-1 (from memory).
test("sand that was lost is told at the start mass, unless it is little or the scale may explain it", () => {
  const lost = (no70: number, scale = "reads to: 0.1 g") =>
    checkIssues(
      read(
        `format: 1\nscales: { s: { ${scale} } }\nsieve sets: { r: { frame: 200 mm } }\nsands:\n  Dune sand:\n    state: new\n    sievings: [ { scale: s, sieve set: r, start: 50.0 g, retained: { No. 40: 4.0, No. 50: 20.0, No. 70: ${no70}, pan: 1.0 } } ]\n`,
      ).value!,
    ).filter(({ code }) => /mass-(lost|gained)/.test(code));
  expect(lost(20)).toMatchObject([
    { code: "sand/mass-lost", severity: "warning", about: "Dune sand", place: { line: 7, column: 50 } },
  ]);
  expect(lost(24.7)).toEqual([]);
  expect(lost(24, "reads to: 0.1 g, within: 0.5 g")).toEqual([]);
});
