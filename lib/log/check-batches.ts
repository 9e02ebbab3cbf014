// Batches held against each other, and each against its own recipe.

import { mean } from "../numbers/summary.ts";
import { printNumber } from "../quantity/print.ts";
import type { Batch, TestName, TrialAxis } from "./batch.ts";
import { checkScales } from "./check-scales.ts";
import { checkStrengthUnits } from "./check-strength-units.ts";
import { checkWaterResponse, type WaterPoint } from "./check-water-response.ts";
import {
  allAtOne,
  methodsMixed,
  missingTest,
  moreAtOne,
  recipeAgainstMoisture,
  sameAxis,
} from "./complaints-batch.ts";
import { followsAHeap } from "./diary-batches.ts";
import { kindOf, mainKinds } from "./main-methods.ts";
import { plainName, type Report } from "./node.ts";
import { plainNumber } from "./plain-number.ts";
import { recipeMiddle } from "./recipe-figures.ts";
import { testNames } from "./test-forms.ts";

type ReportAbout = (name: string) => Report;

/** The batches without the readings that their neighbours show to be wrong; whatever is found is reported. */
export function checkBatches(
  read: readonly Batch[],
  axis: TrialAxis | undefined,
  reportAbout: ReportAbout,
): readonly Batch[] {
  const batches = checkStrengthUnits(read, reportAbout);
  const usable = batches.filter((batch) => batch.usable);
  for (const batch of usable) checkRecipe(batch, reportAbout);
  checkMethods(usable, reportAbout);
  if (!followsAHeap(usable, axis)) {
    checkGaps(usable, reportAbout);
    checkAxis(usable, axis ?? "moisture", reportAbout);
  }
  checkWaterResponse(waterPoints(usable), reportAbout);
  checkScales(usable, reportAbout);
  return batches;
}

/** Those found by the methods that most batches have. */
function waterPoints(batches: readonly Batch[]): WaterPoint[] {
  const main = mainKinds(batches);
  const number = (batch: Batch, test: TestName) => {
    const usual = batch.readings.filter(
      (one) => one.test === test && (kindOf(test, one.method) ?? main.get(test)) === main.get(test),
    );
    return usual.length === 0 ? undefined : numberOf({ readings: usual }, test);
  };
  return batches.flatMap((batch) => {
    const [moisture, compactability] = [number(batch, "moisture"), number(batch, "compactability")];
    return moisture === undefined || compactability === undefined
      ? []
      : [{ batch, moisture, compactability }];
  });
}

/** Points of moisture by which a recipe and an oven may differ: water that dries off while mulling, and both readings. */
const recipeSlack = 0.6;

function checkRecipe(batch: Batch, reportAbout: ReportAbout): void {
  const measured = numberOf(batch, "moisture");
  const place = batch.readings.find(({ test }) => test === "moisture")?.place;
  const recipe = batch.recipe?.waterKg && recipeMiddle(batch)?.moistureOfDampPercent;
  if (measured === undefined || recipe === undefined || !place) return;
  if (Math.abs(recipe - measured) <= recipeSlack) return;
  const guess =
    measured > recipe
      ? "The sand or the bagged clay may have been damp before, or water went in that was not written down."
      : "Water may have dried off before the sample was taken, or the sample was not dried through.";
  reportAbout(batch.name)(
    recipeAgainstMoisture(printNumber(recipe, 1), printNumber(measured, 1), guess),
    place,
  );
}

function checkMethods(batches: readonly Batch[], reportAbout: ReportAbout): void {
  const main = mainKinds(batches);
  for (const batch of batches) {
    const told = new Set<string>();
    for (const { test, method, place } of batch.readings) {
      const usual = main.get(test);
      const kind = kindOf(test, method) ?? usual;
      if (kind === undefined || usual === undefined || kind === usual || told.has(test)) continue;
      told.add(test);
      reportAbout(batch.name)(methodsMixed(test, kind, usual), place);
    }
  }
}

