// A founder's own sheet as a table: heads with units, figures rounded to their ±, faults at their cells, the foot under its columns.

import { rowName } from "../finding/sheet-points.ts";
import type { LoggedSheet } from "../log/logged-sheet.ts";
import type { FootFigure, Sheet, SheetColumn } from "../sheet/sheet.ts";
import type { Block, TableBlock, TableCell, TableRow, WorkedOut } from "./blocks.ts";
import { fileStem } from "./file-name.ts";
import { faultTeller, sheetCell, sheetFigure } from "./sheet-cell.ts";

/** Rows beyond these are shown on demand. */
const SHOWN_ROWS = 40;

/**
 * The sheet's table; figures of the foot stand under the column that they are about, where they are in its unit, and the
 * others in a second table. logged: the sheet as it stands in the log, for the ± that was typed with a reading; it goes
 * into the CSV file, so that the file can be read again as the sheet's rows.
 * @example logSheets(log).flatMap((sheet) => sheetTable(sheet))
 */
export function sheetTable(sheet: Sheet, logged?: LoggedSheet): readonly Block[] {
  const { columns, rowCount, foot } = sheet;
  const fault = faultTeller((row) => rowName(sheet, row));
  const rows = Array.from(
    { length: rowCount },
    (_, row): TableRow =>
      columns.map(({ name, formula }): TableCell => {
        const typed = logged?.rows[row]?.cells[name];
        return sheetCell(sheet.cell(row, name), formula !== undefined, (one) => fault(one, name, row), typed);
      }),
  );
  const placed = foot.map((one) => ({ one, at: columnUnder(one, columns) }));
  const under = placed.filter(({ at }) => at > 0);
  const apart = placed.filter(({ at }) => at <= 0).map(({ one }) => one);
  const table: TableBlock = {
    kind: "table",
    name: fileStem(sheet.name),
    caption: captionOf(sheet),
    columns: columns.map(({ name, title: head = name, kind, unit, formula }) => ({
      head,
      ...(unit ? { unit: unit.text } : {}),
      align: kind === "text" || kind === "date" ? "text" : "number",
      ...(formula === undefined ? {} : { formula }),
    })),
    rows,
    foldAfter: SHOWN_ROWS,
    ...(under.length > 0
      ? {
          foot: under.map(
            ({ one, at }): TableRow =>
              columns.map((_, c) => {
                if (c === 0) return one.name;
                return c === at ? footCell(one, sheet) : "";
              }),
          ),
          footFormulas: under.map(({ one }) => footFormula(one)),
        }
      : {}),
  };
  return apart.length === 0 ? [table] : [table, footTable(sheet, apart)];
}

function captionOf(sheet: Sheet): string {
  const doubtful = sheet.columns.some(({ name, kind }) => {
    if (kind !== "quantity" && kind !== "number") return false;
    for (let row = 0; row < sheet.rowCount; row++) {
      const cell = sheet.cell(row, name);
      if (cell.kind === "figure" && cell.figure.sources.length > 0) return true;
    }
    return false;
  });
  return `Sheet "${sheet.name}"${doubtful ? "; ± is half of the 95 % interval" : ""}`;
}

/** The only column that its formula names, where that is in the figure's unit; −1 for none. The first column holds the name. */
function columnUnder({ formula, cell }: FootFigure, columns: readonly SheetColumn[]): number {
  const unit = cell.kind === "figure" ? (cell.unit?.text ?? "") : undefined;
  const spaced = ` ${formula.replace(/[^\p{L}\p{N}]+/gu, " ")} `;
  const longestFirst = columns
    .map(({ name }, at) => ({ at, words: ` ${name.replace(/[^\p{L}\p{N}]+/gu, " ").trim()} ` }))
    .sort((a, b) => b.words.length - a.words.length);
  let rest = spaced.replace(/ /g, "  ");
  const named = longestFirst.filter(({ words }) => {
    const doubled = words.replace(/ /g, "  ").replace(/^ | $/g, "");
    const found = rest.includes(doubled);
    rest = rest.replaceAll(doubled, " ");
    return found;
  });
  const [only] = named;
  if (!only || named.length > 1 || unit === undefined) return -1;
  const column = columns[only.at]!;
  const numbers = column.kind === "quantity" || column.kind === "number";
  return numbers && (column.unit?.text ?? "") === unit ? only.at : -1;
}

function footCell({ cell, name }: FootFigure, sheet: Sheet): TableCell {
  return sheetCell(cell, true, (fault) => faultTeller((row) => rowName(sheet, row))(fault, name));
}

function footFormula({ name, formula, cell }: FootFigure): WorkedOut {
  const unit = cell.kind === "figure" ? cell.unit?.text : undefined;
  return { head: name, formula, ...(unit === undefined ? {} : { unit }) };
}

function footTable(sheet: Sheet, apart: readonly FootFigure[]): TableBlock {
  return {
    kind: "table",
    name: fileStem(`${sheet.name} figures`),
    caption: `Sheet "${sheet.name}", further figures of its foot`,
    columns: [
      { head: "Figure", align: "text" },
      { head: "Value", align: "number" },
      { head: "Unit", align: "text" },
    ],
    rows: apart.map((one) => [
      one.name,
      footCell(one, sheet),
      one.cell.kind === "figure" ? (one.cell.unit?.text ?? "plain number") : "",
    ]),
    footFormulas: apart.map(footFormula),
  };
}

/**
 * "3.05 ± 0.10 % of damp mass": a figure of the foot in a sentence.
 * @example logSheets(log).flatMap(({ foot }) => foot.map(footText))
 */
export function footText({ cell }: FootFigure): string | undefined {
  if (cell.kind !== "figure") return undefined;
  const unit = cell.unit?.text;
  return `${sheetFigure(cell, true)}${unit === undefined ? "" : ` ${unit}`}`;
}
