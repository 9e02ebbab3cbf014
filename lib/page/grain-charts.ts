// The charts of sieved sands, from their reports.

import type { Chart } from "../chart/chart.ts";
import { doubtBars } from "../chart/doubt-bars.ts";
import { grainCurve } from "../chart/grain-curve.ts";
import { numberStrip } from "../chart/number-strip.ts";
import { retainedBars } from "../chart/retained-bars.ts";
import { figureText } from "../finding/sand-findings.ts";
import type { SandReport } from "../finding/sand-report.ts";
import type { Band } from "../sand/band.ts";

/**
 * Strip against usual ranges, grain curves, bars by sieve, and for each sand with a figure what its doubt comes from.
 * @example grainCharts(sandReports(log), []).map(({ name }) => name)
 */
export function grainCharts(reports: readonly SandReport[], ranges: readonly Band[]): readonly Chart[] {
  const drawn: Chart[] = [];
  const marked = reports.filter(({ printed, trusted }) => printed && trusted);
  if (marked.length > 0) drawn.push(strip(marked, ranges));
  if (reports.length > 0) drawn.push(curves(reports), bars(reports));
  if (marked.length > 4) return drawn;
  marked.forEach(({ sand, fineness }, k) => {
    const shares = fineness.figure.shares
      .filter(({ percent }) => percent >= 1)
      .map(({ id, source, percent }) => ({ label: source.says ?? id, sharePercent: percent }));
    if (shares.length > 1) drawn.push(doubtBars({ name: `doubt-${k + 1}`, of: sand.name, shares }));
  });
  return drawn;
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

function curves(reports: readonly SandReport[]): Chart {
  const [only] = reports.length === 1 ? reports : [];
  const between = only ? possibleBetween(only) : [];
  return grainCurve({
    name: "grain-curve",
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
    caption: `Share of the sand that passes each sieve, by mass, against the opening; straight lines join the sieves, upright bars are ${reports.some(({ fineness }) => fineness.missing.length > 0) ? "at least " : ""}95 %${between.length > 0 ? "; shaded, where the curve may run in truth between two sieves that others are missing from" : ""}.`,
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

function bars(reports: readonly SandReport[]): Chart {
  return retainedBars({
    name: "retained",
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
