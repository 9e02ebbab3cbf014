// What + − × ÷ ^, comparisons and and/or/not do with units.

import type { Issue } from "../issue.ts";
import { unitNamed } from "../quantity/read-unit.ts";
import type { Unit } from "../quantity/unit.ts";
import { type Context, fault } from "./formula-context.ts";
import {
  constant,
  differ,
  inUnit,
  isNumber,
  loopNode,
  type NumberTyped,
  scaled,
  together,
} from "./formula-convert.ts";
import { formulaIssue } from "./formula-issues.ts";
import { loops } from "./formula-loops.ts";
import { type Typed, typeText } from "./formula-node.ts";
import type { Span } from "./formula-type.ts";
import { differenceUnit, powerUnit, productUnit } from "./formula-units.ts";

export function pairOf(context: Context, op: string, left: Typed, right: Typed, at: Span): Typed | undefined {
  if (op === "and" || op === "or") return logic(context, op, left, right, at);
  if (op in comparisons) return compare(context, op, left, right, at);
  if (left.type.kind === "date" && right.type.kind === "date" && op === "-") {
    return number(loopNode(loops.subtract, [left.node, right.node], at), at, days);
  }
  for (const side of [left, right]) {
    if (isNumber(side)) continue;
    return fault(
      context,
      side.at,
      formulaIssue.needs(op, "figures", typeText(side.type), "Name a column of figures."),
    );
  }
  const [a, b] = [left as NumberTyped, right as NumberTyped];
  if (op === "+" || op === "-") return sumOf(context, op, a, b, at);
  if (op === "*" || op === "/") return productOf(context, op, a, b, at);
  if (op === "^") return powerOf(context, a, b, at);
  return fault(context, at, formulaIssue.strange(op));
}

const days: NumberTyped["type"] = { kind: "number", unit: unitNamed("d") };

function number(node: Typed["node"], at: Span, type: NumberTyped["type"]): Typed {
  return { node, at, type };
}

function sumOf(
  context: Context,
  op: "+" | "-",
  left: NumberTyped,
  right: NumberTyped,
  at: Span,
): Typed | undefined {
  const loop = op === "+" ? loops.add : loops.subtract;
  const [a, b] = [left.type.unit, right.type.unit];
  const what = op === "+" ? "added" : "subtracted";
  if (a?.kind === "temperature" || b?.kind === "temperature") {
    if (a?.kind === "temperature" && b?.kind === "temperature") {
      if (op === "+")
        return fault(
          context,
          at,
          formulaIssue.temperatures(
            `Two temperatures, in ${a.text} and ${b.text}, have no sum.`,
            "For a step write °C difference, such as 5 °C difference; for a mean of two write a + (b - a) / 2.",
          ),
        );
      return number(loopNode(loop, [left.node, inUnit(right.node, b, a)], at), at, {
        kind: "number",
        unit: differenceUnit(a),
      });
    }
    // A step onto a temperature, from either side; a temperature is not taken off a step.
    const [there, step] = a?.kind === "temperature" ? [left, right] : [right, left];
    if (step.type.unit?.kind !== "temperature difference" || (op === "-" && there === right))
      return fault(context, at, differ(left, right, what));
    const unit = there.type.unit!;
    const moved = inUnit(step.node, step.type.unit, differenceUnit(unit));
    return number(loopNode(loop, there === left ? [left.node, moved] : [moved, right.node], at), at, {
      kind: "number",
      unit,
    });
  }
  const pair = together(left, right, what);
  if ("code" in pair) return fault(context, at, pair);
  return number(loopNode(loop, [pair.a, pair.b], at), at, pair.type);
}

/** Told of an absolute temperature on a scale that does not begin at absolute zero; undefined elsewhere. */
export function absoluteIssue({ type }: NumberTyped, what: string): Issue | undefined {
  return type.unit?.kind === "temperature" && type.unit.offset !== 0
    ? formulaIssue.temperatures(
        `A temperature in ${type.unit.text} cannot be ${what}: its zero is not absolute zero.`,
        "Give it the unit K, or subtract another temperature from it first.",
      )
    : undefined;
}

