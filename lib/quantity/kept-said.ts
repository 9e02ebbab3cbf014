// What draws said of spreads of known content: an edit of one reading leaves most figures of a page as they were.

import { kept } from "./kept.ts";

/** Characters: all figures of two thousand batches, in each of the store's halves. */
const SAID = 80_000_000;

const said = kept<unknown>(SAID, () => 40);

/** what: names what is made of the draws. key: all that they hang on; undefined where nobody can tell, and it is made anew. */
export function keptOr<T extends {}>(key: string | undefined, what: string, make: () => T): T {
  if (key === undefined) return make();
  const whole = `${what} ${key}`;
  const before = said.get(whole) as T | undefined;
  if (before !== undefined) return before;
  const made = make();
  said.set(whole, made);
  return made;
}
