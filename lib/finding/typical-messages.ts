// The sentences that hold a batch against a typical curve or a usual range, figure first: plain strings in.

import type { Finding } from "./finding.ts";

/** What every sentence here is told: whose figure, of what, and what it is held against. */
export interface Held {
  readonly batch: string;
  readonly property: string;
  /** "62 ± 7 kPa". */
  readonly figure: string;
  /** "40 to 90 kPa, typical at 8 % bentonite"; a range is named with its metal and bond. */
  readonly range: string;
  readonly source: string;
}

const model = "A typical curve is a guide: it decides nothing, and your own batches outrank it.";
const share = (percent: string, where: string): string =>
  `By its ±, the chance that it lies ${where} is ${percent} %.`;

export const onCurve = (
  { batch, property, figure, range, source }: Held,
  inside: string,
  holds: string,
): Finding => ({
  code: "typical/on-curve",
  tone: "note",
  text: `${figure}: the ${property} of ${batch} lies within ${range}.`,
  because: [share(inside, "inside"), `The range holds: ${holds}.`, model],
  formula: "chance inside = Φ((high − x)/s) − Φ((low − x)/s), s = half of the 95 % interval / 1.96",
  source,
});

export const offCurve = (
  { batch, property, figure, range, source }: Held,
  side: "above" | "below",
  beyond: string,
  holds: string,
): Finding => ({
  code: "typical/off-curve",
  tone: "note",
  text: `${figure}: the ${property} of ${batch} lies ${side} ${range}.`,
  because: [share(beyond, side), `The range holds: ${holds}.`, model],
  formula: "chance = Φ((edge − x)/s) or 1 less that, s = half of the 95 % interval / 1.96",
  source,
});

export const acrossCurve = (
  { batch, property, figure, range, source }: Held,
  edge: string,
  inside: string,
  holds: string,
): Finding => ({
  code: "typical/across-curve",
  tone: "note",
  text: `${figure}: whether the ${property} of ${batch} lies within ${range}, cannot be told, since the edge at ${edge} is within the ±.`,
  because: [share(inside, "inside"), `The range holds: ${holds}.`, "A repeat of the test narrows the ±."],
  source,
});

export const curveUnsure = (
  { batch, property, figure, range, source }: Held,
  where: "within" | "above" | "below",
): Finding => ({
  code: "typical/unsure",
  tone: "note",
  text: `${figure}: the ${property} of ${batch} came out ${where} ${range}; how sure that is cannot be said.`,
  because: [
    "Its ± is not known in full: a repeat on the same rig, or a ± in the log, would supply it.",
    model,
  ],
  source,
});

export const noCurve = (batch: string, property: string, why: readonly string[]): Finding => ({
  code: "typical/no-curve",
  tone: "note",
  text: `No typical curve is held against the ${property} of ${batch}.`,
  because: why,
});

export const inRange = ({ batch, property, figure, range, source }: Held, decides: boolean): Finding => ({
  code: "typical/in-range",
  tone: decides ? "good" : "note",
  text: `${figure}: the ${property} of ${batch} lies inside ${range}.`,
  because: decides ? [] : [hint],
  source,
});

export const outOfRange = (
  { batch, property, figure, range, source }: Held,
  side: "above" | "below",
  decides: boolean,
  meaning: string,
): Finding => ({
  code: "typical/out-of-range",
  tone: decides ? "doubt" : "note",
  text: `${figure}: the ${property} of ${batch} lies ${side} ${range}.`,
  because: [...(meaning === "" ? [] : [meaning]), ...(decides ? [] : [hint])],
  source,
});

export const acrossRange = (
  { batch, property, figure, range, source }: Held,
  edge: string,
  decides: boolean,
): Finding => ({
  code: "typical/across-range",
  tone: decides ? "doubt" : "note",
  text: `${figure}: whether the ${property} of ${batch} lies inside ${range} cannot be told, since the edge at ${edge} is within the ±.`,
  because: ["A repeat of the test narrows the ±.", ...(decides ? [] : [hint])],
  source,
});

export const rangeUnsure = (
  { batch, property, figure, range, source }: Held,
  where: "inside" | "above" | "below",
  meaning: string,
): Finding => ({
  code: "typical/range-unsure",
  tone: "note",
  text: `${figure}: the ${property} of ${batch} came out ${where} ${range}; how sure that is cannot be said.`,
  because: [
    ...(meaning === "" ? [] : [meaning]),
    "Its ± is not known in full: a repeat on the same rig, or a ± in the log, would supply it.",
  ],
  source,
});

export const rangeNeedsFineness = (batch: string, ranges: string): Finding => ({
  code: "typical/range-needs-fineness",
  tone: "note",
  text: `The permeability of ${batch} is not held against a usual range: those known go with a fineness number of ${ranges}.`,
  because: [
    "Finer sand lets less gas through, so a range without its fineness says nothing (common practice).",
  ],
});

const hint = "No source was read that recommends this range: it decides nothing by itself.";

/** What it usually means to lie outside; empty where there is nothing to say. */
export function outsideMeans(property: string, side: "above" | "below", bond: string): string {
  if (property === "moisture" && side === "above" && bond === "bentonite")
    return "Over-wet bentonite sand can erupt as steam under the metal: spread it, let it dry, and test again before it goes near a pour.";
  return meanings[`${property}, ${side}`] ?? "";
}

const meanings: Readonly<Record<string, string>> = Object.freeze({
  "moisture, below": "Dry sand is weak at its edges and is washed away by metal (common practice).",
  "compactability, above": "Wet sand swells and gives off more gas (M. Ring, trade article).",
  "compactability, below":
    "Dry sand crumbles at edges and deep pockets, and metal can enter it (M. Ring, trade article).",
  "green compression, below": "Weak sand drops and crushes (common practice).",
  "green compression, above":
    "Strong green sand can be stiff to ram and hard to shake out (common practice).",
  "permeability, below":
    "Gas escapes slowly: more blows and pinholes (encyclopaedia entry citing Modern Casting, 1999).",
  "permeability, above":
    "Open sand lets metal in and roughens the skin (encyclopaedia entry citing Modern Casting, 1999).",
});
