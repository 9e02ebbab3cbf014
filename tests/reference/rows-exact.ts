// Few cases counted exactly: shares, ranks, tables of four counts.

import { exactShare } from "../../lib/numbers/exact-share.ts";
import { type FourCounts, fisherExact } from "../../lib/numbers/fisher-exact.ts";
import { holm } from "../../lib/numbers/holm.ts";
import { mannWhitneyExact } from "../../lib/numbers/mann-whitney-exact.ts";
import type { Published } from "./published.ts";

const tables: readonly FourCounts[] = [
  [[8, 2], [1, 5]],
  [[3, 0], [1, 5]],
  [[2, 7], [8, 2]],
  [[12, 5], [29, 2]],
  [[0, 6], [3, 4]],
  [[40, 60], [30, 90]],
]; // biome-ignore format: a table a line
const membranes = () =>
  mannWhitneyExact(
    [0.8, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46],
    [1.15, 0.88, 0.9, 0.74, 1.21],
  );
const few = [
  [3, 7],
  [0, 5],
  [5, 5],
  [1, 10],
  [40, 200],
] as const;
/** How many pairs lie below the low end of the interval: the critical value of the textbook. */
function critical(m: number, n: number): number {
  const x = Array.from({ length: m }, (_, i) => 10 * i + i * i);
  const y = Array.from({ length: n }, (_, i) => 7 * i + 1.5 + i * i * i);
  const { low } = mannWhitneyExact(x, y).interval!;
  return x.flatMap((one) => y.map((two) => one - two)).filter((difference) => difference < low).length;
}

export const exactRows: readonly Published[] = [
  {
    figure: "tea tasting, three and four of four right, one-sided",
    source: "fisher",
    theirs: ["0.243", "0.0143"],
    ours: () => [
      fisherExact([
        [3, 1],
        [1, 3],
      ]).greater,
      fisherExact([
        [4, 0],
        [0, 4],
      ]).greater,
    ],
    tag: "from memory",
    note: "17 and 1 of 70",
  },
  {
    figure: "six tables of four counts, two-sided",
    source: "scipy",
    theirs: [
      "0.034965034965034975",
      "0.04761904761904762",
      "0.02301413756522116",
      "0.08026855207410463",
      "0.1923076923076923",
      "0.020274509265898813",
    ],
    ours: () => tables.map((table) => fisherExact(table).twoSided),
    agree: { digits: 10 },
    tag: "computed there",
    note: "fisher_exact",
  },
  {
    figure: "permeability of membranes: W, one-sided p, shift",
    source: "hollander",
    theirs: ["35", "0.1272", "0.305"],
    ours: () => {
      const { u, p, shift } = membranes();
      return [u, p / 2, shift];
    },
    tag: "from memory",
  },
  {
    figure: "its two-sided p; a smaller pair of groups",
    source: "scipy",
    theirs: ["0.2544122544122544", "0.03571428571428571"],
    ours: () => [membranes().p, mannWhitneyExact([4.6, 5.1, 4.9], [3.4, 3.6, 3.9, 3.2, 4]).p],
    agree: { digits: 12 },
    tag: "computed there",
    note: "mannwhitneyu",
  },
  {
    figure: "groups with equal values",
    source: "scipy",
    theirs: ["0.10714285714285714", "0.2698412698412698", "0.4"],
    ours: () => [
      mannWhitneyExact([4, 4, 5], [3, 3, 4, 3, 2]).p,
      mannWhitneyExact([3, 3, 4, 5, 5], [2, 3, 3, 4]).p,
      mannWhitneyExact([1, 1], [1, 2, 2, 2]).p,
    ],
    agree: { digits: 12 },
    tag: "computed there",
    note: "permutation_test of the rank sum",
  },
  {
    figure: "critical U at 5 %, 5 and 5, 4 and 6, 8 and 8, 10 and 10",
    source: "mann-whitney tables",
    theirs: ["2", "2", "13", "23"],
    ours: () => [critical(5, 5), critical(4, 6), critical(8, 8), critical(10, 10)],
    tag: "from memory",
    note: "as pairs outside the low end of the interval",
  },
  {
    figure: "interval of a share in few cases, low ends",
    source: "scipy",
    theirs: [
      "0.09898827844243689",
      "0",
      "0.47817624989501856",
      "0.0025285785444625728",
      "0.14689448821574452",
    ],
    ours: () => few.map(([hits, of]) => exactShare(hits, of).low),
    agree: { digits: 10 },
    tag: "computed there",
    note: "binomtest",
  },
  {
    figure: "the same, high ends",
    source: "scipy",
    theirs: ["0.81594843235993", "0.5218237501049814", "1", "0.44501611702819543", "0.2622263645896002"],
    ours: () => few.map(([hits, of]) => exactShare(hits, of).high),
    agree: { digits: 10 },
    tag: "computed there",
    note: "binomtest",
  },
  {
    figure: "Holm's steps",
    source: "r manual",
    theirs: ["0.04", "0.06", "0.06", "0.06"],
    ours: () => holm([0.01, 0.02, 0.03, 0.04]),
    tag: "from memory",
  },
];
