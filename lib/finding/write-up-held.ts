// What the figures of a log say was held, and what was varied, beside what the founder says.

import type { Batch } from "../log/batch.ts";
import type { Measured } from "../log/figure-types.ts";
import { namesTogether } from "./batch-names.ts";
import * as say from "./write-up-messages.ts";

/** Something that every batch may say of itself, as it was typed. */
interface Asked {
  readonly what: string;
  readonly of: (batch: Batch) => Measured | undefined;
}

const asked: readonly Asked[] = [
  { what: "sand", of: ({ recipe }) => recipe?.sandKg },
  { what: "clay from the bag", of: ({ recipe }) => recipe?.clayKg },
  { what: "additive", of: ({ recipe }) => recipe?.additiveKg },
  { what: "water", of: ({ recipe }) => recipe?.waterKg },
  { what: "moisture of the sand", of: ({ recipe }) => recipe?.sandMoisturePercent },
  { what: "moisture of the clay", of: ({ recipe }) => recipe?.clayMoisturePercent },
  { what: "mulled", of: ({ mulledMin }) => mulledMin },
  { what: "stood", of: ({ stoodMin }) => stoodMin },
];

export interface HeldLine {
  readonly text: string;
  /** True where most batches agree and a few do not: worth a look, for nobody may have meant it. */
  readonly but: boolean;
}

/**
 * A line for each thing that two batches or more say: alike in all, alike in most and other in one or two, or from the
 * least to the most. Alike is alike in the field's unit, however it was typed.
 */
export function heldLines(batches: readonly Batch[]): readonly HeldLine[] {
  const names = batches.map(({ name }) => name);
  return asked.flatMap(({ what, of }): HeldLine[] => {
    const said = batches.flatMap((batch) => {
      const one = of(batch);
      return one ? [{ name: batch.name, one }] : [];
    });
    if (said.length < 2) return [];
    const silent = names.filter((name) => !said.some((other) => other.name === name));
    const notSaid = silent.length === 0 ? "" : namesTogether(silent, names);
    const groups = new Map<number, typeof said>();
    for (const entry of said) {
      groups.set(entry.one.value, [...(groups.get(entry.one.value) ?? []), entry]);
    }
    const [most, ...others] = [...groups.values()].sort((a, b) => b.length - a.length);
    const usual = most![0]!.one.text;
    if (others.length === 0) return [{ text: say.heldAlike(what, usual, notSaid), but: false }];
    const odd = others.flat();
    if (odd.length <= 2 && odd.length <= said.length / 4) {
      const list = odd.map(({ name, one }) => `${name} (${one.text})`).join(", ");
      return [{ text: say.heldBut(what, usual, list, notSaid), but: true }];
    }
    const sorted = said.map(({ one }) => one).sort((a, b) => a.value - b.value);
    return [{ text: say.varied(what, sorted[0]!.text, sorted.at(-1)!.text, notSaid), but: false }];
  });
}
