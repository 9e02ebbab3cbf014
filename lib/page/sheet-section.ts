// A founder's own sheet as a section of a page.

import type { LoggedSheet } from "../log/logged-sheet.ts";
import { printFigure } from "../quantity/print.ts";
import type { Sheet, SheetScale } from "../sheet/sheet.ts";
import type { Block, Section } from "./blocks.ts";
import { sheetCharts } from "./sheet-charts.ts";
import { sheetNotes } from "./sheet-notes.ts";
import { sheetTable } from "./sheet-table.ts";

export interface SheetSectionOptions {
  /** The sheet as it stands in the log, for what was typed with its readings. */
  readonly logged?: LoggedSheet;
  readonly scales?: readonly SheetScale[];
}

/**
 * Its note, named values, table with foot and formulas, what is said of its ±, and its charts.
 * @example logSheets(log).map((sheet) => sheetSection(sheet).title)
 */
export function sheetSection(sheet: Sheet, options: SheetSectionOptions = {}): Section {
  const { logged, scales = [] } = options;
  const named = new Set(sheet.columns.length === 0 ? [] : scaleNames(logged));
  const blocks: Block[] = [];
  if (sheet.note) blocks.push({ kind: "prose", text: sheet.note });
  if (logged && !logged.whole) {
    blocks.push({
      kind: "prose",
      text: [
        { strong: "Not all of this sheet could be read" },
        ": its foot and its lines rest on the rows below alone.",
      ],
    });
  }
  const values = sheet.values.map(({ name, cell }) => `${name}: ${valueText(cell)}`);
  if (values.length > 0) blocks.push({ kind: "list", items: values });
  if (sheet.rowCount === 0) {
    const names = sheet.columns.map(({ name }) => name).join(", ");
    const columns = names === "" ? "no column and no row" : `no row yet; its columns are ${names}`;
    blocks.push({ kind: "prose", text: `The sheet has ${columns}.` });
  }
  blocks.push(
    ...sheetTable(sheet, logged),
    ...sheetNotes(
      sheet,
      scales.filter(({ name }) => named.has(name)),
    ),
    ...sheetCharts(sheet).map((chart): Block => ({ kind: "chart", chart })),
  );
  return { role: "result", title: sheet.title ?? sheet.name, blocks };
}

function scaleNames(logged: LoggedSheet | undefined): string[] {
  return (logged?.columns ?? []).flatMap(({ scale }) => scale?.text ?? []);
}

function valueText(cell: Sheet["values"][number]["cell"]): string {
  switch (cell.kind) {
    case "figure": {
      const { value, figure, unit } = cell;
      const [low, high] =
        figure.sources.length === 0
          ? [value, value]
          : [Math.min(figure.low, value), Math.max(figure.high, value)];
      return printFigure({ value, low, high, ...(unit ? { unit } : {}) }).text;
    }
    case "fault":
      return `no figure (${cell.fault.message})`;
    case "empty":
      return "nothing";
    default:
      return cell.text;
  }
}
