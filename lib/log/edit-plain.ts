// A tree without places, to tell whether an edit changed what it should and nothing else.

import type { LogNode } from "./node.ts";

/** Text, nothing, items, or names with values in their order. */
export type Plain =
  | string
  | null
  | readonly Plain[]
  | { readonly pairs: readonly (readonly [string, Plain])[] };

/** What stands in a node's place, wherever the node stands. */
export interface Change {
  readonly node: LogNode;
  readonly to: Plain;
}

export function plainOf(node: LogNode, change?: Change): Plain {
  if (node === change?.node) return change.to;
  if (node.kind === "text") return node.text;
  if (node.kind === "empty") return null;
  if (node.kind === "list") return node.items.map((item) => plainOf(item, change));
  return { pairs: node.entries.map(({ key, value }) => [key, plainOf(value, change)]) };
}

export function samePlain(a: Plain, b: Plain): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** At how many places the node stands. */
export function timesIn(root: LogNode, node: LogNode): number {
  if (root === node) return 1;
  const parts =
    root.kind === "list" ? root.items : root.kind === "map" ? root.entries.map(({ value }) => value) : [];
  return parts.reduce((sum, part) => sum + timesIn(part, node), 0);
}
