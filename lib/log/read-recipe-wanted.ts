// The recipe that is wanted: shares on one basis, and how much is to be made.

import {
  bucketOfUnknown,
  makeAndSand,
  massForShare,
  panAboveHeap,
  recipeOfNothing,
  recipeWithoutClay,
  recipeWithoutMoisture,
  twoBases,
  waterByShare,
} from "./complaints-recipe.ts";
import { choiceOf, type Fields, fieldsOf, mapOf, textOf, uniqueEntries } from "./fields.ts";
import type { Measured } from "./figure-types.ts";
import { given } from "./given.ts";
import { loggedRecipeKeys } from "./heap-keys.ts";
import type { BucketWeight, LoggedRecipe, RecipeAdditive } from "./heap-record.ts";
import type { ShareBasis } from "./heap-state.ts";
import { measuredOf } from "./measured.ts";
import { type Entry, type LogNode, plainName, type Report } from "./node.ts";
import { basisNamed, shareOf, threeReadings, withBasis } from "./read-based-share.ts";
import { isWeighed, weighedShares } from "./read-recipe-weights.ts";
import { massIn, moistureIn } from "./read-season-fields.ts";

const basisWords: { readonly [basis in ShareBasis]: string } = {
  sand: "per 100 of sand",
  "dry mix": "of dry mix",
  "damp mass": "of damp mass",
};

export function readRecipeWanted(entry: Entry | undefined, report: Report): LoggedRecipe | undefined {
  const map = mapOf(entry?.value, "recipe", report);
  if (!map || !entry) return undefined;
  const fields = fieldsOf(map, loggedRecipeKeys, "of a recipe", report);
  textOf(fields.get("note"), "note", report);
  const clay = fields.get("bentonite") ? "bentonite" : "clay";
  const reader = { fields, report };
  const waters = {
    sandMoisture: moistureIn(reader, "sand moisture"),
    clayMoisture: moistureIn(reader, `${clay} moisture`),
  };
  const moisture = moistureIn(reader, "moisture");
  const buckets = bucketsOf(fields, ["sand", "clay", ...additiveNames(map)], report);
  const written = basisOf(fields, report);
  const byWeight = written === "by weight" || (!fields.get("basis") && isWeighed(fields.get(clay)));
  const shares = byWeight
    ? {
        basis: "sand" as const,
        ...weighedShares({ fields, clay, buckets, moisture, ...waters, place: entry.keyPlace }, report),
        makeKg: massIn(reader, "make"),
      }
    : sharesOf(fields, clay, written, moisture, report);
  const { makeKg, sandKg, ...parts } = shares;
  const mullerPanKg = massIn(reader, "muller pan");
  if (makeKg && mullerPanKg && mullerPanKg.value > makeKg.value)
    report(panAboveHeap(mullerPanKg.text, makeKg.text), mullerPanKg.place);
  if (!fields.get(clay) && !fields.holed) report(recipeWithoutClay(), entry.keyPlace);
  const wet = fields.get("moisture") ?? (byWeight ? fields.get("water") : undefined);
  if (!wet && !fields.holed) report(recipeWithoutMoisture(), entry.keyPlace);
  if (!fields.get("make") && !fields.get("sand") && !fields.holed) report(recipeOfNothing(), entry.keyPlace);
  return {
    ...given({
      ...parts,
      makeKg,
      // Of a recipe by weight that is scaled, the sand says only how much clay goes to it.
      sandKg: makeKg ? undefined : sandKg,
      sandMoisturePercent: waters.sandMoisture,
      clayMoisturePercent: waters.clayMoisture,
      mullerPanKg,
    }),
    additives: parts.additives,
    buckets,
    place: entry.keyPlace,
  };
}

/** Written as shares of one basis. */
function sharesOf(
  fields: Fields,
  clay: "clay" | "bentonite",
  written: ShareBasis | undefined,
  moisturePercent: Measured | undefined,
  report: Report,
) {
  const basis = written ?? (fields.get("basis") ? undefined : basisOfClay(fields.get(clay)));
  const clayPercent = onBasis(fields.get(clay), clay, basis, report);
  // Without a basis the clay has been complained of, and one complaint of a kind is enough.
  const aside = basis ? report : () => {};
  const share = (node: LogNode | undefined, what: string) => onBasis(node, what, basis, aside);
  const additives = additivesOf(fields, share, report);
  const water = fields.entry("water");
  if (water) report(waterByShare(basis ? basisWords[basis] : "in shares"), water.keyPlace);
  return { ...given({ basis, clayPercent, moisturePercent }), additives, ...amountsOf(fields, report) };
}

