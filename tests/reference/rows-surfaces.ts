// Quadratic surfaces over two factors, and least squares with no unknown below 0.

import { nonNegativeLeastSquares } from "../../lib/numbers/non-negative.ts";
import { stationaryPoint } from "../../lib/numbers/stationary-point.ts";
import { blendShares } from "../../lib/sand/blend.ts";
import type { Published } from "./published.ts";
import { chemical, sloping } from "./response-designs.ts";

export const surfaceRows: readonly Published[] = [
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
];
