// The words and the table of a surface.

import {
  axisTitle,
  capital,
  columnUnit,
  decimalsOver,
  rangeText,
  unitText,
  withInterval,
} from "./axis-words.ts";
import type { ChartTable } from "./chart.ts";
import { cell } from "./data.ts";
import type { SurfaceField, SurfacePlace } from "./surface-field.ts";
import type { SurfaceChartInput } from "./surface-input.ts";
import { figure } from "./text.ts";

const spanOf = ([low, high]: readonly [number, number]) => high - low;

export function levelText(level: number): string {
  return figure(level, 6);
}

export function surfaceAim({ aim, property }: SurfaceChartInput): string {
  return aim ? `your aim: ${rangeText(aim.low, aim.high, 3)} ${unitText(property)}`.trimEnd() : "";
}

/** The place whose interval is the middle one in width: what the surface is worth. */
function middlePlace({ places }: SurfaceField): SurfacePlace | undefined {
  const known = places.filter(({ low, high }) => Number.isFinite(high - low));
  return known.toSorted((a, b) => a.high - a.low - (b.high - b.low))[Math.floor(known.length / 2)];
}

export function doubtText(field: SurfaceField, { property }: SurfaceChartInput): string {
  const at = middlePlace(field);
  if (!at) return "± not known";
  const half = (at.high - at.low) / 2;
  return `mean ± about ${Number(half.toPrecision(2))} ${unitText(property)}`.trimEnd();
}

export function surfaceCaption(input: SurfaceChartInput, field: SurfaceField): string {
  const { property, axis, other } = input;
  return [
    `${capital(property.title)} over ${axis.title} and ${other.title}, as fitted`,
    field.levels.length > 0
      ? `: lines join places of one figure, deeper colour is higher (${doubtText(field, input)}, 95 %)`
      : "",
    "; marks are your batches; beyond the dotted edge nothing was tried.",
  ].join("");
}

export function surfaceAlt(input: SurfaceChartInput, field: SurfaceField, missing: number): string {
  const { property, axis, other, batches } = input;
  const { places } = field;
  const [x, y] = [decimalsOver(spanOf(field.xDomain)), decimalsOver(spanOf(field.otherDomain))];
  const means = places.map(({ mean }) => mean);
  const z = decimalsOver(means.length === 0 ? 0 : Math.max(...means) - Math.min(...means));
  const told = (at: SurfacePlace) =>
    `${withInterval(at.mean, at, z)} at ${figure(at.x, x)} and ${figure(at.other, y)}`;
  const highest = places.reduce<SurfacePlace | undefined>(
    (best, at) => (best && best.mean >= at.mean ? best : at),
    undefined,
  );
  const lowest = places.reduce<SurfacePlace | undefined>(
    (best, at) => (best && best.mean <= at.mean ? best : at),
    undefined,
  );
  return [
    `${capital(axisTitle(property))}, over ${axisTitle(axis)}, and ${axisTitle(other)}.`,
    highest && lowest
      ? `Where batches bear it out the fitted mean runs from ${told(lowest)} to ${told(highest)}.`
      : "No surface is borne out.",
    input.aim ? `${capital(surfaceAim(input))}.` : "",
    batches.length === 0
      ? "No batches."
      : `Batches: ${batches.map((one) => `${one.label}, ${figure(one.value, z)} at ${figure(one.x, x)} and ${figure(one.y, y)}`).join("; ")}.`,
    missing > 0 ? `${missing} without a figure, not drawn.` : "",
  ]
    .filter((part) => part !== "")
    .join(" ");
}

/** Batches as measured, then the fitted mean with its interval on about five by five places. */
export function surfaceTable(input: SurfaceChartInput, field: SurfaceField): ChartTable {
  const { axis, other, property, batches } = input;
  const some = (values: readonly number[]) => {
    const all = [...new Set(values)].sort((a, b) => a - b);
    return [0, 1, 2, 3, 4].map((k) => all[Math.round((k * (all.length - 1)) / 4)]);
  };
  const xs = some(field.places.map(({ x }) => x));
  const others = some(field.places.map((at) => at.other));
  const fitted = field.places.filter((at) => xs.includes(at.x) && others.includes(at.other));
  const unit = columnUnit(property);
  return {
    columns: [
      { name: "what" },
      { name: axis.title, ...columnUnit(axis) },
      { name: other.title, ...columnUnit(other) },
      { name: property.title, ...unit },
      { name: "low end of 95 %, mean", ...unit },
      { name: "high end of 95 %, mean", ...unit },
    ],
    rows: [
      ...batches.map((one) => [one.label, cell(one.x), cell(one.y), cell(one.value), null, null]),
      ...fitted.map((at) => ["fitted mean", ...[at.x, at.other, at.mean, at.low, at.high].map(cell)]),
    ],
  };
}
