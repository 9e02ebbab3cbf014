// What a log holds of a first mix: the recipe, the moisture trial, the aim.

import { followsAHeap } from "../log/diary-batches.ts";
import type { Log } from "../log/types.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import { leastBatches, trialReport } from "../trial/trial-report.ts";
import { listed } from "./batch-names.ts";
import { counted, type Held, heldBy } from "./guide-held-state.ts";
import * as say from "./guide-messages.ts";
import { recipePlan } from "./recipe-plan.ts";
import { axisInWords, axisPlaces, placeText } from "./trial-axis.ts";

/** So many waters show a curve, and not a line; our own. */
const leastWaters = 4;

export function trialHeld(log: Log): {
  readonly recipe: Held;
  readonly "moisture trial": Held;
  readonly aim: Held;
} {
  const report = trialOf(log);
  return { recipe: recipeHeld(log), "moisture trial": watersHeld(report), aim: aimHeld(log, report) };
}

type Trial = ReturnType<typeof trialReport> | undefined;

/** Undefined where the batches are a heap's own, day by day, or a trial of clay alone. */
function trialOf(log: Log): Trial {
  const usable = log.batches.filter(({ usable }) => usable);
  if (usable.length === 0 || followsAHeap(usable, log.axis) || log.axis === "clay") return undefined;
  return trialReport(log, { axis: "moisture" });
}

function recipeHeld(log: Log): Held {
  const plan = recipePlan(log);
  const made = log.batches.filter(({ recipe }) => recipe?.sandKg && recipe.clayKg).length;
  const batches = made > 0 ? [say.batchesMadeUp(counted(made, "batch was", "batches were"))] : [];
  if (typeof plan !== "string") {
    const { clayOfDryMixPercent: clay, moistureOfDampPercent: water } = plan.comesTo;
    const text = ({ value, low, high }: typeof clay) =>
      printFigure({ value, low, high, unit: "%", atLeast: plan.taken.length > 0 }).text;
    return heldBy([say.recipeComesTo(text(clay), text(water)), ...batches], []);
  }
  if (batches.length > 0) return heldBy(batches, []);
  return plan === "recipe"
    ? heldBy([], [say.noRecipe()])
    : { state: "begun", holds: [], lacks: [say.recipeLacks(plan)] };
}

function watersHeld(report: Trial): Held {
  if (!report || report.rows.length === 0) return heldBy([], [say.noTrial()]);
  const values = report.x.map(({ value }) => value);
  const enough = report.rows.length >= leastBatches && report.levels >= leastWaters;
  const places = Math.min(2, axisPlaces(report));
  const holds = say.trialBatches(
    counted(report.rows.length, "batch", "batches"),
    counted(report.levels, "water"),
    printNumber(Math.min(...values), places),
    printNumber(Math.max(...values), places),
  );
  return heldBy([holds], enough ? [] : [say.moreBatches()]);
}

function aimHeld({ aims }: Log, report: Trial): Held {
  const wanted = aims.length > 0 ? [say.rangesWanted(listed(aims.map(({ test }) => test)))] : [];
  const { aim, window } = report?.result ?? {};
  if (report && aim && window && !aim.open.low && !aim.open.high) {
    const place = placeText(aim, report, report.atLeast);
    return heldBy([say.aimFound(place, axisInWords(report)), ...wanted], []);
  }
  return heldBy(wanted, [wanted.length === 0 ? say.noRanges() : say.aimOpen()]);
}
