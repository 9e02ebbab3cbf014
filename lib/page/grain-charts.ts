// The charts of sieved sands, from their reports.

import type { Chart } from "../chart/chart.ts";
import { doubtBars } from "../chart/doubt-bars.ts";
import { grainCurve } from "../chart/grain-curve.ts";
import { numberStrip } from "../chart/number-strip.ts";
import { retainedBars } from "../chart/retained-bars.ts";
import { byFineness, manySands } from "../finding/compare-neighbours.ts";
import { figureText } from "../finding/sand-findings.ts";
import type { SandReport } from "../finding/sand-report.ts";
import type { Band } from "../sand/band.ts";

/**
 * Strip against usual ranges, grain curves, bars by sieve, and for each sand with a figure what its doubt comes from.
 * @example grainCharts(sandReports(log), []).map(({ name }) => name)
 */
export function grainCharts(reports: readonly SandReport[], ranges: readonly Band[]): readonly Chart[] {
  const drawn: Chart[] = [];
  const many = manySands(reports);
  const sorted = many ? byFineness(reports) : reports;
  const marked = sorted.filter(({ printed, trusted }) => printed && trusted);
  if (marked.length > 0) drawn.push(strip(marked, ranges));
  if (many) return [...drawn, ...inGroups(sorted)];
  if (reports.length > 0) drawn.push(curves(reports, "grain-curve"), bars(reports, "retained"));
  marked.forEach(({ sand, fineness }, k) => {
    const shares = fineness.figure.shares
      .filter(({ percent }) => percent >= 1)
      .map(({ id, source, percent }) => ({ label: source.says ?? id, sharePercent: percent }));
    if (shares.length > 1) drawn.push(doubtBars({ name: `doubt-${k + 1}`, of: sand.name, shares }));
  });
  return drawn;
}

/** So many sands one drawing bears, and so many drawings a page: the others stand in the tables. */
const [together, curveDrawings, barDrawings] = [4, 3, 2];

/** Coarse to fine, four by four, so that each keeps the colour that it has in the strip. */
function inGroups(sorted: readonly SandReport[]): Chart[] {
  const count = Math.min(curveDrawings, Math.ceil(sorted.length / together));
  const left = sorted.length - count * together;
  return Array.from({ length: count }, (_, k) => k).flatMap((k) => {
    const group = sorted.slice(k * together, (k + 1) * together);
    const last = k === count - 1;
    const place = k === 0 ? "coarsest" : last && left <= 0 ? "finest" : "next finer";
    const which = `The ${group.length === 1 ? "" : `${group.length} `}${place} ${group.length === 1 ? "sand" : "sands"}. `;
    const more =
      last && left > 0
        ? ` ${left === 1 ? "One finer sand stands" : `${left} finer sands stand`} in the tables alone.`
        : "";
    const curve = curves(group, `grain-curve-${k + 1}`, which, more);
    return count > barDrawings ? [curve] : [curve, bars(group, `retained-${k + 1}`, which, more)];
  });
}

function strip(reports: readonly SandReport[], ranges: readonly Band[]): Chart {
  return numberStrip({
    name: "fineness-strip",
    title: "grain fineness number",
    unit: "",
    marks: reports.map((report) => ({
      label: report.sand.name,
      value: report.fineness.figure.value,
      low: report.fineness.figure.low,
      high: report.fineness.figure.high,
      ...(report.possible.high - report.possible.low > 1 ? { possible: report.possible } : {}),
      figure: figureText(report),
    })),
    bands: ranges.map(({ low, high, metal, bond, practice, source, tag, claim }) => ({
      label: `${metal}, ${bond}${practice ? `, ${practice}` : ""}${claim === "worked" ? ", has served" : ""}`,
      low,
      high,
      source,
      tag,
    })),
  });
}

function curves(reports: readonly SandReport[], name: string, which = "", more = ""): Chart {
  const [only] = reports.length === 1 ? reports : [];
  const between = only ? possibleBetween(only) : [];
  return grainCurve({
    name,
    sands: reports.map(({ sand, sieves }) => ({
      name: sand.name,
      ...(between.length > 0 ? { interval: between } : {}),
      points: sieves
        .filter(({ openingMm }) => openingMm > 0)
        .map(({ openingMm, label, passing }) => ({
          openingMm,
          label,
          passingPercent: passing.value,
          low: passing.low,
          high: passing.high,
        })),
    })),
    caption: `${which}Share of the sand that passes each sieve, by mass, against the opening; straight lines join the sieves, upright bars are ${reports.some(({ fineness }) => fineness.missing.length > 0) ? "at least " : ""}95 %${between.length > 0 ? "; shaded, where the curve may run in truth between two sieves that others are missing from" : ""}.${more}`,
  });
}

/** Where the curve may run between sieves that the fineness number has others between: nothing but the masses assumed. */
function possibleBetween({ fineness, curve }: SandReport) {
  return fineness.stacks[0]!.gaps.flatMap(({ cutsMm, share, upperMm, lowerMm }, k) => {
    const [above, below] = [curve.points[k - 1]?.passingPercent, curve.points[k]?.passingPercent];
    if (cutsMm.length === 0 || share < 0.02 || above === undefined || below === undefined) return [];
    return [
      { openingMm: upperMm, low: above, high: above },
      { openingMm: upperMm * 0.999, low: below, high: above },
      { openingMm: lowerMm * 1.001, low: below, high: above },
      { openingMm: lowerMm, low: below, high: below },
    ];
  });
}

function bars(reports: readonly SandReport[], name: string, which = "", more = ""): Chart {
  return retainedBars({
    name,
    ...(which === ""
      ? {}
      : { caption: `${which}Share of the sand that each sieve and the pan retained, by mass.${more}` }),
    sands: reports.map(({ sand, sieves }) => ({
      name: sand.name,
      bars: sieves.map(({ label, openingMm, retained }) => ({
        label,
        openingMm,
        percent: retained.value,
        low: Math.max(0, retained.low),
        high: retained.high,
      })),
    })),
  });
}
