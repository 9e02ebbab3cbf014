// Columns of draws by what they hang on, from run to run.

import { kept } from "./kept.ts";

/** Values that a store counts in characters of two bytes: 24 MB of columns. */
const columns = kept<Float64Array>(12_000_000, (column) => 4 * column.length);

/** A column that hangs on nothing but what its name says; for reading. */
export function keptColumn(name: string, make: () => Float64Array): Float64Array {
  const before = columns.get(name);
  if (before) return before;
  const made = make();
  columns.set(name, made);
  return made;
}
