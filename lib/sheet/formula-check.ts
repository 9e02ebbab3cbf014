// From the tree of a formula to arithmetic of plain numbers, every unit checked on the way.

import { dayOf } from "../numbers/days.ts";
import { aggregateCall, lookUpCall } from "./formula-aggregates.ts";
import { callable, choose, rowCall } from "./formula-calls.ts";
import { type Context, fault, spanOf } from "./formula-context.ts";
import { constant, loopNode } from "./formula-convert.ts";
import { formulaIssue } from "./formula-issues.ts";
import { loops } from "./formula-loops.ts";
import { type Slot, type Typed, typeText } from "./formula-node.ts";
import { compare, pairOf, signOf } from "./formula-operators.ts";
import type { Tree } from "./formula-parser.ts";
import { textCode } from "./formula-text.ts";
import type { AggregateName } from "./formula-type.ts";
import { aggregateFunctions } from "./functions.ts";

const overRows: ReadonlySet<string> = new Set(aggregateFunctions.map(({ name }) => name));

/** The part of a formula as arithmetic; undefined where it has a fault, which is then noted in the context. */
export function check(context: Context, tree: Tree): Typed | undefined {
  const at = spanOf(context, tree);
  switch (tree.kind) {
    case "leaf":
      return leafOf(context, tree);
    case "group": {
      const inside = check(context, tree.args[0]);
      return inside && { ...inside, at };
    }
    case "sign": {
      const of = check(context, tree.args[0]);
      return of && signOf(context, tree.op, of, at);
    }
    case "pair": {
      const sides = operands(context, tree.op === "==" || tree.op === "!=" || isOrder(tree.op), tree.args);
      return sides && pairOf(context, tree.op, sides[0]!, sides[1]!, at);
    }
    case "chain": {
      const parts = operands(context, true, tree.args);
      if (!parts) return undefined;
      const links = tree.ops.map((op, k) => compare(context, op, parts[k]!, parts[k + 1]!, at));
      if (!links.every((link) => link !== undefined)) return undefined;
      const node = links.map((link) => link.node).reduce((all, next) => loopNode(loops.and, [all, next], at));
      return { node, at, type: { kind: "condition" } };
    }
    case "choice": {
      const parts = tree.args.map((arg) => check(context, arg));
      return parts.every((part) => part !== undefined)
        ? choose(context, parts as unknown as [Typed, Typed, Typed], at)
        : undefined;
    }
    case "call":
      return callOf(context, tree);
  }
}

const isOrder = (op: string): boolean => op === "<" || op === ">" || op === "<=" || op === ">=";

function callOf(context: Context, tree: Tree & { kind: "call" }): Typed | undefined {
  const token = context.tokens[tree.first]!;
  if (token.kind !== "function") return fault(context, token.at, formulaIssue.strange("("));
  const { name } = token;
  if (!callable(context, name, tree)) return undefined;
  if (name === "lookUp") return lookUpCall(context, tree);
  const aggregate = overRows.has(name) && ((name !== "min" && name !== "max") || tree.args.length === 1);
  return aggregate
    ? aggregateCall(context, name as AggregateName, tree, check)
    : rowCall(context, name, tree, check);
}

function leafOf(context: Context, tree: Tree): Typed | undefined {
  const token = context.tokens[tree.first]!;
  const { at } = token;
  switch (token.kind) {
    case "number":
      return {
        node: constant(token.value, at),
        at,
        type: { kind: "number", unit: token.unit, literal: true },
      };
    case "name":
      return nameOf(context, token.name, tree);
    case "text":
      return fault(context, at, formulaIssue.textPlace());
    case "function":
      return fault(context, at, formulaIssue.functionAlone(token.name));
    case "sign":
      return fault(context, at, formulaIssue.strange(token.sign));
  }
}

function nameOf(context: Context, name: string, tree: Tree): Typed | undefined {
  const at = spanOf(context, tree);
  const kind = context.scope.names.get(name);
  if (!kind) return fault(context, at, formulaIssue.noSuchName(name, undefined, ""));
  if (kind.per === "row" && context.scope.in === "foot" && context.within === undefined)
    return fault(context, at, formulaIssue.bareColumn(name));
  const list = kind.per === "row" ? context.slots.rows : context.slots.sheet;
  const before = list.indexOf(name);
  const index = before >= 0 ? before : list.push(name) - 1;
  const slot: Slot = kind.per;
  const type: Typed["type"] =
    kind.kind === "number" ? { kind: "number", unit: kind.unit } : { kind: kind.kind };
  return { node: { op: "input", slot, index, at }, at, type };
}

/** Parts that are compared may be texts in quotation marks, where the others are texts or dates. */
function operands(context: Context, compared: boolean, args: readonly Tree[]): readonly Typed[] | undefined {
  const written = args.map((arg) => {
    const token = context.tokens[arg.first]!;
    return compared && arg.kind === "leaf" && token.kind === "text" ? token.text : undefined;
  });
  const parts = args.map((arg, k) => (written[k] === undefined ? check(context, arg) : undefined));
  const other = parts.find((part) => part !== undefined);
  const whole = args.map((arg, k): Typed | undefined => {
    const text = written[k];
    if (text === undefined) return parts[k];
    const at = spanOf(context, arg);
    const isDate = other?.type.kind === "date";
    if (other?.type.kind === "text" || isDate) {
      const value = isDate ? dayOf(text.trim()) : textCode(text);
      if (Number.isNaN(value) && isDate) {
        const remedy = 'Write the day as "2026-05-02".';
        return fault(context, at, formulaIssue.needs("This comparison", "a date", `"${text}"`, remedy));
      }
      return { node: constant(value, at), at, type: { kind: isDate ? "date" : "text" } };
    }
    if (other) {
      const remedy = "Compare a text with a column of text.";
      return fault(
        context,
        at,
        formulaIssue.needs("This comparison", typeText(other.type), "a text", remedy),
      );
    }
    return fault(context, at, formulaIssue.textPlace());
  });
  return whole.every((part) => part !== undefined) ? whole : undefined;
}
