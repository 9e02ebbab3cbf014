// What is to be added, as texts by name, and nested as their names say.

import type { Issue } from "../issue.ts";
import { clashingKeys } from "./complaints-edit.ts";
import type { Plain } from "./edit-plain.ts";

export type Draft = string | { readonly pairs: readonly DraftPair[] } | { readonly items: readonly Draft[] };
export type DraftPair = readonly [name: string, value: Draft];

/** "moisture/damp" lies below "moisture"; ~1 in a name is a slash and ~0 a tilde (RFC 6901, section 3). */
export function draftOf(entries: {
  readonly [key: string]: string;
}): { readonly draft: Draft } | { readonly refused: Issue } {
  const tree: Tree = new Map();
  for (const [key, text] of Object.entries(entries)) {
    const names = key.split("/").map((name) => name.replaceAll("~1", "/").replaceAll("~0", "~"));
    let level = tree;
    for (const name of names.slice(0, -1)) {
      const below = level.get(name) ?? new Map();
      if (typeof below === "string") return { refused: clashingKeys(name) };
      level.set(name, below);
      level = below;
    }
    const last = names.at(-1)!;
    if (level.has(last)) return { refused: clashingKeys(last) };
    level.set(last, text);
  }
  return { draft: drafted(tree) };
}

type Tree = Map<string, string | Tree>;

function drafted(tree: Tree): Draft {
  return {
    pairs: [...tree].map(([name, value]) => [name, typeof value === "string" ? value : drafted(value)]),
  };
}

export function draftPlain(draft: Draft): Plain {
  if (typeof draft === "string") return draft === "" ? null : draft;
  if ("items" in draft) return draft.items.map(draftPlain);
  return { pairs: draft.pairs.map(([name, value]) => [name, draftPlain(value)]) };
}
