// How much water now, and the next batch in what to weigh: the findings and lines of a page.

import type { Finding } from "../finding/finding.ts";
import { type NextRecipe, nextRecipe } from "../finding/next-recipe.ts";
import { axisInWords, axisPlaces } from "../finding/trial-axis.ts";
import * as say from "../finding/water-messages.ts";
import { type WaterNow, waterNow } from "../finding/water-now.ts";
import type { Log } from "../log/types.ts";
import type { Phrase } from "../phrase.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import type { FirstDose } from "../sand/first-dose.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { inShownUnit, type ShownUnits, shownUnit, shownUnits, type UnitSystem } from "./shown-units.ts";
import { type Ends, massFigureText, massText } from "./trial-print.ts";

/**
 * The first dose for sand like the last batch, by the surest of the founder's instruments; none where nothing is aimed
 * at or nothing was tested. For 10 kg of heap (or 10 lb), and for the log's heap where its mass is known.
 * @example waterFindings(trialReport(log), log).map(({ text }) => text)
 */
export function waterFindings(
  report: TrialReport,
  log: Log,
  units: ShownUnits = shownUnits(log),
): readonly Finding[] {
  const [first, second] = waterNow(report, log);
  if (!first) return [];
  const { recipe: system } = units;
  const per = `10 ${shownUnit("kg", system)}`;
  const because = [
    ...(second ? [say.otherWay(first.by, second.by, needOf(second, system)), ...finer(first, second)] : []),
    ...(first.sensitivityPercent && first.slopeFrom
      ? [say.throughSlope(first.slopeFrom, range(first.sensitivityPercent))]
      : []),
    ...(first.slopeFrom === "published slopes alone" ? [say.publishedAlone()] : []),
    ...(first.atLeast ? [say.doseAtLeast()] : []),
  ];
  const unit = { moisture: "% of damp mass", compactability: "% compactability" }[first.by];
  const words: say.DoseSpoken = {
    batch: first.batch,
    from: range(first.from),
    fromInUnit: range(first.from, unit),
    to: range(first.to, unit),
    toIs: first.toIs,
    per,
    because,
  };
  return [told(first.per10, words, first, system)];
}

function told(
  dose: FirstDose,
  words: say.DoseSpoken,
  { heap, atLeast }: WaterNow,
  system: UnitSystem,
): Finding {
  const small = (one: Ends): string => massFigureText(perTen(one, system), system, atLeast);
  if (dose.verdict === "add") {
    return say.addNow(
      words,
      massText(tenth(dose.nowKg, system), system),
      small(dose.inAllKg),
      heap && forHeap(heap, atLeast, system),
    );
  }
  if (dose.verdict === "hold") {
    const { value, low, high } = dose.inAllKg;
    const clipped = {
      value: Math.max(0, value),
      low: Math.max(0, low),
      high: Math.max(0, high),
    };
    return say.waitFirst(words, small(clipped));
  }
  return say.tooWet(words, small(dose.loseKg), massText(tenth(dose.dryMixKg, system), system), dose.ways);
}

function forHeap({ massKg, dose }: NonNullable<WaterNow["heap"]>, atLeast: boolean, system: UnitSystem) {
  if (dose.verdict !== "add") return undefined;
  return {
    mass: massFigureText(massKg, system),
    now: massText(dose.nowKg, system),
    inAll: massFigureText(dose.inAllKg, system, atLeast),
  };
}

/** Doses are worked out for 10 kg: for 10 lb they are as many times less as a pound is than a kilogram. */
function tenth(kg: number, system: UnitSystem): number {
  return shownUnit("kg", system) === "kg" ? kg : kg / inShownUnit(1, "kg", system).value;
}
function perTen({ value, low, high }: Ends, system: UnitSystem) {
  return { value: tenth(value, system), low: tenth(low, system), high: tenth(high, system) };
}

/** Which instrument tells less water apart, where both are known. */
function finer(...both: readonly [WaterNow, WaterNow]): readonly Phrase[] {
  const [fine, coarse] = [...both].sort((a, b) => a.tellsPoints - b.tellsPoints) as [WaterNow, WaterNow];
  if (!Number.isFinite(coarse.tellsPoints)) return [];
  const [tells, other] = [fine, coarse].map(({ tellsPoints }) => printNumber(tellsPoints, 2));
  return tells === other ? [] : [say.testAgainBy(fine.by, tells!, coarse.by, other!)];
}

/** The other instrument's answer, in short. */
function needOf({ per10, atLeast }: WaterNow, system: UnitSystem): Phrase {
  if (per10.verdict === "too wet") return say.tooWetInShort();
  const inAll = massFigureText(perTen(per10.inAllKg, system), system, atLeast);
  const first = per10.verdict === "hold" ? "" : massText(tenth(per10.nowKg, system), system);
  return say.needInShort(first, inAll);
}
const range = ({ value, low, high }: Ends, unit?: string): string =>
  printFigure({
    value,
    low: Math.min(low, value),
    high: Math.max(high, value),
    ...(unit === undefined ? {} : { unit }),
  }).text;

/**
 * The next batch in what to weigh, a sentence; undefined where nothing is wanted or no recipe is known.
 * @example nextBatchWords(trialReport(log))
 */
export function nextBatchWords(
  report: TrialReport,
  units: ShownUnits = shownUnits({ batches: report.rows.map(({ batch }) => batch) }),
): string | undefined {
  const next = nextRecipe(report);
  if (!next) return undefined;
  const { recipe: system } = units;
  const clay = next.clayKg > 0 ? `${massText(next.clayKg, system)} of clay from the bag` : "";
  const additive = next.additiveKg > 0 ? `${massText(next.additiveKg, system)} of additive` : "";
  const sentence = say.nextBatchInGrams(
    `${printNumber(next.at, axisPlaces(report))} ${axisInWords(report)}`,
    which[next.why],
    `${massText(next.sandKg, system)} of this sand`,
    clay,
    additive,
    pour(next, report, system),
  );
  return [sentence, ...notes(next, system)].join(" ");
}

const which: { readonly [why in NextRecipe["why"]]: string } = {
  "narrows the aim": "the next batch",
  "confirms the aim": "the batch at the aim once more, to confirm it",
  "fills a gap": "the next batch",
  "wetter end": "one batch a small step wetter, for the bench only and never poured on",
  "drier end": "one batch a small step drier",
};

function pour({ waterKg }: NextRecipe, { axis }: TrialReport, system: UnitSystem): string {
  if (!waterKg) return "water until it tempers like the others";
  if (waterKg.value <= 0) return "no water, for sand and clay bring more than that: dry the sand first";
  const text = massFigureText(waterKg, system);
  // With fewer than three batches nothing says how far one may lie off.
  const amount = waterKg.low < waterKg.high ? text : `${axis === "clay" ? "" : "about "}${text}`;
  return axis === "clay"
    ? `about ${amount} of water, then temper it to the compactability of the others`
    : `${amount} of water`;
}

function notes({ broughtKg, testedAbovePoints, waterKg }: NextRecipe, system: UnitSystem): string[] {
  if (!waterKg) return [];
  const counted = [
    ...(broughtKg > 0 ? [`the ${massText(broughtKg, system)} that sand and clay bring`] : []),
    ...(testedAbovePoints !== undefined && Math.abs(testedAbovePoints) >= 0.05
      ? [
          `that your batches are tested ${printNumber(Math.abs(testedAbovePoints), 2)} points ${testedAbovePoints > 0 ? "wetter" : "drier"} than they were weighed`,
        ]
      : []),
  ];
  return counted.length === 0 ? [] : [`Counted in: ${counted.join(", and ")}.`];
}
