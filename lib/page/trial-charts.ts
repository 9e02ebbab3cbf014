// The charts of a trial, from its report.

import { chancePanel } from "../chart/chance-panel.ts";
import type { Chart } from "../chart/chart.ts";
import { nextTrialChart } from "../chart/next-trial-chart.ts";
import type { ResponsePanel, ResponsePoint } from "../chart/response-input.ts";
import { responsePanels } from "../chart/response-panels.ts";
import { squeezeChart } from "../chart/squeeze-chart.ts";
import { listed } from "../finding/batch-names.ts";
import { endsOf } from "../finding/ends.ts";
import type { TestName } from "../log/batch.ts";
import type { BatchFigure, BatchFigures } from "../log/batch-figures.ts";
import { squeezeSteps } from "../sand/squeeze.ts";
import { gridOver } from "../trial/aim.ts";
import type { TrialProperty } from "../trial/trial-property.ts";
import type { AxisFigure, TrialReport } from "../trial/trial-report.ts";
import { inShownUnit, metric, type ShownUnits, shownUnit, shownUnits } from "./shown-units.ts";
import { testNames, trialAxisNames } from "./trial-names.ts";
import { surfaceCharts } from "./trial-surfaces.ts";

/**
 * Response curves with the aim, the chance of meeting the aims, where the next batch would help, and the surfaces of a
 * trial in which two things were varied.
 * units: as the readings were typed unless given.
 * @example trialCharts(trialReport(log))[0]?.spec(720) // plain JSON for any Vega-Lite tool
 */
export function trialCharts(
  report: TrialReport,
  units: ShownUnits = shownUnits({ batches: report.rows.map(({ batch }) => batch) }),
): readonly Chart[] {
  const { properties, result, next, rows } = report;
  const axis = trialAxisNames[report.axis];
  const drawn: Chart[] = [];
  // Against clay, water only follows what the sand was tempered to: the temper chart has it.
  const isDrawn = ({ test }: TrialProperty): boolean =>
    test !== "density" && !(report.axis === "clay" && test === "moisture");
  const drawnIn = (system: ShownUnits) =>
    properties.filter(isDrawn).map((property) => panelOf(report, property, system));
  const panels = drawnIn(units);
  const aimed = result?.window
    ? {
        window: { ...result.window, label: report.axis === "clay" ? "window" : "temper window" },
        aimAt: { ...result.aim, atLeast: report.atLeast },
      }
    : {};
  if (rows.length > 0 && panels.length > 0) {
    const draw = (shown: typeof panels) =>
      responsePanels({ name: "response", axis, panels: shown, ...aimed });
    drawn.push(withMetricData(draw(panels), () => draw(drawnIn(metric)), properties, units));
  }
  if (result) {
    const chances = result.chances.filter((_, k) => k % 2 === 0);
    drawn.push(
      chancePanel({
        name: "chance",
        axis,
        each: report.aimed.map((test, k) => ({
          property: testNames[test]?.property ?? test,
          points: chances.map(({ x, each }) => ({ x, chance: 100 * each[k]! })),
        })),
        all: chances.map(({ x, all }) => ({ x, chance: 100 * all })),
        whose: whoseRanges(report),
        ...aimed,
      }),
    );
  }
  if (next && !next.enough && next.candidates.length > 0) {
    drawn.push(nextTrialChart({ name: "next-batch", axis, candidates: next.candidates, now: next.widthNow }));
  }
  return [...drawn, ...surfaceCharts(report, units)];
}

/** Whose ranges the aims are: the founder's own, usual ones, or both, each named. */
function whoseRanges({ properties, aimed }: TrialReport): string {
  const isOwn = (test: TestName): boolean =>
    properties.find((property) => property.test === test)?.wanted?.own ?? false;
  const own = aimed.filter(isOwn);
  const usual = aimed.filter((test) => !isOwn(test));
  if (usual.length === 0) return "your own aims";
  if (own.length === 0) return "usual ranges";
  return `your own aims for ${listed(own)} and usual ranges for ${listed(usual)}`;
}

