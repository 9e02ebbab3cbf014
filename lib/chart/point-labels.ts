// Names beside measured points, where they touch nothing; a name without free room is left to the table.

import type { Words } from "./layers.ts";
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

/** Places the names one by one, nearest free place first: right, left, above, below, then the corners, then further out. */
export function pointLabels(
  points: readonly { readonly px: number; readonly py: number; readonly label?: string }[],
  room: Taken,
  taken: readonly Taken[],
): Words[] {
  const used = [...taken];
  const placed: Words[] = [];
  for (const { px, py, label } of points) {
    if (label === undefined || label.trim() === "") continue;
    const text = clip(label, widestPx, smallestLetterPx);
    const width = textWidth(text, smallestLetterPx);
    for (const { x, y } of around(px, py, width)) {
      const rect = { left: x, right: x + width, top: y - heightPx / 2, bottom: y + heightPx / 2 };
      if (
        rect.left < room.left + 2 ||
        rect.right > room.right ||
        rect.top < room.top ||
        rect.bottom > room.bottom
      )
        continue;
      if (used.some((each) => meet(each, rect))) continue;
      used.push({ left: rect.left - 3, right: rect.right + 3, top: rect.top - 1, bottom: rect.bottom + 1 });
      placed.push({ px: x, py: y, text });
      break;
    }
  }
  return placed;
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