const byWeightWords = "by weight";

function basisOf(fields: Fields, report: Report): ShareBasis | typeof byWeightWords | undefined {
  const words = Object.entries(basisWords) as [ShareBasis, string][];
  const choice: string | undefined = choiceOf<string>(
    fields.get("basis"),
    "basis",
    [...words.map(([, said]) => said), byWeightWords],
    report,
    {
      named: (name) =>
        /^(by |as )?(weights?|weighed|mass|buckets?)$/.test(name)
          ? byWeightWords
          : basisWords[basisNamed(name) ?? ("" as ShareBasis)],
    },
  );
  if (choice === byWeightWords) return byWeightWords;
  return words.find(([, said]) => said === choice)?.[0];
}

/** Where only the clay says of what it is, the whole recipe is counted so. */
function basisOfClay(node: LogNode | undefined): ShareBasis | undefined {
  const share = shareOf(node, "clay", () => {});
  return share?.unit?.of === undefined ? undefined : basisNamed(`of ${share.unit.of}`);
}

function onBasis(
  node: LogNode | undefined,
  what: string,
  basis: ShareBasis | undefined,
  report: Report,
): Measured | undefined {
  const share = shareOf(node, what, report);
  if (!share) return undefined;
  const { place, text, value } = share;
  const own = share.unit?.of === undefined ? undefined : basisNamed(`of ${share.unit.of}`);
  if (!basis) {
    const line = `basis: ${basisWords.sand}\`, \`basis: ${basisWords["dry mix"]}\` or \`basis: ${basisWords["damp mass"]}`;
    return void report(threeReadings(what, text, value, line), place);
  }
  if (share.unit?.of !== undefined && own !== basis)
    return void report(twoBases(what, text, basisWords[basis]), place);
  const { unit, ...bare } = share;
  if (unit && unit.kind !== "percent") return void report(massForShare(what, text, basisWords[basis]), place);
  const measured = withBasis({ ...bare, value }, what, basis, report);
  if (!measured) return undefined;
  const { of: _, ...percent } = measured;
  return percent;
}

/** Names of the recipe's additives, also of those whose share cannot be read. */
export function additiveNames(recipe: LogNode | undefined): string[] {
  const entries = recipe?.kind === "map" ? recipe.entries : [];
  const additives = entries.find(({ key }) => plainName(key) === "additives")?.value;
  return additives?.kind === "map" ? additives.entries.map(({ key }) => key.trim()) : [];
}

type ShareReader = (node: LogNode | undefined, what: string) => Measured | undefined;

function additivesOf(fields: Fields, share: ShareReader, report: Report): RecipeAdditive[] {
  const map = mapOf(fields.get("additives"), "additives", report);
  if (!map) return [];
  return uniqueEntries(map, report).flatMap(({ key, value }) => {
    const percent = share(value, key.trim());
    return percent ? [{ name: key.trim(), percent }] : [];
  });
}

function amountsOf(fields: Fields, report: Report): { makeKg?: Measured; sandKg?: Measured } {
  const makeKg = massIn({ fields, report }, "make");
  const sand = fields.entry("sand");
  if (fields.get("make") && sand) {
    report(makeAndSand(), sand.keyPlace);
    return given({ makeKg });
  }
  return given({ makeKg, sandKg: massIn({ fields, report }, "sand") });
}

function bucketsOf(fields: Fields, known: readonly string[], report: Report): BucketWeight[] {
  const map = mapOf(fields.get("bucket of"), "bucket of", report);
  if (!map) return [];
  return uniqueEntries(map, report).flatMap(({ key, keyPlace, value }) => {
    const name = plainName(key) === "bentonite" ? "clay" : plainName(key);
    const of = known.find((one) => plainName(one) === name);
    if (!of) {
      report(bucketOfUnknown(key, known.join(", ")), keyPlace);
      return [];
    }
    const field = { what: `bucket of ${of}`, unit: "kg", most: 10_000, aboveZero: true };
    const kg = measuredOf(value, field, report);
    return kg ? [{ of, kg }] : [];
  });
}
