// The surfaces of a trial in which two things were varied.

import type { TrialAxis } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import { responseSurface, type TrialSurface } from "./response-surface.ts";
import { type AxisFigure, axisFigure, hitOf, placer } from "./trial-axis.ts";
import type { TrialProperty } from "./trial-property.ts";

/** Less is not varied but off: points of moisture, of clay, of compactability, our own. And three times its own ±. */
const leastRange: { readonly [axis in TrialAxis]: number } = { moisture: 0.4, clay: 0.5, compactability: 5 };

/**
 * A surface for each property over the axis and what else was varied: clay beside moisture or compactability, and
 * beside clay moisture, else compactability. Empty where only one thing was varied.
 */
export function trialSurfaces(
  axis: TrialAxis,
  rows: readonly BatchFigures[],
  x: readonly AxisFigure[],
  properties: readonly TrialProperty[],
): readonly TrialSurface[] {
  const others: readonly TrialAxis[] = axis === "clay" ? ["moisture", "compactability"] : ["clay"];
  if (!varied(axis, x)) return [];
  for (const other of others) {
    const placeOf = placer(rows, other);
    const places = rows.map((row) => {
      const place = placeOf(row);
      return place && axisFigure(place);
    });
    if (
      !varied(
        other,
        places.filter((place) => place !== undefined),
      )
    )
      continue;
    const there = places.map((place) => place?.value ?? Number.NaN);
    return properties
      .filter(({ test }) => test !== other && test !== "density")
      .map(({ test, figures, leftOut }) => ({
        test,
        other,
        places: there,
        surface: responseSurface({
          x: x.map(({ value }) => value),
          other: there,
          y: figures.map((figure, i) => (figure && !leftOut[i] ? figure.value : Number.NaN)),
          blocks: rows.map(({ batch }) => batch.block),
        }),
      }));
  }
  return [];
}

function varied(axis: TrialAxis, places: readonly AxisFigure[]): boolean {
  const values = places.map(({ value }) => value);
  const range = Math.max(...values) - Math.min(...values);
  return range >= leastRange[axis] && range >= 3 * hitOf(places);
}
