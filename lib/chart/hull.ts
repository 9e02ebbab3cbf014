// The smallest outline without hollows about places.

export interface HullPlace {
  readonly x: number;
  readonly y: number;
}

const turn = (o: HullPlace, a: HullPlace, b: HullPlace): number =>
  (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);

/** The corners of the convex hull, one way round (Andrew 1979, monotone chain). */
export function convexHull(places: readonly HullPlace[]): HullPlace[] {
  const sorted = places.toSorted((a, b) => a.x - b.x || a.y - b.y);
  const half = (from: readonly HullPlace[]): HullPlace[] => {
    const chain: HullPlace[] = [];
    for (const place of from) {
      while (chain.length > 1 && turn(chain.at(-2)!, chain.at(-1)!, place) <= 0) chain.pop();
      chain.push(place);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

/** True within the hull or on it. A hull of a line or of nothing holds nothing. */
export function inHull(hull: readonly HullPlace[], at: HullPlace): boolean {
  return (
    hull.length > 2 && hull.every((corner, i) => turn(corner, hull[(i + 1) % hull.length]!, at) >= -1e-12)
  );
}
