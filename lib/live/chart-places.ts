// The places of a drawing that tell a figure, as its page holds them, and how to walk over them.

export interface ChartPlace {
  /** px of the wide drawing, and of the narrow one. */
  readonly wide: readonly [x: number, y: number];
  readonly narrow: readonly [x: number, y: number];
  readonly layer: number;
  /** Of the table under the chart. */
  readonly row: number;
  readonly words: string;
}

export type Shown = "wide" | "narrow";

/** From the lines that lib/page/chart-readings.ts writes; a line that is none is left out. */
export function chartPlaces(lines: string): ChartPlace[] {
  return lines.split("\n").flatMap((line) => {
    const [wideX, wideY, narrowX, narrowY, layer, row, ...words] = line.split("|");
    if (words.length === 0) return [];
    return [
      {
        wide: [Number(wideX), Number(wideY)],
        narrow: [Number(narrowX), Number(narrowY)],
        layer: Number(layer),
        row: Number(row),
        words: words.join("|"),
      },
    ];
  });
}

/** The place nearest to a point, within so many px of the drawing; of two as near the one that is told first. */
export function nearest(
  places: readonly ChartPlace[],
  shown: Shown,
  [x, y]: readonly [number, number],
  within: number,
): number | undefined {
  let best: number | undefined;
  let least = within;
  for (const [i, place] of places.entries()) {
    const away = Math.hypot(place[shown][0] - x, place[shown][1] - y);
    if (away > within || (best !== undefined && away >= least)) continue;
    best = i;
    least = away;
  }
  return best;
}

/** Where a key leads; undefined where it is no key for walking. Up and down lead to the layer before and after. */
export function walked(
  places: readonly ChartPlace[],
  from: number,
  key: string,
  shown: Shown,
): number | undefined {
  const last = places.length - 1;
  switch (key) {
    case "ArrowRight":
      return Math.min(last, from + 1);
    case "ArrowLeft":
      return Math.max(0, from - 1);
    case "Home":
      return 0;
    case "End":
      return last;
    case "ArrowDown":
    case "ArrowUp":
      return otherLayer(places, from, key === "ArrowDown" ? 1 : -1, shown);
    default:
      return undefined;
  }
}

function otherLayer(places: readonly ChartPlace[], from: number, step: 1 | -1, shown: Shown): number {
  const here = places[from]!;
  let layer: number | undefined;
  let best = from;
  for (let i = from + step; places[i]; i += step) {
    const place = places[i]!;
    if (place.layer === here.layer) continue;
    layer ??= place.layer;
    if (place.layer !== layer) break;
    const away = (at: number) => Math.abs(places[at]![shown][0] - here[shown][0]);
    if (best === from || away(i) < away(best)) best = i;
  }
  return best;
}
