// A key above a chart: a sample and its words, in as many rows as they need.

import type { Layer } from "./frame.ts";
import { boxes, pixelMarks, strokes, type Words, words } from "./layers.ts";
import { textWidth, wrap } from "./text.ts";
import { letterPx, type SeriesStyle } from "./theme.ts";

export interface KeyEntry {
  readonly text: string;
  /** line: a dash with its mark. bar: a filled box. band: a quiet box in the given colour. */
  readonly sample: "line" | "bar" | "band";
  readonly style: SeriesStyle;
}

export interface Key {
  readonly heightPx: number;
  /** Layers with the first row's middle at y (px of the box) and the left edge at x. */
  layers(x: number, y: number): (Layer | undefined)[];
}

const rowPx = 18;
const samplePx = 26;
const gapPx = 18;

/** Entries side by side while they fit; a long one has rows of its own. */
export function key(entries: readonly KeyEntry[], widthPx: number): Key {
  const roomPx = widthPx - samplePx - 6;
  const placed: { entry: KeyEntry; x: number; row: number; lines: readonly string[] }[] = [];
  let x = 0;
  let row = 0;
  for (const entry of entries) {
    const lines = wrap(entry.text, roomPx, letterPx.label, 2);
    const width = samplePx + 6 + Math.max(0, ...lines.map((text) => textWidth(text, letterPx.label)));
    if (x > 0 && (x + width > widthPx || lines.length > 1)) {
      x = 0;
      row += 1;
    }
    placed.push({ entry, x, row, lines });
    x += width + gapPx;
    if (lines.length > 1) {
      x = 0;
      row += lines.length;
    }
  }
  const rows = x === 0 ? row : row + 1;
  return {
    heightPx: entries.length === 0 ? 0 : rows * rowPx + 3,
    layers(left, top) {
      const labels: Words[] = placed.flatMap((each) =>
        each.lines.map((text, i) => ({
          px: left + each.x + samplePx + 6,
          py: top + (each.row + i) * rowPx,
          text,
        })),
      );
      const samples = placed.flatMap((each, i) =>
        entrySample(each.entry, `key-${i + 1}`, left + each.x, top + each.row * rowPx),
      );
      return [...samples, words("key-words", labels)];
    },
  };
}

function entrySample({ sample, style }: KeyEntry, name: string, px: number, py: number) {
  if (sample === "line") {
    const dash = { color: style.colour, strokeWidth: 1.8, strokeDash: style.dash };
    return [
      strokes(`${name}-line`, [{ px, py, px2: px + samplePx, py2: py }], dash),
      pixelMarks(`${name}-mark`, [{ px: px + samplePx / 2, py }], style),
    ];
  }
  const look =
    sample === "bar"
      ? { color: style.colour, fillOpacity: style.fillOpacity, stroke: style.colour }
      : { color: style.colour, opacity: style.fillOpacity };
  const name2 = sample === "band" ? "band-key" : `${name}-bar`;
  return [boxes(name2, [{ px: px + 4, py: py - 6, px2: px + samplePx - 2, py2: py + 6 }], look)];
}
