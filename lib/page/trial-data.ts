// What was made and tested, as a section of a page.

import type { TestName } from "../log/batch.ts";
import type { BatchFigure, BatchFigures } from "../log/batch-figures.ts";
import { figure } from "../quantity/figure.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import type { Block, Section, TableCell, TableColumn } from "./blocks.ts";
import { figureCell } from "./figure-cell.ts";

const tests: readonly TestName[] = [
  "moisture",
  "compactability",
  "squeeze",
  "green compression",
  "green shear",
  "splitting",
  "permeability",
  "density",
  "clay by wash",
];

/** The batches with what went in, the rigs in a sentence each, and every figure with its ±. */
export function trialData(rows: readonly BatchFigures[]): Section {
  const used = tests.filter((test) => rows.some((row) => row.tests[test]));
  const words = [...new Set(rows.flatMap((row) => used.flatMap((test) => row.tests[test]?.rigWords ?? [])))];
  const blocks: Block[] = [made(rows)];
  if (words.length > 0) blocks.push({ kind: "list", items: words });
  if (used.length > 0) {
    blocks.push({
      kind: "table",
      name: "tests",
      caption: "What was tested; ± as far as it is known, the mean of repeats where there are any",
      columns: [{ head: "Batch", align: "text" }, ...used.map((test) => testColumn(test, rows))],
      rows: rows.map((row) => [row.batch.name, ...used.map((test) => testCell(row.tests[test]))]),
    });
  }
  const apart = rows.flatMap(({ batch, apart: others }) =>
    others.map(
      (other) => `${batch.name}: ${other.test} by ${other.method ?? "another method"}, ${textOf(other)}`,
    ),
  );
  if (apart.length > 0) {
    blocks.push(
      { kind: "prose", text: "Found by another method than the rest, and kept apart from them:" },
      { kind: "list", items: apart },
    );
  }
  return { role: "data", title: "What was made and tested", blocks };
}

function testColumn(test: TestName, rows: readonly BatchFigures[]): TableColumn {
  const unit = rows.find((row) => row.tests[test])!.tests[test]!.unit;
  return { head: test.charAt(0).toUpperCase() + test.slice(1), ...(unit ? { unit } : {}), align: "number" };
}

function testCell(one: BatchFigure | undefined): TableCell {
  if (!one) return { text: "" };
  return { text: textOf(one), number: one.value };
}

function textOf({ spread, value, missing, test }: BatchFigure): string {
  if (test === "squeeze") return String(value);
  const { low, high } = figure(spread);
  if (low === high) return `${Number(value.toPrecision(4))} (± not known)`;
  return printFigure({
    value,
    low: Math.min(low, value),
    high: Math.max(high, value),
    atLeast: missing.length > 0,
  }).text;
}

function made(rows: readonly BatchFigures[]): Block {
  const mass = (value: number | undefined): TableCell | string =>
    value === undefined ? "" : { text: printNumber(value, 2), number: value };
  return {
    kind: "table",
    name: "batches",
    caption: "The batches, in the log's order",
    columns: [
      { head: "Batch", align: "text" },
      { head: "Date", align: "text" },
      { head: "Order", align: "number" },
      { head: "Sand", unit: "kg", align: "number" },
      { head: "Clay", unit: "kg", align: "number" },
      { head: "Water", unit: "kg", align: "number" },
      { head: "Clay", unit: "% of dry mix", align: "number" },
      { head: "Mulled", unit: "min", align: "number" },
      { head: "Stood", unit: "min", align: "number" },
    ],
    rows: rows.map(({ batch, recipe }) => [
      batch.name,
      batch.date ?? "",
      batch.order === undefined ? "" : String(batch.order),
      mass(batch.recipe?.sandKg?.value),
      mass(batch.recipe?.clayKg?.value),
      mass(batch.recipe?.waterKg?.value),
      recipe ? figureCell(figure(recipe.clayOfDryMixPercent)) : "",
      batch.mulledMin ? String(batch.mulledMin.value) : "",
      batch.stoodMin ? String(batch.stoodMin.value) : "",
    ]),
  };
}
