// Batches told together: "W1 to W3", "W1, W4 and W6".

import { firstPlaces } from "../numbers/first-places.ts";

/** Names in the order of all; three or more that stand beside each other there become a run. */
export function namesTogether(names: readonly string[], all: readonly string[]): string {
  const placeOf = firstPlaces(all);
  const places = names.map((name) => placeOf.get(name) ?? -1).sort((a, b) => a - b);
  const runs: number[][] = [];
  for (const place of places) {
    const last = runs.at(-1);
    if (last && place === last.at(-1)! + 1) last.push(place);
    else runs.push([place]);
  }
  const parts = runs.flatMap((run) =>
    run.length > 2 ? [`${all[run[0]!]} to ${all[run.at(-1)!]}`] : run.map((place) => all[place]!),
  );
  return listed(parts);
}

/** "a", "a and b", "a, b and c". */
export function listed(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join("");
  return `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}
