// The sentences that say where the batches stand: plain strings in.

import { phraseMessage } from "../message.ts";
import { listed } from "./batch-names.ts";
import type { Tone } from "./finding.ts";
import { findingMessage } from "./finding-message.ts";
import type { Sides } from "./sides.ts";

export const decidesNothing = phraseMessage(
  "standing/decides-nothing",
  () => "No source was read that recommends this range: it decides nothing by itself.",
);
export const curveDecidesNothing = phraseMessage(
  "standing/curve-decides-nothing",
  () => "A typical curve is a guide: it decides nothing, and your own batches outrank it.",
);

/** unit, basis: "" where there is none; notes: practice, what its clay is, how it is known. */
export const rangeGiven = phraseMessage(
  "standing/range-given",
  (range: string, unit: string, basis: string, metal: string, bond: string, notes: readonly string[]) =>
    `${[range, unit, basis].filter((word) => word !== "").join(" ")}${basis.includes(",") ? "," : ""} is given for ${metal} in ${bond} sand${notes.length > 0 ? ` (${notes.join(", ")})` : ""}`,
);

export const curveTypical = phraseMessage(
  "standing/curve-typical",
  (range: string, unit: string, curve: string) =>
    `${[range, unit].join(" ").trimEnd()} is typical ${curve}, at each batch's own figures`,
);

/** "of W1 to W3 lies below, of W4 within, of W5 above; W6 cannot be told". */
function courses({ untold, ...sides }: Sides): string {
  const lie = Object.entries(sides)
    .filter(([, batches]) => batches !== "")
    .map(([side, batches], k) => `of ${batches}${k === 0 ? " lies" : ""} ${side}`)
    .join(", ");
  if (untold === "") return lie;
  return lie === "" ? `of ${untold} cannot be told` : `${lie}; ${untold} cannot be told`;
}

export const stands = findingMessage(
  "standing/range",
  ["good", "note", "doubt"],
  (
    property: string,
    range: string,
    sides: Sides,
    because: readonly string[],
    source: string,
    tone: Tone,
  ) => ({
    tone,
    text: `${range}: ${property} ${courses(sides)}.`,
    because,
    formula: "chance = Φ((edge − x)/s) or 1 less that, s = half of the 95 % interval / 1.96",
    source,
  }),
);

export const sidesAreSure = phraseMessage(
  "standing/sides-are-sure",
  () => "By its own ±, each that lies on one side does so with a chance of 97 in 100 or more.",
);

/** chance: in 100; "99+" and "1-" where it is more, or less, than that. */
export const mayLieWithin = phraseMessage(
  "standing/may-lie-within",
  (chances: readonly { readonly batches: string; readonly chance: string }[]) =>
    `Chance that it lies within: ${listed(chances.map(({ batches, chance }) => `${batches} ${inWords(chance)} in 100`))}. A narrower ± would tell.`,
);

export const lessSure = phraseMessage(
  "standing/less-sure",
  (batches: string) => `The ± of ${batches} is a lower bound, so it is less sure than that.`,
);

export const byFigureAlone = phraseMessage(
  "standing/by-figure-alone",
  (batches: string) => `${batches}: by the figure alone, since its ± is not known.`,
);

/** "W1 to W3 below, W4 within, W5 cannot be told". */
export const otherRange = phraseMessage("standing/other-range", (range: string, sides: Sides) => {
  const short = Object.entries(sides)
    .filter(([, batches]) => batches !== "")
    .map(([side, batches]) => `${batches} ${side === "untold" ? "cannot be told" : side}`);
  return `${range}: ${short.join(", ")}.`;
});

export const noCurveFor = phraseMessage("standing/no-curve", (curve: string, batches: string, why: string) =>
  `${batches}: no typical ${curve}. ${why}`.trimEnd(),
);

export const finenessWanted = phraseMessage(
  "standing/fineness-wanted",
  (ranges: string) =>
    `Usual ranges of permeability go with a fineness number (those known: ${ranges}); sieve the sand, and the batches are held against them.`,
);

const inWords = (chance: string): string => chance.replace("+", " or more").replace("-", " or fewer");
