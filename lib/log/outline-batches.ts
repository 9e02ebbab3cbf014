// The batches of a log where they can be changed: an entry of the log, or rows of its CSV file.

import type { LogPath } from "./edit-types.ts";
import { plainName } from "./node.ts";
import type { OutlineNode } from "./outline-node.ts";

export type OutlinedBatch = {
  readonly name: string;
  /** The reason why the log leaves it out. */
  readonly keptOut?: string;
} & (
  | { readonly kind: "entry"; readonly path: LogPath }
  /** rows: indexes of those that have its name, the first one first. */
  | { readonly kind: "csv"; readonly file: string; readonly rows: readonly number[] }
);

/** As a line of a batch, and as a column. */
export const LEFT_OUT = "left out";

type Rows = Extract<OutlineNode, { kind: "rows" }>;

/** In the log's order, those of the CSV file last; of two of one name the first. */
export function outlinedBatches(outline: readonly OutlineNode[]): OutlinedBatch[] {
  const section = outline.find(({ label, path }) => path.length === 1 && plainName(label) === "batches");
  const file = outline.find(({ kind, label }) => kind === "value" && plainName(label) === "batches file");
  const rows =
    file?.kind === "value"
      ? outline.find((node): node is Rows => node.kind === "rows" && node.path[0] === file.text)
      : undefined;
  const all = [...entriesOf(section), ...(rows ? inRows(rows) : [])];
  return all.filter(({ name }, i) => all.findIndex((one) => plainName(one.name) === plainName(name)) === i);
}

function entriesOf(section: OutlineNode | undefined): OutlinedBatch[] {
  if (section?.kind === "group")
    return section.parts.map((part) => entry(part.label, part.path, part.kind === "group" ? part.parts : []));
  if (section?.kind !== "rows" || !section.names) return [];
  return section.names.map((name, r) =>
    entry(
      name,
      [...section.path, name],
      section.rows[r]!.filter((cell) => cell !== undefined),
    ),
  );
}

function entry(name: string, path: LogPath, parts: readonly OutlineNode[]): OutlinedBatch {
  const line = parts.find(({ label }) => plainName(label) === LEFT_OUT);
  return { kind: "entry", name, path, ...reason(line) };
}

function inRows({ path, columns, rows }: Rows): OutlinedBatch[] {
  const nameAt = columns.findIndex((column) => ["batch", "name"].includes(plainName(column)));
  const outAt = columns.findIndex((column) => plainName(column) === LEFT_OUT);
  const groups = new Map<string, { readonly name: string; readonly rows: number[] }>();
  rows.forEach((row, r) => {
    const cell = row[nameAt];
    const name = cell?.kind === "value" ? cell.text : "";
    if (plainName(name) === "") return;
    const group = groups.get(plainName(name)) ?? { name, rows: [] };
    group.rows.push(r);
    groups.set(plainName(name), group);
  });
  return [...groups.values()].map((group) => {
    const cells = group.rows.map((r) => rows[r]![outAt]);
    const said = cells.find((cell) => cell?.kind === "value" && cell.text.trim() !== "");
    return { kind: "csv", ...group, file: String(path[0]), ...reason(said) };
  });
}

const reason = (node: OutlineNode | undefined): { readonly keptOut?: string } =>
  node?.kind === "value" ? { keptOut: node.text } : {};
