// The charts that a founder asks of a sheet: which column against which, a band, a fitted line.

import { nearest } from "../numbers/nearest.ts";
import { readQuantity } from "../quantity/read-quantity.ts";
import { chartBand, chartColumn, chartLine, chartNotFigures, chartUnsaid } from "./complaints-sheet.ts";
import { choiceOf, type Fields, fieldsOf, mapOf, textNodeOf, textOf } from "./fields.ts";
import type { LoggedChart, LoggedColumn, Typed } from "./logged-sheet.ts";
import type { LogNode, Report } from "./node.ts";
import { columnNamed } from "./read-sheet-rows.ts";
import { type SheetContext, typedOf } from "./read-sheets-context.ts";

const sheetChartKeys = ["x", "y", "line", "band", "title"] as const;
const lines = ["straight", "curve"] as const;

export function readSheetCharts(
  node: LogNode | undefined,
  columns: readonly LoggedColumn[],
  context: SheetContext,
  report: Report,
): LoggedChart[] {
  if (!node) return [];
  const items = node.kind === "list" ? node.items : [node];
  return items.flatMap((item) => chartOf(item, columns, context, report) ?? []);
}

function chartOf(
  node: LogNode,
  columns: readonly LoggedColumn[],
  context: SheetContext,
  report: Report,
): LoggedChart | undefined {
  const map = mapOf(node, "charts", report);
  if (!map) return undefined;
  const fields = fieldsOf(map, sheetChartKeys, "of a chart", report);
  const title = textOf(fields.get("title"), "title", report);
  const line = choiceOf(fields.get("line"), "line", lines, report, {
    named: (text) => (/^(line|linear)$/.test(text) ? "straight" : undefined),
    meant: (text) => (/parab|quadr|poly/.test(text) ? "curve" : undefined),
  });
  const band = bandOf(fields, context, report);
  const [x, ...others] = namedColumns(fields, "x", columns, map, report);
  const y = namedColumns(fields, "y", columns, map, report);
  if (!x || others.length > 0) {
    if (others.length > 0) report(chartUnsaid("one column for x"), fields.entry("x")!.keyPlace);
    return undefined;
  }
  const upward = y.filter((column) => {
    if (!isText(column)) return true;
    report(chartNotFigures(column.name), fields.entry("y")!.value.place);
    return false;
  });
  if (upward.length === 0) return undefined;
  const onNames = line !== undefined && x.kind === "text";
  if (onNames) report(chartLine(), fields.entry("line")!.value.place);
  return {
    x: x.name,
    y: upward.map(({ name }) => name),
    place: map.place,
    ...(line && !onNames ? { line } : {}),
    ...(band ? { band } : {}),
    ...(title === undefined ? {} : { title }),
  };
}

const isText = ({ kind }: LoggedColumn): boolean => kind === "text" || kind === "date";

function namedColumns(
  fields: Fields,
  key: "x" | "y",
  columns: readonly LoggedColumn[],
  chart: LogNode,
  report: Report,
): LoggedColumn[] {
  const entry = fields.entry(key);
  if (!entry) {
    report(chartUnsaid(key), fields.entry(key === "x" ? "y" : "x")?.keyPlace ?? chart.place);
    return [];
  }
  const nodes = entry.value.kind === "list" ? entry.value.items : [entry.value];
  return nodes.flatMap((node) => {
    const text = textNodeOf(node, key, report);
    if (!text) return [];
    const column = columnNamed(columns, text.text);
    const names = columns.map(({ name }) => name);
    if (!column) {
      report(chartColumn(text.text.trim(), nearest(text.text, names) ?? "", names.join(", ")), text.place);
      return [];
    }
    return [column];
  });
}

/** "3 to 4", "3-4 %", "50 kPa to 80 kPa": a unit that stands once holds for both ends. */
function bandOf(fields: Fields, context: SheetContext, report: Report): LoggedChart["band"] {
  const node = textNodeOf(fields.get("band"), "band", report);
  if (!node) return undefined;
  const { text, place } = typedOf(node, context);
  const range =
    /^([-+−]?[\d./]+)\s*(.*?)\s*(?:\bto\b|[–—]|\.\.+|(?<=[\d\w%²³)])\s*-)\s*([-+−]?[\d./]+)\s*(.*)$/i.exec(
      text,
    );
  const [, first = "", firstUnit = "", second = "", secondUnit = ""] = range ?? [];
  const end = (number: string, unit: string): Typed => ({ text: `${number} ${unit}`.trim(), place });
  const [low, high] = [end(first, firstUnit || secondUnit), end(second, secondUnit || firstUnit)];
  const [a, b] = [low, high].map(({ text: typed }) => readQuantity(typed).value);
  if (range && a && b && (a.unit?.text !== b.unit?.text || a.value < b.value)) return { low, high };
  report(chartBand(text), node.place);
  return undefined;
}
