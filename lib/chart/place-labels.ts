// Direct labels: a place beside each curve that touches no curve and no other label.

import type { Scale } from "./frame.ts";
import { textWidth, wrap } from "./text.ts";
import { letterPx } from "./theme.ts";

export interface PixelPoint {
  readonly x: number;
  readonly y: number;
}
interface Rect {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}
/** A label: its lines, the left edge, the middle of its first line. */
export interface PlacedLabel {
  readonly lines: readonly string[];
  readonly x: number;
  readonly y: number;
}
export interface LabelledCurve {
  readonly name: string;
  readonly points: readonly PixelPoint[];
}

export const labelLinePx = 15;
const clearPx = 7;
/** A label further away than this from its own curve, or about as near to another, belongs to nobody. */
const farPx = 16;
const stepPx = 6;
/** Further off than this other curves disturb nobody. */
const mostRoomPx = 60;
/** Curves are walked in steps of this length when distances are taken. */
const walkPx = 3;

/**
 * Places a label for each curve inside the box, or none at all: if one curve has no free place, or a name is too
 * long, a key must serve all of them. Keeps off the curves, off each other and off what is taken already.
 */
export function placeLabels(
  curves: readonly LabelledCurve[],
  box: { readonly width: number; readonly height: number },
  taken: readonly Rect[] = [],
): readonly PlacedLabel[] | undefined {
  const used = [...taken];
  const placed: PlacedLabel[] = [];
  const walks = curves.map(walk);
  for (const [at, curve] of curves.entries()) {
    const lines = wrap(curve.name, Math.min(150, box.width * 0.34), letterPx.label, 3);
    if (lines.at(-1)?.endsWith("…")) return undefined;
    const width = Math.max(0, ...lines.map((each) => textWidth(each, letterPx.label)));
    const height = lines.length * labelLinePx;
    let best: { rect: Rect; worth: number } | undefined;
    for (const rect of candidates(curve, width, height)) {
      if (rect.left < 2 || rect.right > box.width - 2 || rect.top < 2 || rect.bottom > box.height - 2)
        continue;
      if (used.some((each) => overlap(each, rect))) continue;
      const own = distance(walks[at]!, rect, clearPx - 1);
      if (own < clearPx - 1 || own > farPx) continue;
      if (best && mostRoomPx - 2 * own <= best.worth) continue;
      const least = Math.max(clearPx, own * 1.6);
      let room = mostRoomPx;
      for (const [i, other] of walks.entries()) {
        if (room < least) break;
        if (i !== at) room = Math.min(room, distance(other, rect, least));
      }
      if (room < least) continue;
      const worth = room - 2 * own;
      if (!best || worth > best.worth) best = { rect, worth };
    }
    if (!best) return undefined;
    used.push(best.rect);
    placed.push({ lines, x: best.rect.left, y: best.rect.top + labelLinePx / 2 });
  }
  return placed;
}

/** Boxes to the right and to the left of the curve, at every height; the middle of the curve first. */
function* candidates({ points }: LabelledCurve, width: number, height: number): Generator<Rect> {
  const from = Math.min(...points.map((each) => each.y));
  const to = Math.max(...points.map((each) => each.y));
  const heights: number[] = [];
  for (let y = from; y <= to; y += stepPx) heights.push(y);
  const middle = (from + to) / 2;
  heights.sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle));
  for (const y of heights) {
    for (const at of crossings(points, y)) {
      const top = y - height / 2;
      for (const away of [1, 2, 3.5, 5].map((times) => times * clearPx)) {
        yield { left: at + away, right: at + away + width, top, bottom: top + height };
        yield { left: at - away - width, right: at - away, top, bottom: top + height };
      }
    }
  }
}

function crossings(points: readonly PixelPoint[], y: number): number[] {
  if (points.length === 1) return [points[0]!.x];
  const found: number[] = [];
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1]!, points[i]!];
    if (a.y === b.y || (y - a.y) * (y - b.y) > 0) continue;
    found.push(a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x));
  }
  return found;
}

function overlap(a: Rect, b: Rect): boolean {
  return a.left < b.right + 4 && b.left < a.right + 4 && a.top < b.bottom + 2 && b.top < a.bottom + 2;
}

/** The curve as points in short steps: x, y, x, y, … */
function walk({ points }: LabelledCurve): Float64Array {
  const found: number[] = [];
  for (const [i, to] of points.entries()) {
    const from = points[Math.max(0, i - 1)]!;
    const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / walkPx));
    for (let step = 1; step <= steps; step += 1)
      found.push(from.x + ((to.x - from.x) * step) / steps, from.y + ((to.y - from.y) * step) / steps);
  }
  return Float64Array.from(found);
}

/** Smallest distance from a walked curve to the box, px; once it is below what is too near, that much is enough to know. */
function distance(walked: Float64Array, { left, right, top, bottom }: Rect, tooNear: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < walked.length; i += 2) {
    const x = walked[i]!;
    const y = walked[i + 1]!;
    const dx = x < left ? left - x : x > right ? x - right : 0;
    const dy = y < top ? top - y : y > bottom ? y - bottom : 0;
    const square = dx * dx + dy * dy;
    if (square >= least) continue;
    least = square;
    if (Math.sqrt(least) < tooNear) break;
  }
  return Math.sqrt(least);
}

/** Points of the axes as points of the box. */
export function toPixels(
  points: readonly { readonly x: number; readonly y: number }[],
  x: Scale,
  y: Scale,
): PixelPoint[] {
  return points.map((each) => ({ x: x(each.x), y: y(each.y) }));
}
