// What the rigs of a trial can carry: the decision about water, figures by unlike methods, a leak past the specimen.

import type { TestName } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import { combine } from "../quantity/combine.ts";
import { figure } from "../quantity/figure.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import type { Spread } from "../quantity/spread.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { listed, namesTogether } from "./batch-names.ts";
import { curveSlope } from "./curve-slope.ts";
import type { Finding } from "./finding.ts";
import * as say from "./trial-messages.ts";
import * as rig from "./trial-rig-messages.ts";

/**
 * Unlike methods, and the leak that no ± of permeability holds; usable without a trial.
 * @example rigFindings(batchFigures(log).figures).map(({ text }) => text)
 */
export function rigFindings(rows: readonly BatchFigures[]): readonly Finding[] {
  return [...unlikeMethods(rows), ...(rows.some(({ tests }) => tests.permeability) ? [rig.wallLeak()] : [])];
}

/** Which of the founder's instruments can carry the decision about water. */
export function instrumentFindings({ axis, result, properties, x }: TrialReport): readonly Finding[] {
  const compactability = properties.find(({ test }) => test === "compactability");
  if (axis !== "moisture" || !compactability) return [];
  const { curve, figures } = compactability;
  const slope = curveSlope(curve, result?.aim.x)?.value ?? 0;
  if (!(slope > 1)) return [];
  const half = middleOf(figures.flatMap((one) => (one ? [halfWidth(one.spread)] : [])));
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

function unlikeMethods(rows: readonly BatchFigures[]): readonly Finding[] {
  const names = rows.map(({ batch }) => batch.name);
  const kinds = new Map<string, { test: TestName; method: string; usual: string; rows: BatchFigures[] }>();
  for (const row of rows) {
    for (const { test, method = "a method that is not said" } of row.apart) {
      const usual = rows.flatMap(({ tests }) => tests[test]?.method ?? [])[0] ?? "the usual method";
      const key = `${test} ${method}`;
      const kind = kinds.get(key) ?? { test, method, usual, rows: [] };
      kinds.set(key, { ...kind, rows: [...kind.rows, row] });
    }
  }
  return [...kinds.values()].map(({ test, method, usual, rows: own }) => {
    const both = own.flatMap((row) => differenceOf(row, test, method));
    return rig.otherMethod(
      test,
      method,
      usual,
      namesTogether(
        own.map(({ batch }) => batch.name),
        names,
      ),
      listed(both),
    );
  });
}

function differenceOf({ batch, tests, apart }: BatchFigures, test: TestName, method: string): string[] {
  const usual = tests[test];
  const other = apart.find(
    (one) => one.test === test && (one.method ?? "a method that is not said") === method,
  );
  if (!usual || !other) return [];
  const { value, low, high } = combine(
    ({ a, b }) => a - b,
    { a: other.spread, b: usual.spread },
    { as: "a less b" },
  );
  const text = printFigure({
    value,
    low: Math.min(low, value),
    high: Math.max(high, value),
    unit: usual.unit,
  });
  return [`${text.text} at ${batch.name}`];
}

function halfWidth(spread: Spread): number {
  const { low, high } = figure(spread);
  return (high - low) / 2;
}

function middleOf(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}
