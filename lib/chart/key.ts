// A key above a chart: a sample and its words, in as many rows as they need.

import type { Layer } from "./frame.ts";
import { boxes, crossAt, pixelMarks, strokes, type Words, words } from "./layers.ts";
import { hollowMarks } from "./pixel-layers.ts";
import { textWidth, wrap } from "./text.ts";
import { colours, letterPx, type SeriesStyle } from "./theme.ts";

export interface KeyEntry {
  readonly text: string;
  /**
   * line: a dash with its mark. rule: a dash alone. mark, hollow, crossed: a mark alone, filled or not, or not and crossed. cross: a cross alone. bar: a filled box.
   * band, area: a quiet box in the given colour. edged: such a box with an edge of dots, told from the others without colour.
   */
  readonly sample:
    | "line"
    | "rule"
    | "mark"
    | "hollow"
    | "crossed"
    | "cross"
    | "bar"
    | "band"
    | "area"
    | "edged";
  readonly style: SeriesStyle;
  /** Of a dash, px; 1.8 by default. */
  readonly thickness?: number;
}

export interface Key {
  readonly heightPx: number;
  /** Layers with the first row's middle at y (px of the box) and the left edge at x. */
  layers(x: number, y: number): (Layer | undefined)[];
}

/** A cross without a mark, of a value that counts in nothing: half its width in px, and how it is drawn. */
export const smallCross = 4;
export const crossLook = { color: colours.quiet, strokeWidth: 1.6 };

/** The edge of a window, in the plot and in its key. */
export const edgeDash = [2, 3];

const rowPx = 18;
const samplePx = 26;
const gapPx = 18;

/** Entries side by side while they fit; a long one has rows of its own. Several keys of one chart have several names. */
export function key(entries: readonly KeyEntry[], widthPx: number, name = "key"): Key {
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
        entrySample(each.entry, `${name}-${i + 1}`, left + each.x, top + each.row * rowPx),
      );
      return [...samples, words(`${name}-words`, labels)];
    },
  };
}

function entrySample({ sample, style, thickness }: KeyEntry, name: string, px: number, py: number) {
  const middle = [{ px: px + samplePx / 2, py }];
  if (sample === "mark") return [pixelMarks(`${name}-mark`, middle, style)];
  if (sample === "hollow") return [hollowMarks(`${name}-mark`, middle, style)];
  if (sample === "crossed")
    return [
      hollowMarks(`${name}-mark`, middle, style),
      strokes(`${name}-cross`, middle.flatMap(crossAt), { color: style.colour, strokeWidth: 1.6 }),
    ];
  if (sample === "cross") return [strokes(`${name}-cross`, crossAt(middle[0]!, smallCross), crossLook)];
  if (sample === "line" || sample === "rule") {
    const dash = { color: style.colour, strokeWidth: thickness ?? 1.8, strokeDash: style.dash };
    return [
      strokes(`${name}-line`, [{ px, py, px2: px + samplePx, py2: py }], dash),
      sample === "line" ? pixelMarks(`${name}-mark`, middle, style) : undefined,
    ];
  }
  const look =
    sample === "bar"
      ? { color: style.colour, fillOpacity: style.fillOpacity, stroke: style.colour }
      : {
          color: style.colour,
          opacity: style.fillOpacity,
          ...(sample === "edged" ? { stroke: colours.ink, strokeDash: edgeDash } : {}),
        };
  const name2 = sample === "band" ? `band-${name}` : `${name}-bar`;
  return [boxes(name2, [{ px: px + 4, py: py - 6, px2: px + samplePx - 2, py2: py + 6 }], look)];
}
