// Rows that YAML takes for comments, and rows without their colon.

import { expect, test } from "vitest";
import { issueOf, read, soundLog } from "./helpers.ts";

const before = (line: string) =>
  read(soundLog.replace("          No. 70: 20.10", () => `${line}\n          No. 70: 20.10`));
const codes = (line: string) =>
  before(line)
    .issues.map(({ code }) => code)
    .filter((code) => /hash|commented/.test(code));

test.each([
  ["#20 3", "Write No. 20: 3"],
  ["# 40 - 40", "Write No. 40: 40"],
  ["#45: 0.15", "Write No. 45: 0.15"],
  ["# 45 = 9.5 g", "Write No. 45: 9.5 g"],
  ["#45, 9.5", "Write No. 45: 9.5"],
  ["# 45 mesh held 9.5 g", "Write No. 45: 9.5 g"],
  ["No #45 3.20", "Write No. 45: 3.20"],
])("%j among the rows is a row that is lost: an error", (row, remedy) => {
  const found = issueOf(before(`          ${row}`), "log/hash-row");
  expect(found).toMatchObject({ severity: "error", remedy, about: "Dune sand" });
  expect(before(`          ${row}`).value?.sands[0]?.sievings[0]?.usable).toBe(false);
  // Also where an editor put the # at the margin.
  if (row.startsWith("#")) expect(codes(row)).toEqual(["log/hash-row"]);
});

test.each(["# No. 45 9.5", "# pan 0.3", "# 45 on the second day, after 10 min: 9.5", "#45 13/32 oz"])(
  "%j among the rows may be one: a warning",
  (row) => {
    expect(codes(`          ${row}`)).toEqual(["log/row-commented-out"]);
  },
);

test.each([
  "# shaken 15 min",
  "# 2 passes, 10 min each",
  "# weighed twice, 3.1 and 3.3",
  "# 2026-03-02 10:30",
  "#40",
  "# 3.20",
])("%j is a comment", (row) => {
  expect(codes(`          ${row}`)).toEqual([]);
});

test("two numbers behind a # outside the rows are nobody's row", () => {
  expect(read(soundLog.replace("    state: new", "    # 20 3\n    state: new")).issues).toEqual(
    read(soundLog).issues.map((issue) => expect.objectContaining({ code: issue.code })),
  );
});

const flow = "{ No. 40: 3.20, No. 50: 12.60, No. 70: 20.10, No. 100: 12.00, No. 140: 1.90, pan: 0.15 }";
const inFlow = (rows: string) =>
  read(soundLog.replace(/retained:\n(?: {10}.*\n)+/, () => `retained: ${rows}\n`));

test.each([
  ['"#70" 20.10', "#70", 'Write "#70": 20.10'],
  ["'No. 70' 20.10 g", "No. 70", "Write No. 70: 20.10 g"],
  ["No. 70 20.10", "No. 70", "Write No. 70: 20.10"],
  ["0.212 mm 20.10", "0.212 mm", "Write 0.212 mm: 20.10"],
])("%j in brackets lacks its colon, and that is all that is said of it", (row, name, remedy) => {
  const { value, issues } = inFlow(flow.replace("No. 70: 20.10", row));
  const errors = issues.filter(({ severity }) => severity === "error");
  expect(errors).toMatchObject([{ message: `There is no colon after "${name}".`, remedy }]);
  expect(value?.sands[0]?.sievings[0]?.usable).toBe(false);
  expect(inFlow(flow).value?.sands[0]?.sievings[0]?.usable).toBe(true);
});

test("a log that ends in thousands of comments is read in proportion to their number", () => {
  const ending = (comments: number) =>
    `${soundLog.trimEnd()}\n${"# weighed in the yard, dry, calm\n".repeat(comments)}`;
  const spent = (comments: number) => {
    const from = process.cpuUsage();
    expect(read(ending(comments)).issues).toEqual(read(soundLog).issues);
    const { user, system } = process.cpuUsage(from);
    return user + system;
  };
  spent(1000);
  // 16 times the lines: about 16 times the work where it is in proportion, up to 256 where each looks ahead of itself.
  expect(spent(32_000) / spent(2000)).toBeLessThan(60);
});
