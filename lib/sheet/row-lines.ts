// How the cells of one row hang on their sources, from a few chosen points.

import type { Source } from "../quantity/source.ts";
import type { Spread } from "../quantity/spread.ts";
import { shifted } from "../quantity/spread-of.ts";
import { type Design, type Expansion, emptyDesign } from "./design.ts";
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

/** The expansion of a cell in the sources of its row; undefined where they are too many. Read it before the next. */
export function rowLines(doubted: Doubted, sdOf: SdOf): (node: RowNode, row: number) => RowLine | undefined {
  const standIns = new Map<OneNode, { readonly spread: Spread; readonly source: Source }>();
  const near = oneRowAtATime((design, row) => takeRow(doubted, design, row));
  const far = oneRowAtATime(
    (design, row) => {
      takeRow(doubted, design, row);
      for (const { source } of standIns.values()) design.take(source, source.id!);
    },
    (node) => standIns.get(node)?.spread,
  );

  function standInFor(node: OneNode): void {
    if (standIns.has(node)) return;
    const source: Source = { id: standInName(node), kind: "method", shape: { kind: "normal" } };
    standIns.set(node, { source, spread: shifted(node.value, sdOf(node), source) });
    far.forget();
  }

  return (node, row) => {
    if (node.far) for (const one of figuresUnder(node)) standInFor(one);
    return (node.far ? far : near).line(node, row);
  };
}

/** The design and its arrays are used again from row to row. */
function oneRowAtATime(
  take: (design: Design, row: number) => void,
  standIn?: (node: OneNode) => Spread | undefined,
) {
  const design = emptyDesign();
  const drawing = asItIs(design.drawing);
  const { sources, names } = design;
  let points: Points | undefined;
  let count = 0;
  let last: number | undefined;

  function begin(row: number): void {
    last = row;
    design.clear();
    take(design, row);
    if (names.length > mostSources) return;
    if (count !== design.count()) points = undefined;
    count = design.count();
    points ??= pointsOf(drawing, 0, count, standIn);
    points.forget();
  }

  return {
    line(node: RowNode, row: number): RowLine | undefined {
      if (last !== row) begin(row);
      if (names.length > mostSources || !points) return undefined;
      const values = points.row(node, row);
      const drawn = typeof values === "number" ? new Float64Array(count).fill(values) : values;
      return { expansion: design.read(drawn), sources, names };
    },
    forget() {
      last = undefined;
    },
  };
}

function takeRow({ columns, values, nameOf }: Doubted, design: Design, row: number): void {
  for (const node of columns)
    for (const source of node.spreadAt?.(row)?.sources ?? []) design.take(source, nameOf(source));
  for (const node of values)
    for (const source of node.spread?.sources ?? []) design.take(source, nameOf(source));
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
