// The data sheets of a write-up: what was weighed in and what was read, as it was typed.

import type { Batch, Recipe, TestName, TestReading } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import { formsOf, testNames } from "../log/test-forms.ts";
import { squeezeSteps } from "../sand/squeeze.ts";
import type { Block, Section, TableBlock, TableCell, TableColumn } from "./blocks.ts";
import { typedCell } from "./write-up-rigs.ts";

type Part = Exclude<keyof Recipe, "scale">;
const parts: readonly (readonly [part: Part, head: string, unit: string])[] = [
  ["sandKg", "Sand", "kg"],
  ["sandMoisturePercent", "Water in the sand", "% of damp mass"],
  ["clayKg", "Clay", "kg"],
  ["clayMoisturePercent", "Water in the clay", "% of damp mass"],
  ["additiveKg", "Additive", "kg"],
  ["waterKg", "Water", "kg"],
];

/** Everything that the curves rest on, so that anybody can work it out again. */
export function writeUpSheets(rows: readonly BatchFigures[]): Section {
  const batches = rows.map(({ batch }) => batch);
  const tested = testNames.flatMap((test) => readingSheet(test, batches) ?? []);
  const notes = batches.flatMap(({ name, note }) => (note === undefined ? [] : [`${name}: ${note}`]));
  const blocks: Block[] = [...recipeSheet(batches), ...tested];
  if (notes.length > 0) {
    blocks.push({ kind: "prose", text: "Notes on batches:" }, { kind: "list", items: notes });
  }
  return { role: "data", title: "Data sheets, as typed", blocks };
}

function recipeSheet(batches: readonly Batch[]): TableBlock[] {
  const weighed = batches.filter(({ recipe }) => recipe);
  const used = parts.filter(([part]) => weighed.some(({ recipe }) => recipe?.[part]));
  const grouped = weighed.some(({ block }) => block !== undefined);
  const sands = new Set(weighed.map(({ sand }) => sand));
  const named = sands.size > 1;
  const scaled = weighed.some(({ recipe }) => recipe?.scale);
  if (weighed.length === 0) return [];
  return [
    {
      kind: "table",
      name: "weighed-in",
      caption: "What was weighed in",
      columns: [
        { head: "Batch", align: "text" },
        ...(grouped ? [column("Block")] : []),
        ...(named ? [column("Of the sand")] : []),
        ...used.map(([, head, unit]): TableColumn => ({ head, dataUnit: unit, align: "text" })),
        ...(scaled ? [column("Scale")] : []),
      ],
      rows: weighed.map(({ name, block = "", sand = "", recipe }) => [
        name,
        ...(grouped ? [block] : []),
        ...(named ? [sand] : []),
        ...used.map(([part]) => typedCell(recipe?.[part])),
        ...(scaled ? [recipe?.scale?.name ?? ""] : []),
      ]),
    },
  ];
}

const column = (head: string): TableColumn => ({ head, align: "text" });

/** The readings of one test, a row each; a test that was only worked out elsewhere has its numbers. */
function readingSheet(test: TestName, batches: readonly Batch[]): TableBlock | undefined {
  const readings = batches.flatMap(({ name, readings: own }) =>
    own
      .filter((reading) => reading.test === test)
      .map((reading, k, all) => ({ name: all.length > 1 ? `${name}, ${k + 1}` : name, reading })),
  );
  if (readings.length === 0) return undefined;
  const has = (pick: (reading: TestReading) => unknown): boolean =>
    readings.some(({ reading }) => pick(reading) !== undefined);
  const used = fieldsOf(test).filter(({ raw }) => has((reading) => reading.raw[raw]));
  const worded: readonly (readonly [head: string, of: (reading: TestReading) => string | undefined])[] = [
    ["Method", ({ method }) => method],
    ["Rig", ({ rig }) => rig?.name],
    ["Scale", ({ scale }) => scale?.name],
    ["Note", ({ note }) => note],
  ];
  const words = worded.filter(([, of]) => has(of));
  const worked = has((reading) => reading.worked);
  const name = `${test.charAt(0).toUpperCase()}${test.slice(1)}`;
  return {
    kind: "table",
    name: `readings-${test.replaceAll(" ", "-")}`,
    caption: `${name}: the readings`,
    columns: [
      { head: "Batch", align: "text" },
      ...used.map(
        ({ key, unit }): TableColumn => ({
          head: `${key.charAt(0).toUpperCase()}${key.slice(1)}`,
          ...(unit === "" ? {} : { dataUnit: unit }),
          align: "text",
        }),
      ),
      ...(worked ? [column(test === "squeeze" ? "Step" : "As a number")] : []),
      ...words.map(([head]) => column(head)),
    ],
    rows: readings.map(({ name: batch, reading }) => [
      batch,
      ...used.map(({ raw }) => typedCell(reading.raw[raw])),
      ...(worked ? [workedCell(reading)] : []),
      ...words.map(([, of]) => of(reading) ?? ""),
    ]),
  };
}

function workedCell({ test, worked }: TestReading): TableCell {
  if (test !== "squeeze" || !worked) return typedCell(worked);
  const step = squeezeSteps.find((one) => one.step === worked.value);
  return { ...typedCell(worked), text: step ? `${step.step}: ${step.name}` : worked.text };
}

/** Of all forms of the test, each field once. */
function fieldsOf(test: TestName) {
  const all = formsOf(test).flatMap(({ fields }) => fields);
  return all.filter(({ raw }, k) => all.findIndex((other) => other.raw === raw) === k);
}
