// Every formula that a notebook's table shows, worked out again as a sheet on the row's own numbers: the printed figure comes out.

import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readLogFile } from "../../lib/disk/read-log-file.ts";
import { isRefusal } from "../../lib/disk/refusal.ts";
import { bondFigures } from "../../lib/finding/bond-figures.ts";
import { sandReports } from "../../lib/finding/sand-report.ts";
import type { TestName, TestReading } from "../../lib/log/batch.ts";
import { batchFigures } from "../../lib/log/batch-figures.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { type ReadingInputs, readingInputs } from "../../lib/log/reading-inputs.ts";
import type { Log } from "../../lib/log/types.ts";
import type { Section, TableBlock, TableCell } from "../../lib/page/blocks.ts";
import { grainData, shareFormula } from "../../lib/page/grain-data.ts";
import { ingredients } from "../../lib/page/recipe-formulas.ts";
import { readingsOf, type TestSheet, testSheet } from "../../lib/page/test-formulas.ts";
import { trialBond } from "../../lib/page/trial-bond.ts";
import { trialData } from "../../lib/page/trial-data.ts";
import { recipeShares } from "../../lib/page/trial-shares.ts";
import { printNumber } from "../../lib/quantity/print.ts";
import { sheet } from "../../lib/sheet/sheet.ts";

/** The readings of a batch as rows of the sheet, in the units of its columns. */
function readingRows(
  { columns }: TestSheet,
  readings: readonly TestReading[],
): { readonly [column: string]: number }[] {
  return readings.map((reading) => {
    const inputs: ReadingInputs["inputs"] = readingInputs(reading)?.inputs ?? [];
    const value = (input: string) => inputs.find(({ name }) => name === input)?.measured?.value;
    return Object.fromEntries(
      columns.map(([name, input, , taken = Number.NaN]) => [name, value(input) ?? taken]),
    );
  });
}

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
  table.columns.flatMap(({ head, formula, dataUnit, unit = dataUnit }, at) =>
    formula === undefined ? [] : [{ head, formula, at, unit }],
  );

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

/** Invented: a batch with one reading of every method that the demo logs don't use. */
const methods: readonly (readonly [name: TestName, reading: string])[] = [
  ["permeability", "{ method: constant head, air: 2000 ml, water: 95 mm, seconds: 61, rig: tube }"],
  [
    "permeability",
    "{ method: aspirator, drawn: 1 l, suction: 88 mm, seconds: 40, temperature: 12 °C, rig: tube }",
  ],
  [
    "permeability",
    "{ method: bleeding vessel, from: 110 mm, to: 60 mm, seconds: 9, temperature: 68 °F, rig: tube }",
  ],
  [
    "permeability",
    "{ method: falling column, column: 4 in, from: 200 mm, to: 90 mm, seconds: 24, rig: tube }",
  ],
  ["compactability", "{ method: pressed, filled: 100 mm, pressed: 57 mm }"],
  ["compactability", "{ method: two weighings, loose: 152 g, packed: 260 g }"],
  ["clay by wash", "{ dry: 50.0 g, grain: 45.6 g }"],
];

test.each(methods)("%s, %s: shown, and run to the log's own figure", (name, reading) => {
  const given = reading.replace("rig: tube", "height: 50 mm, rig: tube");
  const { value, issues } = readLog(
    [
      "format: 1",
      "rigs: { tube: { bore: 50 mm, vessel: 2 l, blank: 3 mm, blank time: 0.4 s } }",
      `batches: { one: { date: 2026-05-02, ${name}: ${given} } }`,
    ].join("\n"),
    { name: "invented.yaml" },
  );
  expect(issues.filter(({ severity }) => severity === "error")).toEqual([]);
  const { figures } = batchFigures(value!);
  const way = testSheet(name, figures)!;
  const made = sheet({
    columns: {
      ...Object.fromEntries(way.columns.map(([column, , unit]) => [column, unit])),
      figure: { formula: way.formula, ...(way.unit === undefined ? {} : { unit: way.unit }) },
    },
    rows: readingRows(way, readingsOf(name, figures[0]!)),
  });
  expect(made.issues).toEqual([]);
  const { value: figure } = figures[0]!.tests[name]!;
  expect(made.column("figure").values[0]! / figure).toBeCloseTo(1, 9);
  const [column] = shown(tableNamed(trialData(figures), "tests"));
  expect(column?.formula).toBe(way.formula);
});

