// Decides what is worth saying of a trial.

import { figure } from "../quantity/figure.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import type { TrialProperty } from "../trial/trial-property.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import type { Finding } from "./finding.ts";
import * as say from "./trial-messages.ts";

/** "% of damp mass", as it stands after a figure of the axis. */
export function axisUnit({ axis }: TrialReport): string {
  return { moisture: "% of damp mass", clay: "% clay of the dry mix", compactability: "% compactability" }[
    axis
  ];
}
export function axisName({ axis }: TrialReport): string {
  return { moisture: "moisture", clay: "clay", compactability: "compactability" }[axis];
}

const tones = ["error", "doubt", "good", "note"];

export function trialFindings(report: TrialReport): readonly Finding[] {
  if (report.rows.length === 0) return [];
  const rest = [...shapes(report), ...instruments(report)];
  // What cannot be told apart casts doubt on all that follows.
  return [
    ...together(report),
    ...aims(report),
    ...rest.sort((a, b) => tones.indexOf(a.tone) - tones.indexOf(b.tone)),
  ];
}

/** "3.40 ± 0.12" or "3.2 to 3.7" */
export function placeText({
  x,
  low,
  high,
}: {
  readonly x: number;
  readonly low: number;
  readonly high: number;
}): string {
  return printFigure({ value: x, low, high }).text;
}

function aims(report: TrialReport): Finding[] {
  const { result, why, rows, levels, moved, next, influence, properties } = report;
  const unit = axisUnit(report);
  if (!result) {
    if (why === "no aims") return [say.noAims()];
    if (why === "no curve") return [say.noCurve()];
    return [say.tooFewBatches(counted(rows.length, "batch", "batches"), counted(levels, "level", "levels"))];
  }
  const found: Finding[] = [];
  const { aim, chanceAtAim, window, limits, chances } = result;
  const per100 = (chance: number): string => chanceText(chance);
  const usual = properties.filter(({ wanted }) => wanted && !wanted.own).map(({ test }) => test);
  if (window) {
    const side = aim.open.high ? "wetter" : "drier";
    const open = aim.open.low || aim.open.high;
    const ends = report.axis === "moisture" ? side : aim.open.high ? "upper" : "lower";
    const doubt = report.confounded.some(({ companion }) => companion !== "density")
      ? "what went along with it is in doubt"
      : usual.length > 0
        ? "usual ranges are among them"
        : "";
    found.push(
      open ? say.aimOpen(printNumber(aim.x, 2), unit, ends) : say.aimAt(placeText(aim), unit, doubt),
    );
    found.push(
      say.chanceAtAim(per100(chanceAtAim), per100(moved!.narrower.chance), per100(moved!.wider.chance)),
    );
    const edge = (where: string, limit: typeof limits.left): string =>
      limit ? `${where} it ${limit.name} gets ${limit.side}.` : `${where} it nothing was tried.`;
    const span = `${printNumber(window.low, 2)} to ${printNumber(window.high, 2)}`;
    found.push(say.windowIs(span, unit, edge("Below", limits.left), edge("Above", limits.right)));
    const others = result.otherWindows.map(
      ({ low, high }) => `${printNumber(low, 2)} to ${printNumber(high, 2)}`,
    );
    if (others.length > 0) found.push(say.moreWindows(others.join(" and "), unit));
  } else {
    const best = chances.reduce((a, b) => (b.all > a.all ? b : a));
    const names = properties.filter(
      ({ wanted, curve }) => wanted && curve.form !== "points only" && curve.fit,
    );
    const worst = names[best.each.indexOf(Math.min(...best.each))]?.test ?? "One of them";
    found.push(say.noWindow(per100(best.all), capital(worst)));
  }
  if (window && influence && Math.abs(influence.shift) > 0.5 * (aim.high - aim.low)) {
    found.push(say.hangsOn(influence.batch, `${printNumber(Math.abs(influence.shift), 2)} ${unit}`));
  }
  if (next) {
    const [best] = next.candidates;
    const now = printNumber(next.widthNow, 2);
    found.push(
      next.enough || !best
        ? say.enoughBatches(now)
        : say.nextBatch(printNumber(best.x, 2), unit, now, printNumber(best.width, 2)),
    );
  }
  if (usual.length > 0) found.push(say.usualUsed(usual.join(", ")));
  return found;
}

/** What each curve is, and where it turns. */
function shapes(report: TrialReport): Finding[] {
  const unit = axisUnit(report);
  return report.properties.flatMap((property): Finding[] => {
    const { test, curve, optimum, leftOut, figures } = property;
    const count = figures.filter((figure) => figure !== undefined).length;
    const found: Finding[] = [];
    const out = report.rows.filter((_, i) => leftOut[i] && figures[i]).map(({ batch }) => batch.name);
    if (out.length > 0) found.push(say.densityApart(out.join(", "), test));
    if (test === "density" || test === "moisture") return found;
    if (curve.form === "points only") found.push(say.pointsOnly(test, counted(count, "figure", "figures")));
    if (curve.form === "straight line") found.push(say.straightOnly(capital(test)));
    if (optimum) found.push(turning(property, unit));
    return found;
  });
}

function turning({ test, optimum, curve }: TrialProperty, unit: string): Finding {
  const { x, low, high, bounded, kind } = optimum!;
  // Limits that leave what was tried rest on the parabola alone.
  const inside = low >= curve.from && high <= curve.to;
  if (!bounded || !inside || kind === "minimum") return say.peakNotBounded(test);
  return say.peakAt(test, placeText({ x, low, high }), unit);
}

function together(report: TrialReport): Finding[] {
  const name = axisName(report);
  const stepped = report.confounded.some(({ companion }) => companion === "one heap wetted step by step");
  if (stepped) return [say.oneHeap(name)];
  return report.confounded.map(({ companion, rho }) =>
    say.goesTogether(capital(companion), name, Math.abs(rho) >= 0.95),
  );
}

/** Which of the founder's instruments can carry the decision about water. */
function instruments({ axis, result, properties, x }: TrialReport): Finding[] {
  const compactability = properties.find(({ test }) => test === "compactability");
  if (axis !== "moisture" || !result || !compactability?.curve.fit) return [];
  const step = 0.05;
  const { curve, figures } = compactability;
  const slope = (curve.at(result.aim.x + step)!.mean - curve.at(result.aim.x - step)!.mean) / (2 * step);
  if (!(slope > 1)) return [];
  const half = middleOf(
    figures.flatMap((figure) => (figure ? [halfWidth(figure.spread, figure.value)] : [])),
  );
  const moisture = middleOf(x.map(({ low, high }) => (high - low) / 2));
  if (!(half > 0) || !(moisture > 0)) return [];
  return [
    say.instrumentCarries(
      printNumber(half, 1),
      printNumber(half / slope, 2),
      printNumber(moisture, 2),
      half / slope < moisture,
    ),
  ];
}

function halfWidth(spread: TrialProperty["bias"] & object, value: number): number {
  const { low, high } = figure({ ...spread, value });
  return (high - low) / 2;
}

function middleOf(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

/** "82", "99 or more", "1 or fewer": a chance in a hundred, never a certainty. */
export function chanceText(chance: number): string {
  if (chance > 0.985) return "99 or more";
  return chance < 0.015 ? "1 or fewer" : printNumber(100 * chance, 0);
}

export function counted(count: number, one: string, many: string): string {
  return `${count === 0 ? "No" : count} ${count === 1 ? one : many}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
