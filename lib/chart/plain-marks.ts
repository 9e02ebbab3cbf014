// Shapes and words of a plain drawing, attribute for attribute as Vega writes them.

import type { Scale } from "./frame.ts";
import { coordinate, inPath, translated } from "./plain-number.ts";
import { shapePath } from "./plain-shapes.ts";
import { isNumber, only, type PlainLayer, type Position, type Row } from "./plain-spec.ts";
import { colours, letterPx } from "./theme.ts";
import { escapedText } from "./tidy-svg.ts";

export interface Scales {
  readonly x: Scale;
  readonly y: Scale;
}

/** A layer's group with its shapes; undefined where its mark says something that is not known here. */
export function plainMarks(layer: PlainLayer, scales: Scales): string | undefined {
  const places = placesOf(layer, scales);
  // A logarithm has no place for nought.
  if (!places.every(({ x, y, x2, y2 }) => Number.isFinite(x + y + x2 + y2))) return undefined;
  const shapes = drawnBy[layer.mark.type]?.(layer, places);
  if (shapes === undefined) return undefined;
  if (layer.runs === undefined) return group(layer.name, shapes);
  const runs = shapes.map(
    (shape) => `<g transform="translate(0,0)"><g>${group(layer.name, [shape])}</g></g>`,
  );
  return `<g>${runs.join("")}</g>`;
}

function group(name: string, shapes: readonly string[]): string {
  const classes = [...new Set([name.replace(/-\d+$/, ""), name])].join(" ");
  return `<g class="${classes}">${shapes.join("")}</g>`;
}

interface Place {
  readonly x: number;
  readonly y: number;
  readonly x2: number;
  readonly y2: number;
  readonly row: Row;
}

function placesOf({ rows, x, y, x2, y2 }: PlainLayer, scales: Scales): Place[] {
  const at = (position: Position | undefined, scale: Scale) => {
    if (position === undefined) return () => 0;
    const { field, scaled } = position;
    return (row: Row): number => (scaled ? scale(row[field] as number) : (row[field] as number));
  };
  const [ax, ay, ax2, ay2] = [at(x, scales.x), at(y, scales.y), at(x2, scales.x), at(y2, scales.y)];
  return rows.map((row) => ({ x: ax(row), y: ay(row), x2: ax2(row), y2: ay2(row), row }));
}

type DrawMarks = (layer: PlainLayer, places: readonly Place[]) => string[] | undefined;

const drawnBy: { readonly [type: string]: DrawMarks | undefined } = {
  __proto__: null as never,
  rule,
  rect,
  text,
  point,
  tick,
  line,
  area,
};

function rule(layer: PlainLayer, places: readonly Place[]): string[] | undefined {
  const look = lookOf(layer, "type color strokeWidth strokeDash opacity", "stroke");
  if (look === undefined || layer.text || layer.runs || layer.order) return undefined;
  const { x2: level, y2: upright } = layer;
  if (!level && !upright) return undefined;
  return places.map(({ x, y, x2, y2 }) => {
    const [dx, dy] = [level ? coordinate(x2 - x) : "0", upright ? coordinate(y2 - y) : "0"];
    return `<line transform="${translated(x, y)}" x2="${dx}" y2="${dy}"${look}/>`;
  });
}

function rect(layer: PlainLayer, places: readonly Place[]): string[] | undefined {
  const look = lookOf(layer, "type color fillOpacity stroke strokeWidth strokeDash opacity", "fill");
  if (look === undefined || !layer.x2 || !layer.y2 || layer.text || layer.runs || layer.order)
    return undefined;
  return places.map(({ x, y, x2, y2 }) => {
    const [left, right] = x > x2 ? [x2, x] : [x, x2];
    const [top, bottom] = y > y2 ? [y2, y] : [y, y2];
    return `<path d="${box(left, top, right - left, bottom - top)}"${look}/>`;
  });
}

function tick(layer: PlainLayer, places: readonly Place[]): string[] | undefined {
  const { orient, thickness, size, opacity } = layer.mark;
  const look = lookOf(layer, "type orient color thickness size opacity", "fill");
  if (look === undefined || !isNumber(thickness) || !isNumber(size) || !isNumber(opacity)) return undefined;
  if (orient !== "horizontal" || ends(layer)) return undefined;
  return places.map(
    ({ x, y }) => `<path d="${box(x - size / 2, y - thickness / 2, size, thickness)}"${look}/>`,
  );
}

function text(layer: PlainLayer, places: readonly Place[]): string[] | undefined {
  const { text: field, mark, x2, y2, runs, order } = layer;
  const { align, baseline, angle, fontSize = letterPx.label, color = colours.ink, opacity } = mark;
  if (!field || x2 || y2 || runs || order || baseline !== "middle" || !isNumber(fontSize)) return undefined;
  const anchor = ANCHORS.get(align);
  if (anchor === undefined || !only(mark, "type align baseline angle fontSize color opacity"))
    return undefined;
  if (angle !== undefined && (!isNumber(angle) || angle === 0)) return undefined;
  if (typeof color !== "string" || (opacity !== undefined && !isNumber(opacity))) return undefined;
  const look = ` font-size="${fontSize}px" fill="${color}"${opacityOf(opacity)}`;
  const down = Math.round(0.3 * fontSize);
  return places.map(({ x, y, row }) => {
    const words = escapedText((row[field] as string).trim());
    const at =
      angle === undefined
        ? translated(x, y + down)
        : `${translated(x, y)} rotate(${coordinate(angle)}) translate(0,${down})`;
    const open = `<text${anchor} transform="${at}"${look}`;
    return words === "" ? `${open}/>` : `${open}>${words}</text>`;
  });
}
const ANCHORS = new Map<unknown, string>([
  ["left", ""],
  ["center", ' text-anchor="middle"'],
  ["right", ' text-anchor="end"'],
]);