function productOf(
  context: Context,
  op: "*" | "/",
  left: NumberTyped,
  right: NumberTyped,
  at: Span,
): Typed | undefined {
  for (const side of [left, right]) {
    const issue = absoluteIssue(side, op === "*" ? "multiplied" : "divided");
    if (issue) return fault(context, side.at, issue);
  }
  const node = loopNode(op === "*" ? loops.multiply : loops.divide, [left.node, right.node], at);
  const literal = left.type.literal === true && right.type.literal === true;
  const [a, b] = [left.type.unit, right.type.unit];
  // So many times a temperature in kelvin is a temperature in kelvin.
  if (a?.kind === "temperature" && !b) return number(node, at, { kind: "number", unit: a });
  if (b?.kind === "temperature" && !a && op === "*") return number(node, at, { kind: "number", unit: b });
  const { unit, scale } = productUnit(a, b, op === "*" ? 1 : -1);
  const times = (one: NumberTyped, other: NumberTyped): Unit | undefined =>
    other.type.literal === true && !other.type.unit
      ? (one.type.points ?? (one.type.unit?.kind === "percent" ? one.type.unit : undefined))
      : undefined;
  const points = times(left, right) ?? (op === "*" ? times(right, left) : undefined);
  return number(scaled(node, scale), at, { kind: "number", unit, literal, points });
}

function powerOf(context: Context, base: NumberTyped, exponent: NumberTyped, at: Span): Typed | undefined {
  if (exponent.type.unit)
    return fault(
      context,
      exponent.at,
      formulaIssue.needsNumber(
        "A power",
        `in ${exponent.type.unit.text}`,
        "Write the power as a plain number.",
      ),
    );
  const issue = absoluteIssue(base, "raised to a power");
  if (issue) return fault(context, base.at, issue);
  const node = loopNode(loops.power, [base.node, exponent.node], at);
  const literal = base.type.literal === true && exponent.type.literal === true;
  const { unit } = base.type;
  if (!unit || unit.kind === "percent") return number(node, at, { kind: "number", literal });
  if (exponent.node.op !== "constant") return fault(context, exponent.at, formulaIssue.exponent(unit.text));
  return raised(node, base, exponent.node.value, at);
}

/** A node that has raised a figure, with its unit raised as well. */
export function raised(node: Typed["node"], base: NumberTyped, exponent: number, at: Span): Typed {
  const { unit, scale } = powerUnit(base.type.unit, exponent);
  return number(scaled(node, scale), at, { kind: "number", unit, literal: base.type.literal === true });
}

const comparisons: { readonly [op: string]: (typeof loops)["equal"] } = {
  "==": loops.equal,
  "!=": loops.unequal,
  "<": loops.below,
  ">": loops.above,
  "<=": loops.atMost,
  ">=": loops.atLeast,
};

export function compare(
  context: Context,
  op: string,
  left: Typed,
  right: Typed,
  at: Span,
): Typed | undefined {
  const loop = comparisons[op]!;
  const condition = (args: Typed["node"][]): Typed => ({
    node: loopNode(loop, args, at),
    at,
    type: { kind: "condition" },
  });
  if (isNumber(left) && isNumber(right)) {
    const pair = together(left, right, "compared");
    return "code" in pair ? fault(context, at, pair) : condition([pair.a, pair.b]);
  }
  const kind = left.type.kind;
  const ordered = op !== "==" && op !== "!=";
  if (kind !== right.type.kind || (ordered && kind !== "date"))
    return fault(
      context,
      at,
      differ(left, right, ordered && kind === right.type.kind ? "put in order" : "compared"),
    );
  return condition([left.node, right.node]);
}

function logic(context: Context, op: "and" | "or", left: Typed, right: Typed, at: Span): Typed | undefined {
  for (const side of [left, right]) if (!needsCondition(context, side, op)) return undefined;
  return { node: loopNode(loops[op], [left.node, right.node], at), at, type: { kind: "condition" } };
}

export function needsCondition(context: Context, typed: Typed, what: string): boolean {
  if (typed.type.kind === "condition") return true;
  const remedy = "Write a comparison there, such as moisture > 4; after not, in brackets.";
  fault(context, typed.at, formulaIssue.needs(what, "a condition", typeText(typed.type), remedy));
  return false;
}

export function signOf(context: Context, op: string, of: Typed, at: Span): Typed | undefined {
  if (op === "not")
    return needsCondition(context, of, "not")
      ? { node: loopNode(loops.not, [of.node], at), at, type: of.type }
      : undefined;
  if (!isNumber(of))
    return fault(
      context,
      at,
      formulaIssue.needs(op, "a figure", typeText(of.type), "Name a column of figures."),
    );
  if (op === "+") return { ...of, at };
  // A temperature below zero is written with its sign; of any other there is no negative.
  const issue = of.node.op === "constant" ? undefined : absoluteIssue(of, "turned about zero");
  if (issue) return fault(context, at, issue);
  const node =
    of.node.op === "constant" ? constant(-of.node.value, at) : loopNode(loops.negate, [of.node], at);
  return number(node, at, of.type);
}
