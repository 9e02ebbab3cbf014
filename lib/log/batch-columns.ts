// The batches of a log as columns: one for each test, for a script's own table, curve or chart.

import type { FigureColumn } from "../quantity/figure-column.ts";
import type { Spread } from "../quantity/spread.ts";
import type { TestName } from "./batch.ts";
import { batchFigures } from "./batch-figures.ts";
import { testNames } from "./test-forms.ts";
import type { Log } from "./types.ts";
import { workedUnits } from "./worked-units.ts";

export type BatchColumns = { readonly batch: FigureColumn<string> } & {
  readonly [test in TestName]: FigureColumn<Spread | undefined>;
};

/**
 * A row for each batch that can be used and that the log does not leave out, in the log's order: its name, and the figure of each test by the method that
 * most batches of the log use, undefined where it was not tested. Units as in testFigure; the ± is that of batchFigures.
 * @example
 * const { value: log } = readLog("format: 1\nbatches: { W1: { moisture: 3.2 % ± 0.1 % }, W2: {} }", { name: "log.yaml" });
 * batchColumns(log!).moisture.values.map((one) => one?.value) // [3.2, undefined]
 */
export function batchColumns(log: Pick<Log, "batches">): BatchColumns {
  const rows = batchFigures(log).figures.filter(({ batch }) => !batch.keptOut);
  const column = (test: TestName): FigureColumn<Spread | undefined> => {
    const { unit } = workedUnits[test];
    return {
      title: test,
      ...(unit === "" ? {} : { unit }),
      values: rows.map(({ tests }) => tests[test]?.spread),
    };
  };
  const tests = Object.fromEntries(testNames.map((test) => [test, column(test)]));
  return {
    batch: { title: "batch", values: rows.map(({ batch }) => batch.name) },
    ...(tests as Omit<BatchColumns, "batch">),
  };
}
