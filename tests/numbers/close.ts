// Reference values from SciPy, and how far off a number is.

import { readFileSync } from "node:fs";

interface Values {
  readonly "made with": string;
  readonly curves: Record<string, { x: number[]; y: number[]; at: [x: number, y: number, slope: number][] }>;
  readonly sample: number[];
  readonly quantiles: [p: number, x: number][];
  readonly "normal quantile": [p: number, x: number][];
  readonly "normal cumulative": [x: number, p: number][];
  readonly "t quantile": [p: number, df: number, x: number][];
  readonly "t cumulative": [x: number, df: number, p: number][];
  readonly "triangular quantile": [p: number, x: number][];
  readonly "arcsine quantile": [p: number, x: number][];
}

/** Made by scipy-values.py, which stands beside; the version is in it. */
export const scipy: Values = JSON.parse(readFileSync(new URL("scipy-values.json", import.meta.url), "utf8"));

/** |ours − true| / |true|; 0 where both are the same. */
export function relativeError(ours: number, truth: number): number {
  return ours === truth ? 0 : Math.abs(ours - truth) / Math.abs(truth);
}
