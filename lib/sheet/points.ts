// Works columns and figures out at many points at once: the draws of one row, or a few chosen scores.

import { invariant } from "../issue.ts";
import { onceFor } from "../quantity/once-for.ts";
import type { Source } from "../quantity/source.ts";
import type { Drawing, Spread } from "../quantity/spread.ts";
import { aggregateAtPoints } from "./aggregate-points.ts";
import type { OneNode, Points, RowNode, SheetNode } from "./node.ts";
import { sourcesOfOne } from "./sources-of.ts";

/** What is drawn in the place of a figure over all rows; undefined: the figure itself. */
export type StandIn = (node: OneNode) => Spread | undefined;

/** Points start, start + 1, … of a drawing, count of them. What is drawn is kept until another row is asked for. */
export function pointsOf(drawing: Drawing, start: number, count: number, standIn?: StandIn): Points {
  const drawn = sharing(drawing);
  const { moves } = drawn;
  const rows = new Map<RowNode, { row: number; readonly values: Float64Array }>();
  const ones = new Map<OneNode, Float64Array | number>();

  function row(node: RowNode, at: number): Float64Array | number {
    if (!node.doubtful) return node.values[at]!;
    let kept = rows.get(node);
    if (kept?.row === at) return kept.values;
    if (!node.formula) {
      const spread = node.spreadAt?.(at);
      if (!spread) return node.values[at]!;
      if (moves && !spread.sources.some(moves)) {
        spread.fill(single, start, drawn);
        return single[0]!;
      }
      kept = keep(node, kept, at);
      spread.fill(kept.values, start, drawn);
      return kept.values;
    }
    // Empty or faulty: it stays so whatever is drawn.
    if (Number.isNaN(node.values[at])) return Number.NaN;
    const inputs = node.formula.inputs.map((input) => value(input, at));
    if (inputs.every((input) => typeof input === "number")) {
      if (!moves) return node.values[at]!;
      node.formula.formula.run(inputs, single);
      return single[0]!;
    }
    kept = keep(node, kept, at);
    node.formula.formula.run(inputs, kept.values);
    return kept.values;
  }

  function keep(node: RowNode, kept: { row: number; readonly values: Float64Array } | undefined, at: number) {
    const used = kept ?? { row: at, values: new Float64Array(count) };
    used.row = at;
    if (!kept) rows.set(node, used);
    return used;
  }

  function value(node: SheetNode, at: number): Float64Array | number {
    return node.per === "row" ? row(node, at) : one(node);
  }

  function one(node: OneNode): Float64Array | number {
    if (!node.doubtful || Number.isNaN(node.value)) return node.value;
    const known = ones.get(node);
    if (known !== undefined) return known;
    if (moves && count > 1 && !sourcesOf(node).some(moves)) {
      // One point stands for all.
      const all = pointsOf(drawn, start, 1, standIn).one(node);
      const value = typeof all === "number" ? all : all[0]!;
      ones.set(node, value);
      return value;
    }
    const values = new Float64Array(count);
    const spread = standIn?.(node) ?? node.spread;
    if (spread) spread.fill(values, start, drawn);
    else if (node.aggregate) {
      // Points of their own: the rows that are walked through must not disturb the row that is worked on here.
      aggregateAtPoints(node.aggregate, values, (from, length) => pointsOf(drawn, start + from, length));
    } else {
      invariant(node.formula, `${node.name} has a ± but nothing to draw`);
      node.formula.formula.run(
        node.formula.inputs.map((input) => value(input, 0)),
        values,
      );
    }
    ones.set(node, values);
    return values;
  }

  function forget(): void {
    for (const kept of rows.values()) kept.row = -1;
    ones.clear();
  }

  return { row, one, forget };
}

/** For what is the same at every point. */
const single = new Float64Array(1);

const sourcesOf = onceFor(sourcesOfOne);

const shared = new WeakSet<Drawing>();

/** A drawing that is cheap enough as it is. */
export function asItIs(drawing: Drawing): Drawing {
  shared.add(drawing);
  return drawing;
}

/** A scale's bias stands in every cell that was weighed on it: its scores are drawn once. */
function sharing(drawing: Drawing): Drawing {
  if (shared.has(drawing)) return drawing;
  const kept = new Map<Source, { readonly start: number; readonly scores: Float64Array }>();
  const { moves } = drawing;
  const sharingOne: Drawing = {
    count: drawing.count,
    ...(moves ? { moves } : {}),
    add(source, scale, out, start) {
      if (moves && !moves(source)) return;
      if (source.kind !== "rig") return drawing.add(source, scale, out, start);
      let known = kept.get(source);
      if (known?.start !== start || known.scores.length !== out.length) {
        known = { start, scores: new Float64Array(out.length) };
        drawing.add(source, 1, known.scores, start);
        kept.set(source, known);
      }
      const { scores } = known;
      for (let j = 0; j < out.length; j++) out[j]! += scale * scores[j]!;
    },
  };
  shared.add(sharingOne);
  return sharingOne;
}
