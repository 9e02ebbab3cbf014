// A record whose members read a row of numbers, made once for each list of names.

export interface NamedRow {
  readonly row: Float64Array;
  /** The row by name; read-only, and filled anew for every draw. */
  readonly values: object;
  /** False while somebody works with it. */
  free: boolean;
}

const kept = new Map<string, NamedRow>();
/** More lists of names than a log's formulas have; beyond it the oldest are let go. */
const most = 256;

/**
 * The record of these names. Writing members by name for every draw takes several times as long as reading a row,
 * and an engine reads fast from objects of one make: so one record serves all functions of the same names.
 */
export function recordOf(names: readonly string[]): NamedRow {
  const key = JSON.stringify(names);
  const known = kept.get(key);
  if (known?.free) return known;
  const made = madeOf(names);
  if (!known) {
    if (kept.size >= most) kept.delete(kept.keys().next().value!);
    kept.set(key, made);
  }
  return made;
}

function madeOf(names: readonly string[]): NamedRow {
  const row = new Float64Array(names.length);
  const values = {};
  names.forEach((name, k) => {
    Object.defineProperty(values, name, { enumerable: true, get: () => row[k]! });
  });
  return { row, values, free: true };
}
