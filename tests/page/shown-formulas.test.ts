// Every formula that a notebook's table shows, worked out again as a sheet on the row's own numbers: the printed figure comes out.

import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readLogFile } from "../../lib/disk/read-log-file.ts";
import { isRefusal } from "../../lib/disk/refusal.ts";
import { sandReports } from "../../lib/finding/sand-report.ts";
import type { TestName } from "../../lib/log/batch.ts";
import { batchFigures } from "../../lib/log/batch-figures.ts";
import type { Log } from "../../lib/log/types.ts";
import type { Section, TableBlock, TableCell } from "../../lib/page/blocks.ts";
import { grainData, shareFormula } from "../../lib/page/grain-data.ts";
import { readingRows, readingsOf, testSheet } from "../../lib/page/test-formulas.ts";
import { trialData } from "../../lib/page/trial-data.ts";
import { printNumber } from "../../lib/quantity/print.ts";
import { sheet } from "../../lib/sheet/sheet.ts";

const demo = join(import.meta.dirname, "../../data-demo");
const logs = (folder: string): Log[] =>
  readdirSync(join(demo, folder))
    .filter((file) => file.endsWith(".yaml"))
    .map((file) => {
      const read = readLogFile(join(demo, folder, file));
      if (isRefusal(read)) throw new Error(read.refused);
      return read.log!;
    });
const tableNamed = (section: Section, name: string) =>
  section.blocks.find((block): block is TableBlock => block.kind === "table" && block.name === name)!;
const cellOf = (cell: string | TableCell | undefined): TableCell =>
  typeof cell === "object" ? cell : { text: cell ?? "" };
const shown = (table: TableBlock) =>
  table.columns.flatMap(({ head, formula }, at) => (formula === undefined ? [] : [{ head, formula, at }]));

const sieved = logs("grain-fineness").map((log) => sandReports(log));

test("the sievings: the loss from the row's own start and retained", () => {
  let seen = 0;
  for (const reports of sieved) {
    const table = tableNamed(grainData(reports), "sievings");
    expect(shown(table).map(({ head }) => head)).toEqual(["Loss"]);
    const [{ formula, at }] = shown(table) as [ReturnType<typeof shown>[number]];
    const column = (head: string) => table.columns.findIndex((one) => one.head === head);
    for (const row of table.rows) {
      const [Start, Retained] = ["Start", "Retained"].map((head) => cellOf(row[column(head)]).number);
      if (Start === undefined || Retained === undefined) continue;
      const made = sheet({
        columns: { Start: "g", Retained: "g", Loss: { unit: "% of start", formula } },
        rows: [{ Start, Retained }],
      });
      expect(made.issues.filter(({ severity }) => severity === "error")).toEqual([]);
      expect(cellOf(row[at]).text).toBe(printNumber(made.column("Loss").values[0]!, 1));
      // And by plain arithmetic, so that the engine is not only held against itself.
      expect(cellOf(row[at]).number).toBeCloseTo((100 * (Start - Retained)) / Start, 10);
      seen += 1;
    }
  }
  expect(seen).toBeGreaterThan(5);
});

test("the shares of the sieves from what each held", () => {
  let seen = 0;
  for (const reports of sieved) {
    const table = tableNamed(grainData(reports), "shares");
    expect(shown(table).map(({ formula }) => formula)).toEqual(reports.map(() => shareFormula));
    reports.forEach(({ grading }, k) => {
      const { formula, at } = shown(table)[k]!;
      const made = sheet({
        columns: { held: "number", share: { unit: "% of sum retained", formula } },
        rows: grading.fractions.map(({ mass }) => ({ held: mass })),
      });
      const total = grading.fractions.reduce((all, { mass }) => all + mass, 0);
      const printed = table.rows.map((row) => cellOf(row[at])).filter(({ number }) => number !== undefined);
      expect(printed).toHaveLength(grading.fractions.length);
      const byOpening = grading.fractions
        .map((fraction, i) => ({ fraction, value: made.column("share").values[i]! }))
        .sort((a, b) => b.fraction.openingMm - a.fraction.openingMm);
      byOpening.forEach(({ fraction, value }, i) => {
        expect(printed[i]!.text).toBe(printNumber(value, 1));
        expect(printed[i]!.number).toBeCloseTo((100 * fraction.mass) / total, 10);
        seen += 1;
      });
    });
  }
  expect(seen).toBeGreaterThan(20);
});

test.each(["home-rigs", "moisture-trial"])("%s: each test from the readings of its batch", (folder) => {
  const told = new Set<string>();
  for (const log of logs(folder)) {
    const { figures } = batchFigures(log);
    const table = tableNamed(trialData(figures), "tests");
    for (const { head, formula, at } of shown(table)) {
      const name = head.toLowerCase() as TestName;
      const way = testSheet(name, figures)!;
      table.rows.forEach((row, k) => {
        const { number } = cellOf(row[at]);
        if (number === undefined) return;
        const readings = readingsOf(name, figures[k]!);
        const made = sheet({
          columns: Object.fromEntries(way.columns.map(([column, , unit]) => [column, unit])),
          rows: readingRows(way, readings),
          foot: {
            figure: { formula: formula.startsWith("mean(") ? formula : `mean(${formula})`, unit: way.unit },
          },
        });
        expect(made.issues.filter(({ severity }) => severity === "error")).toEqual([]);
        const { cell } = made.foot[0]!;
        expect(cell.kind === "figure" && Math.abs(cell.value - number) <= 1e-9 * Math.abs(number)).toBe(true);
        told.add(name);
      });
    }
  }
  expect([...told]).toEqual(expect.arrayContaining(["moisture", "compactability", "green compression"]));
});
