// What a trial says of the aim: where, how sure, how wide, and what hangs on one batch.

import { printFigure, printNumber } from "../quantity/print.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { listed } from "./batch-names.ts";
import type { Finding } from "./finding.ts";
import { axisPlaces, axisUnit, placeText, spanText } from "./trial-axis.ts";
import * as say from "./trial-messages.ts";
import { tubeAim } from "./tube-aim.ts";

export function aimFindings(report: TrialReport): readonly Finding[] {
  const { result, why, rows, levels, moved, next, influence, properties } = report;
  const unit = axisUnit(report);
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
  if (window) {
    found.push(aimFound(report, usual.length > 0));
    const tube = tubeAim(report);
    if (tube) {
      const { value, low, high } = tube;
      found.push(say.aimByTube(printFigure({ value, low, high, unit: "%", atLeast: report.atLeast }).text));
    }
    found.push(
      say.chanceAtAim(
        chanceText(chanceAtAim),
        chanceText(moved!.narrower.chance),
        chanceText(moved!.wider.chance),
        report.atLeast,
      ),
    );
    const edge = (where: string, limit: typeof limits.left): string =>
      limit ? `${where} it ${limit.name} gets ${limit.side}.` : `${where} it nothing was tried.`;
    found.push(
      say.windowIs(spanText(window, report), unit, edge("Below", limits.left), edge("Above", limits.right)),
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
  const unit = axisUnit(report);
  if (aim.open.low || aim.open.high) {
    const ends = report.axis === "moisture" ? ["wetter", "drier"] : ["upper", "lower"];
    return say.aimOpen(printNumber(aim.x, axisPlaces(report)), unit, ends[aim.open.high ? 0 : 1]!);
  }
  const doubt = report.confounded.some(({ companion }) => companion !== "density")
    ? "what went along with it is in doubt"
    : usual
      ? "usual ranges are among them"
      : "";
  return say.aimAt(placeText(aim, report, report.atLeast), unit, doubt, report.atLeast);
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
