// Places of one text turned into those of another, wherever they stand in a value.

import type { Place } from "../issue.ts";

/** The value with every Place in it turned by `move`; what holds none is kept as it is. Values that stand twice stay one; those of asIs are not turned. */
export function relocated<T>(
  value: T,
  move: (place: Place) => Place,
  asIs: ReadonlySet<object> = new Set(),
): T {
  const done = new Map<object, unknown>();
  const turn = (one: unknown): unknown => {
    if (typeof one !== "object" || one === null || asIs.has(one)) return one;
    const before = done.get(one);
    if (before !== undefined) return before;
    const turned = Array.isArray(one)
      ? one.map(turn)
      : isPlace(one)
        ? move(one)
        : Object.fromEntries(Object.entries(one).map(([name, part]) => [name, turn(part)]));
    done.set(one, turned);
    return turned;
  };
  return turn(value) as T;
}

function isPlace(value: object): value is Place {
  return "file" in value && "line" in value && "offset" in value;
}
