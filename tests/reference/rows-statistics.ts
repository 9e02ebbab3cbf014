// Means, ranks, rows in time, surfaces and tables of distributions against published figures.

import { lagOneAutocorrelation } from "../../lib/numbers/autocorrelation.ts";
import { chiSquareQuantile } from "../../lib/numbers/chi-square.ts";
import { erf, erfc, inverseErfc } from "../../lib/numbers/error-function.ts";
import { fQuantile } from "../../lib/numbers/f-distribution.ts";
import { nonNegativeLeastSquares } from "../../lib/numbers/non-negative.ts";
import { normalQuantile } from "../../lib/numbers/normal.ts";
import { fitPolynomial } from "../../lib/numbers/polynomial-fit.ts";
import { spearman } from "../../lib/numbers/spearman.ts";
import { stationaryPoint } from "../../lib/numbers/stationary-point.ts";
import { studentTQuantile } from "../../lib/numbers/student-t.ts";
import { mean, sampleStandardDeviation } from "../../lib/numbers/summary.ts";
import { welch } from "../../lib/numbers/welch.ts";
import { blendShares } from "../../lib/sand/blend.ts";
import { scipyFits } from "../numbers/scipy-fits.ts";
import type { Published } from "./published.ts";
import { chemical, sloping } from "./response-designs.ts";
import { american, anscombe, japanese, michelson, scores, sleep, tuna, wave } from "./statistics-data.ts";

const cars = () => welch(american, japanese);
const asleep = () => welch(sleep.first, sleep.second);

