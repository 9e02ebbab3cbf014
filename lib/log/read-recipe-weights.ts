// A recipe by weight, or in buckets that were weighed: turned into shares of its dry sand.

import type { Place } from "../issue.ts";
import { moistureAndWater, noBucketWeighed, weightsWithoutSand } from "./complaints-recipe.ts";
import { type Fields, mapOf, textNodeOf, uniqueEntries } from "./fields.ts";
import type { Measured } from "./figure-types.ts";
import { given } from "./given.ts";
import type { BucketWeight, LoggedRecipe } from "./heap-record.ts";
import { measuredOf } from "./measured.ts";
import { type LogNode, plainName, type Report } from "./node.ts";

export interface WeighedParts {
  readonly fields: Fields;
  /** The name that the clay has in this recipe. */
  readonly clay: "clay" | "bentonite";
  readonly buckets: readonly BucketWeight[];
  /** Water that sand and clay hold as they are weighed, % of their damp mass. */
  readonly sandMoisture?: Measured | undefined;
  readonly clayMoisture?: Measured | undefined;
  /** As wanted; else it comes from the water that the recipe names. */
  readonly moisture?: Measured | undefined;
  /** Of the recipe. */
  readonly place: Place;
}

const bucket = /\s*(?:(?:full|level)\s+)?buckets?\s*$/i;
const mass = /\d\s*(?:kg|g|lbs?|oz|pounds?|ounces?|(?:(?:full|level)\s+)?buckets?)\.?\s*$/i;

/** Whether it is written as a weight or in buckets, so that the recipe needs no other word for its basis. */
export const isWeighed = (node: LogNode | undefined): boolean =>
  node?.kind === "text" && mass.test(node.text.trim());

/**
 * Shares per 100 of dry sand: clay_dry/sand_dry, each less the water that it holds. The moisture is that of the recipe's water with the
 * water that sand and clay bring, % of damp mass.
 */
export function weighedShares(
  parts: WeighedParts,
  report: Report,
): Pick<LoggedRecipe, "clayPercent" | "moisturePercent" | "additives" | "sandKg" | "weighed"> {
  const { fields, clay, sandMoisture, clayMoisture, moisture, place } = parts;
  const kg = (node: LogNode | undefined, what: string, of = what) => weightOf(node, what, of, parts, report);
  const sandKg = kg(fields.get("sand"), "sand");
  const clayKg = kg(fields.get(clay), clay, "clay");
  const map = mapOf(fields.get("additives"), "additives", report);
  const additives = (map ? uniqueEntries(map, report) : []).flatMap(({ key, value }) => {
    const massKg = kg(value, key.trim());
    return massKg ? [{ name: key.trim(), massKg }] : [];
  });
  const water = fields.entry("water");
  const waterKg = measuredOf(
    water?.value,
    { what: "water", unit: "kg", most: 1e6, alsoIn: ["l"], aboveZero: true },
    report,
  );
  if (water && moisture) report(moistureAndWater(), water.keyPlace);
  if (!sandKg) {
    if (!fields.get("sand")) report(weightsWithoutSand(), place);
    return { additives: [], ...given({ moisturePercent: moisture }) };
  }
  const dry = (damp: Measured, held: Measured | undefined) => damp.value * (1 - (held?.value ?? 0) / 100);
  const drySand = dry(sandKg, sandMoisture);
  const share = (part: Measured, held?: Measured): Measured => ({
    value: (100 * dry(part, held)) / drySand,
    text: part.text,
    place: part.place,
  });
  const all = [sandKg, clayKg, ...additives.map(({ massKg }) => massKg), waterKg];
  const total = all.reduce((sum, part) => sum + (part?.value ?? 0), 0);
  const dryAll = total - (waterKg?.value ?? 0) - (sandKg.value - drySand);
  const dryMix = dryAll - (clayKg ? clayKg.value - dry(clayKg, clayMoisture) : 0);
  const said = [
    `${sandKg.text} of sand`,
    ...(clayKg ? [`${clayKg.text} of clay`] : []),
    ...additives.map(({ name, massKg }) => `${massKg.text} of ${name}`),
    ...(waterKg ? [`${waterKg.text} of water`] : []),
  ];
  return {
    ...given({
      clayPercent: clayKg && share(clayKg, clayMoisture),
      moisturePercent: moisture ?? (waterKg && { ...waterKg, value: 100 * (1 - dryMix / total) }),
      sandKg,
    }),
    additives: additives.map(({ name, massKg }) => ({ name, percent: share(massKg) })),
    weighed: said.join(", "),
  };
}

/** kg, also as so many buckets of what one was weighed to hold. */
function weightOf(
  node: LogNode | undefined,
  what: string,
  of: string,
  { buckets }: WeighedParts,
  report: Report,
): Measured | undefined {
  if (node?.kind !== "text" || !bucket.test(node.text))
    return measuredOf(node, { what, unit: "kg", most: 1e6, aboveZero: true }, report);
  const typed = textNodeOf(node, what, report);
  const one = buckets.find((each) => plainName(each.of) === plainName(of));
  if (!one) return void report(noBucketWeighed(what, of), node.place);
  const count = measuredOf(
    typed && { ...typed, text: typed.text.replace(bucket, "") },
    { what, unit: "", most: 10_000, aboveZero: true },
    report,
  );
  return count && { value: count.value * one.kg.value, text: node.text.trim(), place: count.place };
}
