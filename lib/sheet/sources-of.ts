// Which sources a figure of a sheet hangs on.

import type { Source } from "../quantity/source.ts";
import type { OneNode, RowNode, SheetNode } from "./node.ts";

/** Each source object once; several objects may be one source by their id. */
export function sourcesOfCell(node: RowNode, row: number): Source[] {
  const found = new Set<Source>();
  collect(node, row, found, new Set());
  return [...found];
}

export function sourcesOfOne(node: OneNode): Source[] {
  const found = new Set<Source>();
  collect(node, 0, found, new Set());
  return [...found];
}

/** Whether heavy() holds for a source of the cell. known: of figures over all rows, so that each is walked through once. */
export function anySource(
  node: SheetNode,
  row: number,
  heavy: (sources: readonly Source[]) => boolean,
  known: Map<OneNode, boolean>,
): boolean {
  const seen = new Set<SheetNode>();
  const walk = (at: SheetNode): boolean => {
    if (!at.doubtful || seen.has(at)) return false;
    seen.add(at);
    const spread = at.per === "row" ? at.spreadAt?.(row) : at.spread;
    if (spread && heavy(spread.sources)) return true;
    if (at.formula?.inputs.some(walk)) return true;
    return at.per === "sheet" && at.aggregate !== undefined && ofRows(at, at.aggregate.of);
  };
  const ofRows = (at: OneNode, of: RowNode): boolean => {
    const before = known.get(at);
    if (before !== undefined) return before;
    const found = of.values.some((value, k) => !Number.isNaN(value) && anySource(of, k, heavy, known));
    known.set(at, found);
    return found;
  };
  return walk(node);
}

/** By name, one object for each: what a figure lists. */
export function namedOnce(
  sources: readonly Source[],
  nameOf: (source: Source) => string,
): Map<string, Source> {
  const named = new Map<string, Source>();
  for (const source of sources) if (!named.has(nameOf(source))) named.set(nameOf(source), source);
  return named;
}

/** seen: single figures, and the columns of this row. */
function collect(node: SheetNode, row: number, found: Set<Source>, seen: Set<SheetNode>): void {
  if (!node.doubtful || seen.has(node)) return;
  seen.add(node);
  const spread = node.per === "row" ? node.spreadAt?.(row) : node.spread;
  for (const source of spread?.sources ?? []) found.add(source);
  for (const input of node.formula?.inputs ?? []) collect(input, row, found, seen);
  if (node.per === "row" || !node.aggregate) return;
  const { of } = node.aggregate;
  // A figure over all rows looks at every row with eyes of its own; single figures need to be seen once only.
  const ones = new Set([...seen].filter((one) => one.per === "sheet"));
  for (let k = 0; k < of.values.length; k++) {
    if (Number.isNaN(of.values[k])) continue;
    const rowSeen = new Set<SheetNode>(ones);
    collect(of, k, found, rowSeen);
    for (const one of rowSeen) if (one.per === "sheet") ones.add(one);
  }
  for (const one of ones) seen.add(one);
}
