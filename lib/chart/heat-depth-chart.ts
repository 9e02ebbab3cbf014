// How deep sand is heated past a temperature, over the thickness of the section beside it.

import type { Chart } from "./chart.ts";
import { rangeCourses } from "./range-courses.ts";

/**
 * Draws depth against section thickness, in the unit both are given in, for each temperature as a range: straight
 * lines from nothing, since depth goes with thickness. marked: the founder's own sections.
 * @example heatDepthChart({ name: "heated-depth", unit: "mm", upTo: 20, marked: [], temperatures: [{ label: "500 °C", low: 0.16, high: 0.22 }] })
 */
export function heatDepthChart({
  name,
  unit,
  upTo,
  temperatures,
  marked,
}: {
  readonly name: string;
  readonly unit: string;
  /** Thickest section that is drawn. */
  readonly upTo: number;
  /** low and high: depth ÷ thickness. */
  readonly temperatures: readonly { readonly label: string; readonly low: number; readonly high: number }[];
  readonly marked: readonly { readonly x: number; readonly label: string }[];
}): Chart {
  return rangeCourses({
    name,
    axis: { title: "thickness of the section", unit },
    property: { title: "depth of sand heated past the temperature", unit },
    courses: temperatures.map(({ label, low, high }) => ({
      label,
      points: [0, upTo / 2, upTo].map((x) => ({ x, low: low * x, high: high * x })),
    })),
    marked,
    caption:
      "How deep the sand beside a section is heated past three temperatures that clay minds; the fills hold published sands and metals, dry sand in perfect contact, the metal left in the mould. No time and no surface temperature can be read from it.",
  });
}
