// Which known word a misspelt one most likely stands for.

/**
 * The known word with the fewest slips (letter added, left out, changed, or two neighbours swapped) from the word,
 * regardless of case; undefined when even the nearest needs more slips than a third of the word's letters, at least one.
 * Of equally near words the first. A word longer than 60 characters is not compared.
 * Source of the distance: F. J. Damerau, Communications of the ACM 7 (1964) 171–176, in its restricted form.
 * @example nearest("sievign", ["sand", "sieving"]) // "sieving"
 */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  if (word.length > 60) return undefined;
  let best: string | undefined;
  let least = Math.max(1, Math.floor(word.length / 3)) + 1;
  for (const candidate of known) {
    const slips = slipsBetween(word.toLowerCase(), candidate.toLowerCase());
    if (slips < least) {
      least = slips;
      best = candidate;
    }
  }
  return best;
}

/**
 * Least number of slips that turns one text into the other.
 * @example slipsBetween("grian", "grain") // 1
 */
export function slipsBetween(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = last[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      row[j] = Math.min(row[j - 1]! + 1, last[j]! + 1, changed);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        row[j] = Math.min(row[j]!, beforeLast[j - 2]! + 1);
      }
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length]!;
}
