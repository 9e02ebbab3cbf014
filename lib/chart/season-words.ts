// What a season's chart is drawn from, and its words.

import { figure } from "./text.ts";

export interface SeasonPoint {
  /** From today, which is 0; the record has numbers below. */
  readonly pour: number;
  readonly value: number;
  /** Ends of the 95 % interval. */
  readonly low: number;
  readonly high: number;
}
export interface SeasonPanel {
  readonly property: string;
  readonly unit: string;
  readonly courses: readonly { readonly label: string; readonly points: readonly SeasonPoint[] }[];
  readonly measured: readonly SeasonPoint[];
}
export interface SeasonChartInput {
  readonly name: string;
  readonly panels: readonly SeasonPanel[];
  /** What was put in, with the pour that it came after. */
  readonly events: readonly { readonly pour: number; readonly kind: string }[];
  readonly caption?: string;
}

export function seasonCaption({ panels }: SeasonChartInput): string {
  const names = panels.map(({ property }) => property).join(", ");
  return `The heap pour by pour: ${names}; fills are 95 % intervals, the dashed upright line is today.`;
}

export function seasonAlt({ panels, events }: SeasonChartInput): string {
  const told = panels.flatMap(({ property, unit, courses }) =>
    courses.flatMap(({ label, points }) => {
      const [first, last] = [points[0], points.at(-1)];
      if (!first || !last) return [];
      const after = unit === "" ? "" : ` ${unit}`;
      return [
        `${property}, ${label}: from ${figure(first.value, 2)}, ${whenOf(first.pour)}, to ${figure(last.value, 2)} (${figure(last.low, 2)} to ${figure(last.high, 2)})${after}, ${whenOf(last.pour)}.`,
      ];
    }),
  );
  const marks = [...new Set(events.map(({ kind }) => kind))].map(
    (kind) => `${kind}: ${events.filter((event) => event.kind === kind).length} times.`,
  );
  return [...told, ...marks].join(" ") || "No figures to draw.";
}

/** "3 pours ago", "today", "after 30 more pours": a founder counts no pours below zero. */
function whenOf(pour: number): string {
  if (pour === 0) return "today";
  const [size, one] = [Math.abs(pour), Math.abs(pour) === 1];
  return pour < 0 ? `${size} ${one ? "pour" : "pours"} ago` : `after ${size} more ${one ? "pour" : "pours"}`;
}
