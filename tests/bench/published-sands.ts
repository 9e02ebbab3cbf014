// Published sievings on the eleven sieves and the pan (grams or percent), whose fineness number is known.
// Sources and tags as in tests/reference/README.md.

import { elevenMm, type Passing } from "../sand/plausible-sands.ts";

interface PublishedSand {
  readonly name: string;
  readonly held: readonly number[];
}

export const publishedSands: readonly PublishedSand[] = [
  // Korean foundry textbook page, percent.
  { name: "Korean page", held: [0, 0, 0, 0.1, 0.3, 1.3, 33.1, 50.1, 11.5, 1.7, 0.4, 0.5] },
  // American foundry handbooks, natural bonded sand, percent; rows from memory.
  { name: "natural bonded", held: [0, 0, 0, 0, 0.4, 1.3, 2.4, 4.5, 17.1, 22.1, 21.8, 18.6] },
  // A. Pérez Oñate, task sheet, Univ. Técnica Estatal de Quevedo, about 2019, grams.
  { name: "Quevedo sheet", held: [62, 43, 24, 33, 93, 83, 53, 28, 95, 13, 23, 8] },
  // Student sheet "Sand Testing 2011", grams.
  { name: "student sheet", held: [0, 0, 0.3, 1.81, 39.55, 18.18, 5.56, 11.88, 13.9, 6.53, 1.92, 0.37] },
];

/** Share finer, known at the eleven openings only. */
export function passingOf({ held }: PublishedSand): Passing {
  const total = held.reduce((a, b) => a + b, 0);
  const finer = new Map<number, number>();
  let coarser = 0;
  elevenMm.forEach((mm, k) => {
    coarser += held[k]!;
    finer.set(mm, Math.max(0, 1 - coarser / total));
  });
  return (mm) => {
    const share = finer.get(mm);
    if (share === undefined) throw new RangeError(`a published sand is not known at ${mm} mm`);
    return share;
  };
}

/** Every way to own so many of the eleven sieves. */
export function stacksOf(fewest: number, most: number): number[][] {
  const stacks: number[][] = [];
  for (let bits = 1; bits < 1 << elevenMm.length; bits++) {
    const stack = elevenMm.filter((_, k) => bits & (1 << k));
    if (stack.length >= fewest && stack.length <= most) stacks.push(stack);
  }
  return stacks;
}
