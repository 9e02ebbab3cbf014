// Which batches lie on which side of a range, in names.

import { namesTogether } from "./batch-names.ts";
import type { Placed, Where } from "./placed.ts";

/** Batches on each side, as printed: "W1 to W3"; empty where none. */
export interface Sides {
  readonly below: string;
  readonly within: string;
  readonly above: string;
  /** Within its ± it may lie on either side of an edge. */
  readonly untold: string;
}

export function sidesOf(placed: readonly Placed[], names: readonly string[]): Sides {
  const on = (side: Where): string =>
    namesTogether(
      placed.filter(({ where }) => where === side).map(({ batch }) => batch),
      names,
    );
  return { below: on("below"), within: on("within"), above: on("above"), untold: on("not told") };
}

/** Batches with their chance of lying within, those of one chance together; chance: "60" of 100. */
export function chancesWithin(
  placed: readonly Placed[],
  names: readonly string[],
): readonly { readonly batches: string; readonly chance: string }[] {
  const groups = new Map<string, string[]>();
  for (const { batch, chance, where } of placed) {
    if (chance === undefined || where !== "not told") continue;
    const text = in100(chance);
    groups.set(text, [...(groups.get(text) ?? []), batch]);
  }
  return [...groups].map(([chance, batches]) => ({ batches: namesTogether(batches, names), chance }));
}

function in100(chance: number): string {
  const whole = Math.round(100 * chance);
  return whole >= 99 ? "99+" : whole <= 1 ? "1-" : String(whole);
}
