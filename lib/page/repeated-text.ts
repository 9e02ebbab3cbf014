// Where a page repeats a sentence of a message: in its answer, in prose and lists, at a cell.

import type { Block, Inline, TableCell, TableRow, Text } from "./blocks.ts";

/** Sentences with what stands for them. */
type Sentences = ReadonlyMap<string, string>;

/** The blocks with every such sentence in its other words. */
export function repeatedIn(blocks: readonly Block[], sentences: Sentences): readonly Block[] {
  return blocks.map((block): Block => {
    switch (block.kind) {
      case "prose":
        return { ...block, text: repeatedText(block.text, sentences) };
      case "list":
        return { ...block, items: block.items.map((item) => repeatedText(item, sentences)) };
      case "table":
        return {
          ...block,
          rows: block.rows.map((row) => rowOf(row, sentences)),
          ...(block.foot ? { foot: block.foot.map((row) => rowOf(row, sentences)) } : {}),
        };
      case "fold":
        return { ...block, blocks: repeatedIn(block.blocks, sentences) };
      default:
        return block;
    }
  });
}

/** A text, or a whole piece of one, that is such a sentence. */
export function repeatedText(text: Text, sentences: Sentences): Text {
  const other = (piece: string): string => sentences.get(piece) ?? piece;
  if (typeof text === "string") return other(text);
  return text.map((piece): Inline => {
    if (typeof piece === "string") return other(piece);
    if ("code" in piece) return piece;
    return "strong" in piece ? { strong: other(piece.strong) } : { em: other(piece.em) };
  });
}

function rowOf(row: TableRow, sentences: Sentences): TableRow {
  return row.map((cell): string | TableCell => {
    if (typeof cell !== "object" || cell.fault === undefined) return cell;
    return { ...cell, fault: sentences.get(cell.fault) ?? cell.fault };
  });
}
