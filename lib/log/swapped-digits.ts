// Which figure, with two neighbouring digits swapped, would make a sum agree with what it should be.

export interface Swap {
  /** Position in the list of figures. */
  readonly index: number;
  readonly typed: string;
  readonly swapped: string;
  /** Sum minus what it should be, after the swap. */
  readonly difference: number;
}

/**
 * The swap of two neighbouring digits (a decimal point between them doesn't part them) that brings the sum
 * Σ sign·figure nearest to zero; undefined if none brings it within `allowed` and to a third of what it was.
 * Each figure: its number as typed, its sign in the sum, and g per typed unit.
 *
 *     swappedDigits([{ text: "50.0", sign: -1, scale: 1 }, { text: "41.25", sign: 1, scale: 1 }, { text: "35.75", sign: 1, scale: 1 }], 0.5)
 *     // { index: 1, typed: "41.25", swapped: "14.25", difference: 0 }
 */
export function swappedDigits(
  figures: readonly { readonly text: string; readonly sign: 1 | -1; readonly scale: number }[],
  allowed: number,
): Swap | undefined {
  const sum = figures.reduce((total, { text, sign, scale }) => total + sign * scale * numberIn(text), 0);
  const limit = Math.min(allowed, Math.abs(sum) / 3);
  let best: Swap | undefined;
  figures.forEach(({ text, sign, scale }, index) => {
    const typed = numberText(text);
    for (const swapped of swapsOf(typed)) {
      const difference = sum + sign * scale * (Number(swapped) - Number(typed));
      if (Math.abs(difference) > limit + 1e-9) continue;
      if (!best || Math.abs(difference) < Math.abs(best.difference) - 1e-9) {
        best = { index, typed, swapped, difference: Number(difference.toFixed(9)) };
      }
    }
  });
  return best;
}

/** The plain number that a text begins with, e.g. "41.25" of "41.25 g ± 0.1 g"; "" if there is none. */
function numberText(text: string): string {
  return /^\s*(\d+(?:\.\d+)?)(?![\d/])/.exec(text)?.[1] ?? "";
}

function numberIn(text: string): number {
  return Number(numberText(text));
}

function swapsOf(typed: string): string[] {
  const places = [...typed].flatMap((sign, index) => (sign === "." ? [] : [index]));
  return places.slice(1).flatMap((second, order) => {
    const first = places[order] ?? 0;
    if (typed[first] === typed[second]) return [];
    const signs = [...typed];
    [signs[first], signs[second]] = [signs[second] ?? "", signs[first] ?? ""];
    return [signs.join("")];
  });
}
