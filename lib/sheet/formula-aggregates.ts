// Figures over the rows, and figures of other sheets.

import { nearest } from "../numbers/nearest.ts";
import type { Check } from "./formula-calls.ts";
import { type Context, emptySlots, fault, snippet, spanOf } from "./formula-context.ts";
import { constant, isNumber, loopNode } from "./formula-convert.ts";
import { formulaIssue } from "./formula-issues.ts";
import { loops } from "./formula-loops.ts";
import { type Typed, typeText } from "./formula-node.ts";
import type { Tree } from "./formula-parser.ts";
import { formulaOf } from "./formula-run.ts";
import type { AggregateName, LookUp, Span } from "./formula-type.ts";
import { differenceUnit } from "./formula-units.ts";

/** One figure over all rows of what stands in the brackets; that is worked out row by row, as a formula of its own. */
export function aggregateCall(
  context: Context,
  fn: AggregateName,
  tree: Tree & { kind: "call" },
  check: Check,
): Typed | undefined {
  const at = spanOf(context, tree);
  if (context.within !== undefined) return fault(context, at, formulaIssue.nested(snippet(context, at)));
  const inner: Context = { ...context, within: fn, slots: emptySlots() };
  const checked = check(inner, tree.args[0]!);
  const p = fn === "quantile" ? shareOf(context, tree.args[1]!, check) : undefined;
  if (!checked || (fn === "quantile" && p === undefined)) return undefined;
  const overRows =
    inner.slots.rows.length > 0 ||
    inner.slots.lookUps.some(({ key }) => "name" in key && context.scope.names.get(key.name)?.per === "row");
  if (!overRows) return fault(context, at, formulaIssue.noRows(fn));
  const counted = fn === "count" && checked.type.kind === "condition";
  const of = counted ? zeroOrOne(checked) : checked;
  const unit = unitOver(context, fn, of);
  if (unit === false) return undefined;
  const aggregate = {
    // How many rows meet a condition: the sum of its ones.
    fn: counted ? ("sum" as const) : fn,
    ...(p === undefined ? {} : { p }),
    of: formulaOf(context.text, snippet(context, of.at), of, inner.slots),
  };
  const list = context.slots.aggregates;
  const same = list.findIndex(
    (each) => each.fn === aggregate.fn && each.p === p && each.of.text === aggregate.of.text,
  );
  const index = same >= 0 ? same : list.push(aggregate) - 1;
  return {
    node: { op: "input", slot: "aggregate", index, at },
    at,
    type: { kind: "number", ...(unit ? { unit } : {}) },
  };
}

function zeroOrOne(condition: Typed): Typed {
  const { at } = condition;
  return {
    node: loopNode(loops.choose, [condition.node, constant(1, at), constant(0, at)], at),
    at,
    type: { kind: "number" },
  };
}

function shareOf(context: Context, tree: Tree, check: Check): number | undefined {
  const typed = check(context, tree);
  if (!typed) return undefined;
  const { node } = typed;
  if (isNumber(typed) && !typed.type.unit && node.op === "constant" && node.value >= 0 && node.value <= 1)
    return node.value;
  return fault(context, typed.at, formulaIssue.quantileShare());
}

/** Undefined: a plain number. False: there is no such figure, and a fault was noted. */
function unitOver(context: Context, fn: AggregateName, of: Typed) {
  if (fn === "count") return undefined;
  const refuse = (issue: Parameters<typeof fault>[2]): false => {
    fault(context, of.at, issue);
    return false;
  };
  if (!isNumber(of))
    return refuse(formulaIssue.needs(fn, "figures", typeText(of.type), "Name a column of figures."));
  const { unit } = of.type;
  if (unit?.kind !== "temperature") return unit;
  if (fn === "sd") return differenceUnit(unit);
  if (fn === "sum")
    return refuse(formulaIssue.temperatures(`Temperatures in ${unit.text} have no sum.`, "Write mean(…)."));
  return unit;
}

/** lookUp("sheet", key, "column"). */
export function lookUpCall(context: Context, tree: Tree & { kind: "call" }): Typed | undefined {
  const at = spanOf(context, tree);
  const [sheetTree, keyTree, columnTree] = tree.args as [Tree, Tree, Tree];
  const sheet = textAt(context, sheetTree);
  const column = textAt(context, columnTree);
  const key = keyAt(context, keyTree);
  if (sheet === undefined || column === undefined || !key) return undefined;
  const { otherSheets } = context.scope;
  if (!otherSheets || otherSheets.size === 0) return fault(context, at, formulaIssue.noOtherSheets());
  const columns = otherSheets.get(sheet);
  if (!columns)
    return fault(
      context,
      spanOf(context, sheetTree),
      formulaIssue.noSuchSheet(sheet, nearest(sheet, otherSheets.keys())),
    );
  const kind = columns.get(column);
  if (!kind)
    return fault(
      context,
      spanOf(context, columnTree),
      formulaIssue.noSuchColumn(sheet, column, nearest(column, columns.keys())),
    );
  const list = context.slots.lookUps;
  const look: LookUp = { sheet, column, key };
  const same = list.findIndex((each) => JSON.stringify(each) === JSON.stringify(look));
  const index = same >= 0 ? same : list.push(look) - 1;
  const type: Typed["type"] =
    kind.kind === "number" ? { kind: "number", unit: kind.unit } : { kind: kind.kind };
  return { node: { op: "input", slot: "look-up", index, at }, at, type };
}

function textAt(context: Context, tree: Tree): string | undefined {
  const token = context.tokens[tree.first]!;
  if (tree.kind === "leaf" && token.kind === "text") return token.text;
  const at: Span = spanOf(context, tree);
  const written = snippet(context, at);
  return fault(
    context,
    at,
    formulaIssue.needs(
      "lookUp",
      "a name in quotation marks",
      `"${written}"`,
      'Write lookUp("sheet", key, "column").',
    ),
  );
}

function keyAt(context: Context, tree: Tree): LookUp["key"] | undefined {
  const token = context.tokens[tree.first]!;
  if (tree.kind === "leaf" && token.kind === "text") return { text: token.text };
  const at = spanOf(context, tree);
  if (tree.kind === "leaf" && token.kind === "name") {
    const kind = context.scope.names.get(token.name);
    if (kind?.kind === "text") {
      if (context.scope.in === "foot" && context.within === undefined && kind.per === "row")
        return fault(context, at, formulaIssue.bareColumn(token.name));
      return { name: token.name };
    }
  }
  const written = `"${snippet(context, at)}"`;
  return fault(
    context,
    at,
    formulaIssue.needs(
      "The key of lookUp",
      "a column of text, or a text in quotation marks",
      written,
      'Write lookUp("sheet", key, "column").',
    ),
  );
}
