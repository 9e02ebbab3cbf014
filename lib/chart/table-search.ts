// Finds the row of a chart's table that holds given numbers.

import type { ChartTable } from "./chart.ts";

/** A number that a row has to hold, and how near it has to be. */
export interface WantedNumber {
  readonly value: number;
  readonly within: number;
}

export interface TableSearch {
  /**
   * The first row that holds all of them, each in a column of its own, and that was not found in these columns before;
   * rows to be passed over are not taken.
   */
  find(
    wanted: readonly WantedNumber[],
    passOver: (row: number) => boolean,
  ): { readonly row: number; readonly columns: readonly number[] } | undefined;
}

interface Cell {
  readonly value: number;
  readonly row: number;
  readonly column: number;
}

export function tableSearch({ rows, columns }: ChartTable): TableSearch {
  const cells = rows
    .flatMap((row, r) =>
      columns.flatMap((_, column): Cell[] => {
        const value = row[column];
        return typeof value === "number" && Number.isFinite(value) ? [{ value, row: r, column }] : [];
      }),
    )
    .sort((a, b) => a.value - b.value || a.row - b.row || a.column - b.column);
  const found = new Set<string>();

  function columnsByRow({ value, within }: WantedNumber): ReadonlyMap<number, number[]> {
    const byRow = new Map<number, number[]>();
    for (let i = firstFrom(cells, value - within); (cells[i]?.value ?? Infinity) <= value + within; i++) {
      const { row, column } = cells[i]!;
      const own = byRow.get(row);
      if (own) own.push(column);
      else byRow.set(row, [column]);
    }
    return byRow;
  }

  return {
    find(wanted, passOver) {
      const held = wanted.map(columnsByRow);
      const rowsOfFirst = [...(held[0]?.keys() ?? [])].sort((a, b) => a - b);
      for (const row of rowsOfFirst) {
        if (passOver(row)) continue;
        const own: number[] = [];
        for (const byRow of held) {
          const column = byRow
            .get(row)
            ?.toSorted((a, b) => a - b)
            .find((one) => !own.includes(one));
          if (column !== undefined) own.push(column);
        }
        const sign = `${row}:${own.join()}`;
        if (own.length < wanted.length || found.has(sign)) continue;
        found.add(sign);
        return { row, columns: own };
      }
      return undefined;
    },
  };
}

function firstFrom(cells: readonly Cell[], value: number): number {
  let [low, high] = [0, cells.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (cells[middle]!.value < value) low = middle + 1;
    else high = middle;
  }
  return low;
}
