// A bounded store of what was worked out before, by a text that holds all that it hangs on.

export interface Kept<Value> {
  get(key: string): Value | undefined;
  set(key: string, value: Value): void;
}

/**
 * Values by their keys; those that were not asked for longest are let go. most: how large keys and values may be
 * together; size: of one value, in the same unit as the characters of a key. A key must tell all that its value hangs
 * on: then nobody can see whether a value was kept or worked out anew, and runs that interleave share it.
 * @example kept<number>(1000).get("nothing yet") // undefined
 */
export function kept<Value>(most: number, size: (value: Value) => number = () => 0): Kept<Value> {
  // Two generations: what is asked for moves to the younger, the elder goes as a whole.
  let young = new Map<string, Value>();
  let old = new Map<string, Value>();
  let filled = 0;
  const put = (key: string, value: Value): void => {
    if (!young.has(key)) filled += key.length + size(value);
    young.set(key, value);
    if (filled <= most / 2) return;
    old = young;
    young = new Map();
    filled = 0;
  };
  return {
    get(key) {
      const value = young.get(key);
      if (value !== undefined) return value;
      const before = old.get(key);
      if (before !== undefined) put(key, before);
      return before;
    },
    set: put,
  };
}
