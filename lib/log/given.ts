// Parts of a record, without those that were not given.

export type Given<T> = { readonly [Name in keyof T]?: Exclude<T[Name], undefined> };

export function given<T extends object>(parts: T): Given<T> {
  return Object.fromEntries(Object.entries(parts).filter(([, part]) => part !== undefined)) as Given<T>;
}
