// What is to be said of a recipe, and what decides between the sentences.

import type { HeapRecord } from "../log/heap-record.ts";
import type { ShareBasis } from "../log/heap-state.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import { inBuckets } from "../sand/recipe-loads.ts";
import { temperMoisture } from "../sand/temper-moisture.ts";
import { publishedWaterPerClay } from "../sand/water-per-clay.ts";
import type { Finding } from "./finding.ts";
import * as say from "./recipe-messages.ts";
import type { RecipePlan } from "./recipe-plan.ts";

interface Ends {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** How a page prints masses: in the founder's units. */
export interface MassWords {
  readonly mass: (kg: number) => string;
  readonly figure: (kg: Ends, atLeast: boolean) => string;
}

const countedOn: { readonly [basis in ShareBasis]: string } = {
  sand: "per 100 of dry sand",
  "dry mix": "in % of the dry mix",
  "damp mass": "in % of the whole damp mass",
};

/**
 * What a recipe comes to, and what to look at before it is weighed out.
 * @example
 * const plan = recipePlan(log);
 * typeof plan === "string" ? [] : recipeFindings(plan, massWords(recipeUnits(log)))
 */
export function recipeFindings(plan: RecipePlan, words: MassWords, heap?: HeapRecord): Finding[] {
  return [
    waterFinding(plan, words),
    sharesFinding(plan),
    ...temperFindings(plan, heap),
    ...bucketFindings(plan),
    ...(plan.taken.length > 0 ? [say.takenSaid(plan.taken.join(", and "))] : []),
  ];
}

function waterFinding({ waterKg, split, masses, recipe, taken }: RecipePlan, words: MassWords): Finding {
  const brought = words.mass(masses.broughtKg);
  const atLeast = taken.length > 0;
  if (waterKg.value > 0)
    return say.pourSaid(
      words.figure(waterKg, atLeast),
      words.mass(split.firstKg),
      words.mass(split.trimKg),
      // Where nothing is known of the waters, the most is no more than the middle, and says nothing.
      split.trimAtMostKg > 1.02 * split.trimKg ? words.mass(split.trimAtMostKg) : "",
      brought,
    );
  // So damp may the sand be that nothing need be poured: its own water is what the mix wants less that of the clay.
  const clayWater = masses.clayKg - masses.dryClayKg;
  const sandMay = masses.allWaterKg - clayWater;
  const dryTo = (100 * sandMay) / (sandMay + masses.drySandKg);
  const held = recipe.sandMoisturePercent?.value ?? 0;
  return say.tooWetAlready(
    brought,
    words.mass(-waterKg.value),
    dryTo > 0 && dryTo < held ? `${printNumber(dryTo, 1)} %` : "",
  );
}

function sharesFinding({ comesTo, recipe, taken }: RecipePlan): Finding {
  const printed = (figure: Ends, unit: string) => shareText(figure, unit, taken.length > 0);
  return say.sharesSaid(
    printed(comesTo.clayOfSandPercent, ""),
    printed(comesTo.clayOfDryMixPercent, "%"),
    printed(comesTo.clayOfDampPercent, "%"),
    recipe.weighed ? `by weight: ${recipe.weighed}, each as it lies` : countedOn[recipe.basis!],
  );
}

/** "7.97 ± 0.04 %"; without a known width three digits and why there is no ±. */
export function shareText({ value, low, high }: Ends, unit: string, atLeast: boolean): string {
  if (!(low < high)) return `${Number(value.toPrecision(3))}${unit ? ` ${unit}` : ""} (± not known)`;
  return printFigure({
    value,
    low: Math.min(low, value),
    high: Math.max(high, value),
    min: 0,
    atLeast,
    ...(unit ? { unit } : {}),
  }).text;
}

function temperFindings({ comesTo, recipe, taken }: RecipePlan, heap?: HeapRecord): Finding[] {
  const clay = comesTo.clayOfDryMixPercent.value;
  if (!(clay > 0 && clay <= 20)) return [];
  const ratio = comesTo.waterPerClay;
  const { strengthPeak, permeabilityPeak } = publishedWaterPerClay;
  const where =
    ratio.value < strengthPeak
      ? "drier than strength's published peak"
      : ratio.value > permeabilityPeak
        ? "wetter than permeability's published peak"
        : "between strength's published peak and permeability's";
  const kind = heap?.clayKind === "calcium bentonite" ? "calcium" : heap?.clayKind ? "sodium" : "not known";
  const { between } = temperMoisture({ clayPercent: clay, clayKind: kind });
  const wanted = recipe.moisturePercent!.value;
  const percent = (value: number) => `${printNumber(value, 1)} %`;
  return [
    ...(between
      ? [
          say.temperSaid(
            percent(wanted),
            percent(between.low),
            percent(between.high),
            wanted < between.low ? "below" : wanted > between.high ? "above" : "within",
          ),
        ]
      : []),
    say.waterPerClaySaid(shareText(ratio, "", taken.length > 0), where),
  ];
}

function bucketFindings({ recipe, masses, additives }: RecipePlan): Finding[] {
  const parts = recipe.buckets.flatMap(({ of, kg }) => {
    const massKg = massOf(of, masses, additives);
    if (massKg === undefined) return [];
    const { buckets } = inBuckets({ massKg, bucketKg: kg.value });
    const plus = kg.plusMinus ? "" : ", ± not known";
    const one = shareText(
      { value: buckets, ...bucketEnds(massKg, kg.value, kg.plusMinus?.size) },
      "",
      false,
    ).replace(" (± not known)", "");
    return [`${of} ${one} buckets (${kg.text} each${plus})`];
  });
  return parts.length > 0 ? [say.bucketsSaid(parts.join("; "))] : [];
}

function bucketEnds(massKg: number, bucketKg: number, half = 0): { low: number; high: number } {
  return { low: massKg / (bucketKg + half), high: massKg / Math.max(1e-9, bucketKg - half) };
}

/** Of one part of the recipe by the name that its bucket has. */
export function massOf(
  part: string,
  masses: RecipePlan["masses"],
  additives: readonly string[],
): number | undefined {
  if (part === "sand") return masses.sandKg;
  return part === "clay" ? masses.clayKg : masses.additivesKg[additives.indexOf(part)];
}
