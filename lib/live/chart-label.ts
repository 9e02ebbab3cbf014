// The label beside a point of a drawing: never over the point, never out of the window.

export interface Room {
  readonly width: number;
  readonly height: number;
}

/** Half of the ring about a point and some air, px. */
const CLEAR = 16;

/**
 * Where a label goes, from the left and upper edge of the drawing: to the right of the point, else to its left, else
 * above or below it. from and to: how far it may reach to the left and to the right.
 * @example labelPlace({ at: [50, 80], label: { width: 100, height: 40 }, from: 0, to: 700, above: 300 }) // { x: 66, y: 60 }
 */
export function labelPlace({
  at: [x, y],
  label: { width, height },
  from,
  to,
  above,
}: {
  readonly at: readonly [number, number];
  readonly label: Room;
  readonly from: number;
  readonly to: number;
  /** px of the window above the drawing's upper edge. */
  readonly above: number;
}): { readonly x: number; readonly y: number } {
  const beside = { y: Math.max(y - height / 2, -above) };
  if (x + CLEAR + width <= to) return { x: x + CLEAR, ...beside };
  if (x - CLEAR - width >= from) return { x: x - CLEAR - width, ...beside };
  const left = Math.max(from, Math.min(x - width / 2, to - width));
  const over = y - CLEAR - height;
  return { x: left, y: over >= -above ? over : y + CLEAR };
}
