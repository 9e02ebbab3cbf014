// A formula after its units were checked: what is left is arithmetic of plain numbers.

import type { Unit } from "../quantity/unit.ts";
import type { Loop } from "./formula-loops.ts";
import type { Span } from "./formula-type.ts";
import type { ArrayModel } from "./functions-model.ts";

export type Slot = "row" | "sheet" | "aggregate" | "look-up";

export type Node =
  | { readonly op: "constant"; readonly value: number; readonly at: Span }
  /** The index-th of its kind. */
  | { readonly op: "input"; readonly slot: Slot; readonly index: number; readonly at: Span }
  | { readonly op: "loop"; readonly loop: Loop; readonly args: readonly Node[]; readonly at: Span }
  | { readonly op: "model"; readonly model: ArrayModel; readonly args: readonly Node[]; readonly at: Span };

/**
 * literal: written as a number, so that it may stand beside a percentage; zero may stand beside any unit.
 * points: so many times a percentage, as in mean + 2 * sd: a plain number that may stand beside such a percentage.
 */
export type Type =
  | {
      readonly kind: "number";
      readonly unit?: Unit | undefined;
      readonly literal?: boolean;
      readonly points?: Unit | undefined;
    }
  | { readonly kind: "text" }
  | { readonly kind: "date" }
  | { readonly kind: "condition" };

/** A part of a formula with what it is. */
export interface Typed {
  readonly node: Node;
  readonly type: Type;
  readonly at: Span;
}

/** In words for a message: "g", "a plain number", "a text". */
export function typeText(type: Type): string {
  if (type.kind === "number") return type.unit?.text ?? "a plain number";
  return type.kind === "condition" ? "a condition" : `a ${type.kind}`;
}
