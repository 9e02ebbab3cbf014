// The grammar of a log's parts: groups of keys, lists and named entries, each with a share of wrong ones.

import type { Dice } from "./dice.ts";
import { hostile, type Kind, scalar } from "./make-scalars.ts";

export type Part =
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "map"; readonly entries: readonly (readonly [key: string, value: Part])[] }
  | { readonly kind: "list"; readonly items: readonly Part[] };

/** wrong: how many values in a hundred are. */
export type Make = (dice: Dice, wrong: number) => Part;

export const text = (words: string): Part => ({ kind: "text", text: words });
export const a =
  (kind: Kind): Make =>
  (dice, wrong) =>
    text(scalar(dice, kind, wrong));
export const oneOf =
  (...words: readonly string[]): Make =>
  (dice, wrong) =>
    text(dice.chance(wrong) ? dice.pick(hostile) : dice.pick(words));
export const either =
  (...makes: readonly Make[]): Make =>
  (dice, wrong) =>
    dice.pick(makes)(dice, wrong);

export type Field = readonly [key: string, make: Make, percent?: number];

/** Each key so many times in a hundred, always unless said; sometimes out of order, unknown, misspelt or twice. */
export const group =
  (...fields: readonly Field[]): Make =>
  (dice, wrong) => {
    const entries = fields
      .filter(([, , percent = 100]) => dice.chance(percent))
      .map(([key, make]): [string, Part] => [keyOf(dice, key, wrong), swapped(dice, make, wrong)]);
    if (dice.chance(wrong / 2)) entries.push([dice.pick(hostile), text(dice.pick(hostile))]);
    if (dice.chance(wrong / 2) && entries.length > 0) entries.push(dice.pick(entries));
    if (dice.chance(wrong)) entries.reverse();
    return { kind: "map", entries };
  };

export const listOf =
  (make: Make, least: number, most: number): Make =>
  (dice, wrong) => ({
    kind: "list",
    items: Array.from({ length: dice.integer(least, most) }, () => swapped(dice, make, wrong)),
  });

export const named =
  (names: readonly string[], make: Make, percent = 60): Make =>
  (dice, wrong) => {
    const chosen = dice.some(names, percent);
    return {
      kind: "map",
      entries: (chosen.length > 0 ? chosen : names.slice(0, 1)).map((name) => [
        keyOf(dice, name, wrong),
        swapped(dice, make, wrong),
      ]),
    };
  };

/** A value of another form now and then: a list for a map, a text for a list, nothing at all. */
function swapped(dice: Dice, make: Make, wrong: number): Part {
  if (!dice.chance(wrong / 3)) return make(dice, wrong);
  const made = make(dice, wrong);
  return dice.pick<() => Part>([
    () => text(dice.pick(hostile)),
    () => text(""),
    () => ({ kind: "list", items: [made, made] }),
    () => ({ kind: "list", items: [] }),
    () => ({ kind: "map", entries: [] }),
    () => ({ kind: "map", entries: [[dice.pick(hostile), made]] }),
  ])();
}

function keyOf(dice: Dice, key: string, wrong: number): string {
  if (!dice.chance(wrong / 2)) return key;
  const at = dice.integer(0, key.length);
  return dice.pick<() => string>([
    () => key.toUpperCase(),
    () => key.replaceAll(" ", "_"),
    () => key.slice(0, at) + key.slice(at + 1),
    () => `${key.slice(0, at)}x${key.slice(at)}`,
    () => `"${key}"`,
    () => `${key} `,
    () => dice.pick(hostile),
  ])();
}
