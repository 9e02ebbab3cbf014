// Names beside measured points, where they touch nothing; a name without free room is left to the table.

import type { Stroke, Words } from "./layers.ts";
import { clip, textWidth } from "./text.ts";
import { smallestLetterPx } from "./theme.ts";

/** A box in px that must stay free of words. */
export interface Taken {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const heightPx = 13;
const widestPx = 96;

/**
 * Places the names one by one, nearest free place first: right, left, above, below, then the corners, then further out.
 * lines: kept off too where there is such a place; else the name stands where it meets the fewest of them.
 */
export function pointLabels(
  points: readonly { readonly px: number; readonly py: number; readonly label?: string }[],
  room: Taken,
  taken: readonly Taken[],
  lines: readonly Taken[] = [],
): Words[] {
  const used = [...taken];
  const placed: Words[] = [];
  for (const { px, py, label } of points) {
    if (label === undefined || label.trim() === "") continue;
    const text = clip(label, widestPx, smallestLetterPx);
    let best: { word: Words; rect: Taken; met: number } | undefined;
    for (const { x, y } of around(px, py, textWidth(text, smallestLetterPx))) {
      const word = { px: x, py: y, text };
      const rect = boxOf(word);
      if (
        rect.left < room.left + 2 ||
        rect.right > room.right ||
        rect.top < room.top ||
        rect.bottom > room.bottom
      )
        continue;
      if (used.some((each) => meet(each, rect))) continue;
      const met = lines.filter((each) => meet(each, rect)).length;
      if (!best || met < best.met) best = { word, rect, met };
      if (met === 0) break;
    }
    if (!best) continue;
    const { word, rect } = best;
    used.push({ left: rect.left - 3, right: rect.right + 3, top: rect.top - 1, bottom: rect.bottom + 1 });
    placed.push(word);
  }
  return placed;
}

/** Grounds for the names that found no place off the lines, so that no line runs through their letters. */
export function namesOnLines(names: readonly Words[], lines: readonly Taken[]): Stroke[] {
  return names
    .map(boxOf)
    .filter((rect) => lines.some((each) => meet(each, rect)))
    .map(({ left, right, top, bottom }) => ({ px: left - 1, py: top, px2: right + 1, py2: bottom }));
}

function boxOf({ px, py, text }: Words): Taken {
  const width = textWidth(text, smallestLetterPx);
  return { left: px, right: px + width, top: py - heightPx / 2, bottom: py + heightPx / 2 };
}

/** Left edge and middle of a word around a point. */
function* around(px: number, py: number, width: number): Generator<{ x: number; y: number }> {
  for (const away of [7, 11]) {
    const up = away + heightPx / 2;
    yield { x: px + away, y: py };
    yield { x: px - away - width, y: py };
    yield { x: px + away - 2, y: py - up + 3 };
    yield { x: px + away - 2, y: py + up - 3 };
    yield { x: px - away + 2 - width, y: py - up + 3 };
    yield { x: px - away + 2 - width, y: py + up - 3 };
    yield { x: px - width / 2, y: py - up };
    yield { x: px - width / 2, y: py + up };
  }
}

function meet(a: Taken, b: Taken): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Small boxes along a line of px, close enough that no word slips through. */
export function alongLine(at: readonly { readonly px: number; readonly py: number }[]): Taken[] {
  return at.slice(1).flatMap((to, i) => {
    const from = at[i]!;
    const steps = Math.max(1, Math.ceil(Math.hypot(to.px - from.px, to.py - from.py) / 4));
    return Array.from({ length: steps + 1 }, (_, step) => {
      const px = from.px + ((to.px - from.px) * step) / steps;
      const py = from.py + ((to.py - from.py) * step) / steps;
      return { left: px - 2, right: px + 2, top: py - 2, bottom: py + 2 };
    });
  });
}
