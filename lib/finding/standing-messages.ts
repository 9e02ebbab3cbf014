// The sentences that say where the batches stand: plain strings and places in.

import { listed, namesTogether } from "./batch-names.ts";
import type { Tone } from "./finding.ts";
import { findingMessage } from "./finding-message.ts";
import type { Placed, Where } from "./placed.ts";

export const decidesNothing = "No source was read that recommends this range: it decides nothing by itself.";
export const curveDecidesNothing =
  "A typical curve is a guide: it decides nothing, and your own batches outrank it.";

const sides: readonly Where[] = ["below", "within", "above", "not told"];

/** "of W1 to W3 lies below, of W4 within, of W5 above; W6 cannot be told". */
function courses(placed: readonly Placed[], names: readonly string[]): string {
  const parts = sides.flatMap((side) => {
    const there = placed.filter(({ where }) => where === side).map(({ batch }) => batch);
    return there.length === 0 ? [] : [{ side, batches: namesTogether(there, names) }];
  });
  const lie = parts
    .filter(({ side }) => side !== "not told")
    .map(({ side, batches }, k) => `of ${batches}${k === 0 ? " lies" : ""} ${side}`)
    .join(", ");
  const unsure = parts.find(({ side }) => side === "not told")?.batches;
  if (unsure === undefined) return lie;
  return lie === "" ? `of ${unsure} cannot be told` : `${lie}; ${unsure} cannot be told`;
}

/** "W1 to W3 below, W4 within, W5 cannot be told". */
function inShort(placed: readonly Placed[], names: readonly string[]): string {
  return sides
    .flatMap((side) => {
      const there = placed.filter(({ where }) => where === side).map(({ batch }) => batch);
      if (there.length === 0) return [];
      return [`${namesTogether(there, names)} ${side === "not told" ? "cannot be told" : side}`];
    })
    .join(", ");
}

export const stands = findingMessage(
  "standing/range",
  ["good", "note", "doubt", "error"],
  (
    property: string,
    range: string,
    placed: readonly Placed[],
    names: readonly string[],
    tone: Tone,
    because: readonly string[],
    source: string,
  ) => ({
    tone,
    text: `${range}: ${property} ${courses(placed, names)}.`,
    because,
    formula: "chance = Φ((edge − x)/s) or 1 less that, s = half of the 95 % interval / 1.96",
    source,
  }),
);

/** How sure, by the ± of each batch; nothing where no batch has one. */
export function howSure(placed: readonly Placed[], names: readonly string[]): readonly string[] {
  const known = placed.filter(({ chance }) => chance !== undefined);
  const apart = known.filter(({ where }) => where === "not told");
  const sure = known.filter(({ where }) => where !== "not told");
  const bare = placed.filter(({ chance }) => chance === undefined).map(({ batch }) => batch);
  const low = known.filter(({ atLeast }) => atLeast).map(({ batch }) => batch);
  return [
    ...(sure.length > 0
      ? ["By its own ±, each that lies on one side does so with a chance of 97 in 100 or more."]
      : []),
    ...(apart.length > 0
      ? [`Chance that it lies within: ${chances(apart, names)}. A narrower ± would tell.`]
      : []),
    ...(low.length > 0
      ? [`The ± of ${namesTogether(low, names)} is a lower bound, so it is less sure than that.`]
      : []),
    ...(bare.length > 0
      ? [`${namesTogether(bare, names)}: by the figure alone, since its ± is not known.`]
      : []),
  ];
}

/** Batches of one chance together. */
function chances(apart: readonly Placed[], names: readonly string[]): string {
  const groups = new Map<string, string[]>();
  for (const { batch, chance } of apart) {
    const text = in100(chance!);
    groups.set(text, [...(groups.get(text) ?? []), batch]);
  }
  return listed([...groups].map(([text, batches]) => `${namesTogether(batches, names)} ${text} in 100`));
}

export const otherRange = (range: string, placed: readonly Placed[], names: readonly string[]): string =>
  `${range}: ${inShort(placed, names)}.`;

export const curveSays = (range: string, placed: readonly Placed[], names: readonly string[]): string =>
  `${range}: ${inShort(placed, names)}.`;

export const noCurveFor = (
  curve: string,
  batches: readonly string[],
  names: readonly string[],
  why: string,
): string => `${namesTogether(batches, names)}: no typical ${curve}. ${why}`.trimEnd();

export const finenessWanted = (ranges: string): string =>
  `Usual ranges of permeability go with a fineness number (those known: ${ranges}); sieve the sand, and the batches are held against them.`;

function in100(chance: number): string {
  const whole = Math.round(100 * chance);
  return whole >= 99 ? "99 or more" : whole <= 1 ? "1 or fewer" : String(whole);
}
