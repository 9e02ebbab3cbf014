// The words and the table of the chance of meeting the founder's aims.

import { aimWords, windowWords } from "./aim-lane.ts";
import { axisTitle, capital, columnUnit, decimalsOver, unitText } from "./axis-words.ts";
import type { ChancePanelInput, ChancePoint } from "./chance-input.ts";
import type { ChartTable } from "./chart.ts";
import { cell, ends } from "./data.ts";
import { figure } from "./text.ts";
import { thinned } from "./thinned.ts";

export const allAtOnce = "all at once";
export const whose = (input: ChancePanelInput): string => input.whose ?? "your own aims";
export const rangeWords = ({ rangeMeans }: ChancePanelInput) => rangeMeans ?? "95 % interval of all at once";
export const hasRange = ({ all }: ChancePanelInput) => all.filter((at) => ends(at)).length > 1;

export function chanceDecimals({ each, all }: ChancePanelInput): number {
  const x = [...each.flatMap(({ points }) => points), ...all].map((at) => at.x);
  return decimalsOver(x.length === 0 ? 0 : Math.max(...x) - Math.min(...x));
}

export const isKnown = ({ chance }: ChancePoint) => Number.isFinite(chance);

/** Whole percents, but what is nearly sure is not called sure. */
function chanceText(chance: number): string {
  if (chance > 99 && chance < 100) return "over 99 %";
  return chance > 0 && chance < 1 ? "under 1 %" : `${figure(chance, 0)} %`;
}

export function chanceCaption(input: ChancePanelInput): string {
  return [
    `Chance that a new batch meets ${whose(input)}`,
    input.each.length > 0 ? ", each property for itself and all at once (heavy line)" : "",
    hasRange(input) ? `; the fill is the ${rangeWords(input)}` : "",
    input.window ? `; shaded: the ${input.window.label ?? "window"}` : "",
    "; it is not the chance of a sound casting.",
  ].join("");
}

export function chanceAlt(input: ChancePanelInput): string {
  const { axis, each, all, window, aimAt } = input;
  const places = chanceDecimals(input);
  const told = ({ x, chance }: ChancePoint) => `${chanceText(chance)} at ${figure(x, places)}`;
  const course = (what: string, all: readonly ChancePoint[]) => {
    const points = all.filter(isKnown);
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last) return `${what}: no figures.`;
    const top = points.reduce((best, at) => (at.chance > best.chance ? at : best), first);
    if (points.length === 1) return `${what}: ${told(first)}.`;
    return `${what}: from ${told(first)} to ${told(last)}, highest ${told(top)}.`;
  };
  return [
    `Chance of meeting ${whose(input)}, % of new batches, against ${axisTitle(axis)}; not the chance of a sound casting.`,
    ...each.map(({ property, points }) => course(capital(property), points)),
    course("All at once", all),
    ...(window ? [`${capital(windowWords(window, unitText(axis), places))}.`] : []),
    ...(aimAt && Number.isFinite(aimAt.x) ? [`${capital(aimWords(aimAt, unitText(axis), places))}.`] : []),
  ].join(" ");
}

/** A row for each place, a column for each property and for all at once; about nine places of a long course. */
export function chanceTable(input: ChancePanelInput): ChartTable {
  const unit = "% of new batches";
  const { each, all, axis } = input;
  const courses = [...each, { property: allAtOnce, points: all }];
  const places = [...new Set(courses.flatMap(({ points }) => points.map(({ x }) => x)))];
  // A place without a figure stands last; it is there so that nothing is left out in silence.
  places.sort((a, b) => (Number.isNaN(a) ? 1 : Number.isNaN(b) ? -1 : a - b));
  const at = <P extends ChancePoint>(points: readonly P[], x: number) =>
    points.find((one) => Object.is(one.x, x));
  return {
    columns: [
      { name: axis.title, ...columnUnit(axis) },
      ...courses.map(({ property }) => ({ name: `chance, ${property}`, unit })),
      { name: `low end, ${allAtOnce}`, unit },
      { name: `high end, ${allAtOnce}`, unit },
    ],
    rows: thinned(places).map((x) => [
      cell(x),
      ...courses.map(({ points }) => cell(at(points, x)?.chance)),
      cell(at(all, x)?.low),
      cell(at(all, x)?.high),
    ]),
  };
}
