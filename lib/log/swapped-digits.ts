// Which figure, with two neighbouring digits swapped, would make a sum agree with what it should be.

export interface Figure {
  /** As typed; only a plain number with perhaps a unit ("41.25 g") has digits to swap. */
  readonly text: string;
  /** In the unit of the sum. */
  readonly value: number;
  readonly sign: 1 | -1;
}

export interface Swap {
  /** Position in the list of figures. */
  readonly index: number;
  readonly typed: string;
  readonly swapped: string;
  /** The sum after the swap. */
  readonly difference: number;
}

/**
 * The swaps of two neighbouring digits (a decimal point between them doesn't part them) that bring the sum
 * Σ sign·value, which should be zero, nearest to it: the best, and any that does as well.
 * None if none brings the sum within `allowed`, ≥ 0 in the unit of the values, and to a third of what it was.
 *
 *     swappedDigits([
 *       { text: "50.0", value: 50, sign: -1 }, { text: "41.25", value: 41.25, sign: 1 }, { text: "35.75", value: 35.75, sign: 1 },
 *     ], 0.5)   // [{ index: 1, typed: "41.25", swapped: "14.25", difference: 0 }]
 */
export function swappedDigits(figures: readonly Figure[], allowed: number): Swap[] {
  const sum = figures.reduce((total, { value, sign }) => total + sign * value, 0);
  const limit = Math.min(allowed, Math.abs(sum) / 3);
  const swaps: Swap[] = [];
  figures.forEach(({ text, value, sign }, index) => {
    const typed = figureTyped(text);
    if (typed === undefined || Number(typed) === 0) return;
    for (const swapped of swapsOf(typed)) {
      const difference = sum + sign * (value / Number(typed)) * (Number(swapped) - Number(typed));
      if (Math.abs(difference) > limit + 1e-9) continue;
      swaps.push({ index, typed, swapped, difference: Number(difference.toFixed(9)) });
    }
  });
  const least = Math.min(...swaps.map((swap) => Math.abs(swap.difference)));
  return swaps.filter((swap) => Math.abs(swap.difference) <= least + 1e-9);
}

/** The number of a plain figure with perhaps a unit and a ±, as typed. */
export function figureTyped(text: string): string | undefined {
  return /^\s*(\d+(?:\.\d+)?)\s*(?:[a-z%]+\s*)?(?:(?:±|\+\/?-).*)?$/i.exec(text)?.[1];
}

function swapsOf(typed: string): string[] {
  const places = [...typed].flatMap((sign, index) => (sign === "." ? [] : [index]));
  return places.slice(1).flatMap((second, order) => {
    const first = places[order] ?? 0;
    if (typed[first] === typed[second]) return [];
    const signs = [...typed];
    [signs[first], signs[second]] = [signs[second] ?? "", signs[first] ?? ""];
    const swapped = signs.join("");
    // Nobody writes 050 for 500.
    return /^0\d/.test(swapped) ? [] : [swapped];
  });
}
