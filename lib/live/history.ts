// What was changed against the file, in words, each with a way back.

import type { LogEdit, LogPath } from "../log/edit-types.ts";
import type { OutlineNode } from "../log/outline-node.ts";
import type { LogText } from "../log/types.ts";
import { aligned } from "./edit-align.ts";
import { logPlaces } from "./edit-places.ts";
import { entryName, pathWords } from "./edit-words.ts";

export interface LogChange {
  readonly kind: "value" | "added" | "removed";
  /** Where it stands, now or, removed, in the file. */
  readonly path: LogPath;
  readonly words: string;
  readonly was?: string;
  readonly now?: string;
  /** Edits of the texts as they are, one after the other, that lead back. */
  readonly back: readonly LogEdit[];
}

type Key = string | number;
interface Part {
  readonly key: Key;
  readonly path: LogPath;
  readonly node?: OutlineNode;
  readonly parts?: () => readonly Part[];
  /** Its lines of the file: parts alike in them hold the same. The empty string: not known. */
  readonly raw: string;
}

/** Changes from one state of the texts to another: of values, rows, entries and keys. A row that moved is a row taken out and one put in. */
export function changesOf(base: readonly LogText[], texts: readonly LogText[]): LogChange[] {
  if (base === texts) return [];
  const found: LogChange[] = [];
  const parts = (of: readonly LogText[]): readonly Part[] => {
    const file = new Map(of.map(({ name, text }) => [name, text]));
    return partsOf(logPlaces(of).outline, file, undefined);
  };
  compare(parts(base), parts(texts), [], found);
  return found;
}

/** Made as far down as they are looked at. end: offset at which what follows them in their file begins. */
function partsOf(
  nodes: readonly OutlineNode[],
  files: ReadonlyMap<string, string>,
  end: number | undefined,
): readonly Part[] {
  return nodes.map((node, i): Part => {
    const { path, place } = node;
    const key = path.at(-1) ?? "";
    if (node.kind === "value") return { key, path, node, raw: "" };
    const next = nodes[i + 1]?.place;
    const stop = next?.file === place.file ? next.offset : end;
    const raw = files.get(place.file)?.slice(place.offset, stop) ?? "";
    if (node.kind === "group") return { key, path, raw, parts: () => partsOf(node.parts, files, stop) };
    const rows = (): readonly Part[] => {
      const text = files.get(place.file);
      const starts = node.rows.map(startOf);
      const known = !starts.includes(undefined);
      return node.rows.map((row, r) => {
        const name = node.names?.[r] ?? r;
        const cells = row.filter((cell) => cell !== undefined);
        // Its name and its first key stand before its first value, behind that of the row before.
        const [from, to] = [r === 0 ? place.offset : starts[r - 1], starts[r + 1] ?? stop];
        const raw = known ? (text?.slice(from, to) ?? "") : "";
        return { key: name, path: [...path, name], raw, parts: () => partsOf(cells, files, undefined) };
      });
    };
    return { key, path, raw, parts: rows };
  });
}

/** Offset of what stands first in the file; undefined for an empty row. */
function startOf(row: readonly (OutlineNode | undefined)[]): number | undefined {
  let first: number | undefined;
  for (const cell of row) {
    const { offset } = cell?.place ?? {};
    if (offset !== undefined && (first === undefined || offset < first)) first = offset;
  }
  return first;
}

/** All that it holds, to tell rows apart; without its own name. */
function sumOf({ node, parts }: Part): string {
  if (node?.kind === "value") return JSON.stringify(node.text);
  return `{${(parts?.() ?? []).map((part) => `${JSON.stringify(part.key)}:${sumOf(part)}`).join()}}`;
}

function compare(before: readonly Part[], after: readonly Part[], to: LogPath, found: LogChange[]): void {
  const rows = [...before, ...after].some(({ key }) => typeof key === "number");
  if (rows) {
    compareRows(before, after, to, found);
    return;
  }
  const [first, second] = [before, after].map((parts) => new Map(parts.map((part) => [part.key, part])));
  for (const was of before) {
    const now = second!.get(was.key);
    if (now) compareOne(was, now, found);
    else found.push(removed(was, to));
  }
  for (const now of after) if (!first!.has(now.key) && !isEmptyCell(now)) found.push(added(now));
}

/** Of a new column of a CSV file: nothing stands in it. */
const isEmptyCell = ({ node, path }: Part): boolean =>
  node?.kind === "value" && node.text === "" && path.length === 3 && typeof path[1] === "number";

/** Rows have no names: those alike are set side by side, and those between them one by one. */
function compareRows(before: readonly Part[], after: readonly Part[], to: LogPath, found: LogChange[]): void {
  let gone: Part[] = [];
  let come: Part[] = [];
  const close = (): void => {
    const both = Math.min(gone.length, come.length);
    for (let k = 0; k < both; k++) compareOne(gone[k]!, come[k]!, found);
    for (const part of gone.slice(both)) found.push(removed(part, to));
    for (const part of come.slice(both)) found.push(added(part));
    [gone, come] = [[], []];
  };
  for (const [i, j] of aligned(before.map(sumOf), after.map(sumOf))) {
    if (i !== undefined && j !== undefined) close();
    else if (i !== undefined) gone.push(before[i]!);
    else if (j !== undefined) come.push(after[j]!);
  }
  close();
}

function compareOne(was: Part, now: Part, found: LogChange[]): void {
  if (was.raw !== "" && was.raw === now.raw) return;
  if (was.parts && now.parts) {
    compare(was.parts(), now.parts(), now.path, found);
    return;
  }
  const [a, b] = [was.node, now.node];
  if (a?.kind === "value" && b?.kind === "value") {
    if (a.text === b.text) return;
    found.push({
      kind: "value",
      path: now.path,
      words: pathWords(now.path),
      was: a.text,
      now: b.text,
      back: [{ kind: "write", at: b.place, text: a.text }],
    });
    return;
  }
  found.push(removed(was, now.path.slice(0, -1)), added(now));
}

function added(part: Part): LogChange {
  return {
    kind: "added",
    path: part.path,
    words: pathWords(part.path),
    now: summary(part),
    back: [{ kind: "remove", path: part.path }],
  };
}

function removed(part: Part, to: LogPath): LogChange {
  const entries = entriesOf(part);
  const edit: LogEdit =
    typeof part.key === "number"
      ? { kind: "add", to, entries, at: part.key }
      : part.parts
        ? { kind: "add", to, name: part.key, entries }
        : {
            kind: "add",
            to,
            entries: { [entryName([part.key])]: part.node?.kind === "value" ? part.node.text : "" },
          };
  return { kind: "removed", path: part.path, words: pathWords(part.path), was: summary(part), back: [edit] };
}

/** Nested keys joined by strokes: "moisture/damp". */
function entriesOf(part: Part): { [key: string]: string } {
  const entries: { [key: string]: string } = {};
  const walk = (one: Part, name: readonly Key[]): void => {
    if (one.node?.kind === "value") entries[entryName(name)] = one.node.text;
    for (const inner of one.parts?.() ?? []) walk(inner, [...name, inner.key]);
  };
  walk(part, []);
  return entries;
}

/** The first figures of what was put in or taken out. */
function summary(part: Part): string {
  const all = Object.entries(entriesOf(part))
    .filter(([, text]) => text !== "")
    .map(([key, text]) => (key === "" ? text : `${key} ${text}`));
  return all.length > 4 ? `${all.slice(0, 4).join(", ")} …` : all.join(", ");
}