export const statisticsRows: readonly Published[] = [
  {
    figure: "miles per gallon: two means and two deviations",
    source: "handbook",
    theirs: ["20.14458", "30.48101", "6.41470", "6.10771"],
    ours: () => [
      mean(american),
      mean(japanese),
      sampleStandardDeviation(american),
      sampleStandardDeviation(japanese),
    ],
    tag: "read",
  },
  {
    figure: "their t and degrees of freedom with unlike scatter",
    source: "handbook",
    theirs: ["−12.94627", "136.8750"],
    ours: () => [cars().t, cars().df],
    tag: "from memory",
    note: "data read",
  },
  {
    figure: "the interval of their difference, 95 %",
    theirs: ["−11.915248", "−8.757621"],
    ours: () => [cars().low, cars().high],
    tag: "apart",
  },
  {
    figure: "hours of sleep by two drugs: t, degrees of freedom, p with unlike scatter",
    source: "student 1908",
    theirs: ["−1.860813", "17.77647", "0.07939414"],
    ours: () => [asleep().t, asleep().df, asleep().p],
    tag: "read",
    note: "figures by R, read in the documentation of a package; data read there too",
  },
  {
    figure: "the interval of that difference, 95 %",
    source: "student 1908",
    theirs: ["−3.3654832", "0.2054832"],
    ours: () => [asleep().low, asleep().high],
    tag: "from memory",
    note: "by R",
  },
  {
    figure: "four figures of Anscombe's first and second set: intercept, slope",
    source: "anscombe",
    theirs: ["3.00", "0.500", "3.00", "0.500"],
    ours: () => [
      ...fitPolynomial(anscombe.x, anscombe.first, 1).coefficients,
      ...fitPolynomial(anscombe.x, anscombe.second, 1).coefficients,
    ],
    agree: { within: 0.002 },
    tag: "from memory",
  },
  {
    figure: "their R² and the deviation of the slope",
    source: "anscombe",
    theirs: ["0.667", "0.118", "0.666", "0.118"],
    ours: () =>
      [anscombe.first, anscombe.second].flatMap((y) => {
        const { rSquared, standardErrors } = fitPolynomial(anscombe.x, y, 1);
        return [rSquared, standardErrors[1]!];
      }),
    tag: "from memory",
  },
  {
    figure: "ranks, nine pairs: ρ and exact p",
    source: "hollander",
    theirs: ["0.6", "0.0968"],
    ours: () => {
      const { rho, p } = spearman(tuna.x, tuna.y);
      return [rho, p];
    },
    tag: "from memory",
  },
  {
    figure: "ranks, ten pairs: ρ −29/165 and p",
    source: "ranks textbook",
    theirs: ["−0.1757575758", "0.6272"],
    ours: () => {
      const { rho, p } = spearman(scores.x, scores.y);
      return [rho, p];
    },
    tag: "from memory",
  },
  {
    figure: "speeds of light: mean, deviation, lag-one autocorrelation",
    source: "nist univariate",
    theirs: ["299.852400000000", "0.0790105478190518", "0.535199668621283"],
    ours: () => [mean(michelson), sampleStandardDeviation(michelson), lagOneAutocorrelation([michelson])],
    agree: { digits: 11 },
    tag: "from memory",
    note: "Michelso; that three figures follow from its 100 values vouches for the memory",
  },
  {
    figure: "three large values: autocorrelation",
    source: "nist univariate",
    theirs: ["−0.5"],
    ours: () => [lagOneAutocorrelation([[10000001, 10000003, 10000002]])!],
    tag: "from memory",
    note: "NumAcc1",
  },
  {
    figure: "a swing of a tenth about 1, 1e6, 1e7: autocorrelation",
    source: "nist univariate",
    theirs: ["−0.999000", "−0.999000", "−0.999000"],
    ours: () => [1, 1e6, 1e7].map((base) => lagOneAutocorrelation([wave(base)])!),
    tag: "from memory",
    note: "NumAcc2 to 4",
  },
  {
    figure: "the same: deviations",
    source: "nist univariate",
    theirs: ["0.1", "0.1", "0.1"],
    ours: () => [1, 1e6, 1e7].map((base) => sampleStandardDeviation(wave(base))),
    agree: { within: 1e-9 },
    tag: "from memory",
    note: "NumAcc2 to 4",
  },
  {
    figure: "chemical reaction, quadratic over two factors: seven coefficients",
    source: ["myers", "lenth"],
    theirs: ["84.095427", "0.932541", "0.577712", "0.125000", "−1.308555", "−0.933442", "−4.457530"],
    ours: () => chemical.fit.coefficients.slice(0, 7),
    agree: { within: 6e-7 },
    tag: "read",
  },
  {
    figure: "their errors",
    source: ["myers", "lenth"],
    theirs: ["0.079631", "0.057699", "0.057699", "0.081592", "0.060064", "0.060064", "0.087226"],
    ours: () => chemical.fit.standardErrors.slice(0, 7),
    agree: { within: 6e-7 },
    tag: "read",
  },
  {
    figure: "its level point, eigenvalues, R²",
    source: ["myers", "lenth"],
    theirs: ["0.3722954", "0.3343802", "−0.9233027", "−1.3186949", "0.9981"],
    ours: () => {
      const { x, eigenvalues } = stationaryPoint(chemical);
      return [...x, ...eigenvalues, chemical.fit.rSquared];
    },
    agree: { digits: 6 },
    tag: "read",
  },
  {
    figure: "its Box–Hunter region, 95 %: both factors",
    theirs: ["0.286707", "0.476388", "0.218338", "0.481728"],
    ours: () => {
      const { x1, x2 } = stationaryPoint(chemical).region;
      return [x1.low, x1.high, x2.low, x2.high];
    },
    tag: "apart",
  },
  {
    figure: "three statistics of that region",
    theirs: ["4.2661", "8.7454", "180.734"],
    ours: () => {
      const { statistic } = stationaryPoint(chemical);
      return [statistic(0.45, 0.45), statistic(0.5, 0.5), statistic(0, 0)];
    },
    tag: "apart",
  },
  {
    figure: "sloping ridge: level point, eigenvalues",
    source: "box hunter",
    theirs: ["−14.81", "15.44", "0.186833", "−8.886833"],
    ours: () => {
      const { x, eigenvalues } = stationaryPoint(sloping);
      return [...x, ...eigenvalues];
    },
    tag: "apart",
    note: "data read; refused as an optimum",
  },
  {
    figure: "t, 97.5 %, 1 to 10 and 30 degrees of freedom",
    source: "abramowitz",
    theirs: [
      "12.706",
      "4.303",
      "3.182",
      "2.776",
      "2.571",
      "2.447",
      "2.365",
      "2.306",
      "2.262",
      "2.228",
      "2.042",
    ],
    ours: () => [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 30].map((df) => studentTQuantile(0.975, df)),
    tag: "from memory",
    note: "table 26.10",
  },
  {
    figure: "normal deviates at 90, 95, 97.5, 99, 99.5 %",
    source: "abramowitz",
    theirs: ["1.28155", "1.64485", "1.95996", "2.32635", "2.57583"],
    ours: () => [0.9, 0.95, 0.975, 0.99, 0.995].map(normalQuantile),
    tag: "from memory",
    note: "table 26.5",
  },
  {
    figure: "χ², 95 %, 1 to 6 and 10 degrees of freedom",
    source: "abramowitz",
    theirs: ["3.84146", "5.99146", "7.81473", "9.48773", "11.0705", "12.5916", "18.3070"],
    ours: () => [1, 2, 3, 4, 5, 6, 10].map((df) => chiSquareQuantile(0.95, df)),
    tag: "from memory",
    note: "table 26.8",
  },
  {
    figure: "F, 95 %, at (1, 10), (2, 10), (5, 10), (10, 10), (9, 40)",
    source: "abramowitz",
    theirs: ["4.965", "4.103", "3.326", "2.978", "2.124"],
    ours: () =>
      (
        [
          [1, 10],
          [2, 10],
          [5, 10],
          [10, 10],
          [9, 40],
        ] as const
      ).map(([a, b]) => fQuantile(0.95, a, b)),
    tag: "from memory",
    note: "table 26.9",
  },
  {
    figure: "error function at 0.5, 1, 2; complement at 2 and 5; inverse at a half",
    source: "abramowitz",
    theirs: [
      "0.5204998778",
      "0.8427007929",
      "0.995322265",
      "4.677734981e-3",
      "1.537459794e-12",
      "0.4769362762",
    ],
    ours: () => [erf(0.5), erf(1), erf(2), erfc(2), erfc(5), inverseErfc(0.5)],
    agree: { digits: 8 },
    tag: "from memory",
    note: "tables 7.1 and 7.3",
  },
  {
    figure: "no unknown below 0, three rows: x and norm; all at 0",
    source: "scipy nnls",
    theirs: ["1.5", "1", "0.7071067811865475", "1.7320508075688772"],
    ours: () => {
      const A = [
        [1, 0],
        [1, 0],
        [0, 1],
      ];
      const first = nonNegativeLeastSquares(A, [2, 1, 1]);
      return [...first.x, first.residualNorm, nonNegativeLeastSquares(A, [-1, -1, -1]).residualNorm];
    },
    agree: { digits: 13 },
    tag: "read",
  },
  {
    figure: "the same as a blend, scaled to a sum of 1",
    source: "scipy nnls",
    theirs: ["0.6", "0.4"],
    ours: () => {
      const to = [2, 1, 1].map((v) => v / 2.5);
      return blendShares({
        of: [
          [1, 1, 0],
          [0, 0, 1],
        ],
        to,
      });
    },
    agree: { within: 1e-6 },
    tag: "by hand",
  },
  {
    figure: "four equations, one unknown held at 0: x and norm",
    source: "nnls example",
    theirs: ["0", "0.6929344", "0.9118"],
    ours: () => {
      const C = [
        [0.0372, 0.2869],
        // biome-ignore lint/suspicious/noApproximativeNumericConstant: a figure of the example, not a constant
        [0.6861, 0.7071],
        [0.6233, 0.6245],
        [0.6344, 0.617],
      ];
      const { x, residualNorm } = nonNegativeLeastSquares(C, [0.8587, 0.1781, 0.0747, 0.8405]);
      return [...x, residualNorm];
    },
    tag: "from memory",
  },
  {
    figure: "a line with its sum held to 1, as a blend: shares and norm",
    source: "lawson",
    theirs: ["0.621", "0.379", "0.338"],
    ours: () => {
      const t = [0.25, 0.5, 0.5, 0.8];
      const to = [0.5, 0.6, 0.7, 1.2];
      const [a, b] = blendShares({ of: [t, [1, 1, 1, 1], [0, 0, 0, 0]], to }) as [number, number];
      return [a, b, Math.hypot(...to.map((value, i) => value - (a * t[i]! + b)))];
    },
    tag: "from memory",
  },
  {
    figure: "quantiles of F by SciPy",
    source: "scipy",
    theirs: scipyFits["f quantile"].map(([, , , x]) => String(x)),
    ours: () => scipyFits["f quantile"].map(([p, a, b]) => fQuantile(p, a, b)),
    agree: { digits: 12 },
    tag: "computed there",
  },
  {
    figure: "quantiles of χ² by SciPy",
    source: "scipy",
    theirs: scipyFits["chi-square quantile"].map(([, , x]) => String(x)),
    ours: () => scipyFits["chi-square quantile"].map(([p, df]) => chiSquareQuantile(p, df)),
    agree: { digits: 12 },
    tag: "computed there",
  },
];
