// What was made and tested, as a section of a page.

import { endsOf } from "../finding/ends.ts";
import type { TestName } from "../log/batch.ts";
import type { BatchFigure, BatchFigures } from "../log/batch-figures.ts";
import type { Measured } from "../log/figure-types.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import type { Block, Section, TableCell, TableColumn } from "./blocks.ts";
import { figureCell } from "./figure-cell.ts";
import { recipeFormula } from "./recipe-formulas.ts";
import {
  figureInShownUnit,
  inShownUnit,
  type ShownUnits,
  shownUnit,
  shownUnits,
  type UnitSystem,
} from "./shown-units.ts";
import { testFormula, testTaken } from "./test-formulas.ts";

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

/**
 * The batches with what went in, the rigs in a sentence each, and every figure with its ±.
 * units: as the readings of these batches were typed unless given (shownUnits of a log heeds what the log asks for).
 * @example trialData(batchFigures(log).figures).title
 */
export function trialData(
  rows: readonly BatchFigures[],
  units: ShownUnits = shownUnits({ batches: rows.map(({ batch }) => batch) }),
): Section {
  const used = tests.filter((test) => rows.some((row) => row.tests[test]));
  const words = [...new Set(rows.flatMap((row) => used.flatMap((test) => row.tests[test]?.rigWords ?? [])))];
  const blocks: Block[] = [made(rows, units)];
  if (words.length > 0) blocks.push({ kind: "list", items: words });
  const out = rows.flatMap(({ batch: { name, keptOut } }) => (keptOut ? [`${name}: ${keptOut.why}`] : []));
  if (out.length > 0) {
    blocks.push(
      { kind: "prose", text: "Left out of every curve by the log, and shown all the same:" },
      { kind: "list", items: out },
    );
  }
  if (used.length > 0) {
    blocks.push({
      kind: "table",
      name: "tests",
      caption: "What was tested; ± as far as it is known, the mean of repeats where there are any",
      columns: [{ head: "Batch", align: "text" }, ...used.map((test) => testColumn(test, rows, units))],
      rows: rows.map((row) => [markedName(row), ...used.map((test) => testCell(row, test, units))]),
    });
  }
  const apart = rows.flatMap(({ batch, apart: others }) =>
    others.map(
      (other) =>
        `${batch.name}: ${other.test} by ${other.method ?? "another method"}, ${textOf(other, units)}${unitAfter(other, units)}`,
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

/** A batch that the log leaves out says so beside its name. */
export const markedName = ({ batch: { name, keptOut } }: Pick<BatchFigures, "batch">): string =>
  keptOut ? `${name} (left out)` : name;

function testColumn(test: TestName, rows: readonly BatchFigures[], units: ShownUnits): TableColumn {
  const unit = rows.find((row) => row.tests[test])!.tests[test]!.unit;
  const head = test === "permeability" ? "Permeability number" : test.charAt(0).toUpperCase() + test.slice(1);
  const formula = testFormula(test, rows);
  const source = testTaken(test, rows);
  return {
    head,
    ...(unit ? unitOf(unit, units.of(test)) : {}),
    align: "number",
    ...(formula === undefined ? {} : { formula }),
    ...(source === undefined ? {} : { source }),
  };
}

/** The unit that is printed; files keep the metric one. */
function unitOf(unit: string, system: UnitSystem): Pick<TableColumn, "unit" | "dataUnit"> {
  const shown = shownUnit(unit, system);
  return shown === unit ? { unit } : { unit: shown, dataUnit: unit };
}

/** Its place is the number as typed, else the reading, the first where it was repeated. */
function testCell({ batch, tests: figures }: BatchFigures, test: TestName, units: ShownUnits): TableCell {
  const one = figures[test];
  if (!one) return { text: "" };
  const readings = batch.readings.filter((reading) => reading.test === test);
  const at = (readings.length === 1 ? readings[0]!.worked?.place : undefined) ?? readings[0]?.place;
  return { text: textOf(one, units), number: one.value, ...(at ? { at } : {}) };
}

function unitAfter({ test, unit }: BatchFigure, units: ShownUnits): string {
  return unit ? ` ${shownUnit(unit, units.of(test))}` : "";
}

function textOf({ spread, value: metric, missing, test, unit }: BatchFigure, units: ShownUnits): string {
  if (test === "squeeze") return String(metric);
  const { low: least, high: most } = endsOf(spread);
  const { value, low, high } = figureInShownUnit(
    { value: metric, low: least, high: most },
    unit,
    units.of(test),
  );
  if (low === high) return `${Number(value.toPrecision(4))} (± not known)`;
  return printFigure({
    value,
    low: Math.min(low, value),
    high: Math.max(high, value),
    atLeast: missing.length > 0,
  }).text;
}

function made(rows: readonly BatchFigures[], { recipe: system }: ShownUnits): Block {
  const clay = recipeFormula("clayOfDryMixPercent", rows);
  const mass = (one: Measured | undefined): TableCell | string => {
    if (!one) return "";
    const { value: kg, place: at } = one;
    return { text: printNumber(inShownUnit(kg, "kg", system).value, kg < 1 ? 3 : 2), number: kg, at };
  };
  const minutes = (one: Measured | undefined): TableCell | string =>
    one ? { text: String(one.value), at: one.place } : "";
  return {
    kind: "table",
    name: "batches",
    caption: "The batches, in the log's order",
    columns: [
      { head: "Batch", align: "text" },
      { head: "Date", align: "text" },
      { head: "Order", align: "number", spare: true },
      { head: "Sand", ...unitOf("kg", system), align: "number", spare: true },
      { head: "Clay", ...unitOf("kg", system), align: "number", spare: true },
      { head: "Water", ...unitOf("kg", system), align: "number", spare: true },
      { head: "Clay", unit: "% of dry mix", align: "number", ...clay, spare: true },
      { head: "Mulled", unit: "min", align: "number", spare: true },
      { head: "Stood", unit: "min", align: "number", spare: true },
    ],
    rows: rows.map(({ batch, recipe }) => [
      markedName({ batch }),
      batch.date ?? "",
      batch.order === undefined ? "" : String(batch.order),
      mass(batch.recipe?.sandKg),
      mass(batch.recipe?.clayKg),
      mass(batch.recipe?.waterKg),
      recipe
        ? figureCell({ value: recipe.clayOfDryMixPercent.value, ...endsOf(recipe.clayOfDryMixPercent) })
        : "",
      minutes(batch.mulledMin),
      minutes(batch.stoodMin),
    ]),
  };
}
