// The jar: a layer of clay over sand, read against mixes of known clay in the same jar.

import type { Checked } from "../issue.ts";
import { issueMessage } from "../message.ts";
import { linearAt } from "../numbers/interpolate.ts";
import { amount, amounts } from "../quantity/amount.ts";
import { requireAboveZero, requireFromZero } from "./require.ts";

/**
 * Clay by a jar's layer, %: straight between the founder's own mixes of known clay, shaken and stood the same time in
 * the same jar, with the same salt. A layer is volume and not mass, and sodium bentonite swells many times over and
 * hardly settles: without mixes of one's own the jar says nothing.
 *
 * layerMm: > 0. mixes: two or more, each with clayPercent 0 or more and layerMm > 0; the clay is on the basis of the
 * mixes. Else RangeError. A layer outside the mixes, or mixes whose layers do not rise with clay: no value, and an
 * issue that says why.
 * Source: interpolation; swelling from memory.
 * @example
 * jarClayPercent({ layerMm: 10, mixes: [{ clayPercent: 4, layerMm: 6 }, { clayPercent: 8, layerMm: 14 }] }).value
 * // 6
 */
export function jarClayPercent({
  layerMm,
  mixes,
}: {
  readonly layerMm: number;
  readonly mixes: readonly { readonly clayPercent: number; readonly layerMm: number }[];
}): Checked<number> {
  requireAboveZero("jarClayPercent", { layerMm });
  if (mixes.length < 2) throw new RangeError("jarClayPercent: there must be two mixes or more");
  for (const mix of mixes) {
    requireAboveZero("jarClayPercent", { layerMm: mix.layerMm });
    requireFromZero("jarClayPercent", { clayPercent: mix.clayPercent });
  }
  const sorted = [...mixes].sort((a, b) => a.clayPercent - b.clayPercent);
  const layers = sorted.map((mix) => mix.layerMm);
  const clays = sorted.map((mix) => mix.clayPercent);
  const rises = sorted.every(
    (mix, i) => i === 0 || (mix.layerMm > layers[i - 1]! && mix.clayPercent > clays[i - 1]!),
  );
  if (!rises) return { issues: [jarMixesDoNotRise()] };
  const value = linearAt(layers, clays, layerMm);
  if (!Number.isNaN(value)) return { value, issues: [] };
  return {
    issues: [jarOutsideMixes(amount(layerMm, "mm", 10), amounts(layers[0]!, layers.at(-1)!, "mm", 10))],
  };
}

export const jarMixesDoNotRise = issueMessage("sand/jar-mixes-do-not-rise", "error", () => ({
  message: "The layers of the jar's own mixes do not rise with their clay, so none can be read off.",
  remedy: "Let all jars stand the same time, with the same salt and water, and measure again.",
}));

export const jarOutsideMixes = issueMessage(
  "sand/jar-outside-mixes",
  "error",
  (layer: string, range: string) => ({
    message: `A layer of ${layer} lies outside those of the jar's own mixes, ${range}.`,
    remedy: "Shake up a mix with less or more clay, so that the layer lies between two of them.",
  }),
);
