// Whether batches stand at places that tell two things apart.

import { fitLinear } from "../numbers/least-squares.ts";
import { sum } from "../numbers/sum.ts";
import { mean } from "../numbers/summary.ts";

/** Pearson's correlation; NaN where one list does not vary. */
export function correlation(x: readonly number[], y: readonly number[]): number {
  const [middleX, middleY] = [mean(x), mean(y)];
  const products = sum(x.map((value, i) => (value - middleX) * (y[i]! - middleY)));
  const squares = (values: readonly number[], middle: number): number =>
    sum(values.map((value) => (value - middle) ** 2));
  return products / Math.sqrt(squares(x, middleX) * squares(y, middleY));
}

/** Places closer than a twenty-fifth of the range along both are one. u, v: coded to −1 to 1. */
export function placeCount(u: readonly number[], v: readonly number[]): number {
  const near = 2 / 25;
  const found: (readonly [number, number])[] = [];
  u.forEach((a, i) => {
    const b = v[i]!;
    if (!found.some(([c, d]) => Math.abs(a - c) <= near && Math.abs(b - d) <= near)) found.push([a, b]);
  });
  return found.length;
}

/** Above this share explained by the others, a column of a design says nothing of its own: our own. */
const mostExplained = 0.98;

/** False where one column of a design, the first being all ones, is all but made of the others. */
export function toldApart(design: readonly (readonly number[])[]): boolean {
  return design[0]!.every((_, j) => {
    if (j === 0) return true;
    const others = design.map((row) => row.filter((__, k) => k !== j));
    const column = design.map((row) => row[j]!);
    const { rank, rSquared } = fitLinear(others, column);
    return rank === others[0]!.length && rSquared <= mostExplained;
  });
}
