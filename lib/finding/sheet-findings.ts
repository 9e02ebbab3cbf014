// What a sheet's fits and feet say, and nothing besides.

import { printFigure, printNumber } from "../quantity/print.ts";
import type { Sheet, SheetChart } from "../sheet/sheet.ts";
import type { Finding } from "./finding.ts";
import { doubtfulX, type SheetFit, sheetFit } from "./sheet-fit.ts";
import {
  doubtFrom,
  doubtSpread,
  narrowedBy,
  noSlope,
  noTurning,
  risesWith,
  tooFewForLine,
  turnsAt,
  xInDoubt,
} from "./sheet-messages.ts";
import { axisOf, sheetPoints } from "./sheet-points.ts";

/**
 * The fits that its charts ask for, each told; and for each figure of the foot what its doubt comes from.
 * @example logSheets(log).flatMap(sheetFindings).map(({ text }) => text)
 */
export function sheetFindings(sheet: Sheet): readonly Finding[] {
  const lines = sheet.charts.flatMap((chart) =>
    fitsOf(sheet, chart).flatMap(({ y, fit }) => fitFindings(sheet, chart.x, y, fit)),
  );
  return [...lines, ...sheet.foot.flatMap((one) => footFinding(sheet, one) ?? [])];
}

/** The fits that a chart asks for: none without a line, or over names. */
export function fitsOf(
  sheet: Sheet,
  { x, y, line }: SheetChart,
): readonly { readonly y: string; readonly fit: SheetFit }[] {
  if (!line || sheet.column(x).kind === "text") return [];
  const xs = sheetPoints(sheet, x);
  return [y].flat().map((name) => ({ y: name, fit: sheetFit(xs, sheetPoints(sheet, name), line) }));
}

function fitFindings(sheet: Sheet, xName: string, yName: string, fit: SheetFit): Finding[] {
  const [x, y] = [axisOf(sheet, xName), axisOf(sheet, yName)];
  const rows = String(fit.rows);
  const { slope, turning } = fit;
  if (fit.form === "points only") {
    const { rows: least, different } = fit.needs;
    const what = least === 4 ? "straight line" : "curve";
    const has = `${rows} ${fit.rows === 1 ? "row" : "rows"} at ${fit.different} different values of ${x.title}`;
    return [tooFewForLine(y.title, x.title, what, has, `${least} rows at ${different} different places`)];
  }
  const doubt = doubtfulX(sheetPoints(sheet, xName)) ? [xInDoubt(x.title, y.title)] : [];
  if (slope) {
    const unit = `${y.unit ?? "as a plain number"} per ${x.unit?.replace(/^days after.*/, "day") ?? "1"}`;
    const size = printFigure(abs(slope));
    if (slope.low <= 0 && slope.high >= 0) {
      const both = printFigure({ ...slope, value: slope.value });
      return [noSlope(y.title, x.title, both.text, unit, rows), ...doubt];
    }
    return [risesWith(y.title, x.title, size.text, unit, slope.value > 0, rows), ...doubt];
  }
  const inside = turning?.bounded && turning.x >= fit.course[0]!.x && turning.x <= fit.course.at(-1)!.x;
  if (!turning || !inside) return [noTurning(y.title, x.title, rows), ...doubt];
  const { text } = printFigure({ value: turning.x, low: turning.low, high: turning.high });
  const place = `${text}${x.unit === undefined ? "" : ` ${x.unit}`}`;
  return [turnsAt(y.title, x.title, place, turning.kind, rows), ...doubt];
}

const abs = ({ value, low, high }: { value: number; low: number; high: number }) =>
  value < 0 ? { value: -value, low: -high, high: -low } : { value, low, high };

function footFinding(sheet: Sheet, { name, cell }: Sheet["foot"][number]): Finding | undefined {
  if (cell.kind !== "figure" || cell.figure.sources.length < 2) return undefined;
  const [largest] = cell.figure.shares;
  if (!largest || !(largest.percent > 0)) return undefined;
  const { source, id, percent } = largest;
  const share = `${printNumber(Math.min(100, percent), 0)} %`;
  const says = source.says ?? id;
  const of = sheet.name === "" ? `"${name}"` : `"${name}" (${sheet.name})`;
  return percent >= 50 ? doubtFrom(of, share, says, narrowedBy(source.kind)) : doubtSpread(of, share, says);
}
