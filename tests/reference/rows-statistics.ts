// Means, ranks, rows in time, surfaces and tables of distributions against published figures.

import { lagOneAutocorrelation } from "../../lib/numbers/autocorrelation.ts";
import { fitPolynomial } from "../../lib/numbers/polynomial-fit.ts";
import { spearman } from "../../lib/numbers/spearman.ts";
import { mean, sampleStandardDeviation } from "../../lib/numbers/summary.ts";
import { welch } from "../../lib/numbers/welch.ts";
import type { Published } from "./published.ts";
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
    note: "figures by R, read in the comments of a package; data read in public code",
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
];
