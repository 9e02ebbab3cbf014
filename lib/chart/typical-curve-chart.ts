// A typical curve: its range as a quiet band, published points as hollow marks, the founder's batches in front.

import { axisTitle } from "./axis-words.ts";
import type { Chart } from "./chart.ts";
import { checkName, ends } from "./data.ts";
import { typicalCurveSpec } from "./typical-curve-spec.ts";
import type { TypicalCurveInput } from "./typical-input.ts";
import { typicalAlt, typicalCaption, typicalTable } from "./typical-words.ts";

/**
 * Draws a typical curve over its range of validity and no further, with what was published and the founder's own
 * batches. Curves "from memory" and "our own" are dashed; published marks differ by tag; batches stand in front with
 * their ± in both directions. Without a curve only points are drawn.
 *
 * Points and batches without a figure are left out of the drawing and stay in the table as gaps. A percentage without
 * its basis, ends the wrong way round, or a name that cannot be a file name throw Misuse.
 *
 * @example typicalCurveChart({ name: "strength-by-clay", axis: { title: "live bentonite", unit: "%", basis: "dry sand and clay" },
 *   property: { title: "green compression strength", unit: "kPa" }, curves: [], published: [],
 *   batches: [{ label: "Batch 1", x: 8, y: 62, yLow: 55, yHigh: 69 }] })
 */
export function typicalCurveChart(input: TypicalCurveInput): Chart {
  checkName(input.name);
  axisTitle(input.axis);
  axisTitle(input.property);
  for (const { points } of input.curves) for (const point of points) ends(point);
  for (const point of input.published) ends(point);
  for (const { xLow, xHigh, yLow, yHigh } of input.batches) {
    ends({ low: xLow, high: xHigh });
    ends({ low: yLow, high: yHigh });
  }
  const drawn = (point: { readonly x: number; readonly y: number }) =>
    Number.isFinite(point.x) && Number.isFinite(point.y);
  const shown = { ...input, published: input.published.filter(drawn), batches: input.batches.filter(drawn) };
  const { name } = input;
  const words = { caption: typicalCaption(shown), alt: typicalAlt(shown) };
  return {
    name,
    ...words,
    spec: (width) => typicalCurveSpec({ name, ...words }, shown, width),
    table: typicalTable(input),
  };
}
