// The figures themselves, every source at its middle: whole columns at once, and why where there is none.

import type { Issue } from "../issue.ts";
import type { Faults } from "./faults.ts";
import type { Bound, SheetNode } from "./node.ts";
import { sheetIssue } from "./sheet-issues.ts";
import type { CellFault, SheetWhere } from "./sheet-types.ts";

export interface Column {
  readonly values: Float64Array;
  readonly faults: ReadonlyMap<number, CellFault>;
}

/** A formula over all rows. A cell that needs an empty one is empty; one that needs a faulty one shows its fault. */
export function columnOf(bound: Bound, rowCount: number, faults: Faults, where: SheetWhere): Column {
  const { formula, inputs } = bound;
  const values = new Float64Array(rowCount);
  formula.run(
    inputs.map((input) => (input.per === "row" ? input.values : input.value)),
    values,
  );
  const found = new Map<number, CellFault>();
  for (let row = 0; row < rowCount; row++) {
    if (Number.isFinite(values[row])) continue;
    const fault = faultAt(bound, row, values[row]!, (issue) => faults.raise(issue, { ...where, row }));
    values[row] = Number.NaN;
    if (fault) found.set(row, fault);
  }
  return { values, faults: found };
}

/** A formula without rows. */
export function oneOf(
  bound: Bound,
  faults: Faults,
  where: SheetWhere,
): { value: number; fault?: CellFault | undefined } {
  const out = new Float64Array(1);
  bound.formula.run(bound.inputs.map(valueAt(0)), out);
  const value = out[0]!;
  if (Number.isFinite(value)) return { value };
  return { value: Number.NaN, fault: faultAt(bound, 0, value, (issue) => faults.raise(issue, where)) };
}

const valueAt = (row: number) => (input: SheetNode) =>
  input.per === "row" ? input.values[row]! : input.value;

function faultAt(
  { formula, inputs }: Bound,
  row: number,
  result: number,
  raise: (issue: Issue) => CellFault,
): CellFault | undefined {
  for (const input of inputs) {
    const fault = input.per === "row" ? input.faults.get(row) : input.fault;
    if (fault) return fault;
  }
  const given = inputs.map(valueAt(row));
  if (given.some(Number.isNaN)) return undefined;
  const why = formula.why(given);
  if (why !== undefined) return raise(sheetIssue.noResult(why));
  return raise(Number.isNaN(result) ? sheetIssue.noResult("it cannot be worked out") : sheetIssue.tooLarge());
}
