// Reads a data file of the NIST Statistical Reference Datasets: certified values and rows of numbers.

import { readFileSync } from "node:fs";

export interface NistSet {
  /** y first, then x. */
  readonly rows: readonly (readonly number[])[];
  /** Numbers behind each B0, B1, … or b1 =, b2 =, … */
  readonly certified: readonly (readonly number[])[];
  /** The last number on the line that begins so. */
  value(label: string): number;
}

export function nistText(name: string): string {
  return readFileSync(new URL(`nist/${name}.txt`, import.meta.url), "utf8");
}

export function nistSet(name: string): NistSet {
  const text = nistText(name);
  const lines = text.split("\n");
  const head = lines.findLastIndex((line) => /^Data:\s+y\s/.test(line));
  const numbers = (line: string): number[] => line.trim().split(/\s+/).map(Number);
  const rows = lines
    .slice(head + 1)
    .filter((line) => line.trim() !== "")
    .map(numbers);
  const certified = [...text.matchAll(/^\s+[Bb]\d+ +=? *([-+.\dE ]+)$/gm)].map(([, rest]) => numbers(rest!));
  return {
    rows,
    certified,
    value(label) {
      const found = new RegExp(`${label}:?\\s+([-+.\\dE]+)`).exec(text);
      if (!found) throw new Error(`${name} has no ${label}`);
      return Number(found[1]);
    },
  };
}

/** Digits that agree: −log₁₀ of the relative error, of the error itself where the truth is 0; at most 16. */
export function digits(ours: number, truth: number): number {
  const error = Math.abs(ours - truth) / (truth === 0 ? 1 : Math.abs(truth));
  return Math.min(16, -Math.log10(error));
}

/** SiRstv: the five readings of each of five instruments. */
export function sirstv(): number[][] {
  const text = nistText("SiRstvt");
  const lines = text
    .slice(text.lastIndexOf("Instrument"))
    .split("\n")
    .map((line) => line.trim().split(/\s+/).map(Number))
    .filter((row) => row.length === 5 && row.every((v) => v > 100));
  return [0, 1, 2, 3, 4].map((instrument) => lines.map((row) => row[instrument]!));
}