function panelOf(
  { x, rows, keptOut, shown }: TrialReport,
  { test, figures, leftOut, curve, optimum, wanted }: TrialProperty,
  units: ShownUnits,
): ResponsePanel {
  const own = testNames[test] ?? { property: test, unit: "" };
  const system = units.of(test);
  const named = { ...own, unit: shownUnit(own.unit, system) };
  const y = (value: number): number =>
    Number.isFinite(value) ? inShownUnit(value, own.unit, system).value : value;
  const fitted =
    curve.form === "points only"
      ? {}
      : {
          curve: gridOver(curve.from, curve.to, 14).map((at) => {
            const { mean, low, high, newLow, newHigh } = curve.at(at)!;
            return {
              x: at,
              mean: y(mean),
              low: y(low),
              high: y(high),
              newLow: y(newLow),
              newHigh: y(newHigh),
            };
          }),
        };
  return {
    ...named,
    points: shown.flatMap((row) => {
      const out = keptOut.find((one) => one.row === row);
      if (out)
        return pointOf(row, row.tests[test], out.x, y).map((point) => ({
          ...point,
          leftOut: true,
          why: out.why,
        }));
      const i = rows.indexOf(row);
      return pointOf(row, figures[i], x[i], y).map((point) =>
        leftOut[i] ? { ...point, leftOut: true } : point,
      );
    }),
    ...fitted,
    ...wantedOf(test, wanted, y),
    ...(optimum && optimum.x >= curve.from && optimum.x <= curve.to && optimum.kind === "maximum"
      ? { optimum: { x: optimum.x, low: optimum.low, high: optimum.high, bounded: optimum.bounded } }
      : {}),
  };
}

/** Empty where the batch has no figure, or no place on the axis. */
function pointOf(
  { batch }: BatchFigures,
  one: BatchFigure | undefined,
  at: AxisFigure | undefined,
  y: (value: number) => number,
): readonly ResponsePoint[] {
  if (!one || !at) return [];
  const { low, high } = endsOf(one.spread);
  return [
    {
      x: at.value,
      y: y(one.value),
      xLow: Math.min(at.low, at.value),
      xHigh: Math.max(at.high, at.value),
      yLow: y(Math.min(low, one.value)),
      yHigh: y(Math.max(high, one.value)),
      label: batch.name,
    },
  ];
}

/** Files keep metric units whatever is drawn. */
function withMetricData(
  chart: Chart,
  inMetric: () => Chart,
  properties: readonly TrialProperty[],
  units: ShownUnits,
): Chart {
  const converted = properties.some(({ test }) => {
    const unit = testNames[test]?.unit ?? "";
    return shownUnit(unit, units.of(test)) !== unit;
  });
  return converted ? { ...chart, data: inMetric().table } : chart;
}

/** The founder's own aim as edges; a usual range as a quiet band. Moisture is not aimed at on another axis. */
function wantedOf(
  test: TestName,
  wanted: TrialProperty["wanted"],
  y: (value: number) => number,
): Pick<ResponsePanel, "aim" | "band"> {
  if (!wanted || test === "moisture") return {};
  const { own, says } = wanted;
  const [low, high] = [y(wanted.low), y(wanted.high)];
  return own
    ? { aim: { low, high } }
    : { band: { low, high, label: "usual range", tag: says.includes("our own") ? "our own" : "read" } };
}

/**
 * The squeeze against compactability; undefined with fewer than two batches that have both.
 * @example handChart(batchFigures(log).figures)?.name // "hand"
 */
export function handChart(
  rows: readonly BatchFigures[],
  aim?: { low: number; high: number },
): Chart | undefined {
  const points = rows.flatMap(({ batch, tests: { squeeze, compactability } }) => {
    if (!squeeze || !compactability) return [];
    const { low, high } = endsOf(compactability.spread);
    return [
      { step: Math.round(squeeze.value), compactability: compactability.value, low, high, label: batch.name },
    ];
  });
  if (points.length < 2) return undefined;
  return squeezeChart({
    name: "hand",
    steps: squeezeSteps.map(({ step, name }) => ({ step, words: name })),
    points,
    ...(aim ? { aim } : {}),
  });
}
