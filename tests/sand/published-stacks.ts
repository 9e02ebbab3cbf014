// Full published sievings (grams or percent on the eleven sieves and the pan), for thinning.

import { elevenMm, type Passing } from "./plausible-sands.ts";

export interface PublishedStack {
  readonly name: string;
  readonly source: string;
  /** On Nos. 6, 12, 20, 30, 40, 50, 70, 100, 140, 200, 270 and in the pan. */
  readonly masses: readonly number[];
  /** The source's sand is no natural one. */
  readonly artificial?: boolean;
}

export const publishedStacks: readonly PublishedStack[] = [
  {
    name: "Korean textbook page",
    source: "Korean foundry textbook page, seen as an image",
    masses: [0, 0, 0, 0.05, 0.15, 0.65, 16.55, 25.05, 5.75, 0.85, 0.2, 0.25],
  },
  {
    name: "natural bonded sand",
    source: "American foundry handbooks (rows from memory; frame read in a Chinese entry)",
    masses: [0, 0, 0, 0, 0.2, 0.65, 1.2, 2.25, 8.55, 11.05, 10.9, 9.3],
  },
  {
    name: "Quevedo A",
    source: "Univ. Técnica Estatal de Quevedo, task sheet, about 2019",
    masses: [62, 43, 24, 33, 93, 83, 53, 28, 95, 13, 23, 8],
    artificial: true,
  },
  {
    name: "student sheet 2011",
    source: "Student lab sheet 'Sand Testing 2011' (masses)",
    masses: [0, 0, 0.3, 1.81, 39.55, 18.18, 5.56, 11.88, 13.9, 6.53, 1.92, 0.37],
  },
  {
    name: "construction sand",
    source: "Fine-stack construction sand, SCIRP article table; finer than No. 200 split evenly, our own",
    masses: [58, 189, 579, 260, 380, 133, 212, 56, 54, 16, 31.5, 31.5],
  },
];

/** Share finer, known at the eleven openings only: all that a published table tells. */
export function passingOf(masses: readonly number[]): Passing {
  const total = masses.reduce((all, mass) => all + mass, 0);
  const finer = new Map<number, number>();
  let coarser = 0;
  elevenMm.forEach((mm, k) => {
    coarser += masses[k]!;
    finer.set(mm, Math.max(0, 1 - coarser / total));
  });
  return (mm) => {
    const share = finer.get(mm);
    if (share === undefined) throw new RangeError(`a published sand is not known at ${mm} mm`);
    return share;
  };
}

/** Every way to own so many of the eleven sieves. */
export function thinnedStacks(fewest: number, most: number): number[][] {
  const stacks: number[][] = [];
  for (let bits = 1; bits < 1 << elevenMm.length; bits++) {
    const stack = elevenMm.filter((_, k) => bits & (1 << k));
    if (stack.length >= fewest && stack.length <= most) stacks.push(stack);
  }
  return stacks;
}
