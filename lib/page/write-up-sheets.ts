// The data sheet of a write-up: what was weighed in and what was read, as it was typed.

import type { Batch } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import type { Block, Section, TableColumn, Text } from "./blocks.ts";
import { type SheetField, sheetFields } from "./write-up-sheet-fields.ts";

/** Everything that the curves rest on, so that anybody can work it out again: a row a batch; what is alike in all, once. */
export function writeUpSheets(rows: readonly BatchFigures[]): Section {
  const batches = rows.map(({ batch }) => batch);
  const fields = sheetFields(batches);
  const alike = fields.filter((field) => isAlike(field, batches));
  const apart = fields.filter((field) => !alike.includes(field));
  const blocks: Block[] = [];
  if (alike.length > 0) {
    blocks.push(
      { kind: "prose", text: "Alike in every batch:" },
      { kind: "list", items: toldOnce(alike, batches) },
    );
  }
  if (apart.length > 0) {
    blocks.push({
      kind: "table",
      name: "readings",
      caption: "The data sheet: what was weighed in and read, as typed; readings of one batch side by side",
      columns: [{ head: "Batch", align: "text" }, ...apart.map(columnOf)],
      rows: batches.map((batch) => [batch.name, ...apart.map(({ cell }) => cell(batch) ?? "")]),
    });
  }
  const notes = batches.flatMap(notesOf);
  if (notes.length > 0) {
    blocks.push({ kind: "prose", text: "Noted beside them:" }, { kind: "list", items: notes });
  }
  return { role: "data", title: "Data sheet, as typed", blocks };
}

function columnOf({ head, of, unit, again }: SheetField): TableColumn {
  // What it belongs to stands under the head; the unit stands in the cells.
  const under = of === "" || again ? {} : { unit: of };
  const dataUnit = unit === "" ? of : unit;
  return { head, ...under, ...(dataUnit === "" ? {} : { dataUnit }), align: "text" };
}

/** Alike to the letter in every reading that there is. */
function isAlike({ cell }: SheetField, batches: readonly Batch[]): boolean {
  const texts = batches.flatMap((batch) => cell(batch)?.text ?? []);
  return batches.length > 1 && texts[0] !== "" && texts.every((text) => text === texts[0]);
}

/** "Green compression: height 50 mm, rig drop tube.": one line for each thing that they belong to. */
function toldOnce(fields: readonly SheetField[], batches: readonly Batch[]): Text[] {
  const groups = new Map<string, string[]>();
  for (const { of, name, cell } of fields) {
    const line = `${name} ${batches.flatMap((batch) => cell(batch)?.text ?? [])[0]}`;
    const lines = groups.get(of) ?? [];
    if (!lines.includes(line)) lines.push(line);
    groups.set(of, lines);
  }
  return [...groups].map(([of, lines]) => {
    const name = of === "" ? "batch" : of;
    return `${name.charAt(0).toUpperCase()}${name.slice(1)}: ${lines.join(", ")}.`;
  });
}

function notesOf({ name, note, readings }: Batch): Text[] {
  return [
    ...(note === undefined ? [] : [`${name}: ${note}`]),
    ...readings.flatMap(({ test, note: own }) => (own === undefined ? [] : [`${name}, ${test}: ${own}`])),
  ];
}
