// What stands on a page: the cells of its tables, by their heads.

import type { Block, Section, TableCell } from "../../lib/page/blocks.ts";

const textOf = (cell: TableCell): string => (typeof cell === "string" ? cell : cell.text);

export type Rows = readonly { readonly [head: string]: string }[];

/** The rows of the table of that name, also inside a fold; heads with their unit where it has one. */
export function tableRows(blocks: readonly Block[], name: string): Rows {
  for (const block of blocks) {
    if (block.kind === "fold") {
      const inside = tableRows(block.blocks, name);
      if (inside.length > 0) return inside;
    }
    if (block.kind !== "table" || block.name !== name) continue;
    const heads = block.columns.map(({ head, unit }) => (unit ? `${head}, ${unit}` : head));
    return block.rows.map((row) =>
      Object.fromEntries(row.map((cell, k) => [heads[k] ?? "", textOf(cell as TableCell)])),
    );
  }
  return [];
}

/** All that is said in plain paragraphs of a section. */
export function proseOf({ blocks }: Pick<Section, "blocks">): readonly string[] {
  return blocks.flatMap((block) =>
    block.kind === "prose" && typeof block.text === "string" ? [block.text] : [],
  );
}
