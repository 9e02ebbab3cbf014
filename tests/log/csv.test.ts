// CSV as RFC 4180 has it, every cell with its place; and sievings from it.

import { expect, test } from "vitest";
import type { Issue } from "../../lib/issue.ts";
import { csvSeparator, readCsv } from "../../lib/log/csv.ts";
import { sourceOf } from "../../lib/log/source.ts";
import { brief, read } from "./helpers.ts";

function cells(text: string, separator = ",") {
  const issues: Issue[] = [];
  const rows = readCsv(sourceOf("a.csv", text), separator, (issue) => issues.push(issue));
  return {
    rows: rows.map((row) => row.map((cell) => cell.text)),
    places: rows.map((row) => row.map((cell) => cell.place)),
    issues,
  };
}

test("the examples of RFC 4180, section 2", () => {
  // 2.1 and 2.2: the last line may or may not end with CR LF.
  expect(cells("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n").rows).toEqual([
    ["aaa", "bbb", "ccc"],
    ["zzz", "yyy", "xxx"],
  ]);
  expect(cells("aaa,bbb,ccc\r\nzzz,yyy,xxx").rows).toEqual([
    ["aaa", "bbb", "ccc"],
    ["zzz", "yyy", "xxx"],
  ]);
  // 2.5, 2.6, 2.7: quotes, line breaks within them, doubled quotes.
  expect(cells('"aaa","bbb","ccc"\r\nzzz,yyy,xxx').rows[0]).toEqual(["aaa", "bbb", "ccc"]);
  expect(cells('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx').rows).toEqual([
    ["aaa", "b\r\nbb", "ccc"],
    ["zzz", "yyy", "xxx"],
  ]);
  expect(cells('"aaa","b""bb","ccc"').rows).toEqual([["aaa", 'b"bb', "ccc"]]);
});

test("empty cells, blank lines, lone line ends and a byte order mark", () => {
  expect(cells("\uFEFFa,,c\n\n,,\n1,2,").rows).toEqual([
    ["a", "", "c"],
    ["1", "2", ""],
  ]);
  expect(cells("a,b\r1,2\r").rows).toEqual([
    ["a", "b"],
    ["1", "2"],
  ]);
  expect(cells("").rows).toEqual([]);
});

test("each cell's place cuts it out of the file", () => {
  const text = '\uFEFFdate,"a ""b""",pan\r\n2026-03-02, 12.5 ,0.1\r\n';
  const { places } = cells(text);
  const cut = places.map((row) =>
    row.map(({ offset = 0, length }) => text.slice(offset, offset + (length ?? 0))),
  );
  expect(cut).toEqual([
    ["date", '"a ""b"""', "pan"],
    ["2026-03-02", " 12.5 ", "0.1"],
  ]);
  expect(places[0]?.[0]).toMatchObject({ line: 1, column: 1 });
  expect(places[1]?.[2]).toMatchObject({ line: 2, column: 19 });
});

test("separators are told from the first row", () => {
  expect(csvSeparator("date,No. 40,pan\n1;2")).toBe(",");
  expect(csvSeparator("date;No. 40;pan")).toBe(";");
  expect(csvSeparator('"a;b;c;d",x')).toBe(",");
  expect(csvSeparator("date\tpan")).toBe("\t");
  expect(csvSeparator("date|No. 40|pan")).toBe("|");
  // Said by the spreadsheet that wrote it.
  expect(csvSeparator("sep=;\r\ndate,x;pan")).toBe(";");
  expect(cells("\ufeffsep=;\r\n1,5;2\r\n", ";").rows).toEqual([["1,5", "2"]]);
});

const log =
  "format: 1\nmetal: steel\nbond: natural\nscales: { s: { reads to: 0.1 g } }\nsieve sets: { r: { frame: 200 mm } }\nsands:\n  Dune sand:\n    state: new\n    sievings file: s.csv\n";
const file = (text: string) => read(log, { "s.csv": text });

test("a row is a sieving; names of columns in any case; a dash: not on the stack", () => {
  const text =
    "Date,Portion,Scale,Sieve set,Start,Washed,No. 40,No. 50,No. 70,No. 100,Pan\n" +
    "2026-03-02,A,s,r,50,no,10,20,15,4,1\n" +
    "2026-03-02,B,s,r,50 g,yes,11,19,-,19.0,1.0 g\n";
  const { value, issues } = file(text);
  expect(issues).toEqual([]);
  const [a, b] = value?.sands[0]?.sievings ?? [];
  expect(a).toMatchObject({
    id: "Dune sand / 2026-03-02 / A",
    washed: false,
    usable: true,
    startG: { value: 50 },
  });
  expect(a?.retained.map((entry) => [entry.label, entry.mass.value])).toEqual([
    ["No. 40", 10],
    ["No. 50", 20],
    ["No. 70", 15],
    ["No. 100", 4],
    ["Pan", 1],
  ]);
  expect(b?.retained.map((entry) => entry.mass.value)).toEqual([11, 19, 19, 1]);
  expect(b?.retained[2]?.mass.place).toMatchObject({ file: "s.csv", line: 3, column: 35 });
});

