// A part of a log's tree at another place of the file.

import type { Place } from "../issue.ts";
import type { Entry, LogNode } from "./node.ts";

/** How far a part of a text has moved. */
export interface Shift {
  readonly characters: number;
  readonly lines: number;
}

/** Whole lines moved: columns stay. */
export function shiftedPlace(place: Place, { characters, lines }: Shift): Place {
  return { ...place, line: place.line! + lines, offset: place.offset! + characters };
}

export function shiftedEntry({ key, keyPlace, value }: Entry, by: Shift): Entry {
  return { key, keyPlace: shiftedPlace(keyPlace, by), value: shiftedNode(value, by) };
}

function shiftedNode(node: LogNode, by: Shift): LogNode {
  const place = shiftedPlace(node.place, by);
  if (node.kind === "map")
    return { ...node, place, entries: node.entries.map((entry) => shiftedEntry(entry, by)) };
  if (node.kind === "list") return { ...node, place, items: node.items.map((item) => shiftedNode(item, by)) };
  return { ...node, place };
}
