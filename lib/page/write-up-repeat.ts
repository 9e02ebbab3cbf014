// What somebody who repeats a trial should find, by its curves.

import { axisName, axisPlaces, axisUnit } from "../finding/trial-axis.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import { gridOver } from "../trial/aim.ts";
import { newBatchAt } from "../trial/new-batch.ts";
import type { TrialProperty } from "../trial/trial-property.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import type { TableBlock, TableCell, TableColumn } from "./blocks.ts";
import { inShownUnit, type ShownUnits, shownUnit } from "./shown-units.ts";

/** The interval of a new batch at some places on the axis; of two blocks, in each. The bias of another rig comes on top. */
export function repeatTable(
  report: TrialReport,
  curved: readonly TrialProperty[],
  units: ShownUnits,
): TableBlock {
  const blocks = report.rows.map(({ batch }) => batch.block);
  const names = curved.some(({ curve }) => curve.blocks.length === 1)
    ? [...new Set(blocks.filter((name) => name !== undefined))]
    : [];
  const from = Math.max(...curved.map(({ curve }) => curve.from));
  const to = Math.min(...curved.map(({ curve }) => curve.to));
  const places = from < to ? gridOver(from, to, names.length > 0 ? 2 : 4) : [];
  const name = axisName(report);
  const asked = names.length > 0 ? names : [undefined];
  return {
    kind: "table",
    name: "repeat",
    caption:
      "What one new batch should come to by these curves, in 95 of 100; another rig's own bias comes on top",
    columns: [
      ...(names.length > 0 ? [{ head: "Block", align: "text" } as const] : []),
      { head: capital(name), unit: axisUnit(report), align: "number" },
      ...curved.map(({ test, unit }): TableColumn => {
        const named = shownUnit(unit, units.of(test));
        return {
          head: capital(test),
          ...(named === "" ? {} : { unit: named }),
          ...(named === unit ? {} : { dataUnit: unit }),
          align: "number",
        };
      }),
    ],
    rows: asked.flatMap((block) =>
      places.map((x) => [
        ...(block === undefined ? [] : [block]),
        { text: printNumber(x, axisPlaces(report)), number: x },
        ...curved.map((property) => cell(property, x, block, blocks, units)),
      ]),
    ),
  };
}

function cell(
  { test, unit, curve }: TrialProperty,
  x: number,
  block: string | undefined,
  blocks: readonly (string | undefined)[],
  units: ShownUnits,
): TableCell {
  const there = newBatchAt(curve, x, block, blocks);
  if (!there || !Number.isFinite(there.low)) return { text: "not known" };
  const turned = (value: number): number => inShownUnit(value, unit, units.of(test)).value;
  const { mean, low, high } = there;
  const { text } = printFigure({ value: turned(mean), low: turned(low), high: turned(high), min: 0 });
  return { text, ends: { low, high } };
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
