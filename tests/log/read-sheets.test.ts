// How a founder's own sheets are read: names, typed texts, places, and every complaint about their writing.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { filesNamedIn } from "../../lib/log/files-named.ts";
import { keepFlowCommas, withFlowCommas } from "../../lib/log/flow-commas.ts";
import { type LoggedSheet, placeWithin } from "../../lib/log/logged-sheet.ts";
import { brief, issueOf, read } from "./helpers.ts";

const head =
  "format: 1\nmetal: aluminium\nbond: bentonite\nscales: { pocket scale: { reads to: 0.1 g } }\nsheets:\n";
const sound = `${head}  heap tests:
    title: The yard heap
    values: { bore: 50 mm ± 0.2 mm }
    columns:
      bag: text
      tested: date
      wet: { unit: g, scale: pocket scale }
      dry: { unit: g, "±": 0.1 g }
      moisture: { unit: "% of damp mass", formula: 100 * max(wet - dry, 0) / wet }
    rows:
      - { bag: Alder, tested: 2026-05-02, wet: 152.4, dry: 147.8 ± 0.1 }
      - { bag: Birch, tested: 2026-05-03, wet: 5.3 oz }
    foot:
      mean moisture: = mean(moisture)
    charts:
      - { x: wet, y: [moisture, dry], line: straight, band: 3 to 4 % }
`;

const sheetOf = (text: string, files: Record<string, string> = {}): LoggedSheet =>
  read(text, files).value!.sheets[0]!;
const spoilt = (from: string, to: string) => {
  expect(sound).toContain(from);
  return read(sound.replace(from, () => to));
};

test("a sheet keeps what was typed, and where", () => {
  const { value, issues } = read(sound);
  expect(brief(issues)).toEqual([]);
  const [sheet] = value!.sheets;
  expect(sheet).toMatchObject({ name: "heap tests", title: "The yard heap", whole: true });
  expect(
    sheet!.columns.map(({ name, kind, unit, formula }) => [name, kind, unit?.text, formula?.text]),
  ).toEqual([
    ["bag", "text", undefined, undefined],
    ["tested", "date", undefined, undefined],
    ["wet", undefined, "g", undefined],
    ["dry", undefined, "g", undefined],
    // The comma within the brackets parts nothing.
    ["moisture", undefined, "% of damp mass", "100 * max(wet - dry, 0) / wet"],
  ]);
  expect(sheet!.columns[2]!.scale?.text).toBe("pocket scale");
  expect(sheet!.columns[3]!.plusMinus?.text).toBe("0.1 g");
  expect(sheet!.rows[0]!.cells.dry).toMatchObject({ text: "147.8 ± 0.1", place: { line: 16, column: 60 } });
  expect(Object.keys(sheet!.rows[1]!.cells)).toEqual(["bag", "tested", "wet"]);
  expect(sheet!.values).toMatchObject([{ name: "bore", text: "50 mm ± 0.2 mm" }]);
  expect(sheet!.foot).toMatchObject([{ name: "mean moisture", formula: { text: "mean(moisture)" } }]);
  expect(sheet!.charts).toMatchObject([
    {
      x: "wet",
      y: ["moisture", "dry"],
      line: "straight",
      band: { low: { text: "3 %" }, high: { text: "4 %" } },
    },
  ]);
});

test("a place within a formula is that of its character, in quotes and behind = as well", () => {
  const at = (text: string, character: string) => {
    const { source, sheet } = { source: text, sheet: sheetOf(text) };
    const formula = sheet.columns.at(-1)!.formula!;
    const place = placeWithin(formula, formula.text.indexOf(character));
    expect(source[place.offset!]).toBe(character);
    return [place.line, place.column];
  };
  expect(at(sound, "/")).toEqual([14, 76]);
  const line = '      moisture: { unit: "% of damp mass", formula: 100 * max(wet - dry, 0) / wet }';
  expect(at(sound.replace(line, '      moisture: "= 100 * wet / dry"'), "/")).toEqual([14, 30]);
  expect(at(sound.replace(line, "      moisture: = 100 * wet / dry"), "/")).toEqual([14, 29]);
  // Over two lines no character can be told by counting: the formula's own place it is.
  const folded = sheetOf(sound.replace(line, "      moisture:\n        formula: 100 * wet\n          / dry"));
  expect(placeWithin(folded.columns.at(-1)!.formula!, 12)).toEqual(folded.columns.at(-1)!.formula!.place);
});

