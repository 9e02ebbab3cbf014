// What all draws of a spread hang on, as a text: where two texts are alike, so is every draw.

import type { Source } from "./source.ts";
import type { Spread } from "./spread.ts";

/** Longer ones cost more to compare than the draws that they would save. */
const longest = 100_000;

/** A number without doubt; undefined for −0, whose text would not tell it from 0. */
export function contentOfNumber(value: number): string | undefined {
  return Object.is(value, -0) ? undefined : `${value}`;
}

/** mean + Σ scale × score. Undefined where a source has no id: it is told apart by identity alone. */
export function contentOfTerms(
  mean: number,
  terms: readonly { readonly scale: number; readonly source: Source }[],
): string | undefined {
  const parts = [contentOfNumber(mean)];
  for (const { scale, source } of terms) {
    const factor = contentOfNumber(scale);
    if (source.id === undefined || factor === undefined) return undefined;
    parts.push(`${factor}*${JSON.stringify([source.id, source.kind, source.shape])}`);
  }
  return joined("sum", parts);
}

/** A function of spreads and numbers. as: names the function and all that it holds. */
export function contentOfCall(
  as: string,
  names: readonly string[] | undefined,
  inputs: readonly (Spread | number)[],
): string | undefined {
  const parts: (string | undefined)[] = names ? [JSON.stringify(names)] : [];
  for (const input of inputs) {
    const isExact = typeof input === "number" || input.sources.length === 0;
    const part = isExact ? contentOfNumber(typeof input === "number" ? input : input.value) : input.content;
    if (part === undefined) return undefined;
    parts.push(part);
  }
  return joined(JSON.stringify(as), parts);
}

function joined(head: string, parts: readonly (string | undefined)[]): string | undefined {
  let text = `${head}(`;
  for (const part of parts) {
    if (part === undefined || text.length > longest) return undefined;
    text += `${part};`;
  }
  return `${text})`;
}
