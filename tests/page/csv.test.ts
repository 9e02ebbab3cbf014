import fc from "fast-check";
import { read } from "vega";
import { expect, test } from "vitest";
import type { Page } from "../../lib/page/blocks.ts";
import { csvCell, writeCsv } from "../../lib/page/csv.ts";
import { writeJson } from "../../lib/page/json.ts";
import { visible } from "../../lib/page/visible.ts";
import { HOSTILE, samplePage } from "./sample-page.ts";

function oneTable(cells: readonly string[]): Page {
  return {
    ...samplePage(),
    sections: [
      {
        role: "data",
        title: "D",
        blocks: [
          {
            kind: "table",
            name: "t",
            caption: "c",
            columns: cells.map((_, i) => ({ head: `h${i}`, align: "text" as const })),
            rows: [cells],
          },
        ],
      },
    ],
  };
}

test.each([
  ["=1+1", "'=1+1"],
  ["+1+1", "'+1+1"],
  ["-1+1", "'-1+1"],
  ["@SUM(A1)", "'@SUM(A1)"],
  ["  =1+1", "'  =1+1"],
  ["\t=1", `'\t=1`],
  ["\rx", `"'\rx"`],
  ["\u00a0=1", `'\u00a0=1`],
  ["＝1+1", "'＝1+1"],
  ["＋1", "'＋1"],
  ["－1", "'－1"],
  ["＠x", "'＠x"],
  ["=a,b", `"'=a,b"`],
  ["-3.2", "-3.2"],
  ["+4", "+4"],
  ["-1e-7", "-1e-7"],
  ["\u22123.2", "-3.2"],
  ["-3.2 kg", "'-3.2 kg"],
  ["12.4 ± 0.1", "12.4 ± 0.1"],
  ['say "no"', '"say ""no"""'],
  ["two\nlines", '"two\nlines"'],
  ["\u202ea", "⟨U+202E⟩a"],
  ["\udc00", "\ufffd"],
])("the cell %j is written %j", (text, cell) => {
  // What starts a formula: common practice, as the guidance on CSV injection of web security projects lists it.
  expect(csvCell(text)).toBe(cell);
});

test("a table is RFC 4180 with a byte order mark, numbers to six figures, faults in a column of their own", () => {
  const files = writeCsv(samplePage());
  expect(Object.keys(files)).toEqual([
    "trials.csv",
    "trials-foot.csv",
    "compactability-data.csv",
    "green-strength-data.csv",
  ]);
  const lines = files["trials.csv"]!.split("\r\n");
  expect(lines[0]).toBe(
    "\ufeffBatch,Water (% of damp mass),Compactability (% of height),Green strength (kPa),Specimen (g),Faults",
  );
  expect(lines[1]).toBe("T1,2.41,31,62.3,150,");
  expect(lines[6]).toBe("T6,4.1,58,,9.5,Green strength: the load was not written down");
  expect(lines.slice(7)).toEqual([""]);
  expect(files["trials-foot.csv"]!.split("\r\n")[1]).toBe("Mean,3.22,43.8333,,");
  expect(files["compactability-data.csv"]!.split("\r\n")[1]).toBe("2.41,31");
});

test("a range stands as it is printed, with its plain ends beside it, in CSV and in JSON", () => {
  const page = oneTable(["x"]);
  const [section] = page.sections;
  const range = { text: "0.19 to 0.21", ends: { low: 4.87654321, high: 5.4 } };
  const columns = [{ head: "past 600 °F to", unit: "in", dataUnit: "mm", align: "number" }] as const;
  const table = { kind: "table", name: "t", caption: "c", columns, rows: [[range]] } as const;
  const ranges = { ...page, sections: [{ ...section!, blocks: [table] }] };
  expect(writeCsv(ranges)["t.csv"]!.slice(1).split("\r\n").slice(0, 2)).toEqual([
    "past 600 °F to (mm),past 600 °F to: from (mm),past 600 °F to: to (mm)",
    "0.19 to 0.21,4.87654,5.4",
  ]);
  expect(JSON.parse(writeJson(ranges)).tables[0].rows).toEqual([
    [{ text: "0.19 to 0.21", low: 4.87654321, high: 5.4 }],
  ]);
});

test("a hostile name of a table can be no path", () => {
  expect(Object.keys(writeCsv(samplePage({ hostile: true })))[0]).toBe("trials.csv");
  expect(writeCsv(samplePage({ hostile: true }))["trials.csv"]).toContain(
    visible(HOSTILE).replace(/"/g, '""'),
  );
});

test("an independent reader gets every cell back, but for the apostrophe", () => {
  fc.assert(
    fc.property(fc.array(fc.string({ unit: "binary" }), { minLength: 1, maxLength: 5 }), (cells) => {
      const text = writeCsv(oneTable(cells))["t.csv"]!.slice(1);
      const rows = read(text, { type: "csv" }) as { [head: string]: string }[];
      expect(rows).toHaveLength(1);
      cells.forEach((cell, i) => {
        const got = rows[0]![`h${i}`]!;
        const shown = visible(cell).replace(/^\u2212(?=[\d.])/, got.startsWith("-") ? "-" : "\u2212");
        expect([shown, `'${shown}`]).toContain(got);
        const couldRun = /^\s*[=+\-@＝＋－＠]/.test(got) && !/^[+-]?[\d.]+(e[+-]?\d+)?$/i.test(got);
        expect(couldRun).toBe(false);
      });
    }),
    { seed: 7, numRuns: 500 },
  );
});

function filesOf(
  rows: readonly (readonly (string | { text: string; number: number })[])[],
  invented = false,
) {
  const columns = [
    { head: "Sand", align: "text" as const },
    { head: "Fineness", align: "number" as const },
  ];
  const table = { kind: "table" as const, name: "t", caption: "c", columns, rows };
  return writeCsv({ ...samplePage(), invented, sections: [{ role: "data", title: "D", blocks: [table] }] });
}

test("a ± that is a lower bound is said in a column of its own, and only where there is one", () => {
  const bound = filesOf([
    ["A", { text: "55.7 ± at least 1.7", number: 55.71234567 }],
    ["B", { text: "60 to 70 or wider", number: 64 }],
    ["C", { text: "71 ± 2", number: 71 }],
    ["D", "–"],
  ]);
  expect(bound["t.csv"]!.slice(1).split("\r\n")).toEqual([
    "Sand,Fineness,Fineness: its ± is",
    "A,55.7123,at least",
    "B,64,at least",
    "C,71,",
    "D,,",
    "",
  ]);
  expect(filesOf([["C", { text: "71 ± 2", number: 71 }]])["t.csv"]).not.toContain("its ±");
});

test("every file of an invented log says so in its last column", () => {
  const lines = filesOf([["A", "1"]], true)
    ["t.csv"]!.slice(1)
    .split("\r\n");
  expect(lines).toEqual(["Sand,Fineness,Invented", "A,1,yes", ""]);
  for (const text of Object.values(writeCsv({ ...samplePage(), invented: true })))
    expect(text.split("\r\n")[0]).toMatch(/,Invented$/);
});
