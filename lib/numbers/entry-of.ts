// A table of words, asked for a word that a founder typed.

/** What stands in the table under the name; not what every object has, such as "constructor" and "__proto__". */
export function entryOf<T>(table: { readonly [name: string]: T }, name: string): T | undefined {
  return Object.hasOwn(table, name) ? table[name] : undefined;
}
