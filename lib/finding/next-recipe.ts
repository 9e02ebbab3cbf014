// The next batch in what to weigh: the trial's usual recipe, with the waters that sand and clay bring counted.

import type { Recipe } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import { studentTQuantile } from "../numbers/distributions.ts";
import { median, sampleStandardDeviation } from "../numbers/summary.ts";
import { clayToWeighKg } from "../sand/mix-shares.ts";
import type { TrialReport } from "../trial/trial-report.ts";

export interface NextRecipe {
  /** On the trial's axis. */
  readonly at: number;
  readonly why: "narrows the aim" | "confirms the aim" | "fills a gap" | "wetter end" | "drier end";
  readonly sandKg: number;
  /** As weighed from the bag. */
  readonly clayKg: number;
  readonly additiveKg: number;
  /** What to pour, with its 95 % interval; below zero: sand and clay bring more already. Undefined: not known. */
  readonly waterKg: { readonly value: number; readonly low: number; readonly high: number } | undefined;
  /** Water that sand and clay bring themselves, kg. */
  readonly broughtKg: number;
  /** How much wetter (below zero: drier) the trial's batches were tested than they were weighed, points of moisture. */
  readonly testedAbovePoints: number | undefined;
}

/** A step beyond what was tried, points of moisture: our own, small enough to stay on the bench. */
const step = 0.3;

/**
 * Where the next batch is wanted, and what to weigh for it: the middle sand, clay and additive of the batches so far;
 * water W = m D/(100 − m) less what sand and clay hold, D the dry mass, m the moisture wanted less what batches are
 * usually tested above their recipe (drying while mulling). ±: from the scatter of that, Student's t, three batches on.
 * On the clay axis the clay is weighed for the share wanted and the water for the trial's own moisture there; on the
 * compactability axis there is no water to name. Undefined where nothing is wanted or no recipe is known.
 * Source: mass balance; the step beyond an open end our own.
 * @example nextRecipe(trialReport(log))
 */
export function nextRecipe(report: TrialReport): NextRecipe | undefined {
  const { axis, rows } = report;
  const wanted = placeWanted(report);
  const recipes = rows.flatMap(({ batch }) => (batch.recipe?.sandKg ? [batch.recipe] : []));
  if (!wanted || recipes.length === 0 || axis === "compactability") return undefined;
  const of = (part: Exclude<keyof Recipe, "scale">): number =>
    median(recipes.map((recipe) => recipe[part]?.value ?? 0));
  const [sandKg, additiveKg] = [of("sandKg"), of("additiveKg")];
  const [sandWater, clayWater] = [of("sandMoisturePercent"), of("clayMoisturePercent")];
  const drySandKg = sandKg * (1 - sandWater / 100);
  if (axis === "clay" && !(wanted.at > 0 && wanted.at < 60)) return undefined;
  const clayKg =
    axis === "clay"
      ? clayToWeighKg({
          dryClayKg: ((drySandKg + additiveKg) * wanted.at) / (100 - wanted.at),
          clayMoisturePercent: clayWater,
        }).weighKg
      : of("clayKg");
  const dryKg = drySandKg + additiveKg + clayKg * (1 - clayWater / 100);
  const broughtKg = (sandKg * sandWater + clayKg * clayWater) / 100;
  const above = testedAbove(rows);
  const moisture = axis === "moisture" ? wanted.at : moistureThere(report, wanted.at);
  const common = { ...wanted, sandKg, clayKg, additiveKg, broughtKg, testedAbovePoints: above?.points };
  if (moisture === undefined) return { ...common, waterKg: undefined };
  const pour = (m: number): number => (m * dryKg) / (100 - m) - broughtKg;
  const [m, half] = [moisture - (above?.points ?? 0), above?.half ?? 0];
  return { ...common, waterKg: { value: pour(m), low: pour(m - half), high: pour(m + half) } };
}

/** Tested moisture less the recipe's, the middle of the batches; how far a single one may lie off, 95 %. */
function testedAbove(
  rows: readonly BatchFigures[],
): { readonly points: number; readonly half: number } | undefined {
  const off = rows.flatMap(({ tests, recipe }) =>
    tests.moisture && recipe ? [tests.moisture.value - recipe.moistureOfDampPercent.value] : [],
  );
  if (off.length === 0) return undefined;
  const half = off.length < 3 ? 0 : studentTQuantile(0.975, off.length - 1) * sampleStandardDeviation(off);
  return { points: median(off), half };
}

function moistureThere({ properties }: TrialReport, at: number): number | undefined {
  const moisture = properties.find(({ test }) => test === "moisture");
  if (!moisture) return undefined;
  return moisture.curve.at(at)?.mean ?? median(moisture.figures.flatMap((one) => (one ? [one.value] : [])));
}

function placeWanted(report: TrialReport): Pick<NextRecipe, "at" | "why"> | undefined {
  const { result, next, x, axis } = report;
  const places = x.map(({ value }) => value).sort((a, b) => a - b);
  if (result?.window) {
    const { open } = result.aim;
    if (open.high && axis === "moisture") return { at: places.at(-1)! + step, why: "wetter end" };
    if (open.low && axis === "moisture") return { at: Math.max(0.5, places[0]! - step), why: "drier end" };
    const best = next && !next.enough ? next.candidates[0] : undefined;
    return best ? { at: best.x, why: "narrows the aim" } : { at: result.aim.x, why: "confirms the aim" };
  }
  if (report.why !== "too few batches") return undefined;
  return { at: widestGap(places, axis === "clay" ? 1 : 0.5), why: "fills a gap" };
}

/** The middle of the widest gap between the places; a step beyond the last where there is none to speak of. */
function widestGap(places: readonly number[], beyond: number): number {
  const gaps = places.slice(1).map((place, k) => ({ from: places[k]!, width: place - places[k]! }));
  const [widest] = gaps.sort((a, b) => b.width - a.width);
  if (!widest || widest.width < beyond) return places.at(-1)! + beyond;
  return widest.from + widest.width / 2;
}
