// Decides what is worth saying of a blend.

import { printFigure, printNumber } from "../quantity/print.ts";
import { listed } from "./batch-names.ts";
import * as say from "./blend-messages.ts";
import type { BlendedSand, BlendReport } from "./blend-report.ts";
import { countWord } from "./count-word.ts";
import type { Finding } from "./finding.ts";
import { finenessLimits } from "./sand-report.ts";

/** Further from the wanted curve than this, points of what passes, is no match: our own. */
const poorFit = 5;
/** A share below this is not worth a bag. */
const noShare = 0.0005;

/**
 * Findings of a blend, the gravest first.
 * @example
 * const report = blendReport(log);
 * typeof report === "string" ? [] : blendFindings(report)
 */
export function blendFindings(report: BlendReport): readonly Finding[] {
  const order = ["error", "doubt", "good", "note"];
  return [
    ...report.leftOut.map(say.leftOut),
    ...(report.target.kind === "curve" ? toCurve(report) : toNumber(report)),
    ...report.sands.filter(inDoubt).map((sand) => say.mayBeNought(sand.report.sand.name, shareText(sand))),
    ...(report.atLeast ? [say.lowerBound()] : []),
    ...grains(report),
    ...money(report),
    ...others(report),
  ].sort((a, b) => order.indexOf(a.tone) - order.indexOf(b.tone));
}

/** Whether a sand's share may be nought though the best blend has some of it, or has none and might have some. */
const inDoubt = ({ share, mayBeNought, high }: BlendedSand): boolean =>
  mayBeNought && (share > noShare || high > 0.01);

/** "62 ± 4 %", "8 % (0 to 24)", "none". */
export function shareText({ share, low, high }: BlendedSand, atLeast = false): string {
  if (share <= noShare && high <= noShare) return "none";
  if (low >= 1 - noShare && share >= 1 - noShare) return "all";
  const ends = { low: 100 * Math.min(low, share), high: 100 * Math.max(high, share) };
  const printed = printFigure({ value: 100 * share, ...ends, min: 0, max: 100, unit: "%", atLeast });
  if (printed.form !== "range" || share <= noShare) return printed.text;
  return `${printed.value} % (${printed.low} to ${printed.high}${atLeast ? " or wider" : ""})`;
}

/**
 * "40 ± 3 % Coppice sand and 60 ± 3 % Brick sand", without those that are not in the blend.
 * @example
 * const report = blendReport(log);
 * typeof report === "string" ? report : blendText(report)
 */
export function blendText({ sands, atLeast }: BlendReport): string {
  const parts = sands
    .filter(({ share }) => share > noShare)
    .map((sand) => `${shareText(sand, atLeast)} ${sand.report.sand.name}`);
  return parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}

/**
 * The blend's own fineness number with its ±.
 * @example
 * const report = blendReport(log);
 * typeof report === "string" ? report : blendNumberText(report)
 */
export function blendNumberText({ number, atLeast }: Pick<BlendReport, "number" | "atLeast">): string {
  const { value, low, high } = number;
  return printFigure({ value, low, high, atLeast, ...finenessLimits }).text;
}

const one = (value: number): string => printNumber(value, 1);

function toNumber(report: BlendReport): Finding[] {
  const { target, reach, outside, window, sands } = report;
  if (target.kind !== "number") return [];
  const { low, high, words, source, decides } = target;
  if (outside) {
    const [best] = [...sands].sort((a, b) => b.share - a.share);
    return [say.beyondReach(words, one(reach.low), one(reach.high), best!.report.sand.name)];
  }
  const found = [say.blendIs(blendText(report), `${blendNumberText(report)} for ${words}`)];
  if (high > low) {
    const chance = chanceBetween(report.number, low, high);
    found.push(say.inRange(blendNumberText(report), chance, words, decides, source));
  }
  if (window)
    found.push(
      say.windowIs(printNumber(100 * window.low, 0), printNumber(100 * window.high, 0), window.of, words),
    );
  return found;
}

/** Chance in 100 that a figure lies between two ends, by its draws. */
function chanceBetween(of: BlendReport["number"], low: number, high: number): string {
  const chance = Math.round(100 * (chanceBelow(of, high) - chanceBelow(of, low)));
  return chance >= 99 ? "99 or more" : chance <= 1 ? "1 or fewer" : String(chance);
}

function chanceBelow(of: BlendReport["number"], end: number): number {
  let [below, above] = [0, 1];
  for (let round = 0; round < 9; round++) {
    const middle = (below + above) / 2;
    if (of.quantile(middle) <= end) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}

function toCurve(report: BlendReport): Finding[] {
  const { target, curve } = report;
  if (target.kind !== "curve") return [];
  const { name } = target.report.sand;
  const widest = curve?.widest;
  if (!widest) return [say.curveIs(blendText(report), name, "how near could not be worked out.")];
  const { value, low, high } = widest.difference;
  const text = printFigure({ value, low, high, unit: "%", atLeast: report.atLeast }).text;
  const misfit = `what passes ${widest.label} differs most, by ${text} of the sand.`;
  const found = [say.curveIs(blendText(report), name, misfit)];
  if (Math.abs(value) > poorFit && (low > 0 || high < 0)) found.push(say.poorCurve(name, text, widest.label));
  return found;
}

function grains({ screens, fines, curve, sands }: BlendReport): Finding[] {
  if (!curve || !screens) return [say.fewSieves()];
  const found: Finding[] = [];
  if (screens.count > 0)
    found.push(
      say.screensAre(
        countWord(screens.count),
        screens.labels.join(", "),
        printNumber(screens.sharePercent, 0),
      ),
    );
  if (screens.apart.length > 0) found.push(say.gapped(screens.apart.join(", ")));
  if (fines?.percent !== undefined) {
    const each = sands.flatMap(({ report }) =>
      report.fines.percent === undefined ? [] : [`${one(report.fines.percent)} % of ${report.sand.name}`],
    );
    found.push(say.finesOf(finesText(fines.percent, curve), listed(each)));
  }
  return found;
}

/** With the ± of what passes No. 140, where the sands have that sieve in common. */
function finesText(percent: number, { points }: NonNullable<BlendReport["curve"]>): string {
  const at = points.find(({ openingMm }) => openingMm === 0.106)?.passing;
  return at
    ? printFigure({ value: at.value, low: at.low, high: at.high, min: 0 }).text
    : `about ${one(percent)}`;
}

function money({ cost, currency, sands }: BlendReport): Finding[] {
  if (!cost) return [];
  const { value, low, high } = cost;
  const unit = currency === "" ? "" : ` ${currency}`;
  const sure = high - low > 1e-9 * Math.abs(value);
  const text = sure
    ? printFigure({ value, low: Math.min(low, value), high: Math.max(high, value), min: 0 }).text
    : printNumber(value, 2);
  const each = sands.map(({ report, costPerKg }) => `${printNumber(costPerKg!, 2)} ${report.sand.name}`);
  return [say.costs(`${text}${unit}`, each.join(", "))];
}

function others({ others, sands }: BlendReport): Finding[] {
  if (others.length === 0) return [];
  const ways = others.slice(0, 3).map(({ of, shares, cost }) => {
    const parts = of.map((j) => `${printNumber(100 * shares[j]!, 0)} % ${sands[j]!.report.sand.name}`);
    return `${parts.join(" with ")}${cost === undefined ? "" : ` (${printNumber(cost, 2)} a kilogram)`}`;
  });
  const priced = others.some(({ cost }) => cost !== undefined);
  return [say.otherWays(ways.join("; "), priced ? "cheapest" : "closest in grain")];
}
