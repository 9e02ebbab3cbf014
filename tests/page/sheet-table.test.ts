// A founder's own sheet on a page: rounding, faults at their cells, the foot, folds, formulas; and its CSV file read again.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { issueText } from "../../lib/issue.ts";
import { readLog } from "../../lib/log/read-log.ts";
import type { TableBlock } from "../../lib/page/blocks.ts";
import { writeCsv } from "../../lib/page/csv.ts";
import { writeHtml } from "../../lib/page/html.ts";
import { writeMarkdown } from "../../lib/page/markdown.ts";
import { notebook } from "../../lib/page/notebook.ts";
import { sheetSection } from "../../lib/page/sheet-section.ts";
import { footText, sheetTable } from "../../lib/page/sheet-table.ts";
import { logSheets } from "../../lib/sheet/log-sheets.ts";
import { sheet } from "../../lib/sheet/sheet.ts";

const tables = (...given: Parameters<typeof sheetTable>) =>
  sheetTable(...given).filter((block): block is TableBlock => block.kind === "table");

const moistures = sheet({
  name: "oven",
  title: "Dried in the oven",
  columns: {
    bag: "text",
    wet: { unit: "g", plusMinus: "0.1 g" },
    dry: { unit: "g", plusMinus: "0.1 g" },
    moisture: { unit: "% of damp mass", formula: "100 * (wet - dry) / wet" },
    half: "= moisture / 2",
  },
  rows: [
    { bag: "Alder", wet: "52.4", dry: "50.6" },
    { bag: "Birch", wet: "12,5", dry: "10" },
    { bag: "Cedar", wet: "51.0 ± 0.5" },
  ],
  foot: { "least dry": "min(dry)", "bags weighed": "count(dry)", "all of it": "sum(wet) / sum(dry)" },
});

test("figures are rounded to their ±, a fault stands in words at its cell, what needs it says so", () => {
  const [table] = tables(moistures);
  const text = (row: number, column: number) => {
    const cell = table!.rows[row]![column]!;
    return typeof cell === "string" ? cell : (cell.fault ?? cell.text);
  };
  // combine() with the same two readings gives 3.435, 3.144 to 3.727: its example.
  expect(text(0, 3)).toBe("3.44 ± 0.29");
  expect(text(1, 1)).toContain('"12,5" has a comma');
  expect(text(1, 3)).toBe("needs wet of Birch");
  expect([text(2, 2), text(2, 3)]).toEqual(["", ""]);
  expect(table!.columns.map(({ head, unit }) => [head, unit])).toContainEqual(["moisture", "% of damp mass"]);
});

test("a figure of the foot stands under the one column that it is about, in its unit; the others in a table", () => {
  const [table, apart] = tables(moistures);
  expect(table!.foot!.map((row) => row.findIndex((cell, c) => c > 0 && cell !== ""))).toEqual([2]);
  expect(table!.foot![0]![0]).toBe("least dry");
  expect(apart!.rows.map(([name]) => name)).toEqual(["bags weighed", "all of it"]);
  expect(footText(moistures.foot[0]!)).toBe("10.00 ± 0.10 g");
});

const page = (made: typeof moistures) =>
  notebook("Sheets", () => ({
    question: "What do they come to?",
    answer: [],
    sections: [sheetSection(made)],
    issues: made.issues,
  })).run({ file: "yard.yaml", fingerprint: "00", invented: false, batches: [] } as never);

test("formulas are told on demand in HTML and in a line in Markdown, and are no markup", async () => {
  const html = await writeHtml(page(moistures));
  expect(html).toContain("<summary>How each column is worked out</summary>");
  expect(html).toContain("moisture, % of damp mass = <code>100 * (wet - dry) / wet</code>");
  const { markdown } = await writeMarkdown(page(moistures));
  expect(markdown).toContain(
    "How each column is worked out: moisture, % of damp mass = `100 * (wet - dry) / wet`;",
  );
  const hostile = sheet({ name: "x", columns: { a: "number", b: "= a < 1" }, rows: [{ a: 1 }] });
  expect(await writeHtml(page(hostile))).not.toContain("a < 1");
});

