// Texts as cases of fast-check: made by throwing dice, made smaller by taking out lines, then characters.

import fc from "fast-check";
import type { LogText } from "../../lib/index.ts";
import { type Dice, diceOf } from "./dice.ts";

/** A log and the CSV files beside it, or one text of another kind. */
export type Texts = readonly LogText[];

class TextCases extends fc.Arbitrary<Texts> {
  readonly #make: (dice: Dice) => Texts;

  constructor(make: (dice: Dice) => Texts) {
    super();
    this.#make = make;
  }

  override generate(random: fc.Random): fc.Value<Texts> {
    return new fc.Value(this.#make(diceOf(random)), undefined);
  }

  override canShrinkWithoutContext(value: unknown): value is Texts {
    return Array.isArray(value);
  }

  override shrink(texts: Texts): fc.Stream<fc.Value<Texts>> {
    return fc.stream(smaller(texts)).map((one) => new fc.Value(one, undefined));
  }
}

export const textCases = (make: (dice: Dice) => Texts): fc.Arbitrary<Texts> => new TextCases(make);

export const oneText = (make: (dice: Dice) => string): fc.Arbitrary<Texts> =>
  textCases((dice) => [{ name: "text", text: make(dice) }]);

function* smaller(texts: Texts): IterableIterator<Texts> {
  for (let k = 1; k < texts.length; k++) yield texts.filter((_, at) => at !== k);
  for (const [k, { name, text }] of texts.entries())
    for (const shorter of shorterTexts(text))
      yield texts.map((one, at) => (at === k ? { name, text: shorter } : one));
}

/** Characters that are tried one by one; a longer text has lost its lines by then. */
const FEW = 240;

function* shorterTexts(text: string): IterableIterator<string> {
  const lines = text.split(/(?<=\n|\r(?!\n))/);
  if (lines.length > 1) yield* without(lines);
  if (text.length <= FEW) yield* without([...text]);
  else yield* without(text.match(/[\s\S]{1,40}/g) ?? []);
}

/** Without one half, one quarter and so on down to single parts. */
function* without(parts: readonly string[]): IterableIterator<string> {
  for (let size = Math.ceil(parts.length / 2); ; size = Math.ceil(size / 2)) {
    for (let from = 0; from < parts.length; from += size)
      yield [...parts.slice(0, from), ...parts.slice(from + size)].join("");
    if (size <= 1) return;
  }
}
