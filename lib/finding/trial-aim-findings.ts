// What a trial says of the aim: where, how sure, how wide, and what hangs on one batch.

import type { Phrase } from "../phrase.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import type { BlockAim } from "../trial/block-aims.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { listed } from "./batch-names.ts";
import type { Finding } from "./finding.ts";
import { axisInWords, axisPlaces, placeText, spanText } from "./trial-axis.ts";
import * as say from "./trial-messages.ts";
import { tubeAim } from "./tube-aim.ts";

export function aimFindings(report: TrialReport): readonly Finding[] {
  const { result, why, rows, levels, moved, next, influence, properties } = report;
  const unit = axisInWords(report);
  if (!result) {
    if (why === "no aims") return [say.noAims()];
    if (why === "no curve") return [say.noCurve()];
    return [say.tooFewBatches(counted(rows.length, "batch", "batches"), counted(levels, "level", "levels"))];
  }
  const found: Finding[] = [];
  const { aim, chanceAtAim, window, limits, chances } = result;
  const places = axisPlaces(report);
  const usual = properties
    .filter(({ test, wanted }) => wanted && !wanted.own && report.aimed.includes(test))
    .map(({ test }) => test);
  const [first, second] = report.blockAims.map((one, k) => blockText(one, k, report));
  if (first && second) {
    found.push(say.aimsInBlocks(first, second, doubtOf(report, usual.length > 0), report.atLeast));
  }
  if (window) {
    found.push(aimFound(report, usual.length > 0));
    const tube = tubeAim(report);
    if (tube) {
      const { value, low, high } = tube;
      found.push(say.aimByTube(printFigure({ value, low, high, unit: "%", atLeast: report.atLeast }).text));
    }
    if (report.blockAims.length === 0) {
      found.push(
        say.chanceAtAim(
          chanceText(chanceAtAim),
          chanceText(moved!.narrower.chance),
          chanceText(moved!.wider.chance),
          report.atLeast,
        ),
      );
    }
    const edge = (below: boolean, limit: typeof limits.left): Phrase =>
      limit ? say.windowEdge(below, limit.name, limit.side) : say.nothingTried(below);
    found.push(
      say.windowIs(spanText(window, report), unit, edge(true, limits.left), edge(false, limits.right)),
    );
    const others = result.otherWindows.map((other) => spanText(other, report));
    if (others.length > 0) found.push(say.moreWindows(listed(others), unit));
  } else {
    const best = chances.reduce((a, b) => (b.all > a.all ? b : a));
    const worst = report.aimed[best.each.indexOf(Math.min(...best.each))] ?? "one of them";
    found.push(say.noWindow(chanceText(best.all), capital(worst)));
  }
  if (window && influence && Math.abs(influence.shift) > 0.5 * (aim.high - aim.low)) {
    found.push(say.hangsOn(influence.batch, `${printNumber(Math.abs(influence.shift), places)} ${unit}`));
  }
  if (next) {
    const [best] = next.candidates;
    const now = printNumber(next.widthNow, places);
    found.push(
      next.enough || !best
        ? say.enoughBatches(now)
        : say.nextBatch(printNumber(best.x, places), unit, now, printNumber(best.width, places)),
    );
  }
  if (usual.length > 0) found.push(say.usualUsed(listed(usual)));
  return found;
}

function aimFound(report: TrialReport, usual: boolean): Finding {
  const { aim } = report.result!;
  const unit = axisInWords(report);
  if (aim.open.low || aim.open.high) {
    const ends = report.axis === "moisture" ? ["wetter", "drier"] : ["upper", "lower"];
    return say.aimOpen(printNumber(aim.x, axisPlaces(report)), unit, ends[aim.open.high ? 0 : 1]!);
  }
  const names = report.blockAims.map(({ block }) => block);
  const between =
    names.length > 0 ? `at the mean of ${listed(names)}, as drawn: no batch is made in between` : "";
  const doubt = [between, doubtOf(report, usual)].filter((text) => text !== "").join("; ");
  return say.aimAt(placeText(aim, report, report.atLeast), unit, doubt, report.atLeast);
}

function doubtOf({ confounded }: TrialReport, usual: boolean): string {
  if (confounded.some(({ companion }) => companion !== "density"))
    return "what went along with it is in doubt";
  return usual ? "usual ranges are among them" : "";
}

/** "67 in 100 new batches of short mull at 3.187 (95 %: 3.162 to 3.263) % of damp mass". */
function blockText(
  { block, result: { aim, chanceAtAim } }: BlockAim,
  k: number,
  report: TrialReport,
): string {
  // A place at an end of what was tried is no aim: it stands without an interval.
  const open = aim.open.low || aim.open.high;
  const at = open ? printNumber(aim.x, axisPlaces(report)) : placeText(aim, report, report.atLeast);
  const end = open ? ", at an end of what was tried" : "";
  return `${chanceText(chanceAtAim)} in 100 ${k === 0 ? "new batches " : ""}of ${block} at ${at} ${axisInWords(report)}${end}`;
}
/** "82", "99 or more", "1 or fewer": a chance in a hundred, never a certainty. */
export function chanceText(chance: number): string {
  if (chance > 0.985) return "99 or more";
  return chance < 0.015 ? "1 or fewer" : printNumber(100 * chance, 0);
}

export function counted(count: number, one: string, many: string): string {
  return `${count === 0 ? "No" : count} ${count === 1 ? one : many}`;
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
