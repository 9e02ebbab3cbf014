// Two lists of texts set side by side: which of the one stand in the other, in order.

/** A pair of places, from 0; one of them is missing where the text stands in the other list only. */
export type Pair = readonly [before: number | undefined, after: number | undefined];

/** Above this many comparisons, texts that stand once in both lists part them first. */
const MOST_COMPARED = 4_000_000;

/**
 * The longest common order of two lists, with what is only in one of them in between: those of the first before those of
 * the second. Long lists are parted at texts that stand once in both.
 * @example aligned(["a", "b", "c"], ["a", "c", "d"]) // [[0, 0], [1, undefined], [2, 1], [undefined, 2]]
 */
export function aligned(before: readonly string[], after: readonly string[]): Pair[] {
  const pairs: Pair[] = [];
  within(before, after, [0, before.length], [0, after.length], pairs);
  return pairs;
}

type Range = readonly [from: number, to: number];

function within(a: readonly string[], b: readonly string[], [a0, a1]: Range, [b0, b1]: Range, to: Pair[]) {
  let [i, j] = [a0, b0];
  while (i < a1 && j < b1 && a[i] === b[j]) to.push([i++, j++]);
  let [aEnd, bEnd] = [a1, b1];
  while (aEnd > i && bEnd > j && a[aEnd - 1] === b[bEnd - 1]) [aEnd, bEnd] = [aEnd - 1, bEnd - 1];
  if (i < aEnd && j < bEnd) middle(a, b, [i, aEnd], [j, bEnd], to);
  else {
    for (; i < aEnd; i++) to.push([i, undefined]);
    for (; j < bEnd; j++) to.push([undefined, j]);
  }
  for (let k = 0; aEnd + k < a1; k++) to.push([aEnd + k, bEnd + k]);
}

function middle(a: readonly string[], b: readonly string[], inA: Range, inB: Range, to: Pair[]): void {
  const [aCount, bCount] = [inA[1] - inA[0], inB[1] - inB[0]];
  const small = aCount * bCount <= MOST_COMPARED;
  const fixed = small ? longestOrder(a, b, inA, inB) : rising(onceInBoth(a, b, inA, inB));
  let [i, j] = [inA[0], inB[0]];
  const upTo = (x: number, y: number): void => {
    if (!small && fixed.length > 0) within(a, b, [i, x], [j, y], to);
    else {
      for (; i < x; i++) to.push([i, undefined]);
      for (; j < y; j++) to.push([undefined, j]);
    }
  };
  for (const [x, y] of fixed) {
    upTo(x, y);
    to.push([x, y]);
    [i, j] = [x + 1, y + 1];
  }
  upTo(inA[1], inB[1]);
}

/** By the usual table of lengths. */
function longestOrder(a: readonly string[], b: readonly string[], inA: Range, inB: Range): Range[] {
  const width = inB[1] - inB[0] + 1;
  const lengths = new Int32Array((inA[1] - inA[0] + 1) * width);
  const at = (i: number, j: number): number => lengths[(i - inA[0]) * width + j - inB[0]]!;
  for (let i = inA[1] - 1; i >= inA[0]; i--) {
    for (let j = inB[1] - 1; j >= inB[0]; j--) {
      lengths[(i - inA[0]) * width + j - inB[0]] =
        a[i] === b[j] ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
    }
  }
  const found: Range[] = [];
  let [i, j] = [inA[0], inB[0]];
  while (i < inA[1] && j < inB[1]) {
    if (a[i] === b[j]) found.push([i++, j++]);
    else if (at(i + 1, j) >= at(i, j + 1)) i++;
    else j++;
  }
  return found;
}

function onceInBoth(a: readonly string[], b: readonly string[], inA: Range, inB: Range): Range[] {
  const places = (list: readonly string[], [from, to]: Range): Map<string, number> => {
    const found = new Map<string, number>();
    for (let i = from; i < to; i++) found.set(list[i]!, found.has(list[i]!) ? -1 : i);
    return found;
  };
  const inSecond = places(b, inB);
  return [...places(a, inA)].flatMap(([text, i]): Range[] => {
    const j = inSecond.get(text) ?? -1;
    return i < 0 || j < 0 ? [] : [[i, j]];
  });
}

/** The longest part of the pairs that rises in both places. */
function rising(pairs: readonly Range[]): Range[] {
  const ends: number[] = [];
  const before: number[] = [];
  pairs.forEach(([, j], k) => {
    let [low, high] = [0, ends.length];
    while (low < high) {
      const mid = (low + high) >> 1;
      if (pairs[ends[mid]!]![1] < j) low = mid + 1;
      else high = mid;
    }
    before[k] = low === 0 ? -1 : ends[low - 1]!;
    ends[low] = k;
  });
  const found: Range[] = [];
  for (let k = ends.at(-1) ?? -1; k >= 0; k = before[k]!) found.unshift(pairs[k]!);
  return found;
}
