// Entries that are alike, as the rows of a table.

import type { Place } from "../issue.ts";
import { isRepeat } from "./edit-find.ts";
import type { LogPath } from "./edit-types.ts";
import { type LogNode, type MapNode, plainName } from "./node.ts";
import type { OutlineNode } from "./outline-node.ts";

/** Of one node: its part of the outline, where it has one. */
export type Outlined = (node: LogNode, path: LogPath, label: string, place: Place) => OutlineNode | undefined;

/** Undefined unless all are maps, and, where they have names, most of their cells are single values. */
export function asRows(
  node: LogNode,
  path: LogPath,
  label: string,
  place: Place,
  outlined: Outlined,
): OutlineNode | undefined {
  const named = node.kind === "map" ? node.entries : undefined;
  const nodes = node.kind === "list" ? node.items : (named ?? []).map(({ value }) => value);
  const maps = nodes.flatMap((one) => (one.kind === "map" ? [one] : []));
  if (maps.length === 0 || maps.length < nodes.length) return undefined;
  const columns = columnsOf(maps);
  if (named && !alike(maps, columns.length)) return undefined;
  const names = named?.map(({ key }) => key);
  const rows = maps.map((map, k) => {
    const at = [...path, names ? names[k]! : k];
    return columns.map((column) => {
      const index = map.entries.findIndex(({ key }) => plainName(key) === plainName(column));
      const entry =
        isRepeat(node, k) || (index >= 0 && isRepeat(map, index)) ? undefined : map.entries[index];
      return entry && outlined(entry.value, [...at, entry.key], entry.key, entry.keyPlace);
    });
  });
  return { kind: "rows", path, label, place, columns, rows, ...(names ? { names } : {}) };
}

/** Keys in the order in which they first stand. */
function columnsOf(maps: readonly MapNode[]): string[] {
  const first = new Map<string, string>();
  for (const { entries } of maps)
    for (const { key } of entries) if (!first.has(plainName(key))) first.set(plainName(key), key);
  return [...first.values()];
}

/** At least half of the cells are filled, and half of these with a single value. */
function alike(maps: readonly MapNode[], columns: number): boolean {
  const cells = maps.flatMap(({ entries }) => entries);
  const single = cells.filter(({ value }) => value.kind === "text" || value.kind === "empty");
  return cells.length * 2 >= maps.length * columns && single.length * 2 > cells.length;
}
