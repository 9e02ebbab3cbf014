// All that stands in a log and its CSV files, in their order, each value with its path and place: what can be edited.

import { isRepeat } from "./edit-find.ts";
import { readingOf } from "./edit-reading.ts";
import type { LogPath } from "./edit-types.ts";
import type { LogNode } from "./node.ts";
import { csvOutline } from "./outline-csv.ts";
import type { OutlineNode } from "./outline-node.ts";
import { asRows, type Outlined } from "./outline-rows.ts";
import { type PieceMemory, pieceMemory } from "./parse-pieces.ts";
import type { LogText } from "./types.ts";

/**
 * The outline of a log's texts (as in Log.texts): sections in file order, then the CSV files.
 *
 * Labels are keys as typed, texts as YAML reads them, "" for a key with nothing after it. Rows: lists of entries, entries
 * whose values are alike, and CSV files; a cell that a row lacks is undefined. What is repeated by * stands once, at its
 * &. What could not be read, and what is commented out, is not there; a text that is no log has no outline.
 *
 *     logOutline([{ name: "log.yaml", text: "heap: { mass: 120 kg }" }])
 *     // [{ kind: "group", path: ["heap"], label: "heap", parts: [{ kind: "value", label: "mass", text: "120 kg" … }] … }]
 */
export function logOutline(texts: readonly LogText[]): readonly OutlineNode[] {
  return outlineWith(texts);
}

/** logOutline for one list of texts after the other, each an edit of the one before. */
export function outliner(): typeof logOutline {
  const memory = pieceMemory();
  return (texts) => outlineWith(texts, memory);
}

function outlineWith(texts: readonly LogText[], memory?: PieceMemory): readonly OutlineNode[] {
  const [log, ...files] = texts;
  const reading = log && readingOf(log.name, log.text, memory);
  const outlined: Outlined = (node, path, label, place) => {
    if (node.kind === "text") return { kind: "value", path, label, text: node.text, place: node.place };
    if (node.kind === "empty")
      return node.holed ? undefined : { kind: "value", path, label, text: "", place: node.place };
    return (
      asRows(node, path, label, place, outlined) ?? {
        kind: "group",
        path,
        label,
        place,
        parts: partsOf(node, path, outlined),
      }
    );
  };
  const root = reading?.root;
  const ofLog = root && root.kind !== "text" && root.kind !== "empty" ? partsOf(root, [], outlined) : [];
  return [...ofLog, ...files.flatMap((file) => csvOutline(file) ?? [])];
}

function partsOf(node: LogNode, path: LogPath, outlined: Outlined): OutlineNode[] {
  if (node.kind === "list") {
    return node.items.flatMap((item, k) =>
      isRepeat(node, k) ? [] : (outlined(item, [...path, k], String(k + 1), item.place) ?? []),
    );
  }
  if (node.kind !== "map") return [];
  return node.entries.flatMap(({ key, keyPlace, value }, k) =>
    isRepeat(node, k) ? [] : (outlined(value, [...path, key], key, keyPlace) ?? []),
  );
}
