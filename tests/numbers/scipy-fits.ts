// Reference values from SciPy and NumPy for fits and tests; made by scipy-fits.py, the versions are in them.

import { readFileSync } from "node:fs";

interface Fits {
  readonly "f cumulative": [x: number, df1: number, df2: number, p: number][];
  readonly "f quantile": [p: number, df1: number, df2: number, x: number][];
  readonly "log gamma": [z: number, value: number][];
  readonly "weighted fits": {
    readonly design: number[][];
    readonly y: number[];
    readonly weights: number[];
    readonly at: number[];
    readonly coefficients: number[];
    readonly covariance: number[][];
    readonly "residual sd": number;
    readonly leverages: number[];
    readonly value: number;
    readonly "mean se": number;
  }[];
  readonly "non-negative": {
    readonly A: number[][];
    readonly b: number[];
    readonly x: number[];
    readonly norm: number;
    readonly "one answer": boolean;
  }[];
  readonly welch: {
    readonly a: number[];
    readonly b: number[];
    readonly t: number;
    readonly df: number;
    readonly p: number;
    readonly low90: number;
    readonly high90: number;
  }[];
  readonly "spearman ties": Ranked;
  readonly "spearman counted": Ranked;
}

interface Ranked {
  readonly x: number[];
  readonly y: number[];
  readonly rho: number;
  readonly p: number;
}

export const scipyFits: Fits = JSON.parse(readFileSync(new URL("scipy-fits.json", import.meta.url), "utf8"));
