// A cell of a founder's own sheet as a page shows it.

import type { Typed } from "../log/logged-sheet.ts";
import { printFigure } from "../quantity/print.ts";
import { readQuantity } from "../quantity/read-quantity.ts";
import { convertDifference, sameDifference, type Unit } from "../quantity/unit.ts";
import type { Cell, CellFault } from "../sheet/sheet.ts";
import type { TableCell } from "./blocks.ts";

/**
 * The figure rounded to its ±. Without a ± a reading stands as it was given, a worked-out figure with four digits: more
 * would claim what nobody measured.
 */
export function sheetFigure(cell: Extract<Cell, { kind: "figure" }>, worked: boolean): string {
  const { value, figure, atLeast = false } = cell;
  // A figure over all rows has very many sources: whether there is a ± is told by its ends.
  if (figure.low === figure.high && !atLeast) {
    const shown = worked ? Number(value.toPrecision(4)) : value;
    return printFigure({ value: shown, low: shown, high: shown }).text;
  }
  return printFigure({
    value,
    low: Math.min(figure.low, value),
    high: Math.max(figure.high, value),
    atLeast: atLeast || figure.lost !== undefined,
  }).text;
}

/** Says a fault in whole once, then that it is the same; a cell that only needs a faulty one says which. What to do stands with the page's issues. */
export function faultTeller(
  rowName: (row: number) => string,
): (fault: CellFault, column: string, row?: number) => string {
  const told = new Set<string>();
  return (fault, column, row) => {
    const { raisedIn, message } = fault;
    const own = raisedIn.column === column && (raisedIn.row === undefined || raisedIn.row === row);
    if (!own) {
      const where = raisedIn.row === undefined ? "" : ` of ${rowName(raisedIn.row)}`;
      return `needs ${raisedIn.column}${where}`;
    }
    const key = `${column}\n${message}`;
    if (told.has(key)) return "as above";
    told.add(key);
    return message;
  };
}

export function sheetCell(
  cell: Cell,
  worked: boolean,
  tell: (fault: CellFault) => string,
  typed?: Typed,
): TableCell {
  const at = typed ? { at: typed.place } : {};
  switch (cell.kind) {
    case "figure": {
      const plusMinus = typed && typedPlusMinus(typed.text, cell.unit);
      return {
        text: sheetFigure(cell, worked),
        number: cell.value,
        ...(worked ? {} : { whole: true }),
        ...(plusMinus === undefined ? {} : { plusMinus }),
        ...at,
      };
    }
    case "fault":
      return { text: "–", fault: tell(cell.fault), ...at };
    case "empty":
      return { text: "" };
    default:
      return { text: cell.text, ...at };
  }
}

/** The ± that was typed with a reading, in the column's unit: "0.1", "0.1 (sd)". */
function typedPlusMinus(text: string, unit: Unit | undefined): string | undefined {
  const read = readQuantity(text).value;
  if (!read?.plusMinus) return undefined;
  const { size, meaning } = read.plusMinus;
  const turned =
    read.unit && unit && sameDifference(read.unit, unit) ? convertDifference(size, read.unit, unit) : size;
  return `${Number(turned.toPrecision(10))}${meaning === "surely" ? "" : ` (${meaning})`}`;
}
