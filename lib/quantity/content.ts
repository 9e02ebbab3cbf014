// What all draws of a spread hang on, as a text: where two texts are alike, so is every draw.

import type { Source } from "./source.ts";
import { isSpread, type Spread } from "./spread.ts";

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

/** What hangs on parts whose contents are known. as: names what is made of them, and all else that it holds. */
export function contentOfParts(as: string, parts: readonly (string | undefined)[]): string | undefined {
  return joined(JSON.stringify(as), parts);
}

/**
 * Plain data that may hold spreads: records, lists, texts, numbers. Of a spread its draws count and nothing beside them.
 * Undefined where a part cannot be told.
 */
export function contentOf(value: unknown): string | undefined {
  if (typeof value === "number") return contentOfNumber(value);
  if (typeof value === "string") return JSON.stringify(value);
  if (typeof value !== "object" || value === null)
    return typeof value === "function" ? undefined : `${value}`;
  if (isSpread(value)) return value.sources.length === 0 ? contentOfNumber(value.value) : value.content;
  if (Array.isArray(value)) return joined("list", value.map(contentOf));
  const parts = Object.entries(value).flatMap(([name, part]) => [JSON.stringify(name), contentOf(part)]);
  return joined("record", parts);
}

function joined(head: string, parts: readonly (string | undefined)[]): string | undefined {
  let text = `${head}(`;
  for (const part of parts) {
    if (part === undefined || text.length > longest) return undefined;
    text += `${part};`;
  }
  return `${text})`;
}
