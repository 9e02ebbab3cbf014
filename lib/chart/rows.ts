// Rows of a chart whose words stand beside the drawing where there is room, and above it where there is not.

import { type Words, words } from "./layers.ts";
import { wrap } from "./text.ts";
import { colours, letterPx, smallestLetterPx } from "./theme.ts";

export interface RowText {
  readonly label: string;
  /** In the second rank: the figure, the source. */
  readonly under?: string;
}
export interface LaidRow {
  /** Middle of the drawing in this row, px of the box. */
  readonly middle: number;
}
export interface LaidRows {
  /** Left margin of the drawing. */
  readonly left: number;
  /** True: the words stand beside the drawing, so that rules across it touch none of them. */
  readonly wide: boolean;
  readonly height: number;
  readonly rows: readonly LaidRow[];
  layers(): ReturnType<typeof words>[];
}

const linePx = 15;
const gapPx = 10;
const drawingPx = 20;
const wideFrom = 560;

/** Lays rows for a chart of this whole width; the first row starts below `startPx`. */
export function layRows(texts: readonly RowText[], width: number, right: number, startPx = 4): LaidRows {
  const wide = width >= wideFrom;
  const left = wide ? Math.round(width * 0.36) : 12;
  const textWidthPx = wide ? left - 20 : Math.floor(width) - left - right;
  const textLeft = wide ? -left + 4 : 0;
  const labels: Words[] = [];
  const unders: Words[] = [];
  let y = startPx;
  const rows = texts.map((row) => {
    const head = wrap(row.label, textWidthPx, letterPx.label, 3);
    const under = row.under === undefined ? [] : wrap(row.under, textWidthPx, smallestLetterPx, 6);
    const textPx = (head.length + under.length) * linePx;
    const rowPx = wide ? Math.max(textPx, drawingPx) : textPx + drawingPx;
    const first = wide ? y + (rowPx - textPx) / 2 : y;
    const at = (line: number) => first + linePx / 2 + line * linePx;
    head.forEach((text, i) => {
      labels.push({ px: textLeft, py: at(i), text });
    });
    under.forEach((text, i) => {
      unders.push({ px: textLeft, py: at(head.length + i), text });
    });
    const middle = wide ? y + rowPx / 2 : y + textPx + drawingPx / 2;
    y += rowPx + gapPx;
    return { middle };
  });
  return {
    left,
    wide,
    height: Math.max(y, 40),
    rows,
    layers: () => [
      words("row-labels", labels),
      words("row-notes", unders, { color: colours.quiet, fontSize: smallestLetterPx }),
    ],
  };
}
