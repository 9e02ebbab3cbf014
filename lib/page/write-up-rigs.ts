// The instruments of a write-up: rigs with the energy of a blow, scales with what they read to.

import type { Rig } from "../log/batch.ts";
import type { Measured, Scale } from "../log/figure-types.ts";
import { printNumber } from "../quantity/print.ts";
import { rammerEnergyJ, rammers } from "../sand/rammer.ts";
import type { Block, TableBlock, TableCell, TableColumn } from "./blocks.ts";
import { inShownUnit, type UnitSystem } from "./shown-units.ts";

const fields: readonly (readonly [field: string, head: string, unit?: string])[] = [
  ["boreMm", "Bore", "mm"],
  ["tubeMm", "Tube", "mm"],
  ["rammerKg", "Rammer", "kg"],
  ["dropMm", "Drop", "mm"],
  ["blows", "Blows"],
  ["columnMm", "Column", "mm"],
  ["vesselMl", "Vessel", "ml"],
  ["blankMm", "Blank", "mm of water"],
  ["blankS", "Blank time", "s"],
  ["rulerMm", "Ruler", "mm"],
];

const standardJ = rammerEnergyJ(rammers.us);

/** Both tables, as far as the log has rigs and scales, and the notes of the rigs. */
export function writeUpRigs(
  rigs: readonly Rig[],
  scales: readonly Scale[],
  system: UnitSystem,
): readonly Block[] {
  const notes = rigs.flatMap(({ name, note }) => (note === undefined ? [] : [`${name}: ${note}`]));
  return [
    ...(rigs.length > 0 ? [rigTable(rigs)] : []),
    ...(notes.length > 0 ? [{ kind: "list", items: notes } as const] : []),
    ...(scales.length > 0 ? [scaleTable(scales, system)] : []),
  ];
}

function rigTable(rigs: readonly Rig[]): TableBlock {
  const used = fields.filter(([field]) => rigs.some((rig) => rig.fields[field]));
  const rammed = rigs.some((rig) => energyJ(rig) !== undefined);
  const energy: TableColumn = {
    head: "Energy of a blow",
    unit: "J",
    align: "number",
    formula: "rammerEnergyJ(Rammer, Drop)",
    source: `m g h; the usual rammer of 14 lb from 2 in has ${printNumber(standardJ, 2)} J (from memory)`,
  };
  return {
    kind: "table",
    name: "rigs",
    caption: "The rigs, as typed",
    columns: [
      { head: "Rig", align: "text" },
      ...used.map(([field, head, unit]): TableColumn => {
        const metric = unit === undefined ? {} : { dataUnit: unit };
        return { head, ...metric, align: field === "blows" ? "number" : "text" };
      }),
      ...(rammed ? [energy] : []),
    ],
    rows: rigs.map((rig) => [
      rig.name,
      ...used.map(([field]) => typedCell(rig.fields[field])),
      ...(rammed ? [energyCell(rig)] : []),
    ]),
  };
}

/** A reading as the founder typed it, with its place, for the eye; its number for files. */
export function typedCell(one: Measured | undefined): TableCell {
  return one ? { text: one.text, number: one.value, whole: true, at: one.place } : { text: "" };
}

function energyJ({ fields: { rammerKg, dropMm } }: Rig): number | undefined {
  if (!rammerKg || !dropMm) return undefined;
  return rammerEnergyJ({ weightKg: rammerKg.value, dropMm: dropMm.value });
}

function energyCell(rig: Rig): TableCell {
  const one = energyJ(rig);
  return one === undefined ? { text: "" } : { text: printNumber(one, 2), number: one };
}

function scaleTable(scales: readonly Scale[], system: UnitSystem): TableBlock {
  const { unit } = inShownUnit(1, "g", system);
  const grams = (value: number): TableCell => ({
    text: String(Number(inShownUnit(value, "g", system).value.toPrecision(4))),
    number: value,
  });
  const weighed = unit === "g" ? { unit } : { unit, dataUnit: "g" };
  return {
    kind: "table",
    name: "scales",
    caption: "The scales",
    columns: [
      { head: "Scale", align: "text" },
      { head: "Reads to", ...weighed, align: "number" },
      { head: "Within, by known weights", ...weighed, align: "number" },
    ],
    rows: scales.map(({ name, stepG, withinG }) => [
      name,
      grams(stepG),
      withinG === undefined ? "never checked" : grams(withinG),
    ]),
  };
}