function checkGaps(batches: readonly Batch[], reportAbout: ReportAbout): void {
  for (const test of testNames) {
    // A faulty reading was complained of where it stands: the test was done.
    const without = batches.filter(
      ({ readings, leftOut }) =>
        !readings.some((reading) => reading.test === test) && !leftOut?.includes(test),
    );
    const [first] = without;
    if (!first || !batches.some(({ readings }) => readings.some((reading) => reading.test === test)))
      continue;
    const shown = without.slice(0, 5).map(({ name }) => `"${name}"`);
    const more = without.length > 5 ? ` and ${without.length - 5} more` : "";
    const capital = test[0]!.toUpperCase() + test.slice(1);
    reportAbout(first.name)(missingTest(capital, `${shown.join(", ")}${more}`), first.place);
  }
}

/** Nearer than this two batches stand at one place, points of the axis. */
const near: { readonly [axis in TrialAxis]: number } = { moisture: 0.1, clay: 0.2, compactability: 1 };

function checkAxis(batches: readonly Batch[], axis: TrialAxis, reportAbout: ReportAbout): void {
  const placed = batches.flatMap((batch) => {
    const at = axisOf(batch, axis);
    return at === undefined ? [] : [{ batch, at }];
  });
  if (placed.length < 2) return;
  const values = placed.map(({ at }) => at);
  const shown = (value: number) => `${printNumber(value, 1)} %`;
  if (placed.length > 2 && Math.max(...values) - Math.min(...values) <= 2 * near[axis]) {
    const last = placed.at(-1)!.batch;
    reportAbout(last.name)(allAtOne(axis, shown(mean(values))), last.place);
    return;
  }
  const twins = twinsIn(placed, near[axis]).filter(({ batch, other }) => otherwiseAlike(batch, other, axis));
  for (const { batch, at, other } of twins.slice(0, toldTwins))
    reportAbout(batch.name)(sameAxis(axis, shown(at), other.name), batch.place);
  const more = twins[toldTwins];
  if (more)
    reportAbout(more.batch.name)(moreAtOne(axis, counted(twins.length - toldTwins)), more.batch.place);
}

const counted = (more: number): string => `${more} more ${more === 1 ? "batch" : "batches"}`;

/** Repeats are told one by one up to here, the rest in one note. */
const toldTwins = 5;

interface Placed {
  readonly batch: Batch;
  readonly at: number;
}

/** Each batch that stands by an earlier one, with the first such; looked for in bins as wide as `within`. */
function twinsIn(placed: readonly Placed[], within: number): (Placed & { readonly other: Batch })[] {
  const bins = new Map<number, (Placed & { readonly index: number })[]>();
  return placed.flatMap((one, index) => {
    const bin = Math.floor(one.at / within);
    const [first] = [bin - 1, bin, bin + 1]
      .flatMap(
        (key) =>
          bins
            .get(key)
            ?.find((other) => sameBlock(other.batch, one.batch) && Math.abs(other.at - one.at) < within) ??
          [],
      )
      .sort((a, b) => a.index - b.index);
    const own = bins.get(bin) ?? [];
    own.push({ ...one, index });
    bins.set(bin, own);
    return first ? [{ ...one, other: first.batch }] : [];
  });
}

/** Two batches at one clay and unlike waters are no repeat, nor two at one water and unlike clays. */
function otherwiseAlike(a: Batch, b: Batch, axis: TrialAxis): boolean {
  const others: readonly TrialAxis[] = axis === "clay" ? ["moisture"] : ["clay"];
  return others.every((other) => {
    const [here, there] = [axisOf(a, other), axisOf(b, other)];
    return here === undefined || there === undefined || Math.abs(here - there) < 2 * near[other];
  });
}

/** Blocks are compared within: another bag of clay at the same moisture is no repeat. */
const sameBlock = (a: Batch, b: Batch): boolean => plainName(a.block ?? "") === plainName(b.block ?? "");

function axisOf(batch: Batch, axis: TrialAxis): number | undefined {
  if (axis === "clay") return batch.recipe?.clayKg && recipeMiddle(batch)?.clayOfDryMixPercent;
  return numberOf(batch, axis);
}

/** Mean of a test's readings by the method of its first. */
function numberOf(batch: Pick<Batch, "readings">, test: TestName): number | undefined {
  const readings = batch.readings.filter((reading) => reading.test === test);
  const alike = readings.filter(({ method }) => method === readings[0]?.method);
  const values = alike.flatMap((reading) => plainNumber(reading) ?? []);
  return values.length === 0 ? undefined : mean(values);
}
