// The part of Vega-Lite that plain drawings know: quantitative scales whose domain is given, at most one axis along
// each edge, and shapes and words at places. Whatever else a spec says, it is no plain one.

import { themeConfig } from "./theme.ts";

export type Row = { readonly [field: string]: unknown };
type Json = { readonly [key: string]: unknown };

/** Where a mark stands along one edge: a field, in px or on the scale that all layers share. */
export interface Position {
  readonly field: string;
  readonly scaled: boolean;
}

export interface PlainLayer {
  readonly name: string;
  readonly rows: readonly Row[];
  readonly mark: Json & { readonly type: string };
  readonly x: Position;
  readonly y: Position;
  readonly x2?: Position;
  readonly y2?: Position;
  readonly text?: string;
  /** Fields that rows are told apart by, and put in order by. */
  readonly runs?: string;
  readonly order?: string;
}

/** The scale of an edge, with its axis where it has one. */
export interface PlainScale {
  readonly type: "linear" | "log";
  readonly domain: readonly [number, number];
  readonly reverse: boolean;
  readonly axis: Json | undefined;
}

export interface PlainSpec {
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly padding: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  readonly x: PlainScale | undefined;
  readonly y: PlainScale | undefined;
  readonly layers: readonly PlainLayer[];
}

const THEME = JSON.stringify(themeConfig());
/** What every chart of ours says in the same words, but for its layers. */
const FRAME = {
  $schema: '"https://vega.github.io/schema/vega-lite/v6.json"',
  background: '"transparent"',
  autosize: '{"type":"none"}',
  resolve: '{"axis":{"x":"independent","y":"independent"}}',
  config: THEME,
} as const;

/** The spec read; undefined where it says anything that a plain drawing does not know. */
export function readPlain(spec: Json): PlainSpec | undefined {
  for (const [key, text] of Object.entries(FRAME)) if (JSON.stringify(spec[key]) !== text) return undefined;
  if (!only(spec, "name description usermeta padding width height layer", Object.keys(FRAME)))
    return undefined;
  const { description, usermeta, padding, width, height, layer } = spec;
  if (!isObject(padding) || !only(padding, "left right top bottom")) return undefined;
  if (![width, height, padding.left, padding.right, padding.top, padding.bottom].every(isNumber))
    return undefined;
  if (!Array.isArray(layer) || !layer.every(isObject)) return undefined;
  const [given, ...more] = layer.filter(({ name }) => name === "axes");
  const before = layer.slice(0, given ? layer.indexOf(given) : 0).map(readLayer);
  const axes = given && readAxes(given, before);
  const layers = layer.filter((each) => each !== given).map(readLayer);
  if (more.length > 0 || (given && !axes) || !layers.every((each) => each !== undefined)) return undefined;
  if (!axes && layers.some(scaledIn)) return undefined;
  return {
    title: isObject(usermeta) && typeof usermeta.title === "string" ? usermeta.title : "",
    description: String(description ?? ""),
    width: width as number,
    height: height as number,
    padding: padding as PlainSpec["padding"],
    x: axes?.x,
    y: axes?.y,
    layers,
  };
}

function scaledIn({ x, y, x2, y2 }: PlainLayer): boolean {
  return [x, y, x2, y2].some((place) => place?.scaled);
}

/** The layer that holds the scales and the axes, and nothing to be seen. */
function readAxes(
  { name, data, mark, encoding, ...rest }: Json,
  before: readonly (PlainLayer | undefined)[],
): Pick<PlainSpec, "x" | "y"> | undefined {
  if (name !== "axes" || Object.keys(rest).length > 0 || !isObject(encoding)) return undefined;
  if (JSON.stringify(data) !== '{"values":[{"x":null,"y":null}]}') return undefined;
  if (JSON.stringify(mark) !== '{"type":"rule","opacity":0}' || !only(encoding, "x y")) return undefined;
  const [x, y] = (["x", "y"] as const).map((name) => {
    const later = before.some((layer) => layer?.[name].scaled);
    return readScale(encoding[name], { name, later });
  });
  return x && y ? { x, y } : undefined;
}

