// Two blocks of batches against each other, such as two clays, two sands, before and after.

import type { Chart } from "../chart/chart.ts";
import { differencePlot } from "../chart/difference-plot.ts";
import { blockFinding, comparisonFinding } from "../finding/comparison-findings.ts";
import type { Finding } from "../finding/finding.ts";
import { axisName } from "../finding/trial-axis.ts";
import type { Batch, TestName } from "../log/batch.ts";
import { beforeAfter, conditionsTold } from "../trial/before-after.ts";
import { curveInBlock } from "../trial/block-aims.ts";
import { type BlockShare, blockDifference, blockShare } from "../trial/block-difference.ts";
import { blockConditions, type Conditions } from "../trial/like-conditions.ts";
import type { TrialProperty } from "../trial/trial-property.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { inShownUnit, type ShownUnits, shownUnit } from "./shown-units.ts";
import { nameAtAxis } from "./trial-names.ts";

export interface BlockComparison {
  readonly test: TestName;
  readonly first: string;
  readonly second: string;
  /** True: one above the other on one curve, at like places on the axis; false: as they were tested. */
  readonly atLike: boolean;
  /** Of the figures: "kPa", "% of height", the empty string for a bare number. */
  readonly unit: string;
  /** Second less first in the test's own unit, and its 95 % interval. */
  readonly figures: {
    readonly test: TestName;
    readonly difference: number;
    readonly low: number;
    readonly high: number;
    readonly p: number;
  };
  /** In percent of the first, at the middle of the axis; of what is no percentage itself. */
  readonly share?: BlockShare;
  readonly finding: Finding;
  readonly chart: Chart;
}

const tests: readonly TestName[] = ["green compression", "permeability", "compactability"];

/**
 * One for each test with two figures or more in both blocks; none unless the batches name just two blocks.
 * @example blockComparisons(trialReport(log), shownUnits(log)).length
 */
export function blockComparisons(report: TrialReport, units: ShownUnits): readonly BlockComparison[] {
  const { rows } = report;
  const names = [...new Set(rows.map(({ batch }) => batch.block).filter((name) => name !== undefined))];
  if (names.length !== 2) return [];
  const [first, second] = names as [string, string];
  const conditions = blockConditions(rows, first, second);
  return tests.flatMap((test) => compared(test, first, second, conditions, report, units) ?? []);
}

function compared(
  test: TestName,
  first: string,
  second: string,
  conditions: Conditions,
  report: TrialReport,
  units: ShownUnits,
): BlockComparison | undefined {
  const { rows, properties } = report;
  const ordered = [...rows].sort((a, b) => place(a.batch) - place(b.batch));
  const values = (block: string) =>
    ordered.flatMap(({ batch, tests: own }) => (batch.block === block && own[test] ? [own[test].value] : []));
  const [before, after] = [values(first), values(second)];
  if (before.length < 2 || after.length < 2) return undefined;
  const unit = rows.find(({ tests: own }) => own[test])!.tests[test]!.unit;
  const system = units.of(test);
  const property = properties.find((one) => one.test === test);
  const alike = property && blockDifference(property.curve);
  const share = alike && !unit.startsWith("%") ? shareOf(property, first, report) : undefined;
  const plain = beforeAfter(before, after, conditions);
  const found = alike ?? plain;
  // A difference of strengths turns like a strength: no unit of a test has an offset.
  const turned = (value: number): number => inShownUnit(value, unit, system).value;
  const inUnits = <D extends { difference: number; low: number; high: number }>(one: D): D => ({
    ...one,
    difference: turned(one.difference),
    low: turned(one.low),
    high: turned(one.high),
  });
  const named = shownUnit(unit, system);
  const { difference, low, high, p } = found;
  return {
    test,
    first,
    second,
    atLike: alike !== undefined,
    unit,
    figures: { test, difference, low, high, p },
    ...(share ? { share } : {}),
    finding: alike
      ? blockFinding(test, named, first, second, axisName(report), inUnits(alike), conditionsTold(conditions))
      : comparisonFinding(test, named, first, second, inUnits(plain)),
    chart: chartOf({ test, first, second, before, after, found, unit, units }),
  };
}

function shareOf(property: TrialProperty, first: string, { x, rows }: TrialReport): BlockShare | undefined {
  const places = x.map(({ value }) => value);
  const blocks = rows.map(({ batch }) => batch.block);
  return blockShare(curveInBlock(property, places, blocks, first));
}

const place = ({ order }: Batch): number => order ?? Number.POSITIVE_INFINITY;

interface ToPlot {
  readonly test: TestName;
  readonly first: string;
  readonly second: string;
  readonly before: readonly number[];
  readonly after: readonly number[];
  readonly found: { readonly difference: number; readonly low: number; readonly high: number };
  readonly unit: string;
  readonly units: ShownUnits;
}

/** In the units that are printed; files keep metric ones. */
function chartOf({ test, first, second, before, after, found, unit, units }: ToPlot): Chart {
  const [symbol, basis] = unit.startsWith("% of ") ? ["%", unit.slice(5)] : [unit, undefined];
  const system = units.of(test);
  const plot = (as: string): Chart => {
    const to = (value: number): number => (as === symbol ? value : inShownUnit(value, unit, system).value);
    return differencePlot({
      name: `compare-${test.replaceAll(" ", "-")}`,
      property: nameAtAxis(test),
      unit: as,
      ...(basis === undefined ? {} : { basis }),
      groups: [
        { label: first, values: before.map(to) },
        { label: second, values: after.map(to) },
      ],
      difference: { value: to(found.difference), low: to(found.low), high: to(found.high) },
    });
  };
  const shown = shownUnit(symbol, system);
  return shown === symbol ? plot(symbol) : { ...plot(shown), data: plot(symbol).table };
}
