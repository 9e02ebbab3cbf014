// The surfaces of a trial in which two things were varied, as charts.

import type { Chart } from "../chart/chart.ts";
import { surfaceChart } from "../chart/surface-chart.ts";
import type { CurveValue } from "../trial/response-curve.ts";
import type { TrialSurface } from "../trial/response-surface.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { inShownUnit, metric, type ShownUnits, shownUnit } from "./shown-units.ts";
import { testNames, trialAxisNames } from "./trial-names.ts";

/** A page holds so many; strength and permeability, which pull apart, come first. */
const most = 2;
const first = ["green compression", "permeability"];

/** A chart for each fitted surface, strength and permeability before the others, two at most. */
export function surfaceCharts(report: TrialReport, units: ShownUnits): readonly Chart[] {
  const rank = ({ test }: TrialSurface): number => {
    const place = first.indexOf(test);
    return place < 0 ? first.length : place;
  };
  return report.surfaces
    .filter(({ surface }) => surface.form !== "none")
    .sort((a, b) => rank(a) - rank(b))
    .slice(0, most)
    .map((one) => {
      const chart = draw(report, one, units);
      const unit = testNames[one.test]?.unit ?? "";
      // Files keep metric units whatever is drawn.
      return shownUnit(unit, units.of(one.test)) === unit
        ? chart
        : { ...chart, data: draw(report, one, metric).table };
    });
}

function draw(
  { axis, rows, x, properties }: TrialReport,
  { test, other, surface, places }: TrialSurface,
  units: ShownUnits,
): Chart {
  const { property, ...own } = testNames[test] ?? { property: test, unit: "" };
  const system = units.of(test);
  const to = (value: number): number =>
    Number.isFinite(value) ? inShownUnit(value, own.unit, system).value : value;
  const { figures = [], wanted } = properties.find((one) => one.test === test) ?? {};
  const turned = ({ mean, low, high }: CurveValue) => ({ mean: to(mean), low: to(low), high: to(high) });
  return surfaceChart({
    name: `surface-${test.replaceAll(" ", "-")}`,
    axis: trialAxisNames[axis],
    other: trialAxisNames[other],
    property: { ...own, title: property, unit: shownUnit(own.unit, system) },
    at: (at, there) => {
      const value = surface.at(at, there);
      return value && turned(value);
    },
    tried: surface.tried,
    batches: surface.used.map((i) => ({
      label: rows[i]!.batch.name,
      x: x[i]!.value,
      y: places[i]!,
      value: to(figures[i]!.value),
    })),
    ...(wanted?.own ? { aim: { low: to(wanted.low), high: to(wanted.high) } } : {}),
  });
}