/** later: another layer has used the scale before. Vega-Lite then takes its word for what is not said here. */
function readScale(
  given: unknown,
  { name, later }: { readonly name: string; readonly later: boolean },
): PlainScale | undefined {
  if (!isObject(given) || !only(given, "field type scale axis")) return undefined;
  const { field, type, scale, axis } = given;
  if (field !== name || type !== "quantitative" || !isObject(scale)) return undefined;
  if (!only(scale, "type domain nice zero reverse")) return undefined;
  const { domain, nice, zero, reverse } = scale;
  if ((nice ?? false) !== false || (zero ?? false) !== false || !Array.isArray(domain)) return undefined;
  const [from, to, ...more] = domain as unknown[];
  if (!isNumber(from) || !isNumber(to) || more.length > 0 || from === to) return undefined;
  const log = scale.type === "log";
  if ((scale.type !== undefined && !log) || (log && (from <= 0 || to <= 0))) return undefined;
  if (later && !log && zero === undefined && from * to > 0) return undefined;
  if (axis !== null && !isObject(axis)) return undefined;
  return {
    type: log ? "log" : "linear",
    domain: [from, to],
    reverse: reverse === true,
    axis: axis ? { grid: !later, ...axis } : undefined,
  };
}

function readLayer(given: Json): PlainLayer | undefined {
  const { name, data, mark, encoding, ...rest } = given;
  if (Object.keys(rest).length > 0 || typeof name !== "string" || !/^[a-z][a-z0-9-]*$/.test(name))
    return undefined;
  if (!isObject(data) || !only(data, "values") || !Array.isArray(data.values)) return undefined;
  if (!isObject(mark) || typeof mark.type !== "string" || !isObject(encoding)) return undefined;
  if (!only(encoding, "x y x2 y2 text detail order")) return undefined;
  const rows = data.values as readonly Row[];
  if (rows.length === 0) return undefined;
  const [x, y] = [place(encoding.x), place(encoding.y)];
  const [x2, y2] = [end(encoding.x2, x), end(encoding.y2, y)];
  if (!x || !y || x2 === null || y2 === null) return undefined;
  const text = field(encoding.text, "nominal");
  const runs = field(encoding.detail, "nominal");
  const order = field(encoding.order, "quantitative");
  if (text === null || runs === null || order === null) return undefined;
  const numbers = [x, y, x2, y2].flatMap((each) => (each ? [each.field] : []));
  if (order !== undefined) numbers.push(order);
  if (!rows.every((row) => numbers.every((each) => isNumber(row[each])))) return undefined;
  if (text !== undefined && !rows.every((row) => typeof row[text] === "string")) return undefined;
  return {
    name,
    rows,
    mark: mark as PlainLayer["mark"],
    x,
    y,
    ...(x2 ? { x2 } : {}),
    ...(y2 ? { y2 } : {}),
    ...(text === undefined ? {} : { text }),
    ...(runs === undefined ? {} : { runs }),
    ...(order === undefined ? {} : { order }),
  };
}

function place(given: unknown): Position | undefined {
  if (!isObject(given) || !only(given, "field type scale axis")) return undefined;
  const { field, type, scale, axis } = given;
  if (!isFieldName(field) || type !== "quantitative" || axis !== null) return undefined;
  return scale === undefined || scale === null ? { field, scaled: scale === undefined } : undefined;
}

/** The other end, on the scale of the first; null where it is none that is known. */
function end(given: unknown, first: Position | undefined): Position | undefined | null {
  if (given === undefined) return undefined;
  if (!isObject(given) || !only(given, "field") || !isFieldName(given.field) || !first) return null;
  return { field: given.field, scaled: first.scaled };
}

function field(given: unknown, type: string): string | undefined | null {
  if (given === undefined) return undefined;
  if (!isObject(given) || !only(given, "field type") || given.type !== type) return null;
  return isFieldName(given.field) ? given.field : null;
}

/** A bare name: in others a dot or a bracket leads deeper. */
function isFieldName(given: unknown): given is string {
  return typeof given === "string" && /^[a-z][a-z0-9]*$/.test(given);
}

export function isNumber(given: unknown): given is number {
  return typeof given === "number" && Number.isFinite(given);
}

function isObject(given: unknown): given is Json {
  return typeof given === "object" && given !== null && !Array.isArray(given);
}

/** Whether it has no keys but these. */
export function only(given: Json, known: string, also: readonly string[] = []): boolean {
  const names = known.split(" ");
  return Object.keys(given).every((key) => names.includes(key) || also.includes(key));
}
