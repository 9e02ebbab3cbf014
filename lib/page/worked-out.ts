// What a table tells on demand: how its columns come about, and its rows beyond the first screens.

import type { TableBlock, TableRow, WorkedOut } from "./blocks.ts";
import type { PageWords } from "./words.ts";

/** The columns with a formula in their order, those of one formula together; then what is told of the foot. */
export function workedOut({ columns, footFormulas = [] }: TableBlock): readonly WorkedOut[] {
  const told = new Map<string, WorkedOut>();
  for (const { head, unit, formula, source } of columns) {
    if (formula === undefined) continue;
    const key = JSON.stringify([formula, unit, source]);
    const before = told.get(key);
    told.set(key, {
      head: before ? `${before.head}; ${head}` : head,
      formula,
      ...(unit === undefined ? {} : { unit }),
      ...(source === undefined ? {} : { source }),
    });
  }
  return [...told.values(), ...footFormulas];
}

/** "moisture, % of damp mass" */
export function workedOutName({ head, unit }: WorkedOut): string {
  return unit === undefined ? head : `${head}, ${unit}`;
}

export interface FoldedRows<Block extends TableBlock> {
  /** With the first rows and the foot. */
  readonly head: Block;
  readonly rest?: {
    readonly rows: readonly TableRow[];
    /** "rows 41 to 200" */
    readonly says: string;
    /** "Rows 41 to 200" */
    readonly title: string;
  };
}

export function foldedRows<Block extends TableBlock>(block: Block, words: PageWords): FoldedRows<Block> {
  const { rows, foldAfter = Number.POSITIVE_INFINITY } = block;
  // A fold for a row or two costs more than the rows.
  if (rows.length <= foldAfter + 2) return { head: block };
  const [from, to] = [String(foldAfter + 1), String(rows.length)];
  return {
    head: { ...block, rows: rows.slice(0, foldAfter) },
    rest: { rows: rows.slice(foldAfter), says: words.tableRows(from, to), title: words.moreRows(from, to) },
  };
}