test("a long sheet is folded after forty rows with its foot in sight; its CSV file is whole", async () => {
  const long = sheet({
    name: "season",
    columns: { pour: "text", scrap: "kg" },
    rows: Array.from({ length: 200 }, (_, k) => ({ pour: `P${k + 1}`, scrap: k })),
    foot: { "scrap in all": "sum(scrap)" },
  });
  const html = await writeHtml(page(long));
  const fold = html.indexOf("<summary>Rows 41 to 200</summary>");
  expect(html.indexOf(">P40<")).toBeLessThan(html.indexOf("scrap in all"));
  expect(html.indexOf("scrap in all")).toBeLessThan(fold);
  expect(html.indexOf(">P41<")).toBeGreaterThan(fold);
  // 0 + 1 + … + 199 = 19900.
  expect(html).toContain("19900");
  expect(writeCsv(page(long))["season.csv"]!.trimEnd().split("\r\n")).toHaveLength(201);
});

describe("the CSV file of a sheet, read again as its rows", () => {
  const log = (rows: string) => `format: 1
metal: aluminium
bond: bentonite
scales: { pocket scale: { reads to: 0.1 g, within: 0.2 g } }
sheets:
  oven:
    columns:
      bag: text
      dried: date
      wet: { unit: g, scale: pocket scale }
      load: kg
      share: { formula: load / wet }
    rows: ${rows}
`;
  const read = (rows: string, files: Record<string, string> = {}) => {
    const { value, issues } = readLog(log(rows), { name: "yard.yaml", files });
    const [made] = logSheets(value!);
    const wrong = [...issues, ...made!.issues].filter(({ severity }) => severity !== "note");
    return { made: made!, logged: value!.sheets[0]!, wrong: wrong.map(issueText) };
  };
  const file = ({ made, logged }: ReturnType<typeof read>) =>
    writeCsv(
      notebook("S", () => ({ question: "Q?", answer: [], sections: [sheetSection(made, { logged })] })).run({
        file: "yard.yaml",
        fingerprint: "00",
        invented: true,
      } as never),
    )["oven.csv"]!;

  const cell = fc.record({
    bag: fc.stringMatching(/^[A-Za-z=@+][A-Za-z ="+,;]{0,8}[a-z]$/),
    day: fc.integer({ min: 1, max: 28 }),
    wet: fc.integer({ min: 1, max: 99_999 }).map((n) => String(n / 100)),
    own: fc.constantFrom("", " ± 0.3", " ± 0.2 (sd)", " ± 0.01 oz"),
    load: fc.constantFrom("", "-2.5", "12 lb", "12 lb ± 3 oz", "0.125 ± 0.02 (95 %)"),
  });

  test("gives the same figures with the same ±", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(cell, { minLength: 1, maxLength: 4, selector: ({ bag }) => bag.toLowerCase() }),
        (rows) => {
          const typed = rows.map(
            ({ bag, day, wet, own, load }) =>
              `{ bag: ${JSON.stringify(bag)}, dried: 2026-05-${String(day).padStart(2, "0")}, wet: ${wet}${own}, load: "${load}" }`,
          );
          const first = read(`[${typed.join(", ")}]`);
          const second = read("oven.csv", { "oven.csv": file(first) });
          expect(second.wrong).toEqual(first.wrong);
          rows.forEach((_, row) => {
            for (const { name } of first.made.columns) {
              const [a, b] = [first.made.cell(row, name), second.made.cell(row, name)];
              expect(b.kind).toBe(a.kind);
              if (a.kind === "text" && b.kind === "text") expect(b.text).toBe(a.text);
              if (a.kind !== "figure" || b.kind !== "figure") continue;
              for (const [one, other] of [
                [a.value, b.value],
                [a.figure.low, b.figure.low],
                [a.figure.high, b.figure.high],
              ])
                expect(Math.abs(one! - other!)).toBeLessThanOrEqual(1e-8 * Math.abs(one!) + 1e-12);
            }
          });
        },
      ),
      { numRuns: 25 },
    );
  }, 30_000);
});