describe("what is wrong is told at its place, and the rest is read", () => {
  const [columns] = ["bag, tested, wet, dry, moisture"];
  test.each([
    [
      "a column that the sheet has not",
      "wet: 5.3 oz",
      "wte: 5.3 oz",
      "17:43 log/sheet-unknown-column",
      "wet",
    ],
    ["a key that no column has", "unit: g, scale", "units: g, scale", "12:14 log/unknown-key", '"unit"'],
    [
      "a scale that the log has not",
      "scale: pocket scale",
      "scale: poket scale",
      "12:30 log/undeclared",
      "pocket scale",
    ],
    ["a chart of no column", "x: wet", "x: wat", "21:14 log/sheet-chart-column", "wet"],
    ["a chart of texts", "y: [moisture, dry]", "y: bag", "21:22 log/sheet-chart-text", "Put texts"],
    ["a chart without x", "x: wet, ", "", "21:11 log/sheet-chart-unsaid", "x: wet"],
    ["a line that is none", "line: straight", "line: strait", "21:45 log/unknown-choice", "straight"],
    ["a line through names", "x: wet", "x: bag", "21:45 log/sheet-chart-line-on-text", "column of figures"],
    ["a band upside down", "3 to 4 %", "4 to 3 %", "21:61 log/sheet-chart-band", "3 to 4"],
    ["a list in a cell", "wet: 152.4", "wet: [152.4]", "16:48 log/sheet-not-a-cell", "wet: 12.4"],
    ["a sheet's key misspelt", "    foot:", "    feet:", "18:5 log/unknown-key", "foot"],
  ])("%s", (_, from, to, where, remedy) => {
    const { value, issues } = spoilt(from, to);
    expect(brief(issues)).toEqual([where]);
    expect(issues.find(({ severity }) => severity !== "note")!.remedy).toContain(remedy);
    expect(issues.find(({ severity }) => severity !== "note")!.about).toBe("heap tests");
    expect(value!.sheets[0]!.rows).toHaveLength(2);
    expect(columns).toContain("wet");
  });

  test("a figure typed under a formula is left out, with a note", () => {
    const { value, issues } = spoilt("wet: 5.3 oz", "wet: 5.3 oz, moisture: 3.1");
    expect(issueOf({ issues }, "log/sheet-worked-out").severity).toBe("note");
    expect(value!.sheets[0]!.rows[1]!.cells).not.toHaveProperty("moisture");
  });

  test("a row that names nothing is left out, and the sheet is not whole", () => {
    const { value, issues } = spoilt("- { bag: Birch, tested: 2026-05-03, wet: 5.3 oz }", "- 5.3 oz");
    expect(brief(issues)).toEqual(["17:9 log/sheet-not-a-row"]);
    expect(value!.sheets[0]).toMatchObject({ whole: false, rows: [{}] });
  });

  test("a line that YAML cannot read spoils its sheet alone", () => {
    const second = `${sound}  other:\n    columns: { a: number }\n    rows: [ { a: 1 } ]\n`;
    const { value, issues } = read(second.replace("    values: {", "    values: {{"));
    expect(issues.some(({ severity, about }) => severity === "error" && about === "heap tests")).toBe(true);
    expect(value!.sheets.find(({ name }) => name === "other")).toMatchObject({ whole: true, rows: [{}] });
    expect(value!.sheets.find(({ name }) => name === "heap tests")?.whole ?? false).toBe(false);
  });

  test("no columns, no rows, nothing said of a column", () => {
    const only = (body: string) => brief(read(`${head}  s:\n${body}`).issues);
    expect(only("    rows: [ { a: 1 } ]\n")).toEqual(["6:3 log/sheet-no-columns"]);
    expect(only("    columns: { a: g }\n")).toEqual(["6:3 log/sheet-no-rows"]);
    expect(only("    columns: { a: , b: g }\n    rows: [ { b: 1 } ]\n")).toEqual([
      "7:16 log/sheet-column-unsaid",
    ]);
  });
});