const folders = ["home-rigs", "moisture-trial", "clay-trial"];

test("the shares of the recipes, from what went in", () => {
  const told = new Set<string>();
  for (const log of folders.flatMap(logs)) {
    const { figures } = batchFigures(log);
    const [fold] = recipeShares(figures);
    const tables = [
      tableNamed(trialData(figures), "batches"),
      ...(fold?.kind === "fold" ? fold.blocks.filter((block) => block.kind === "table") : []),
    ];
    for (const table of tables) {
      for (const { formula, at, unit } of shown(table)) {
        const recipes = table.rows.map(
          (row) => figures.find((one) => one.batch.name === cellOf(row[0]).text)!.batch.recipe,
        );
        const made = sheet({
          columns: {
            ...Object.fromEntries(ingredients.map((one) => [one.name, one.unit])),
            figure: { formula, ...(unit?.startsWith("% ") ? { unit } : {}) },
          },
          rows: recipes.map((recipe) =>
            Object.fromEntries(ingredients.map(({ name, part }) => [name, recipe?.[part]?.value ?? 0])),
          ),
        });
        table.rows.forEach((row, k) => {
          const { number } = cellOf(row[at]);
          if (number === undefined) return;
          expect(made.column("figure").values[k]! / number).toBeCloseTo(1, 9);
          told.add(`${table.name}: ${formula}`);
        });
      }
    }
  }
  expect(told.size).toBeGreaterThan(5);
});

test("the state of the bond, from what was tested", () => {
  const told = new Set<string>();
  for (const log of folders.flatMap(logs)) {
    const { figures } = batchFigures(log);
    const bonds = figures.map((one) => bondFigures(one, log.bond));
    const section = trialBond(figures, log);
    if (section.blocks.length === 0) continue;
    const table = tableNamed(section, "bond");
    table.rows.forEach((row, k) => {
      const { tests, recipe } = figures[k]!;
      const typed = {
        strength: tests["green compression"]?.value,
        moisture: tests.moisture?.value ?? recipe?.moistureOfDampPercent.value,
        compactability: tests.compactability?.value,
        clay: bonds[k]!.clay?.ofDryMixPercent.value,
      };
      const made = sheet({
        columns: {
          strength: "kPa",
          moisture: "% of damp mass",
          compactability: "% of height",
          clay: "% of dry mix",
          ...Object.fromEntries(
            shown(table).map(({ head, formula, unit }) => [
              head,
              { formula, ...(unit === "% of damp mass" || unit === "% of sand" ? { unit } : {}) },
            ]),
          ),
        },
        rows: [typed],
      });
      for (const { head, at } of shown(table)) {
        const { number } = cellOf(row[at]);
        if (number === undefined) continue;
        expect(made.column(head).values[0]! / number, head).toBeCloseTo(1, 6);
        told.add(head);
      }
    });
  }
  expect(told).toContain("Muller efficiency");
  expect(told).toContain("Moisture above it");
});

test.each(["home-rigs", "moisture-trial"])("%s: each test from the readings of its batch", (folder) => {
  const told = new Set<string>();
  for (const log of logs(folder)) {
    const { figures } = batchFigures(log);
    const table = tableNamed(trialData(figures), "tests");
    for (const { head, formula, at } of shown(table)) {
      const name = head.toLowerCase().replace(/ number$/, "") as TestName;
      const way = testSheet(name, figures)!;
      table.rows.forEach((row, k) => {
        const { number } = cellOf(row[at]);
        if (number === undefined) return;
        const readings = readingsOf(name, figures[k]!);
        const made = sheet({
          columns: Object.fromEntries(way.columns.map(([column, , unit]) => [column, unit])),
          rows: readingRows(way, readings),
          foot: {
            figure: {
              formula: formula.startsWith("mean(") ? formula : `mean(${formula})`,
              ...(way.unit === undefined ? {} : { unit: way.unit }),
            },
          },
        });
        expect(made.issues.filter(({ severity }) => severity === "error")).toEqual([]);
        const { cell } = made.foot[0]!;
        expect(cell.kind === "figure" && Math.abs(cell.value - number) <= 1e-9 * Math.abs(number)).toBe(true);
        told.add(name);
      });
    }
  }
  expect([...told]).toEqual(
    expect.arrayContaining(["moisture", "compactability", "green compression", "permeability"]),
  );
});
