// How the cells of one row hang on their sources, from a few chosen points.

import type { Source } from "../quantity/source.ts";
import type { Spread } from "../quantity/spread.ts";
import { shifted } from "../quantity/spread-of.ts";
import { type Design, designOf, type Expansion } from "./design.ts";
import type { OneNode, Points, RowNode } from "./node.ts";
import { asItIs, pointsOf } from "./points.ts";

/** With more sources than this a cell is drawn. */
const mostSources = 48;

export interface RowLine {
  readonly expansion: Expansion;
  readonly sources: readonly Source[];
  readonly names: readonly string[];
}

export interface Doubted {
  /** Typed columns and look-ups with a ±. */
  readonly columns: readonly RowNode[];
  /** Named values and look-ups with a ±. */
  readonly values: readonly OneNode[];
  nameOf(source: Source): string;
}

/** The standard deviation of a figure over all rows, whose place a source of its own takes. */
export type SdOf = (node: OneNode) => number;

/** Where a cell hangs on a figure over all rows, that figure stands in as one normal source by this name. */
export function standInName(node: OneNode): string {
  return `\u0000stand-in ${node.name}`;
}

/** The expansion of a cell in the sources of its row; undefined where they are too many. The last row is kept. */
export function rowLines(doubted: Doubted, sdOf: SdOf) {
  const near = oneRowAtATime((row) => designOfRow(doubted, row, []));
  const standIns = new Map<OneNode, { readonly spread: Spread; readonly source: Source }>();
  const far = oneRowAtATime(
    (row) =>
      designOfRow(
        doubted,
        row,
        [...standIns.values()].map(({ source }) => source),
      ),
    (node) => standIns.get(node)?.spread,
  );

  function standInFor(node: OneNode): void {
    if (!node.doubtful || node.spread || standIns.has(node)) return;
    const source: Source = { id: standInName(node), kind: "method", shape: { kind: "normal" } };
    standIns.set(node, { source, spread: shifted(node.value, sdOf(node), source) });
    far.forget();
  }

  return (node: RowNode, row: number): RowLine | undefined => {
    if (node.far) for (const one of figuresUnder(node)) standInFor(one);
    const at = (node.far ? far : near).at(row);
    if (!at) return undefined;
    const values = at.points.row(node, row);
    const drawn = typeof values === "number" ? new Float64Array(at.design.count).fill(values) : values;
    return { expansion: at.design.read(drawn), sources: at.design.sources, names: at.design.names };
  };
}

function oneRowAtATime(
  make: (row: number) => Design | undefined,
  standIn?: (node: OneNode) => Spread | undefined,
) {
  let kept: { row: number; readonly at: { design: Design; points: Points } | undefined } | undefined;
  return {
    at(row: number) {
      if (kept?.row !== row) {
        const design = make(row);
        const points = design && pointsOf(asItIs(design.drawing), 0, design.count, standIn);
        kept = { row, at: design && points && { design, points } };
      }
      return kept.at;
    },
    forget() {
      kept = undefined;
    },
  };
}

function designOfRow(
  { columns, values, nameOf }: Doubted,
  row: number,
  more: readonly Source[],
): Design | undefined {
  const alias = new Map<Source, string>();
  const named = new Map<string, Source>();
  const take = (source: Source): void => {
    const name = nameOf(source);
    alias.set(source, name);
    if (!named.has(name)) named.set(name, source);
  };
  for (const node of columns) for (const source of node.spreadAt?.(row)?.sources ?? []) take(source);
  for (const node of values) for (const source of node.spread?.sources ?? []) take(source);
  for (const source of more) take(source);
  return named.size > mostSources ? undefined : designOf(named, alias);
}

/** The figures over all rows that a column reads, itself or through others of its row. */
function figuresUnder(node: RowNode, found = new Set<OneNode>(), seen = new Set<RowNode>()): Set<OneNode> {
  if (seen.has(node)) return found;
  seen.add(node);
  for (const input of node.formula?.inputs ?? []) {
    if (input.per === "row") figuresUnder(input, found, seen);
    else if (input.doubtful && !input.spread) found.add(input);
  }
  return found;
}
