// Where in a log's tree a place or a path leads to.

import type { Place } from "../issue.ts";
import type { LogPath } from "./edit-types.ts";
import { type Entry, type LogNode, type MapNode, plainName } from "./node.ts";

/** A value, or the name of an entry, with what it stands in. */
export type Found =
  | {
      readonly kind: "value";
      readonly node: LogNode;
      readonly flow: boolean;
      readonly inList: boolean;
      readonly keyPlace?: Place;
    }
  | { readonly kind: "key"; readonly entry: Entry; readonly map: MapNode; readonly flow: boolean };

export const isFlow = (node: LogNode, text: string): boolean =>
  (node.kind === "map" || node.kind === "list") && /[[{]/.test(text[node.place.offset ?? 0] ?? "");

/** The scalar that begins at the place and is as long; values before names. */
export function foundAt(root: LogNode, text: string, { offset, length }: Place): Found | undefined {
  const here = (place: Place) => place.offset === offset && (length === undefined || place.length === length);
  const seen = new Set<LogNode>();
  let key: Found | undefined;
  const walk = (node: LogNode, flow: boolean, inList: boolean, keyPlace?: Place): Found | undefined => {
    if (seen.has(node)) return undefined;
    seen.add(node);
    if (node.kind === "text" || node.kind === "empty") {
      const holed = node.kind === "empty" && node.holed === true;
      return here(node.place) && !holed
        ? { kind: "value", node, flow, inList, ...(keyPlace ? { keyPlace } : {}) }
        : undefined;
    }
    const inside = flow || isFlow(node, text);
    if (node.kind === "list") {
      for (const item of node.items) {
        const found = walk(item, inside, true);
        if (found) return found;
      }
      return undefined;
    }
    for (const entry of node.entries) {
      if (here(entry.keyPlace)) key ??= { kind: "key", entry, map: node, flow: inside };
      const found = walk(entry.value, inside, false, entry.keyPlace);
      if (found) return found;
    }
    return undefined;
  };
  return walk(root, false, false) ?? key;
}

/** One step down a path. */
export interface Step {
  /** What is stepped out of. */
  readonly parent: LogNode;
  /** Of the entry or item in it. */
  readonly index: number;
  readonly node: LogNode;
}

/** flow: true where what the path ends at stands within brackets. */
export interface Way {
  readonly steps: readonly Step[];
  readonly flow: boolean;
}

export type Walked =
  | Way
  | { readonly missing: LogPath }
  | { readonly twice: string }
  /** The step leads through a repeat (*): its name. */
  | { readonly repeat: string };

/** Steps from the root to the end of the path; the last may be a repeat where lastMayRepeat says so. */
export function walked(root: LogNode, text: string, path: LogPath, lastMayRepeat = false): Walked {
  const steps: Step[] = [];
  let node = root;
  let flow = false;
  for (const [depth, name] of path.entries()) {
    const found = childAt(node, name);
    if (found === "twice") return { twice: String(name) };
    if (!found) return { missing: path.slice(0, depth + 1) };
    const last = depth === path.length - 1;
    if (isRepeat(node, found.index) && !(last && lastMayRepeat)) return { repeat: nameOf(name) };
    steps.push({ parent: node, ...found });
    flow ||= isFlow(node, text);
    node = found.node;
  }
  return { steps, flow };
}

/** Items are called by their number from 1, as a founder counts. */
const nameOf = (name: string | number): string => (typeof name === "number" ? `item ${name + 1}` : name);

export function pathText(path: LogPath): string {
  return path.length === 0 ? "The log" : path.map(nameOf).join(" / ");
}

function childAt(
  node: LogNode,
  name: string | number,
): { readonly index: number; readonly node: LogNode } | "twice" | undefined {
  if (node.kind === "list") {
    const index = typeof name === "number" ? name : -1;
    const item = node.items[index];
    return item && { index, node: item };
  }
  if (node.kind !== "map") return undefined;
  const same = indexesOf(node, String(name));
  if (same.length > 1) return "twice";
  const [index] = same;
  return index === undefined ? undefined : { index, node: node.entries[index]!.value };
}

/** Entries of this name; of one that only compares as it where none is written the same. */
export function indexesOf(map: MapNode, name: string): number[] {
  const matching = (test: (key: string) => boolean) =>
    map.entries.flatMap(({ key }, index) => (test(key) ? [index] : []));
  const exact = matching((key) => key === name);
  return exact.length > 0 ? exact : matching((key) => plainName(key) === plainName(name));
}

/** True where the child is written elsewhere, further up, and only repeated here. */
export function isRepeat(parent: LogNode, index: number): boolean {
  if (parent.kind === "map") {
    const { keyPlace, value } = parent.entries[index]!;
    return (value.place.offset ?? 0) < (keyPlace.offset ?? 0);
  }
  if (parent.kind !== "list") return false;
  // Items ascend in the file; only a repeat stands at or before one that precedes it.
  const { offset = 0 } = parent.items[index]!.place;
  if (offset < (parent.place.offset ?? 0)) return true;
  for (let k = 0; k < index; k++) if ((parent.items[k]!.place.offset ?? 0) >= offset) return true;
  return false;
}
