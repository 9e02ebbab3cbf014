// Where each of a list first stands in it.

/**
 * Each item with its index, the first where it stands twice: indexOf for a long list that is asked often.
 * Source: its definition.
 * @example firstPlaces(["a", "b", "a"]).get("a") // 0
 */
export function firstPlaces<Item>(items: readonly Item[]): ReadonlyMap<Item, number> {
  const places = new Map<Item, number>();
  items.forEach((item, i) => {
    if (!places.has(item)) places.set(item, i);
  });
  return places;
}
