// Draws of fitted curves: coefficients from the fit's multivariate t, new batches jointly over the properties.

import { lowerTriangle } from "../numbers/cholesky.ts";
import { drawing, drawsOf } from "../quantity/drawing.ts";
import type { Source } from "../quantity/source.ts";
import type { Spread } from "../quantity/spread.ts";
import { shifted } from "../quantity/spread-of.ts";
import type { ResponseCurve } from "./response-curve.ts";

export interface DrawnCurve {
  /** Draw i of the mean at a row of powers, with the rig's bias if there is one. */
  mean(row: readonly number[], i: number): number;
  /** Draw i of what one new batch adds to the mean. */
  batch(i: number): number;
}

export interface CurveToDraw {
  /** Names the sources: "green compression". */
  readonly name: string;
  readonly curve: ResponseCurve;
  /** A bias about 0 that all readings share, in the property's unit. */
  readonly bias?: Spread;
}

const normal = { kind: "normal" } as const;

/**
 * count draws of each curve. Coefficients are b + L·z·√((df + k)/(χ² + k)), with L·Lᵀ the fit's covariance and χ² the
 * sum of df squared normal scores; a new batch's deviation takes the same factor. k, known: the scatter of home
 * batches is not wholly unknown before a trial, and is drawn as if that many further degrees of freedom had found
 * it; 0 is Student's t. Deviations of one batch are drawn together, with the correlation of the residuals drawn
 * towards none where there are few: ρ·df/(df + 4). Curves must be fitted; points only throws.
 */
export function drawCurves(
  curves: readonly CurveToDraw[],
  count: number,
  known: number,
): readonly DrawnCurve[] {
  const deviations = jointDeviations(curves, count);
  return curves.map(({ name, curve, bias }, k) => {
    const fit = curve.fit!;
    const size = curve.row(curve.from).length;
    const { degreesOfFreedom: df, coefficients } = fit;
    const lower = lowerTriangle(fit.covariance.slice(0, size).map((line) => line.slice(0, size)));
    const scores = scoreColumns(`${name}, coefficient`, size, count);
    const widen = new Float64Array(count);
    for (const column of scoreColumns(`${name}, scatter`, df, count)) {
      for (let i = 0; i < count; i++) widen[i]! += column[i]! ** 2;
    }
    for (let i = 0; i < count; i++) widen[i] = Math.sqrt((df + known) / (widen[i]! + known));
    const drawn = coefficients.slice(0, size).map((b, j) => {
      const column = new Float64Array(count);
      for (let i = 0; i < count; i++) {
        let step = 0;
        for (let m = 0; m <= j; m++) step += lower[j]![m]! * scores[m]![i]!;
        column[i] = b + step * widen[i]!;
      }
      return column;
    });
    const shift = bias ? drawsOf(bias, drawing(bias.sources, { count })) : undefined;
    const deviation = deviations[k]!;
    return {
      mean(row, i) {
        let value = shift ? shift[i]! : 0;
        for (let j = 0; j < row.length; j++) value += row[j]! * drawn[j]![i]!;
        return value;
      },
      batch: (i) => deviation[i]! * fit.residualSd * widen[i]!,
    };
  });
}

/** Standard normal scores: a column for each of size sources named after what. */
export function scoreColumns(what: string, size: number, count: number): readonly Float64Array[] {
  return Array.from({ length: size }, (_, j) => draw(`${what} ${j}`, count));
}

function draw(id: string, count: number): Float64Array {
  const source: Source = { id: `trial curve, ${id}`, kind: "repeat", shape: normal };
  return drawsOf(shifted(0, 1, source), drawing([source], { count }));
}

/** Standard scores of one new batch, correlated as the residuals are. */
function jointDeviations(curves: readonly CurveToDraw[], count: number): readonly Float64Array[] {
  const correlation = curves.map((a, i) =>
    curves.map((b, j) => (i === j ? 1 : residualCorrelation(a.curve, b.curve))),
  );
  const lower = triangleOf(correlation);
  const scores = curves.map(({ name }) => draw(`${name}, new batch`, count));
  return curves.map((_, k) => {
    const column = new Float64Array(count);
    for (let i = 0; i < count; i++) {
      for (let m = 0; m <= k; m++) column[i]! += lower[k]![m]! * scores[m]![i]!;
    }
    return column;
  });
}

/** Pairs of tests on different batches may give correlations that cannot stand together: drawn in until they can. */
function triangleOf(correlation: readonly (readonly number[])[]): number[][] {
  for (let keep = 1; keep > 0.05; keep -= 0.1) {
    const drawn = correlation.map((line, i) => line.map((value, j) => (i === j ? 1 : keep * value)));
    try {
      return lowerTriangle(drawn);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
    }
  }
  return correlation.map((line, i) => line.map((_, j) => (i === j ? 1 : 0)));
}

/** Correlation of the residuals over the batches that both curves rest on, drawn towards none. */
export function residualCorrelation(a: ResponseCurve, b: ResponseCurve): number {
  let [ab, aa, bb, both] = [0, 0, 0, 0];
  a.used.forEach((batch, i) => {
    const j = b.used.indexOf(batch);
    if (j < 0) return;
    const [ra, rb] = [a.fit!.residuals[i]!, b.fit!.residuals[j]!];
    ab += ra * rb;
    aa += ra * ra;
    bb += rb * rb;
    both++;
  });
  const df = Math.max(0, both - Math.max(a.row(a.from).length, b.row(b.from).length));
  if (aa === 0 || bb === 0 || df === 0) return 0;
  const shrunk = (ab / Math.sqrt(aa * bb)) * (df / (df + 4));
  return Math.max(-0.95, Math.min(0.95, shrunk));
}
