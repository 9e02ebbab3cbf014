// Draws of fitted curves: coefficients from the fit's multivariate t, new batches jointly over the properties.

import { invariant } from "../issue.ts";
import { lowerTriangle } from "../numbers/cholesky.ts";
import { drawing, drawsOf } from "../quantity/drawing.ts";
import { keptColumn } from "../quantity/kept-column.ts";
import { keptDraws } from "../quantity/kept-draws.ts";
import { onceFor } from "../quantity/once-for.ts";
import type { Spread } from "../quantity/spread.ts";
import { shifted } from "../quantity/spread-of.ts";
import type { ResponseCurve } from "./response-curve.ts";

/** Draws of one curve, in columns that may be run through fast. */
export interface DrawnCurve {
  /** A column for each power of the axis: 1, u, u². The rig's bias, if there is one, is in the first. */
  readonly coefficients: readonly Float64Array[];
  /** What one new batch adds to the mean. */
  readonly batch: Float64Array;
}

/** Scores of curves, drawn once; how well the scatter was known before the trial is chosen afterwards. */
export interface CurveDraws {
  readonly count: number;
  /** known: further degrees of freedom that the scatter is taken to be known with; 0 is Student's t. */
  with(known: number): readonly DrawnCurve[];
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
export function drawCurves(curves: readonly CurveToDraw[], count: number): CurveDraws {
  for (const { name, curve } of curves) invariant(curve.fit, `${name} has no fitted curve to draw`);
  // Drawn when first asked for: what an aim says of them may be known.
  const scores = onceFor((of: readonly CurveToDraw[]) => scoresOf(of, count));
  const made = new Map<number, readonly DrawnCurve[]>();
  return {
    count,
    with(known) {
      const columns = made.get(known) ?? columnsWith(scores(curves), known);
      made.set(known, columns);
      return columns;
    },
  };
}

type Scores = ReturnType<typeof scoresOf>;

function scoresOf(curves: readonly CurveToDraw[], count: number) {
  const deviations = jointDeviations(curves, count);
  return curves.map(({ name, curve, bias }, k) => {
    const fit = curve.fit!;
    const size = curve.row(curve.from).length;
    const chiSquare = chiSquareOf(`${name}, scatter`, fit.degreesOfFreedom, count);
    return {
      fit,
      steps: coefficientSteps(fit.covariance, scoreColumns(`${name}, coefficient`, size, count)),
      chiSquare,
      deviation: deviations[k]!,
      block: blockDraws(name, curve, count),
      bias: bias ? keptDraws(bias, count) : undefined,
    };
  });
}

function columnsWith(scores: Scores, known: number): readonly DrawnCurve[] {
  return scores.map(({ fit, steps, chiSquare, deviation, block, bias }) => {
    const { degreesOfFreedom: df, residualSd } = fit;
    const count = chiSquare.length;
    // Loops: a callback for each draw took as long as all that is made of the draws.
    const widen = new Float64Array(count);
    for (let i = 0; i < count; i++) widen[i] = Math.sqrt((df + known) / (chiSquare[i]! + known));
    const coefficients = steps.map((step, j) => {
      const middle = fit.coefficients[j]!;
      const column = new Float64Array(count);
      for (let i = 0; i < count; i++) column[i] = middle + step[i]! * widen[i]!;
      if (j === 0 && bias) for (let i = 0; i < count; i++) column[i]! += bias[i]!;
      return column;
    });
    const batch = new Float64Array(count);
    for (let i = 0; i < count; i++) batch[i] = deviation[i]! * residualSd * widen[i]!;
    if (block) for (let i = 0; i < count; i++) batch[i]! += block(known, i);
    return { coefficients, batch };
  });
}

/** What a new day or bag adds, as far as three blocks or more tell. */
function blockDraws(
  name: string,
  { blockScatter, blocks }: ResponseCurve,
  count: number,
): ((known: number, i: number) => number) | undefined {
  if (!blockScatter || blockScatter.variance === 0) return undefined;
  const sd = Math.sqrt(blockScatter.variance);
  const df = blocks.length;
  const score = draw(`${name}, new block`, count);
  const chiSquare = chiSquareOf(`${name}, scatter of blocks`, df, count);
  return (known, i) => sd * score[i]! * Math.sqrt((df + known) / (chiSquare[i]! + known));
}

function chiSquareOf(what: string, df: number, count: number): Float64Array {
  return keptColumn(`${count} of chi-square ${df}, ${what}`, () => {
    const all = new Float64Array(count);
    for (let j = 0; j < df; j++) {
      const one = score(`${what} ${j}`);
      const column = drawsOf(one, drawing(one.sources, { count }));
      for (let i = 0; i < count; i++) all[i]! += column[i]! ** 2;
    }
    return all;
  });
}

/** L·z for the first coefficients of a covariance L·Lᵀ, as many as there are columns of scores z. */
export function coefficientSteps(
  covariance: readonly (readonly number[])[],
  scores: readonly Float64Array[],
): readonly Float64Array[] {
  const size = scores.length;
  const lower = lowerTriangle(covariance.slice(0, size).map((line) => line.slice(0, size)));
  return lower.map((line, j) => {
    const column = new Float64Array(scores[0]!.length);
    for (let m = 0; m <= j; m++) {
      const [scale, score] = [line[m]!, scores[m]!];
      for (let i = 0; i < column.length; i++) column[i]! += scale * score[i]!;
    }
    return column;
  });
}

/** Standard normal scores: a column for each of size sources named after what. */
export function scoreColumns(what: string, size: number, count: number): readonly Float64Array[] {
  return Array.from({ length: size }, (_, j) => draw(`${what} ${j}`, count));
}

/** To read: shared by all who ask for it. */
function draw(id: string, count: number): Float64Array {
  return keptDraws(score(id), count);
}

function score(id: string): Spread {
  return shifted(0, 1, { id: `trial curve, ${id}`, kind: "repeat", shape: normal });
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
function residualCorrelation(a: ResponseCurve, b: ResponseCurve): number {
  let [ab, aa, bb, both] = [0, 0, 0, 0];
  const rowOfB = new Map(b.used.map((batch, j) => [batch, j]));
  a.used.forEach((batch, i) => {
    const j = rowOfB.get(batch);
    if (j === undefined) return;
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