describe("rows from a CSV file", () => {
  const filed = (csv: string, name = "heap.csv") => {
    const text = sound.replace(/ {4}rows:\n( {6}- .*\n)+/, "    rows: heap.csv\n");
    return { text, ...read(text, { [name]: csv }) };
  };
  const cells = (csv: string) =>
    filed(csv).value!.sheets[0]!.rows.map(({ cells: all }) =>
      Object.fromEntries(Object.entries(all).map(([name, { text }]) => [name, text])),
    );

  test("the file is named, so that whoever has the disk can fetch it", () => {
    expect(filesNamedIn(filed("").text)).toEqual(["heap.csv"]);
    expect(brief(filed("bag\nA\n", "hep.csv").issues)).toEqual(["15:11 log/no-such-file"]);
  });

  test("units in the head, another unit than the log's, a ± column, empty cells", () => {
    expect(cells("bag,wet (oz),wet ± (oz),dry (g)\nAlder,5.3,0.1,147.8\nBirch,12 g,,-\n")).toEqual([
      { bag: "Alder", wet: "5.3 oz ± 0.1 oz", dry: "147.8" },
      { bag: "Birch", wet: "12 g" },
    ]);
  });

  test("a place in the file", () => {
    const { value } = filed("bag,wet (g)\nAlder,152.4\n");
    expect(value!.sheets[0]!.rows[0]!.cells.wet!.place).toMatchObject({
      file: "heap.csv",
      line: 2,
      column: 7,
    });
  });

  test.each([
    ["an unknown column", "bag,wte\nA,1\n", "1:5 log/sheet-unknown-column"],
    ["a column twice", "wet,wet\n1,2\n", "1:5 log/sheet-head-twice"],
    ["a head in a unit of another kind", "bag,wet (mm)\nA,1\n", "1:5 log/sheet-head-unit"],
    ["a row too short", "bag,wet\nA\nB,2\n", "2:1 log/csv-cell-count"],
    ["decimal commas", "bag;wet\nA;152,4\n", "2:3 log/csv-decimal-commas"],
    ["no rows", "bag,wet\n", "1:1 log/csv-no-rows"],
    ["a ± alone", "bag,wet,wet ±\nA,,0.1\n", "2:4 log/sheet-plus-minus-alone"],
  ])("%s", (_, csv, where) => {
    const { issues, value } = filed(csv);
    expect(brief(issues)).toEqual([where]);
    expect(issues.find(({ code }) => where.endsWith(code))!.place!.file).toBe("heap.csv");
    expect(value!.sheets).toHaveLength(1);
  });

  test("what a page's own file adds is passed over", () => {
    const page = "bag,wet (g),wet: its ± is,Faults,Invented\nAlder,152.4,at least,,yes\n";
    expect(cells(page)).toEqual([{ bag: "Alder", wet: "152.4" }]);
    expect(brief(filed(page).issues)).toEqual([]);
  });
});

test("commas within ( ) within { } come back as they were, whatever stands around them", () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(..."a{}(),\"' :#\n") }), (text) => {
      expect(keepFlowCommas(text)).toHaveLength(text.length);
      expect(withFlowCommas(keepFlowCommas(text))).toBe(text);
    }),
  );
  expect(keepFlowCommas("{ a: f(x, y), b: 2 }").split(",")).toHaveLength(2);
  expect(keepFlowCommas("a: f(x, y)")).toBe("a: f(x, y)");
  expect(keepFlowCommas('{ a: "f(x, y)", b: (1 }')).toBe('{ a: "f(x, y)", b: (1 }');
});

test("a log of sheets alone is a log; sheets are read beside sands and batches", () => {
  expect(brief(read(`${head}  s: { columns: { a: number }, rows: [ { a: 1 } ] }\n`).issues)).toEqual([]);
  expect(brief(read("format: 1\nmetal: steel\nbond: natural\nshets: {}\n").issues)).toEqual([
    "4:1 log/unknown-key",
  ]);
});
