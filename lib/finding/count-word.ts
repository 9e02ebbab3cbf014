// A small count at the start of a sentence.

/** "Four"; from eight on the figure. */
export function countWord(count: number): string {
  return ["No", "One", "Two", "Three", "Four", "Five", "Six", "Seven"][count] ?? String(count);
}
