// The founder's own sheets: named columns, rows, named values, a foot, charts. Texts stay as typed; lib/sheet works them out.

import { noSheetColumns, noSheetRows } from "./complaints-sheet.ts";
import { csvFile } from "./csv-file.ts";
import { type Fields, fieldsOf, mapOf, textNodeOf, textOf, uniqueEntries } from "./fields.ts";
import type { LoggedColumn, LoggedFoot, LoggedSheet, NamedText } from "./logged-sheet.ts";
import { type Entry, isHoled, type LogNode, type Report } from "./node.ts";
import { readSheetCharts } from "./read-sheet-charts.ts";
import { readSheetColumns, withoutSign } from "./read-sheet-columns.ts";
import { csvRows } from "./read-sheet-csv.ts";
import { listedRows } from "./read-sheet-rows.ts";
import { type SheetContext, typedOf } from "./read-sheets-context.ts";

const sheetKeys = ["title", "note", "values", "columns", "rows", "foot", "charts"] as const;

export function readSheets(node: LogNode | undefined, context: SheetContext): LoggedSheet[] {
  const map = mapOf(node, "sheets", context.report);
  if (!map) return [];
  return uniqueEntries(map, context.report).flatMap((entry) => sheetOf(entry, context) ?? []);
}

function sheetOf(entry: Entry, context: SheetContext): LoggedSheet | undefined {
  const name = entry.key.trim();
  const report = context.reportAbout(name);
  const map = mapOf(entry.value, name, report);
  if (!map) return undefined;
  const fields = fieldsOf(map, sheetKeys, "of a sheet", report);
  const spoiled = context.spoiled(entry) || isHoled(map);
  const title = textOf(fields.get("title"), "title", report);
  const note = textOf(fields.get("note"), "note", report);
  const declared = readSheetColumns(fields.get("columns"), context, report);
  if (declared.length === 0 && !spoiled && !hasEntries(fields.get("columns")))
    report(noSheetColumns(), entry.keyPlace);
  const { rows, columns, whole } =
    declared.length === 0
      ? { rows: [], columns: declared, whole: false }
      : rowsOf(fields, declared, context, report);
  if (declared.length > 0 && rows.length === 0 && whole && !spoiled) report(noSheetRows(), entry.keyPlace);
  return {
    name,
    columns,
    rows,
    values: readValues(fields.get("values"), context, report),
    foot: readFoot(fields.get("foot"), context, report),
    charts: readSheetCharts(fields.get("charts"), columns, context, report),
    place: entry.keyPlace,
    whole: whole && !spoiled,
    ...(title === undefined ? {} : { title }),
    ...(note === undefined ? {} : { note }),
  };
}

/** Columns that are all at fault have been complained about one by one. */
function hasEntries(node: LogNode | undefined): boolean {
  return node !== undefined && (node.kind !== "map" || node.entries.length > 0);
}

function rowsOf(fields: Fields, columns: readonly LoggedColumn[], context: SheetContext, report: Report) {
  const node = fields.get("rows");
  if (!node) return { rows: [], columns, whole: true };
  if (node.kind !== "text") return { columns, ...listedRows(node, columns, context, report) };
  const source = csvFile(node, context.files, report);
  return source ? csvRows(source, columns, report) : { rows: [], columns, whole: false };
}

function readValues(node: LogNode | undefined, context: SheetContext, report: Report): NamedText[] {
  const map = mapOf(node, "values", report);
  if (!map) return [];
  return uniqueEntries(map, report).flatMap(({ key, value }) => {
    const text = textNodeOf(value, key.trim(), report);
    return text ? [{ name: key.trim(), ...typedOf(text, context) }] : [];
  });
}

function readFoot(node: LogNode | undefined, context: SheetContext, report: Report): LoggedFoot[] {
  const map = mapOf(node, "foot", report);
  if (!map) return [];
  return uniqueEntries(map, report).flatMap(({ key, keyPlace, value }) => {
    const name = key.trim();
    const fields =
      value.kind === "map"
        ? fieldsOf(value, ["formula", "unit"], `of the foot figure "${name}"`, report)
        : undefined;
    const text = textNodeOf(fields ? fields.get("formula") : value, name, report);
    if (!text) return [];
    const unit = textNodeOf(fields?.get("unit"), "unit", report);
    return [
      {
        name,
        place: keyPlace,
        formula: withoutSign(typedOf(text, context)),
        ...(unit ? { unit: typedOf(unit, context) } : {}),
      },
    ];
  });
}