function point(layer: PlainLayer, places: readonly Place[]): string[] | undefined {
  const { filled, shape, size, opacity, color, stroke } = layer.mark;
  if (!isNumber(opacity) || !isNumber(size) || typeof filled !== "boolean" || ends(layer)) return undefined;
  if (filled ? stroke !== undefined || !color : color !== undefined || !stroke) return undefined;
  const look = lookOf(layer, "type filled opacity size shape color stroke strokeWidth", "fill", 2);
  const path = shapePath(String(shape), size);
  if (look === undefined || path === undefined) return undefined;
  return places.map(({ x, y }) => `<path transform="${translated(x, y)}" d="${path}"${look}/>`);
}

function line(layer: PlainLayer, places: readonly Place[]): string[] | undefined {
  const { x2, y2, text, runs, order, mark } = layer;
  const { interpolate } = mark;
  const known = "type interpolate color fill fillOpacity stroke strokeWidth strokeDash opacity";
  const look = lookOf(layer, known, "stroke", 2);
  if (look === undefined || x2 || y2 || text) return undefined;
  if (interpolate !== "linear" && interpolate !== "linear-closed") return undefined;
  const closed = interpolate === "linear-closed";
  return runsIn(places, runs).map((run) => {
    const sorted = order
      ? [...run].sort((a, b) => (a.row[order] as number) - (b.row[order] as number))
      : byX(run);
    const end = closed || sorted.length === 1 ? "Z" : "";
    return `<path d="${through(sorted)}${end}"${look}/>`;
  });
}

function area(layer: PlainLayer, places: readonly Place[]): string[] | undefined {
  const { x2, y2, text, runs, order, mark } = layer;
  const look = lookOf(layer, "type interpolate color opacity line", "fill");
  if (look === undefined || x2 || !y2 || text || runs || order) return undefined;
  if (mark.interpolate !== "linear" || mark.line !== false) return undefined;
  const there = byX(places);
  const back = there.map(({ x, y, y2 }) => ({ x, y: y + (y2 - y) })).reverse();
  return [`<path d="${through(there)}L${through(back).slice(1)}Z"${look}/>`];
}

function ends({ x2, y2, text, runs, order }: PlainLayer): boolean {
  return [x2, y2, text, runs, order].some((each) => each !== undefined);
}

function runsIn(places: readonly Place[], field: string | undefined): readonly (readonly Place[])[] {
  if (field === undefined) return [places];
  const runs = new Map<unknown, Place[]>();
  for (const place of places) {
    const run = runs.get(place.row[field]);
    if (run) run.push(place);
    else runs.set(place.row[field], [place]);
  }
  return [...runs.values()];
}

const byX = (places: readonly Place[]): readonly Place[] => [...places].sort((a, b) => a.x - b.x);

function through(at: readonly { readonly x: number; readonly y: number }[]): string {
  return `M${at.map(({ x, y }) => `${inPath(x)},${inPath(y)}`).join("L")}`;
}

function box(x: number, y: number, width: number, height: number): string {
  return `M${coordinate(x)},${coordinate(y)}h${coordinate(width)}v${coordinate(height)}h${coordinate(-width)}Z`;
}

function opacityOf(opacity: unknown): string {
  return opacity === undefined || opacity === 1 ? "" : ` opacity="${opacity}"`;
}

/** What Vega-Lite strokes a line in that names no colour, which is seen where it has a width. */
const UNCOLOURED = "#4c78a8";

/** Attributes that a mark's look comes to; undefined where it says anything that is not in the list. */
function lookOf(
  { mark }: PlainLayer,
  known: string,
  colours: "fill" | "stroke",
  usualWidth?: number,
): string | undefined {
  if (!only(mark, known)) return undefined;
  const { color, fillOpacity, strokeWidth = usualWidth, strokeDash, opacity } = mark;
  const { fill = colours === "fill" ? color : undefined } = mark;
  const { stroke = colours === "stroke" ? (color ?? UNCOLOURED) : undefined } = mark;
  if (![fill, stroke].every((each) => each === undefined || /^#[0-9a-f]{6}$/.test(String(each))))
    return undefined;
  if (![fillOpacity, strokeWidth, opacity].every((each) => each === undefined || isNumber(each)))
    return undefined;
  if (strokeDash !== undefined && !(Array.isArray(strokeDash) && strokeDash.every(isNumber)))
    return undefined;
  const dash = (strokeDash as readonly number[] | undefined)?.join(",") ?? "";
  return [
    fill === undefined ? "" : ` fill="${fill}"`,
    fillOpacity === undefined ? "" : ` fill-opacity="${fillOpacity}"`,
    stroke === undefined ? "" : ` stroke="${stroke}"`,
    strokeWidth === undefined ? "" : ` stroke-width="${coordinate(strokeWidth as number)}"`,
    dash === "" ? "" : ` stroke-dasharray="${dash}"`,
    opacityOf(opacity),
  ].join("");
}
