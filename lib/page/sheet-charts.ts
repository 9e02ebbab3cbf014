// The charts that a log asks of a sheet.

import type { Chart } from "../chart/chart.ts";
import type { SheetPanel } from "../chart/sheet-input.ts";
import { sheetNames } from "../chart/sheet-names.ts";
import { sheetPlot } from "../chart/sheet-plot.ts";
import { fitsOf } from "../finding/sheet-findings.ts";
import type { SheetFit } from "../finding/sheet-fit.ts";
import { axisOf, rowName, type SheetPoint, sheetPoints } from "../finding/sheet-points.ts";
import type { Sheet, SheetChart } from "../sheet/sheet.ts";
import { fileStem } from "./file-name.ts";

/**
 * Names on x make a chart for each y, with a row for each name; figures and dates make panels over one axis.
 * @example logSheets(log).flatMap(sheetCharts).map(({ name }) => name)
 */
export function sheetCharts(sheet: Sheet): readonly Chart[] {
  return sheet.charts.flatMap((chart) =>
    sheet.column(chart.x).kind === "text" ? byNames(sheet, chart) : [against(sheet, chart)],
  );
}

function stem(sheet: Sheet, ...names: readonly string[]): string {
  return fileStem([sheet.name, ...names].join(" "));
}

function against(sheet: Sheet, chart: SheetChart): Chart {
  const { x, y, title, band } = chart;
  const ys = [y].flat();
  const xs = sheetPoints(sheet, x);
  const fits = new Map(fitsOf(sheet, chart).map((one) => [one.y, one.fit]));
  const ends = (point: SheetPoint) => (point.figure ? [point.low, point.high] : undefined);
  const panels = ys.map((name): SheetPanel => {
    const points = sheetPoints(sheet, name);
    const fit = fits.get(name);
    return {
      axis: axisOf(sheet, name),
      points: xs.flatMap((at, row) => {
        const up = points[row];
        if (!at || !up) return [];
        const [level, upright] = [ends(at), ends(up)];
        return [
          {
            x: at.value,
            y: up.value,
            ...(level ? { xLow: level[0]!, xHigh: level[1]! } : {}),
            ...(upright ? { yLow: upright[0]!, yHigh: upright[1]! } : {}),
            label: rowName(sheet, row),
          },
        ];
      }),
      ...(fit && fit.course.length > 0 ? { curve: fit.course } : {}),
      ...(fit ? { line: lineWords(fit, name) } : {}),
    };
  });
  const drawn = panels.reduce((all, { points }) => all + points.length, 0);
  return sheetPlot({
    name: stem(sheet, ...ys, "by", x),
    x: axisOf(sheet, x),
    panels,
    missing: xs.length * panels.length - drawn,
    ...(title === undefined ? {} : { title }),
    ...(band ? { band } : {}),
  });
}

function lineWords({ form, rows, needs }: SheetFit, y: string): string {
  if (form === "points only")
    return `Too few rows for a line through ${y}: ${rows} of at least ${needs.rows} at ${needs.different} different places.`;
  return form === "straight"
    ? `Straight line through ${y} by least squares.`
    : `Parabola through ${y} by least squares.`;
}

function byNames(sheet: Sheet, { x, y, title, band }: SheetChart): Chart[] {
  const { texts } = sheet.column(x);
  return [y].flat().map((name, k) => {
    const points = sheetPoints(sheet, name).flatMap((point, row) => {
      const label = texts[row] ?? "";
      if (!point || label === "") return [];
      const { value, low, high, figure } = point;
      return [{ label, value, ...(figure ? { low, high } : {}) }];
    });
    return sheetNames({
      name: stem(sheet, name, "by", x),
      names: axisOf(sheet, x).title,
      y: axisOf(sheet, name),
      points,
      missing: sheet.rowCount - points.length,
      ...(title === undefined ? {} : { title }),
      ...(band && k === 0 ? { band } : {}),
    });
  });
}
