// How long a chart keeps still where nothing is wrong: by simulated rows, and by an integral equation.

import { cusum } from "../../lib/numbers/cusum.ts";
import { ewma } from "../../lib/numbers/ewma.ts";
import { individualsChart } from "../../lib/numbers/individuals-chart.ts";
import { normalCumulative } from "../../lib/numbers/normal.ts";
import { seeded } from "../seeded.ts";

export interface RunLength {
  readonly mean: number;
  /** Standard error of the mean. */
  readonly error: number;
}

const kept = new Map<string, RunLength>();
/** Worked out once for all rows and tests that ask. */
function once(name: string, work: () => RunLength): RunLength {
  const found = kept.get(name) ?? work();
  kept.set(name, found);
  return found;
}

/** Mean number of values until the first signal, and its standard error, over rows of a scatter of 1. */
function runLengths(rows: number, firstOf: (row: number[]) => number): RunLength {
  const random = seeded(20260607);
  const lengths = Array.from({ length: rows }, () => {
    let row = Array.from({ length: 400 }, random.normal);
    let first = firstOf(row);
    while (first < 0 && row.length < 40_000) {
      row = [...row, ...Array.from({ length: row.length * 3 }, random.normal)];
      first = firstOf(row);
    }
    return first + 1;
  });
  const middle = lengths.reduce((all, each) => all + each, 0) / rows;
  const squares = lengths.reduce((all, each) => all + (each - middle) ** 2, 0);
  return { mean: middle, error: Math.sqrt(squares / (rows - 1) / rows) };
}

/** Limits of exactly three standard deviations about 0: a baseline of two values that the rules never see. */
const span = (1.128 * 1) / 2;
const knownLimits = (row: readonly number[]) => {
  const { signals } = individualsChart([-span, span, ...row], { baseline: 2 });
  return signals.filter(({ from }) => from >= 2);
};
const firstBy = (rules: readonly string[], least: { readonly [rule: string]: number }) => (row: number[]) => {
  const ends = knownLimits(row)
    .filter(({ rule }) => rules.includes(rule))
    .map(({ rule, from, to }) => (least[rule] === undefined ? to - 2 : from - 2 + least[rule]! - 1));
  return ends.length === 0 ? -1 : Math.min(...ends);
};

export const chartRunLength = (
  rules: readonly string[],
  least: { readonly [rule: string]: number },
): RunLength => once(`chart ${rules.join(" ")}`, () => runLengths(250, firstBy(rules, least)));
export const departuresRunLength = (limit: number): RunLength =>
  once(`departures ${limit}`, () =>
    runLengths(250, (row) => cusum(row, { target: 0, slack: 0.5, limit }).signals[0]?.at ?? -1),
  );
export const weightedRunLengthDrawn = (): RunLength =>
  once("weighted", () => runLengths(250, (row) => ewma(row, { target: 0, sd: 1 }).signals[0]?.at ?? -1));

/** 3.5 standard errors; none at all where the simulation scatters too widely to tell anything. */
export const scatterOf = ({ mean, error }: RunLength): number => (error / mean < 0.08 ? 3.5 * error : 0);

/** Mean run length of a weighted mean by S. V. Crowder's integral equation (1987), by 61 cells. */
export function weightedRunLength(weight: number, width: number): number {
  const h = width * Math.sqrt(weight / (2 - weight));
  const m = 61;
  // Midpoints of cells: each cell's chance is exact, so the error falls with the square of the cell.
  const cell = (2 * h) / m;
  const middles = Array.from({ length: m }, (_, i) => -h + (i + 0.5) * cell);
  const rows = middles.map((from) =>
    middles.map((to) => {
      const end = (edge: number) => normalCumulative((edge - (1 - weight) * from) / weight);
      return end(to + cell / 2) - end(to - cell / 2);
    }),
  );
  let lengths = middles.map(() => 1);
  for (let pass = 0; pass < 8000; pass++) {
    const next = rows.map((row) => row.reduce((all, chance, j) => all + chance * lengths[j]!, 1));
    const moved = Math.max(...next.map((each, i) => Math.abs(each - lengths[i]!)));
    lengths = next;
    if (moved < 1e-5) break;
  }
  return lengths[(m - 1) / 2]!;
}
