// The chart of a founder's own script: columns against a column, with a curve where one is given.

import { onlyFigures } from "../finding/column-figures.ts";
import { invariant } from "../issue.ts";
import type { FigureColumn } from "../quantity/figure-column.ts";
import type { CurveValue } from "../trial/response-curve.ts";
import type { Chart } from "./chart.ts";
import type { CurvePoint, ResponsePoint } from "./response-input.ts";
import type { SheetPanel } from "./sheet-input.ts";
import { sheetPlot } from "./sheet-plot.ts";

/** Anything that has a value with its intervals at each place from one end to the other, such as a ResponseCurve. */
export interface CurveToDraw {
  readonly from: number;
  readonly to: number;
  at(x: number): CurveValue | undefined;
}

export interface PointsChartInput {
  /** For file names: lower case, hyphens. */
  readonly name: string;
  readonly x: FigureColumn;
  /** One panel for each. */
  readonly y: FigureColumn | readonly FigureColumn[];
  /** What each row is called. */
  readonly labels?: readonly string[];
  /** Through the first y, over its own range only. */
  readonly curve?: CurveToDraw;
  /** The founder's own range of the first y. */
  readonly band?: { readonly low: number; readonly high: number };
  /** Stands before the caption. */
  readonly title?: string;
}

const steps = 40;

/**
 * Draws columns upwards against a column: a dot for each row with the 95 % interval of both figures, the curve with the
 * intervals of its mean (dark) and of a new row (light), the band as a quiet fill. Rows without both figures are left
 * out and counted in the text. Columns of unlike length, a text where a figure belongs, or a name that is no file name
 * throw Misuse.
 * @example
 * pointsChart({
 *   name: "swelling",
 *   x: { title: "days", values: [1, 2, 4] },
 *   y: { title: "swelling", unit: "ml", values: [spread("18 ± 1 ml"), spread("22 ± 1 ml"), undefined] },
 * }).table.rows.length // 2
 */
export function pointsChart(input: PointsChartInput): Chart {
  const { name, x, labels, curve, band, title } = input;
  const ys = [input.y].flat();
  invariant(
    x && ys.every(Boolean),
    `a column of the chart "${name}" is not there: look at the name it is taken by`,
  );
  const xs = onlyFigures(x);
  const panels = ys.map((y, k): SheetPanel => {
    invariant(y.values.length === xs.length, `"${y.title}" has a row for each of "${x.title}"`);
    const points = onlyFigures(y).flatMap((up, row): ResponsePoint[] => {
      const at = xs[row]!;
      if (!Number.isFinite(at.value) || !Number.isFinite(up.value)) return [];
      const label = labels?.[row];
      return [
        {
          x: at.value,
          y: up.value,
          ...(at.low === undefined ? {} : { xLow: at.low, xHigh: at.high! }),
          ...(up.low === undefined ? {} : { yLow: up.low, yHigh: up.high! }),
          ...(label === undefined ? {} : { label }),
        },
      ];
    });
    const course = k === 0 && curve ? courseOf(curve) : [];
    return { axis: axisOf(y), points, ...(course.length === 0 ? {} : { curve: course }) };
  });
  const drawn = panels.reduce((all, { points }) => all + points.length, 0);
  return sheetPlot({
    name,
    x: axisOf(x),
    panels,
    missing: xs.length * panels.length - drawn,
    ...(title === undefined ? {} : { title }),
    ...(band ? { band } : {}),
  });
}

function axisOf({ title, unit }: FigureColumn) {
  return { title, ...(unit === undefined ? {} : { unit }) };
}

function courseOf({ from, to, at }: CurveToDraw): CurvePoint[] {
  const places = Array.from({ length: steps + 1 }, (_, k) => from + ((to - from) * k) / steps);
  return places.flatMap((x) => {
    const value = at(x);
    return value ? [{ x, ...value }] : [];
  });
}
