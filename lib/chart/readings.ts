// Where the figures of a chart's table stand in its drawing: what is drawn, read back by the axes and found in the table.

import type { ChartTable, VegaLiteSpec } from "./chart.ts";
import type { Layer } from "./frame.ts";
import { type DrawnDatum, drawnDatum, kindOf } from "./reading-datum.ts";
import { type ReadingScales, readingScales, valuesOf } from "./reading-scales.ts";
import { tableSearch } from "./table-search.ts";

/** A point, an end of a bar, a band, or a place along a curve that the table tells. */
export interface Reading {
  /** px of each drawing, from its left and upper edge, in the order of the specs. */
  readonly at: readonly (readonly [x: number, y: number])[];
  /** Of the table. */
  readonly row: number;
  /** Columns of the table whose numbers it shows. */
  readonly columns: readonly number[];
  /** Number of its layer: readings are walked one layer after the other. */
  readonly layer: number;
}

/** Layers that tell nothing: keys, grids, contours, and whatever stands behind words. */
const MUTE =
  /^(key|axes|axis|grid|ticks|title|tracks|figure-ground|lanes|isoline|level|not-tried|outline)|-key(-|$)/;
const BARS = /^(bars|band)/;
/** What is measured first, then bars and bands, then curves. */
const FIRST: readonly string[] = ["point", "rect", "line"];

/**
 * The readings of a chart's drawings at several widths, layer by layer, from left to right in each. A mark whose numbers
 * are not in the table, a row that is not drawn, and a spec that is not made of our layers, give none. The ends of a range are read only where nothing else
 * reads their row.
 * @example chartReadings([chart.spec(720), chart.spec(340)], chart.table)[0]?.row // 0
 */
export function chartReadings(specs: readonly VegaLiteSpec[], table: ChartTable): Reading[] {
  if (!specs.every(isRead)) return [];
  const drawings = specs.map((spec) => ({ spec, layers: tellingLayers(spec), scales: readingScales(spec) }));
  const [first, ...others] = drawings;
  if (!first) return [];
  const search = tableSearch(table);
  const read = new Set<number>();
  const readings: Reading[] = [];
  const layers = inOrder(first.layers);
  for (const [number, layer] of layers.entries()) {
    const alone = isEdge(layer);
    const found: Reading[] = [];
    const alike = others.map((other) => ({
      ...other,
      values: valuesOf(other.layers.find(({ name }) => name === layer.name)?.data),
    }));
    for (const [i, datum] of valuesOf(layer.data).entries()) {
      const drawn = drawnDatum(datum, layer, first.scales);
      const hit = drawn && search.find(drawn.wanted, (row) => alone && read.has(row));
      if (!hit) continue;
      const there = alike.map(({ scales, values, spec }) => {
        const same = values[i] && drawnDatum(values[i], layer, { ...scales, y: inside(scales) });
        return same && placed(same, spec);
      });
      const at = [placed(drawn, first.spec), ...there].filter((place) => place !== undefined);
      if (at.length === specs.length) found.push({ at, ...hit, layer: number });
    }
    for (const { row } of found) read.add(row);
    readings.push(...found.sort((a, b) => a.at[0]![0] - b.at[0]![0] || a.at[0]![1] - b.at[0]![1]));
  }
  return readings;
}

/** A founder's own spec may be of any kind: places are only read back from layers at places that the spec sets itself. */
function isRead({ layer, autosize }: VegaLiteSpec): boolean {
  if ((autosize as { readonly type?: unknown } | undefined)?.type !== "none" || !Array.isArray(layer))
    return false;
  return (layer as readonly Layer[]).every(({ data }) => {
    const { values = [] } = (data ?? {}) as { readonly values?: unknown };
    return Array.isArray(values);
  });
}

/** The same mark is the same figure, also where a narrow drawing has too few ticks to read it back. */
function inside({ y }: ReadingScales): ReadingScales["y"] {
  return (py) => {
    const axis = y(py);
    return axis === "outside" ? undefined : axis;
  };
}

function tellingLayers({ layer }: VegaLiteSpec): readonly Layer[] {
  return (layer as readonly Layer[]).filter(({ name }) => !MUTE.test(String(name)));
}

function inOrder(layers: readonly Layer[]): readonly Layer[] {
  const plain = FIRST.flatMap((kind) =>
    layers.filter(
      (layer) =>
        kindOf(layer) === kind && !isEdge(layer) && (kind !== "rect" || BARS.test(String(layer.name))),
    ),
  );
  return [...plain, ...layers.filter(isEdge)];
}

/** Fills and lines along the ends of a range. */
function isEdge(layer: Layer): boolean {
  return kindOf(layer) === "area" || (kindOf(layer) === "line" && String(layer.name).startsWith("edge"));
}

function placed({ x, y }: DrawnDatum, { padding }: VegaLiteSpec): [number, number] {
  const { left = 0, top = 0 } = padding as { readonly left?: number; readonly top?: number };
  return [Math.round(x + left), Math.round(y + top)];
}
