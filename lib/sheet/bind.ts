// Ties a formula that was read to the columns and figures that it names, and works its middle out.

import type { Source } from "../quantity/source.ts";
import { aggregateOf } from "./aggregate.ts";
import type { Faults } from "./faults.ts";
import type { Aggregate, Formula } from "./formula-type.ts";
import { lookedUp } from "./look-up.ts";
import { columnOf, oneOf } from "./middle.ts";
import type { Bound, NodeKind, OneNode, RowNode, SheetNode } from "./node.ts";
import { sheetIssue } from "./sheet-issues.ts";
import type { CellFault, Sheet, SheetWhere } from "./sheet-types.ts";
import { isSmooth } from "./smooth.ts";

export interface BindContext {
  readonly nodes: ReadonlyMap<string, SheetNode>;
  readonly rowCount: number;
  readonly others: readonly Sheet[];
  readonly faults: Faults;
  /** Texts of a text column or value; "" where there is none. */
  textAt(name: string, row: number): string;
  /** Told of every look-up that brings a ± of its own. */
  found(node: SheetNode): void;
}

export function bindColumn(name: string, formula: Formula, context: BindContext, where: SheetWhere): RowNode {
  const bound = bind(name, formula, context, where);
  const { values, faults } = columnOf(bound, context.rowCount, context.faults, where);
  return {
    per: "row",
    name,
    kind: kindOf(formula),
    unit: formula.unit,
    formula: bound,
    values,
    faults,
    ...marks(bound),
    lacks: lacksOfRows(bound, values),
  };
}

export function bindOne(name: string, formula: Formula, context: BindContext, where: SheetWhere): OneNode {
  const bound = bind(name, formula, context, where);
  const { value, fault } = oneOf(bound, context.faults, where);
  const { doubtful, smooth } = marks(bound);
  return {
    per: "sheet",
    name,
    kind: kindOf(formula),
    unit: formula.unit,
    formula: bound,
    value,
    fault,
    doubtful,
    smooth,
    lacks: bound.inputs.some((input) => input.per === "sheet" && input.lacks),
  };
}

function lacksOfRows({ inputs }: Bound, values: Float64Array): Uint8Array | undefined {
  const lacking = inputs.filter(({ lacks }) => lacks);
  if (lacking.length === 0) return undefined;
  const out = new Uint8Array(values.length);
  for (const { lacks } of lacking) {
    if (lacks === true) out.fill(1);
    else if (lacks) for (let row = 0; row < out.length; row++) out[row]! |= lacks[row]!;
  }
  return out;
}

function bind(name: string, formula: Formula, context: BindContext, where: SheetWhere): Bound {
  const named = [...formula.rows, ...formula.sheet].map((one) => context.nodes.get(one)!);
  const aggregates = formula.aggregates.map((one, k) =>
    aggregateNode(`${name}: figure ${k}`, one, context, where),
  );
  const lookUps = formula.lookUps.map((one, k) => {
    const node = lookedUp(one, {
      ...context,
      where,
      name: `${name}: look-up ${k}`,
      key: (key) => ({ node: context.nodes.get(key)!, textAt: (row) => context.textAt(key, row) }),
    });
    if (node.doubtful) context.found(node);
    return node;
  });
  return { formula, inputs: [...named, ...aggregates, ...lookUps] };
}

function aggregateNode(
  name: string,
  { fn, p = 0, of }: Aggregate,
  context: BindContext,
  where: SheetWhere,
): OneNode {
  const rows = bindColumn(`${name} of`, of, context, where);
  // A count of a condition counts the rows that meet it.
  const asked = fn === "count" && rows.kind === "condition" ? "sum" : fn;
  const common = {
    per: "sheet" as const,
    name,
    kind: "number" as const,
    unit: fn === "count" ? undefined : of.unit,
    smooth: rows.smooth,
  };
  const [fault] = fn === "count" ? [] : firstFault(rows);
  if (fault) return { ...common, value: Number.NaN, fault, doubtful: false };
  const value = aggregateOf(asked, p, rows.values);
  if (Number.isFinite(value) || rows.values.every(Number.isNaN)) {
    const aggregate = { fn: asked, p, of: rows };
    const none = fn === "count" && Number.isNaN(value) ? 0 : value;
    const doubtful = rows.doubtful && asked !== "count";
    const lacks = doubtful && rows.lacks?.some((one, row) => one === 1 && !Number.isNaN(rows.values[row]));
    return { ...common, value: none, aggregate, doubtful, lacks };
  }
  const issue = Number.isNaN(value) ? sheetIssue.twoForSd() : sheetIssue.tooLarge();
  return { ...common, value: Number.NaN, fault: context.faults.raise(issue, where), doubtful: false };
}

function firstFault({ faults }: RowNode): CellFault[] {
  let first = Number.POSITIVE_INFINITY;
  for (const row of faults.keys()) if (row < first) first = row;
  const fault = faults.get(first);
  return fault ? [fault] : [];
}

function kindOf({ result }: Formula): NodeKind {
  return result;
}

function marks({ formula, inputs }: Bound): Pick<RowNode, "doubtful" | "far" | "smooth"> {
  const rows = inputs.filter((input) => input.per === "row");
  const ones = inputs.filter((input) => input.per === "sheet");
  return {
    doubtful: inputs.some(({ doubtful }) => doubtful),
    far: rows.some(({ far }) => far) || ones.some(({ doubtful, spread }) => doubtful && !spread),
    smooth: isSmooth(formula) && inputs.every(({ smooth }) => smooth),
  };
}

/** Names for sources: their ids, or numbers as they first come. */
export function sourceNamer(): (source: Source) => string {
  const unnamed = new Map<Source, string>();
  return (source) => {
    if (source.id !== undefined) return source.id;
    const known = unnamed.get(source) ?? `\u0000unnamed ${unnamed.size}`;
    unnamed.set(source, known);
    return known;
  };
}
