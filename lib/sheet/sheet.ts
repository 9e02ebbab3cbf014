// Named columns with units, rows, formulas and a foot: worked out with a ± on every figure.

import { invariant, Misuse } from "../issue.ts";
import { nearest } from "../numbers/nearest.ts";
import { readUnit } from "../quantity/read-unit.ts";
import type { Source } from "../quantity/source.ts";
import { sourceNamer } from "./bind.ts";
import { chartsIn } from "./charts-in.ts";
import { doubtOf } from "./doubt.ts";
import { type Faults, faultsOf } from "./faults.ts";
import { plainName } from "./formula-names.ts";
import { type InputNode, inputColumn, namedValue } from "./inputs.ts";
import { namesOf } from "./names.ts";
import type { OneNode, RowNode, SheetNode } from "./node.ts";
import { type Column, readColumn } from "./read-columns.ts";
import { checkRows, rowKeys } from "./row-keys.ts";
import type { Cell, Sheet, SheetContext, SheetSpec } from "./sheet-types.ts";
import { cellAt, columnAt } from "./show.ts";
import { textsKnown } from "./texts.ts";
import { type FormulaToRead, workOut } from "./work-out.ts";

export type {
  Cell,
  CellFault,
  CellSpec,
  ColumnSpec,
  FootFigure,
  Sheet,
  SheetChart,
  SheetColumn,
  SheetContext,
  SheetScale,
  SheetSpec,
  SheetWhere,
} from "./sheet-types.ts";

/**
 * A sheet worked out: typed columns, columns by formula, named values and a foot, each figure with its unit and its ±.
 *
 * Figures: y = f(x₁ … xₙ) for each row, in the units of the columns; a cell with a unit of its own is turned into its
 * column's, one without is taken in it. Aggregates pass over empty cells; a cell that needs an empty one is empty, one
 * that needs a faulty one shows that fault. Faults, and whatever else is wrong, stand in issues; nothing else stops.
 *
 * ±: what a typed cell says ("12.4 ± 0.1 g", surely within unless (sd) or (95 %)), else what its column says, else its
 * scale: two roundings to a step of the display, with and without the load, each cell's own; and the bound that the scale
 * was checked to, one source for all that was weighed on it, so that it cancels in a difference and does not average out
 * in a mean. Of a figure worked out, 95 %: where it is nearly straight in its sources, the limit of y(0) + Σ (∂y/∂s)·s mended for its bend
 * (straightOf), else draws (figure). Both are worked out when low, high or shares are read, never before.
 *
 * context.scales: what columns may name as their scale; context.others: sheets for lookUp(); context.place: where a part
 * of the spec stands, for the issues. Calls for a column or row that is not there throw Misuse.
 * Source of the ±: propagation of distributions, JCGM 101:2008; shared sources as in GUM (JCGM 100:2008) F.1.2.3.
 * @example
 * const weighed = sheet({
 *   columns: { wet: "g", dry: "g", moisture: { unit: "% of damp mass", formula: "100 * (wet - dry) / wet" } },
 *   rows: [{ wet: "52.4 ± 0.1 g", dry: "50.6 ± 0.1 g" }],
 *   foot: { "mean moisture": "mean(moisture)" },
 * });
 * weighed.cell(0, "moisture") // { kind: "figure", value: 3.435…, figure: { low: 3.143…, high: 3.725… } }
 */
