// The whole log as an outline: groups that fold, values with labels, tables to fill in.

import type { Place } from "../issue.ts";
import type { OutlineNode } from "../log/outline-node.ts";
import type { Bench } from "./edit-bench.ts";
import { button, h } from "./edit-dom.ts";
import { pathKey } from "./edit-places.ts";
import { entryForm, lineForm } from "./panel-add.ts";
import { removeAt, valueLine } from "./panel-field.ts";
import type { Folds } from "./panel-folds.ts";
import { rowsTable } from "./panel-rows.ts";

/** Lines that stand before the sections: title, founder, metal. */
const ABOUT = "About this log";

/** Entries of a long section that are shown at once; the last ones, where new ones come. */
const SHOWN = 40;
/** Up to here all are shown. */
const MANY = 100;

type Group = Extract<OutlineNode, { kind: "group" }>;

export function outlineParts(bench: Bench, folds: Folds, redraw: () => void): HTMLElement[] {
  const root = bench.places().outline;
  const lines = root.filter(({ kind }) => kind === "value");
  const about: OutlineNode[] =
    lines.length === 0
      ? []
      : [{ kind: "group", path: [], label: ABOUT, place: lines[0]!.place, parts: lines }];
  return [
    ...about.map((node) =>
      folded(node, "", folds, redraw, () => lines.map((line) => partOf(bench, line, folds, redraw))),
    ),
    ...root.filter(({ kind }) => kind !== "value").map((node) => partOf(bench, node, folds, redraw)),
    lineForm(bench, folds, [], "a line to the log"),
  ];
}

function partOf(bench: Bench, node: OutlineNode, folds: Folds, redraw: () => void): HTMLElement {
  if (node.kind === "value") return valueLine(bench, node);
  if (node.kind === "rows" && node.rows.some((row) => row.some((cell) => cell && cell.kind !== "value")))
    return partOf(bench, asGroups(node), folds, redraw);
  const inside = (): HTMLElement[] =>
    node.kind === "rows" ? [rowsTable(bench, node, folds, redraw)] : groupParts(bench, node, folds, redraw);
  return folded(node, summaryOf(bench, node), folds, redraw, inside);
}

function groupParts(bench: Bench, node: Group, folds: Folds, redraw: () => void): HTMLElement[] {
  const { parts, path, label } = node;
  // An entry of tests alone is a table of named rows.
  const entries =
    parts.some(({ kind }) => kind === "group") &&
    parts.every((part) => part.kind === "group" || (part.kind === "rows" && part.names));
  const key = pathKey(path);
  const count = folds.rows.get(key) ?? SHOWN;
  const from = parts.length > MANY ? Math.max(0, parts.length - count) : 0;
  // What was opened stays in sight, wherever it stands.
  const before = parts.slice(0, from).filter((part) => folds.open.has(pathKey(part.path)));
  return [
    ...(from > 0
      ? [
          button(`Show ${Math.min(from, SHOWN)} before these`, () => {
            folds.rows.set(key, count + SHOWN);
            redraw();
          }),
        ]
      : []),
    ...[...before, ...parts.slice(from)].map((part) => partOf(bench, part, folds, redraw)),
    entries
      ? entryForm(bench, folds, path, label, parts)
      : lineForm(bench, folds, path, `a line to ${label}`),
    ...(path.length > 1
      ? [button(`Take ${label} out`, () => removeAt(bench, path), { class: "live-remove" })]
      : []),
  ];
}

/** Entries that hold more than values are no lines of a table: each folds by itself. */
function asGroups({ path, label, place, rows, names }: Extract<OutlineNode, { kind: "rows" }>): Group {
  const parts = rows.map((row, r): Group => {
    const cells = row.filter((cell) => cell !== undefined);
    return {
      kind: "group",
      path: [...path, names?.[r] ?? r],
      label: names?.[r] ?? rowWords(cells, r),
      place: cells[0]?.place ?? place,
      parts: cells,
    };
  });
  return { kind: "group", path, label, place, parts };
}

/** "row 2, 2026-03-02": by its first value. */
function rowWords(cells: readonly OutlineNode[], r: number): string {
  const [first] = cells;
  return `row ${r + 1}${first?.kind === "value" && first.text !== "" ? `, ${first.text}` : ""}`;
}

/** Its content is made when it is opened: a long log would be slow otherwise. */
function folded(
  { path, label }: OutlineNode,
  says: string,
  folds: Folds,
  redraw: () => void,
  inside: () => HTMLElement[],
): HTMLElement {
  const key = pathKey(path);
  const isOpen = folds.open.has(key);
  const fold = h(
    "details",
    {
      open: isOpen,
      class: "live-fold",
      ontoggle: () => {
        if (fold.open === folds.open.has(key)) return;
        if (fold.open) folds.open.add(key);
        else folds.open.delete(key);
        redraw();
      },
    },
    h("summary", { "data-key": `fold ${key}` }, h("span", {}, label), says !== "" && h("small", {}, says)),
  );
  if (isOpen) fold.append(h("div", { class: "live-inside" }, ...inside()));
  return fold;
}

function summaryOf(bench: Bench, node: OutlineNode): string {
  const counted =
    node.kind === "rows"
      ? `${node.rows.length} row${node.rows.length === 1 ? "" : "s"}`
      : node.kind === "group" && node.parts.every(({ kind }) => kind !== "value")
        ? String(node.parts.length)
        : "";
  const own = pathKey(node.path).slice(0, -1);
  const changed = bench.changes().filter(({ path }) => pathKey(path).startsWith(own)).length;
  const wrong = errorsWithin(bench, node);
  return [counted, changed === 0 ? "" : `${changed} changed`, wrong === 0 ? "" : `${wrong} to mend`]
    .filter((text) => text !== "")
    .join(", ");
}

/** What is to be mended between the first and the last of its values: a closed fold would hide it. */
function errorsWithin(bench: Bench, node: OutlineNode): number {
  const errors = bench.session.issues.filter(({ severity }) => severity === "error");
  const first = errors.length > 0 ? endOf(node, 0) : undefined;
  const last = first && endOf(node, -1);
  if (!first || !last) return 0;
  const from = node.place.file === last.file ? (node.place.offset ?? 0) : (first.offset ?? 0);
  const to = (last.offset ?? 0) + Math.max(1, last.length ?? 0);
  return errors.filter(
    ({ place }) =>
      place?.file === last.file && place.offset !== undefined && place.offset >= from && place.offset < to,
  ).length;
}

function endOf(node: OutlineNode, which: 0 | -1): Place | undefined {
  if (node.kind === "value") return node.place;
  const parts =
    node.kind === "group" ? node.parts : node.rows.at(which)?.filter((cell) => cell !== undefined);
  const end = parts?.at(which);
  return end && endOf(end, which);
}
