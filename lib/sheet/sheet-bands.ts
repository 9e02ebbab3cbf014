// The charts that a log asks of a sheet, with the ends of their bands in the unit of what they are drawn behind.

import type { Issue } from "../issue.ts";
import type { LoggedChart, LoggedSheet, Typed } from "../log/logged-sheet.ts";
import { readQuantity } from "../quantity/read-quantity.ts";
import { convert, sameDimension } from "../quantity/unit.ts";
import { bandUnit } from "./log-sheet-issues.ts";
import type { Sheet, SheetChart, SheetColumn } from "./sheet-types.ts";

export function chartsOf(
  { charts }: LoggedSheet,
  made: Pick<Sheet, "columns">,
): { readonly charts: readonly SheetChart[]; readonly issues: readonly Issue[] } {
  const issues: Issue[] = [];
  const drawn = charts.map(({ x, y, line, title, ...chart }): SheetChart => {
    const band = bandOf(
      chart.band,
      made.columns.find(({ name }) => name === y[0]),
      issues,
    );
    return {
      x,
      y,
      ...(line ? { line } : {}),
      ...(title === undefined ? {} : { title }),
      ...(band ? { band } : {}),
    };
  });
  return { charts: drawn, issues };
}

function bandOf(
  band: LoggedChart["band"],
  column: SheetColumn | undefined,
  issues: Issue[],
): SheetChart["band"] {
  if (!band || !column) return undefined;
  const [low, high] = [band.low, band.high].map((end) => inUnitOf(end, column));
  if (low !== undefined && high !== undefined && low < high) return { low, high };
  const text = `${band.low.text} to ${band.high.text}`;
  issues.push({ ...bandUnit(text, column.name, column.unit?.text ?? ""), place: band.low.place });
  return undefined;
}

/** A bare number is taken to be in the column's unit. */
function inUnitOf({ text }: Typed, { unit }: SheetColumn): number | undefined {
  const read = readQuantity(text).value;
  if (!read?.unit) return read?.value;
  return unit && sameDimension(read.unit, unit) ? convert(read.value, read.unit, unit) : undefined;
}
