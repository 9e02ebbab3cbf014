// What stands where in the log's texts: by its path, and by the place that a cell of the page names.

import type { Place } from "../issue.ts";
import type { LogPath } from "../log/edit-types.ts";
import { outliner } from "../log/outline.ts";
import type { OutlineNode } from "../log/outline-node.ts";
import type { LogText } from "../log/types.ts";
import { shiftedOutline } from "./edit-shift.ts";

export interface LogPlaces {
  readonly outline: readonly OutlineNode[];
  get(path: LogPath): OutlineNode | undefined;
  /** The value that stands at the place; else what holds all that stands within it, such as a row. */
  at(place: Place): LogPath | undefined;
}

export const pathKey = (path: LogPath): string => JSON.stringify(path);

const known = new WeakMap<readonly LogText[], LogPlaces>();

/** Remembers the last log alone: where an edit is more than one plain value, only what changed is parsed. */
const logOutline = outliner();

/** Worked out once for each list of texts. */
export function logPlaces(texts: readonly LogText[]): LogPlaces {
  const places = known.get(texts) ?? placesIn(logOutline(texts));
  known.set(texts, places);
  return places;
}

/** The places of texts that came of others by an edit, found without reading where one plain value was changed. */
export function learnPlaces(before: readonly LogText[], after: readonly LogText[]): void {
  const old = known.get(before);
  if (!old || known.has(after)) return;
  const outline = shiftedOutline(old.outline, before, after);
  if (outline) known.set(after, placesIn(outline));
}

function placesIn(outline: readonly OutlineNode[]): LogPlaces {
  type Values = (OutlineNode & { readonly kind: "value" })[];
  let byFile: Map<string, Values> | undefined;
  const values = (file: string): Values | undefined => {
    byFile ??= valuesByFile(outline);
    return byFile.get(file);
  };
  return {
    outline,
    get: (path) => nodeAt(outline, path),
    at: ({ file, offset, length = 0 }) => {
      const own = values(file);
      if (!own || offset === undefined) return undefined;
      const first = firstFrom(own, offset);
      if (own[first]?.place.offset === offset && (own[first].place.length ?? 0) >= length)
        return own[first].path;
      const within: LogPath[] = [];
      for (let i = first; i < own.length && own[i]!.place.offset! < offset + length; i++)
        within.push(own[i]!.path);
      return within.reduce<LogPath | undefined>((all, path) => (all ? common(all, path) : path), undefined);
    },
  };
}

/** The node itself where it is a value, else every value in it, in the log's order. */
export function forValuesBelow(
  node: OutlineNode,
  take: (value: OutlineNode & { readonly kind: "value" }) => void,
): void {
  if (node.kind === "value") take(node);
  else if (node.kind === "group") for (const part of node.parts) forValuesBelow(part, take);
  else for (const row of node.rows) for (const cell of row) if (cell) forValuesBelow(cell, take);
}

/** In the order of their places. */
function valuesByFile(outline: readonly OutlineNode[]): Map<string, (OutlineNode & { kind: "value" })[]> {
  const values = new Map<string, (OutlineNode & { kind: "value" })[]>();
  for (const top of outline)
    forValuesBelow(top, (node) => {
      const own = values.get(node.place.file);
      if (own) own.push(node);
      else values.set(node.place.file, [node]);
    });
  const at = (node: OutlineNode | undefined): number => node?.place.offset ?? 0;
  for (const own of values.values()) {
    if (own.some((node, i) => i > 0 && at(own[i - 1]) > at(node))) own.sort((a, b) => at(a) - at(b));
  }
  return values;
}

/** By its path, from the root down. A row of a table is no node. */
function nodeAt(nodes: readonly OutlineNode[], path: LogPath): OutlineNode | undefined {
  const holds = (node: OutlineNode): boolean =>
    node.path.length <= path.length && node.path.every((part, i) => part === path[i]);
  const node = nodes.find(holds);
  if (!node || node.path.length === path.length) return node;
  if (node.kind === "group") return nodeAt(node.parts, path);
  if (node.kind !== "rows") return undefined;
  const key = path[node.path.length]!;
  const row = node.rows[node.names ? node.names.indexOf(String(key)) : Number(key)];
  return (
    row &&
    nodeAt(
      row.filter((cell) => cell !== undefined),
      path,
    )
  );
}

/** Index of the first value that begins at the offset or after it. */
function firstFrom(values: readonly OutlineNode[], offset: number): number {
  let [low, high] = [0, values.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((values[middle]!.place.offset ?? 0) < offset) low = middle + 1;
    else high = middle;
  }
  return low;
}

function common(a: LogPath, b: LogPath): LogPath {
  const differs = a.findIndex((part, i) => part !== b[i]);
  return differs < 0 ? a : a.slice(0, differs);
}

/** "file:offset:length" of a cell in the page. */
export function readAt(text: string): Place | undefined {
  const [, file, offset, length] = /^([^:]*):(\d+):(\d+)$/.exec(text) ?? [];
  if (file === undefined) return undefined;
  return { file: decodeURIComponent(file), offset: Number(offset), length: Number(length) };
}
