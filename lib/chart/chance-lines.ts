// The lines of the chance of meeting aims, and the free places for their names.

import type { ChancePanelInput } from "./chance-input.ts";
import { allAtOnce, isKnown } from "./chance-words.ts";
import { stretches } from "./clip-course.ts";
import { ends, within } from "./data.ts";
import { linearScale, type Scale } from "./frame.ts";
import { type PixelPoint, type PlacedLabel, placeLabels } from "./place-labels.ts";
import { alongLine, type Taken } from "./point-labels.ts";
import { type SeriesStyle, seriesStyle } from "./theme.ts";

export const allStyle: SeriesStyle = { ...seriesStyle(3), dash: [], fillOpacity: 0.14 };
const heavyPx = 3.4;

export interface ChanceLine {
  readonly name: string;
  readonly style: SeriesStyle;
  readonly thickness: number;
  /** Stretches without a gap, px of the plot. */
  readonly courses: readonly (readonly PixelPoint[])[];
}

/** All at once first, then each property; those that can be drawn. */
export function chanceLines({ each, all }: ChancePanelInput, x: Scale, height: number): ChanceLine[] {
  const y = linearScale([100, 0], height);
  const own = each.map(({ property, points }, i) => ({
    name: property,
    style: ownStyle(i),
    thickness: 1.8,
    points,
  }));
  return [{ name: allAtOnce, style: allStyle, thickness: heavyPx, points: all }, ...own]
    .map(({ points, ...line }) => ({
      ...line,
      courses: stretches(points, isKnown).map((run) =>
        run.map((at) => ({ x: x(at.x), y: y(within(at.chance, 0, 100)) })),
      ),
    }))
    .filter(({ courses }) => courses.some((course) => course.length > 1));
}

/** Series in turn, but for the style of the ink, which is that of all at once. */
function ownStyle(place: number): SeriesStyle {
  return seriesStyle(place + Math.floor(place / 3));
}

/**
 * Places for the names of the properties, or none at all. The heavy line stands in the key: where it is high the
 * shade and the fill lie, and coloured words need paper behind them.
 */
export function ownLabels(
  lines: readonly ChanceLine[],
  { all, window, aimAt }: ChancePanelInput,
  x: Scale,
  domain: readonly [number, number],
  box: { readonly width: number; readonly height: number },
): readonly PlacedLabel[] | undefined {
  const upright = (from: number, to: number): Taken => ({
    left: x(from) - 2,
    right: x(to) + 2,
    top: 0,
    bottom: box.height,
  });
  const y = linearScale([100, 0], box.height);
  const fills = all.slice(1).flatMap((to, i): Taken[] => {
    const [a, b] = [ends(all[i]!), ends(to)];
    if (!a || !b) return [];
    const top = y(within(Math.max(a.high, b.high), 0, 100));
    return [{ left: x(all[i]!.x), right: x(to.x), top, bottom: y(within(Math.min(a.low, b.low), 0, 100)) }];
  });
  const heavy = lines.filter(({ name }) => name === allAtOnce).flatMap(({ courses }) => courses);
  const taken = [
    ...(window ? [upright(within(window.low, ...domain), within(window.high, ...domain))] : []),
    ...(aimAt && Number.isFinite(aimAt.x) ? [upright(aimAt.x, aimAt.x)] : []),
    ...fills,
    ...heavy.flatMap((course) => alongLine(course.map((at) => ({ px: at.x, py: at.y })))),
  ];
  const own = lines.filter(({ name }) => name !== allAtOnce);
  return placeLabels(
    own.map(({ name, courses }) => ({ name, points: courses.flat() })),
    box,
    taken,
  );
}
