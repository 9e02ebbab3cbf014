// Courses have a place for every few pixels; a table of them takes about nine.

const steps = 8;

/** About nine of the places, evenly, both ends among them; all where there are no more. */
export function thinned<T>(all: readonly T[]): T[] {
  const step = Math.max(1, Math.ceil((all.length - 1) / steps));
  return all.filter((_, i) => i % step === 0 || i === all.length - 1);
}
