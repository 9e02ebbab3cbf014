// Water that leaves a heap over the hours, open and under a sheet.

import type { Chart } from "./chart.ts";
import { type RangeCourse, rangeCourses } from "./range-courses.ts";

interface At {
  readonly hours: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Draws the water lost, in the unit it is given in, against hours: uncovered and under a sheet, each as a 95 % range.
 * @example weatherWaterChart({ name: "water-lost", unit: "kg", open: [{ hours: 16, value: 0.6, low: 0.3, high: 1.2 }], sheet: [] })
 */
export function weatherWaterChart({
  name,
  unit,
  open,
  sheet,
}: {
  readonly name: string;
  readonly unit: string;
  readonly open: readonly At[];
  readonly sheet: readonly At[];
}): Chart {
  const course = (label: string, points: readonly At[]): RangeCourse => ({
    label,
    points: points.map(({ hours, ...at }) => ({ x: hours, ...at })),
  });
  return rangeCourses({
    name,
    axis: { title: "time that the heap stands", unit: "h" },
    property: { title: "water lost", unit },
    courses: [course("uncovered", open), course("under a sheet", sheet)],
    caption:
      "Water that leaves the heap while it stands, uncovered and under a sheet; each fill holds 95 % of what the models and the weather leave open.",
  });
}
