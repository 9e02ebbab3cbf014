// Nodes that change a unit, and units that stand beside one another.

import type { Issue } from "../issue.ts";
import { sameDimension, type Unit } from "../quantity/unit.ts";
import { formulaIssue } from "./formula-issues.ts";
import { type Loop, loops } from "./formula-loops.ts";
import type { Node, Type, Typed } from "./formula-node.ts";
import { typeText } from "./formula-node.ts";
import type { Span } from "./formula-type.ts";

export type NumberType = Extract<Type, { kind: "number" }>;
export type NumberTyped = Typed & { readonly type: NumberType };

export function isNumber(typed: Typed): typed is NumberTyped {
  return typed.type.kind === "number";
}

/** Worked out at once where all arguments are constants, unless that gives no number: then the row tells why. */
export function loopNode(loop: Loop, args: readonly Node[], at: Span): Node {
  if (args.every((arg) => arg.op === "constant")) {
    const out = new Float64Array(1);
    const [a = out, b = out, c = out] = args.map((arg) => Float64Array.of(arg.value));
    loop.run(out, 0, 1, a, 0, b, 0, c, 0);
    if (Number.isFinite(out[0])) return { op: "constant", value: out[0]!, at };
  }
  return { op: "loop", loop, args, at };
}

export function constant(value: number, at: Span): Node {
  return { op: "constant", value, at };
}

/** Multiplied by a plain number; divided where that is the rounder figure, so that 3 g / 1000 stays exact. */
export function scaled(node: Node, by: number): Node {
  if (by === 1) return node;
  const large = by < 1 ? 1 / by : by;
  const tidy = Number(large.toPrecision(15));
  const round = constant(Math.abs(tidy - large) <= 4e-16 * large ? tidy : large, node.at);
  return loopNode(by < 1 ? loops.divide : loops.multiply, [node, round], node.at);
}

/** The node's figure in another unit of the same kind. */
export function inUnit(node: Node, from: Unit | undefined, to: Unit | undefined): Node {
  if (!from || !to || (from.factor === to.factor && from.offset === to.offset)) return node;
  const moved = scaled(node, from.factor / to.factor);
  return from.offset === to.offset
    ? moved
    : loopNode(loops.add, [moved, constant((from.offset - to.offset) / to.factor, node.at)], node.at);
}

export interface Pair {
  readonly a: Node;
  readonly b: Node;
  readonly type: NumberType;
}

/**
 * Two figures in one unit, that of the first: the units must be of one kind, and percentages of one whole (a basis that
 * is not said fits all). A number written out may stand beside a percentage, and 0 beside anything but a temperature.
 */
export function together(left: NumberTyped, right: NumberTyped, what: string): Pair | Issue {
  const [a, b] = [left.type.unit, right.type.unit];
  const pair = (unit: Unit | undefined): Pair => ({
    a: inUnit(left.node, a, unit),
    b: inUnit(right.node, b, unit),
    type: {
      kind: "number",
      unit,
      literal: left.type.literal === true && right.type.literal === true,
      points: unit ? undefined : pointsOf(left, right),
    },
  });
  if (a && b)
    return sameDimension(a, b)
      ? pair(a.kind === "percent" && a.of === undefined ? b : a)
      : differ(left, right, what);
  if (!a && !b) return pair(undefined);
  const unit = (a ?? b)!;
  return mayStandBeside(a ? right : left, unit) ? pair(unit) : differ(left, right, what);
}

/** Whether a plain number needs no unit of its own beside a figure in this unit. */
function mayStandBeside({ node, type }: NumberTyped, unit: Unit): boolean {
  if (unit.kind === "percent")
    return type.literal === true || (type.points !== undefined && sameDimension(type.points, unit));
  return unit.kind !== "temperature" && type.literal === true && node.op === "constant" && node.value === 0;
}

/** What two plain numbers are so many times of, where that is the same for both. */
function pointsOf({ type: a }: NumberTyped, { type: b }: NumberTyped): Unit | undefined {
  return a.points && b.points && sameDimension(a.points, b.points) ? a.points : undefined;
}

export function differ(left: Typed, right: Typed, what: string): Issue {
  return formulaIssue.differ(
    what,
    typeText(left.type),
    typeText(right.type),
    remedyFor(left.type, right.type),
  );
}

function remedyFor(left: Type, right: Type): string {
  if (left.kind === "date" || right.kind === "date")
    return 'Write a day in quotation marks, such as "2026-05-02".';
  if (left.kind !== "number" || right.kind !== "number") return "Name two of one kind.";
  const kinds = [left.unit?.kind, right.unit?.kind];
  if (kinds.every((kind) => kind === "percent"))
    return "They are shares of different wholes: turn one into the basis of the other first.";
  if (kinds.includes("temperature"))
    return "For steps of temperature write the unit °C difference, such as 5 °C difference.";
  if (kinds.includes("percent") && kinds.includes(undefined))
    return "For a share in percent write 100 * part / whole under a name with that unit, or percentOf(part, whole).";
  if (kinds.includes(undefined)) return "Give the plain number its unit, such as 5 g.";
  return "Look whether the right names stand here, and whether something is to be multiplied or divided first.";
}
