// A table as a GFM table that can be read as it stands.

import { padAfterMark } from "./decimal-mark.ts";
import { escapeMarkdown } from "./markdown-text.ts";
import { cellOf, type TableParts } from "./table-parts.ts";

export function markdownTable({ label, caption, columns, rows, foot = [], notes = [] }: TableParts): string {
  const all = [...rows, ...foot];
  const written = columns.map(({ head, unit, align }, c) => {
    const cells = all.map((row) => cellOf(row[c]));
    const texts = cells.map((cell) => cell.text);
    const aligned = align === "number" ? padAfterMark(texts) : texts;
    const name = escapeMarkdown(unit === undefined ? head : `${head} (${unit})`);
    return [name, ...aligned.map((text, r) => cellText(text, cells[r]!.fault, r >= rows.length))];
  });
  const widths = written.map((cells) => Math.max(3, ...cells.map(width)));
  const line = (row: number) =>
    `| ${written.map((cells, c) => filled(cells[row]!, widths[c]!, columns[c]!.align === "number")).join(" | ")} |`;
  const rule = widths.map((wide, c) =>
    columns[c]!.align === "number" ? `${"-".repeat(wide + 1)}:` : "-".repeat(wide + 2),
  );
  return [
    `**${label}.**${caption === undefined ? "" : ` ${escapeMarkdown(caption)}`}`,
    "",
    line(0),
    `|${rule.join("|")}|`,
    ...all.map((_, r) => line(r + 1)),
    ...(notes.length === 0 ? [] : ["", notes.map(escapeMarkdown).join("  \n")]),
  ].join("\n");
}

function cellText(text: string, fault: string | undefined, foot: boolean): string {
  const trailing = /[\u2007\u2008]*$/.exec(text)![0];
  const words = escapeMarkdown(text);
  const shown = foot && words !== "" ? `**${words}**` : words;
  return fault === undefined ? shown + trailing : `${shown} (*${escapeMarkdown(fault)}*)`;
}

function width(text: string): number {
  return [...text].length;
}

function filled(text: string, to: number, flushRight: boolean): string {
  const fill = " ".repeat(Math.max(0, to - width(text)));
  return flushRight ? fill + text : text + fill;
}