test("rows of sums and of units are no sievings; a column with a misspelt name costs no sieving; one of a sieve does", () => {
  const head = "date,potrion,scale,sieve set,start,No. 40,No. 50,No. 70,pan";
  const rows =
    ",,,,g,g,g,g,g\n2026-03-02,A,s,r,50,10,20,19,1\nMean,,,,50,10,20,19,1\nTotals,,,,50,10,20,19,1\n";
  const { value, issues } = file(`${head}\n${rows}`);
  expect(brief(issues)).toEqual([
    "1:6 log/csv-unknown-column",
    "4:1 log/csv-total-row",
    "5:1 log/csv-total-row",
  ]);
  expect(value?.sands[0]?.sievings.map(({ usable }) => usable)).toEqual([true]);
  const sieve = file(`${head.replace("potrion", "portion").replace("No. 50", "No. 50 (g)")}\n${rows}`);
  expect(sieve.value?.sands[0]?.sievings.map(({ usable }) => usable)).toEqual([false]);
});

test("a quote that is never closed is one complaint", () => {
  expect(brief(file('date,No. 40,pan\n2026-03-02,"49,1\n').issues)).toEqual(["2:12 log/csv-open-quote"]);
});

test("one faulty row leaves the others", () => {
  const text =
    "date,portion,scale,sieve set,start,No. 40,No. 50,No. 70,pan\n2026-03-02,A,s,r,50,1o,20,19,1\n2026-03-02,B,s,r,50,10,20,19,1\n";
  const { value, issues } = file(text);
  expect(value?.sands[0]?.sievings.map((sieving) => sieving.usable)).toEqual([false, true]);
  expect(issues.length).toBe(1);
  expect(issues[0]?.place).toMatchObject({ file: "s.csv", line: 2, column: 21 });
});

test("a decimal comma in a comma file is a cell too many, and says so", () => {
  const { value, issues } = file("date,scale,start,No. 40,No. 50,No. 70,pan\n2026-03-02,s,50,10,20,19,0,5\n");
  expect(brief(issues)).toEqual(["2:1 log/csv-cell-count"]);
  expect(value?.sands[0]?.sievings[0]?.usable).toBe(false);
});

test("what is wrong with the first row is told there, once; no row of it is usable", () => {
  const rows =
    "2026-03-02,A,s,r,50,10,20,19,1\n2026-03-02,B,s,r,50,10,20,18,2\n2026-03-03,A,s,r,50,11,19,19,1\n";
  for (const [head, code, column] of [
    ["No. 40,No. 50,nothing,pan", "sand/sieve-unknown", 50],
    ["No. 40,50,No. 70,pan", "sand/sieve-bare-number", 43],
    ["No. 40,0.425 mm,No. 70,pan", "log/repeated-sieve", 43],
    ["No. 50,No. 40,No. 70,pan", "log/misplaced-sieve", 43],
  ] as const) {
    const { value, issues } = file(`date,portion,scale,sieve set,start,${head}\n${rows}`);
    expect(brief(issues)).toEqual([`1:${column} ${code}`]);
    const usable = code === "log/misplaced-sieve";
    expect(value?.sands[0]?.sievings.map((sieving) => sieving.usable)).toEqual([usable, usable, usable]);
  }
});

test("remarks may stand in a column of their own, whatever it is called", () => {
  for (const name of ["note", "Notes", "remarks", "comment"]) {
    const { value, issues } = file(
      `date,scale,sieve set,start,No. 40,No. 50,No. 70,pan,${name}\n2026-03-02,s,r,50,10,20,19,1,"rain, 2 h"\n`,
    );
    expect(issues).toEqual([]);
    expect(value?.sands[0]?.sievings[0]).toMatchObject({ note: "rain, 2 h", usable: true });
  }
});

test("a file that is no text, empty or too large", () => {
  for (const [text, code] of [
    ["PK\u0003\u0004", "log/not-text"],
    ["", "log/empty-file"],
    ["1,2\n".repeat(2_000_000), "log/too-large"],
  ] as const) {
    const { issues } = file(text);
    expect(issues.map((issue) => [issue.code, issue.place?.file])).toEqual([[code, "s.csv"]]);
  }
});

test("the fingerprint takes in the CSV file that the log names, and no other", () => {
  const text = "date,scale,start,No. 40,No. 50,No. 70,pan\n2026-03-02,s,50,10,20,19,1\n";
  const print = (files: Record<string, string>) => read(log, files).value?.fingerprint;
  expect(print({ "s.csv": text })).not.toBe(print({ "s.csv": text.replace("19,1", "18,2") }));
  expect(print({ "s.csv": text, "t.csv": "x" })).toBe(print({ "s.csv": text }));
});
