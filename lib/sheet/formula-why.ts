// Why a formula gives no number for figures that are all there.

import { loops } from "./formula-loops.ts";
import type { Node, Slot } from "./formula-node.ts";
import type { ArrayModel } from "./functions-model.ts";

/** The first part, from the left and from within, that makes no number; undefined where the whole is one. */
export function reasonFor(
  root: Node,
  input: (slot: Slot, index: number) => number,
  text: string,
): string | undefined {
  const value = (node: Node): number => {
    if (node.op === "constant") return node.value;
    if (node.op === "input") return input(node.slot, node.index);
    return valueAt(node, node.args.map(value));
  };
  const explain = (node: Node): string | undefined => {
    if (node.op === "constant" || node.op === "input") return undefined;
    const values = node.args.map(value);
    for (const [k, arg] of counting(node, values)) {
      const reason = Number.isFinite(values[k]) ? undefined : explain(arg);
      if (reason !== undefined) return reason;
    }
    if (node.op === "model") return refusal(node.model, values);
    const texts = node.args.map(({ at }) => text.slice(at.from, at.to));
    return node.loop.reason?.(values, texts) ?? "the figure is too large to work with";
  };
  return Number.isFinite(value(root)) ? undefined : explain(root);
}

/** The parts that the result hangs on: of a question the answer that was taken, and not the other. */
function counting(node: Node & { args: readonly Node[] }, values: readonly number[]): [number, Node][] {
  const all = node.args.map((arg, k): [number, Node] => [k, arg]);
  if (node.op !== "loop" || node.loop !== loops.choose) return all;
  return all.filter(([k]) => k === 0 || (values[0] === 1 ? k === 1 : k === 2));
}

function valueAt(node: Node & { args: readonly Node[] }, values: readonly number[]): number {
  if (node.op === "model") {
    if (values.some(Number.isNaN)) return Number.NaN;
    try {
      return node.model.call(values);
    } catch (error) {
      if (error instanceof RangeError) return Number.NaN;
      throw error;
    }
  }
  const out = new Float64Array(1);
  const [a = out, b = out, c = out] = values.map((value) => Float64Array.of(value));
  if (node.op === "loop") node.loop.run(out, 0, 1, a, 0, b, 0, c, 0);
  return out[0]!;
}

/** In the model's own words. */
function refusal(model: ArrayModel, values: readonly number[]): string {
  try {
    model.call(values);
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
  return `${model.name} gives no figure so far from what it was found on`;
}
