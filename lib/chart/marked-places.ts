// Names of places on a level axis, in rows over the plot, none on another's name.

import type { Layer, Scale } from "./frame.ts";
import { strokes, words } from "./layers.ts";
import { clip, textWidth } from "./text.ts";
import { colours, smallestLetterPx } from "./theme.ts";

export interface MarkedPlace {
  readonly x: number;
  readonly label: string;
}

export const markedRowPx = 14;

interface Placed {
  readonly px: number;
  readonly from: number;
  readonly to: number;
  readonly row: number;
  readonly text: string;
}

/**
 * Places each name over the top of its stroke, from the left to the right, in the lowest row (0) where it meets no
 * other. Rows: how many are needed; layers: strokes from the plot's top to its foot, names above the top.
 */
export function markedPlaces(
  marked: readonly MarkedPlace[],
  x: Scale,
  widthPx: number,
  heightPx: number,
): { readonly rows: number; readonly layers: readonly (Layer | undefined)[] } {
  const placed: Placed[] = [];
  for (const { x: at, label } of marked.toSorted((a, b) => a.x - b.x)) {
    const px = x(at);
    const text = clip(label, widthPx, smallestLetterPx);
    const wide = textWidth(text, smallestLetterPx);
    const from = Math.max(0, Math.min(px - 3, widthPx - wide));
    const span = { px, from, to: from + wide + 6, text };
    let row = 0;
    while (placed.some((one) => one.row === row && from < one.to && span.to > one.from)) row++;
    placed.push({ ...span, row });
  }
  const up = (row: number): number => -markedRowPx * row - markedRowPx / 2;
  return {
    rows: placed.length === 0 ? 0 : Math.max(...placed.map(({ row }) => row)) + 1,
    layers: [
      strokes(
        "marked",
        placed.map(({ px }) => ({ px, py: 0, px2: px, py2: heightPx })),
        { color: colours.ink, strokeWidth: 1, strokeDash: [4, 3] },
      ),
      words(
        "marked-names",
        placed.map(({ from, row, text }) => ({ px: from, py: up(row) - 1, text })),
        { fontSize: smallestLetterPx },
      ),
    ],
  };
}
