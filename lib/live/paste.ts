// A block of cells from a table or a CSV file, and what becomes of it in a table of the log.

import type { LogEdit } from "../log/edit-types.ts";
import type { OutlineNode } from "../log/outline-node.ts";
import { entryName } from "./edit-words.ts";

export type RowsNode = Extract<OutlineNode, { kind: "rows" }>;
export type Block = readonly (readonly string[])[];

/**
 * The cells of a pasted text; undefined where it is a text for one cell. Tabs part cells before semicolons, those before
 * commas; quotes hold cells that have the sign or a line end in them (RFC 4180). One line is a block where it has tabs, or
 * three or more figures parted by semicolons or commas: "12,4" is a figure with a comma, which its cell then complains of.
 */
export function pastedBlock(text: string): Block | undefined {
  const plain = text.replace(/(?:\r\n|\r|\n)+$/, "");
  const unquoted = plain.replace(/"(?:[^"]|"")*"/g, '""');
  const lines = unquoted.split(/\r\n|\r|\n/);
  const sign = ["\t", ";", ","].find((one) => lines.some((line) => line.includes(one)));
  if (lines.length === 1) {
    if (sign === undefined) return undefined;
    const figures = unquoted.split(sign);
    const few = figures.length < 3 || !figures.every((one) => /^\s*(?:[-+]?\d|"|$)/.test(one));
    if (sign !== "\t" && few) return undefined;
  }
  return cells(plain, sign ?? "\t");
}

function cells(text: string, sign: string): string[][] {
  const rows: string[][] = [[]];
  let at = 0;
  for (;;) {
    const quoted = /^ *"((?:[^"]|"")*)" */.exec(text.slice(at));
    const after = quoted ? text[at + quoted[0].length] : undefined;
    const whole = quoted !== null && (after === undefined || after === sign || /[\r\n]/.test(after));
    let end = whole ? at + quoted[0].length : at;
    if (!whole) while (end < text.length && text[end] !== sign && !/[\r\n]/.test(text[end]!)) end++;
    rows.at(-1)!.push(whole ? quoted[1]!.replaceAll('""', '"') : text.slice(at, end).trim());
    if (end >= text.length) return rows;
    if (text[end] !== sign) rows.push([]);
    at = end + (text.startsWith("\r\n", end) ? 2 : 1);
  }
}

export interface Filling {
  /** In the order in which they can be made one after the other: later places first, new rows last. */
  readonly edits: readonly LogEdit[];
  /** What does not fit, in words; empty where all does. */
  readonly left: readonly string[];
}

/**
 * What a block pasted at a cell does to a table: cells from there on are filled, rows added below where it is longer; an
 * empty cell of the block leaves the one that is there. A first line that names the table's columns says where the others
 * go. What stands right of the last column, and new rows in a table whose rows have names, do not fit.
 */
export function filledBy(
  block: Block,
  { path, columns, rows, names }: RowsNode,
  row: number,
  column: number,
): Filling {
  const left: string[] = [];
  const [head = [], ...under] = block;
  const plain = (text: string): string => text.trim().toLowerCase();
  const known = head.map((text) => columns.findIndex((name) => plain(name) === plain(text)));
  const headed = under.length > 0 && known.every((c) => c >= 0);
  const target = (k: number): number => (headed ? known[k]! : column + k);
  const writes: (LogEdit & { kind: "write" })[] = [];
  const others: LogEdit[] = [];
  (headed ? under : block).forEach((line, i) => {
    const at = row + i;
    const entries: { [key: string]: string } = {};
    line.forEach((text, k) => {
      const name = columns[target(k)];
      if (text === "") return;
      if (name === undefined) left.push(`"${text}" stands right of the last column`);
      else entries[name] = text;
    });
    if (Object.keys(entries).length === 0) return;
    if (at >= rows.length) {
      if (names)
        left.push(
          `${Object.values(entries)
            .map((text) => `"${text}"`)
            .join(", ")}: a new row here wants a name`,
        );
      else others.push({ kind: "add", to: path, entries: named(entries) });
      return;
    }
    const missing: { [key: string]: string } = {};
    for (const [name, text] of Object.entries(entries)) {
      const cell = rows[at]![columns.indexOf(name)];
      if (cell?.kind === "value") writes.push({ kind: "write", at: cell.place, text });
      else if (cell) left.push(`"${text}": ${name} holds more than one value here`);
      else missing[name] = text;
    }
    if (Object.keys(missing).length > 0)
      others.push({ kind: "add", to: [...path, names?.[at] ?? at], entries: named(missing) });
  });
  writes.sort((a, b) => (b.at.offset ?? 0) - (a.at.offset ?? 0));
  return { edits: [...writes, ...others], left };
}

const named = (entries: { readonly [column: string]: string }): { [name: string]: string } =>
  Object.fromEntries(Object.entries(entries).map(([column, text]) => [entryName([column]), text]));

/** A table of the log as tab-separated text, with its head. */
export function copiedTable({ columns, rows, names }: RowsNode): string {
  const cell = (text: string): string => (/["\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  const head = [...(names ? [""] : []), ...columns];
  const body = rows.map((row, r) => [
    ...(names ? [names[r] ?? ""] : []),
    ...columns.map((_, c) => (row[c]?.kind === "value" ? row[c].text : "")),
  ]);
  return [head, ...body].map((line) => line.map(cell).join("\t")).join("\n");
}