export function sheet(spec: SheetSpec, context: SheetContext = {}): Sheet {
  const { name = "sheet", rows } = spec;
  const { scales = [], others = [] } = context;
  const faults = faultsOf(name, context.place);
  const { keyOf } = namesOf(spec, faults.report);

  // 1. What was typed.
  const columns = Object.entries(spec.columns).map(([column, given]) =>
    readColumn(column, given, scales, (issue) => faults.report(issue, { column })),
  );
  checkRows(columns, rows, faults);
  const typing = { sheet: name, rows, keys: rowKeys(columns, rows), faults, biasOf: biases() };
  const inputs = new Map(
    columns
      .filter(({ formula }) => formula === undefined)
      .map((one): [string, InputNode] => [keyOf("column", one.name), inputColumn(one, typing)]),
  );
  const values = new Map(
    Object.entries(spec.values ?? {}).map(([value, cell]) => [
      keyOf("value", value),
      namedValue(value, cell, typing),
    ]),
  );

  // 2. What is worked out from it, by need.
  const formulas = [
    ...columns.flatMap((one) => columnFormula(one, keyOf("column", one.name))),
    ...Object.entries(spec.foot ?? {}).map(([foot, given]) =>
      footFormula(foot, given, keyOf("foot", foot), faults),
    ),
  ];
  const lookedUp: SheetNode[] = [];
  const { nodes, unread } = workOut(formulas, new Map<string, SheetNode>([...inputs, ...values]), {
    rowCount: rows.length,
    others,
    faults,
    textAt: (key, row) => inputs.get(key)?.texts[row] ?? values.get(key)?.text ?? "",
    found: (node) => void lookedUp.push(node),
  });
  faults.finish();

  // 3. Its ±, when it is read.
  const bring = [...inputs.values(), ...values.values(), ...lookedUp].filter(({ doubtful }) => doubtful);
  const shown = {
    nodes,
    unread,
    doubt: doubtOf({
      columns: bring.filter((node): node is RowNode => node.per === "row"),
      values: bring.filter((node): node is OneNode => node.per === "sheet"),
      nameOf: sourceNamer(),
    }),
    textOf: textsKnown(
      inputs.values(),
      values.values(),
      formulas.map(({ text }) => text),
      others,
    ),
  };
  const shownColumns = columns.map((one) => columnAt(shown, keyOf("column", one.name), one, rows.length));
  const charts = chartsIn(spec.charts ?? [], columns, (issue) => faults.report(issue, {}));
  const place = new Map(columns.map((one, k) => [one.name, k]));
  const find = (asked: string): number => place.get(asked) ?? columnNamed(asked, columns, name);
  const keys = columns.map((one) => keyOf("column", one.name));

  return {
    name,
    ...(spec.title === undefined ? {} : { title: spec.title }),
    ...(spec.note === undefined ? {} : { note: spec.note }),
    columns: shownColumns,
    rowCount: rows.length,
    column: (asked) => shownColumns[find(asked)]!,
    cell(row, asked) {
      invariant(
        Number.isInteger(row) && row >= 0 && row < rows.length,
        `there is no row ${row} in "${name}"`,
      );
      return cellAt(shown, keys[find(asked)]!, row);
    },
    foot: formulas
      .filter((one) => one.in === "foot")
      .map(({ key, name, text }) => lazily({ name, formula: text }, () => cellAt(shown, key, 0))),
    values: [...values].map(([key, value]) => lazily({ name: value.name }, () => cellAt(shown, key, 0))),
    charts,
    issues: faults.issues,
  };
}

/** One source for each scale: the object must stay the same. */
function biases(): (scale: string) => Source {
  const made = new Map<string, Source>();
  return (scale) => {
    const source = made.get(scale) ?? {
      id: `bias of ${scale}`,
      kind: "rig",
      shape: { kind: "rectangular" },
      says: `the bias of the ${scale}`,
    };
    made.set(scale, source);
    return source;
  };
}

function columnFormula({ name, formula, unit }: Column, key: string): FormulaToRead[] {
  return formula === undefined ? [] : [{ key, name, text: formula, in: "column", wants: unit }];
}

function footFormula(
  name: string,
  given: string | { readonly formula: string; readonly unit?: string },
  key: string,
  faults: Faults,
): FormulaToRead {
  if (typeof given === "string") return { key, name, text: given, in: "foot" };
  const { value, issues } = given.unit === undefined ? { issues: [] } : readUnit(given.unit);
  for (const issue of issues) faults.report(issue, { foot: name });
  return { key, name, text: given.formula, in: "foot", wants: value };
}

function columnNamed(asked: string, columns: readonly Column[], sheetName: string): number {
  const found = columns.findIndex(({ name }) => plainName(name) === plainName(asked));
  if (found >= 0) return found;
  const near = nearest(
    asked,
    columns.map(({ name }) => name),
  );
  throw new Misuse(
    `the sheet "${sheetName}" has no column "${asked}"${near === undefined ? "" : `; "${near}" is near`}`,
  );
}

function lazily<T extends object>(known: T, make: () => Cell): T & { readonly cell: Cell } {
  let cell: Cell | undefined;
  return Object.defineProperty(known, "cell", {
    enumerable: true,
    get() {
      cell ??= make();
      return cell;
    },
  }) as T & { readonly cell: Cell };
}
