// Back from the codes that formulas compare to the texts that they stand for.

import { textCode } from "./formula-text.ts";
import type { InputNode } from "./inputs.ts";
import type { Sheet } from "./sheet-types.ts";

export type TextOf = (code: number) => string;

/** formulas: their quoted texts. The table is made when the first code is asked for. */
export function textsKnown(
  inputs: Iterable<InputNode>,
  values: Iterable<{ readonly text?: string }>,
  formulas: readonly string[],
  others: readonly Sheet[],
): TextOf {
  let table: Map<number, string> | undefined;
  const make = (): Map<number, string> => {
    const texts = [
      ...[...inputs].flatMap((input) => input.texts),
      ...[...values].flatMap(({ text }) => text ?? []),
      ...formulas.flatMap((formula) =>
        [...formula.matchAll(/"([^"]*)"|'([^']*)'/g)].map((m) => m[1] ?? m[2]!),
      ),
      ...others.flatMap((other) => other.columns.flatMap((column) => column.texts)),
    ];
    return new Map(texts.map((text) => [textCode(text), text.normalize("NFC").trim()]));
  };
  return (code) => {
    table ??= make();
    return table.get(code) ?? "";
  };
}
