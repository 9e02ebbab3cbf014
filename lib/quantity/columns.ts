// Columns to work in, used again by whoever draws next: thousands of figures would each keep their own.

const free = new Map<number, Float64Array[]>();
/** Of one length: the inputs of a figure, and of those within it. */
const most = 64;

/** A column with anything in it. One that is not given back is only lost. */
export function borrowed(length: number): Float64Array {
  return free.get(length)?.pop() ?? new Float64Array(length);
}

/** Whoever gives a column back must not read or write it any more. */
export function giveBack(column: Float64Array): void {
  const own = free.get(column.length);
  if (!own) free.set(column.length, [column]);
  else if (own.length < most) own.push(column);
}
