// A table as HTML: figures aligned at the decimal mark, wide ones scroll in a box of their own.

import type { TableCell, TableRow } from "./blocks.ts";
import { columnGroups } from "./column-groups.ts";
import { cutAtDecimalMark, widthsAfterMark } from "./decimal-mark.ts";
import { escapeHtml, flowHtml } from "./html-text.ts";
import { cellOf, type TableParts } from "./table-parts.ts";
import { visible } from "./visible.ts";
import { english } from "./words.ts";

/** Widest part behind a decimal mark that the style sheet has a class for, in characters. */
export const WIDEST_PART = 24;
/** Columns that the style sheet can set as numbers by a class of the table; those further right carry their own. */
export const NUMBERED_COLUMNS = 14;
/** A table of more rows may be parted between two sheets. */
const LONG = 24;
/** A text that stays on one line, in characters: a name in three lines is read as three names. */
const SHORT_TEXT = 24;

/** The table in one, however wide: what stands in a fold is read on a screen. */
export function htmlTable(parts: TableParts): string {
  return oneTable(parts);
}

/**
 * A table without the end tags of cells and rows and without the quotes that HTML lets out (HTML standard, 13.1.2.4 and
 * 13.1.2.3): a third of a long one. What stands in cells is escaped, so none of it looks like a tag.
 */
export function withoutIdleEnds(table: string): string {
  return table
    .replace(/<\/t[dh]>(?=<t[dh][ >]|<\/tr>)/g, "")
    .replace(/<\/tr>\n?(?=<tr>|<\/t(?:head|body|foot)>)/g, "")
    .replace(/(<t[hd]|<span) (scope|class)="(\w+)"(?=[ >])/g, "$1 $2=$3");
}

/** The table; one too wide for a sheet as several, each with the names of its rows. */
export function htmlTables(parts: TableParts): string {
  const groups = columnGroups(parts);
  if (groups.length === 1) return oneTable(parts);
  const { notes, ...rest } = parts;
  return groups
    .map((group, i) => {
      const taken = (row: TableRow) => group.map((c) => row[c] ?? "");
      return oneTable({
        ...rest,
        label: `${parts.label}, ${(parts.words ?? english).tablePart(String(i + 1), String(groups.length))}`,
        columns: group.map((c) => parts.columns[c]!),
        rows: parts.rows.map(taken),
        // A figure of the foot stands with its column, its name nowhere else.
        foot: (parts.foot ?? [])
          .map(taken)
          .filter((row) => row.some((cell, c) => c > 0 && cellOf(cell).text !== "")),
        ...(notes && i === groups.length - 1 ? { notes } : {}),
      });
    })
    .join("\n");
}

function oneTable({
  label,
  caption,
  columns,
  rows,
  foot = [],
  notes = [],
  live = false,
}: TableParts): string {
  const widths = columns.map((column, c) =>
    partWidths(column.align === "text" ? [] : [...rows, ...foot].map((row) => cellOf(row[c]).text)),
  );
  const isNumber = (c: number) => columns[c]!.align === "number";
  const isShort = columns.map((_, c) => rows.every((row) => cellOf(row[c]).text.length <= SHORT_TEXT));
  const own = (c: number) => (isNumber(c) && c >= NUMBERED_COLUMNS ? ' class="n"' : "");
  const tableRow = (row: TableRow) => {
    const cells = columns.map((_, c) => {
      const cell = cellOf(row[c]);
      const shown = (inside: string) => (live ? changeable(cell, inside) : inside);
      if (isNumber(c)) return `<td${own(c)}>${shown(content(cell, widths[c]))}</td>`;
      const text = shown(words(cell, isShort[c]! || c >= NUMBERED_COLUMNS));
      return c === 0 ? `<th scope="row">${text}</th>` : `<td>${text}</td>`;
    });
    return `<tr>${cells.join("")}</tr>`;
  };
  const heads = columns.map(({ head, unit }, c) => {
    const under = unit === undefined ? "" : `<span class="unit">${flowHtml(unit)}</span>`;
    return `<th scope="col"${own(c)}>${flowHtml(head)}${under}</th>`;
  });
  const classes = [
    ...columns.slice(0, NUMBERED_COLUMNS).flatMap((_, c) => {
      if (isNumber(c)) return [`n${c + 1}`];
      return isShort[c] ? [] : [`t${c + 1}`];
    }),
    ...(rows.length + foot.length > LONG ? ["long"] : []),
  ].join(" ");
  const name = escapeHtml(caption === undefined ? label : `${label}. ${caption}`);
  const after = caption === undefined ? "" : ` ${escapeHtml(caption)}`;
  return `<div class="scroll" role="region" aria-label="${name}" tabindex="0">
<table${classes === "" ? "" : ` class="${classes}"`}>
<caption><span><b>${escapeHtml(label)}.</b>${after}</span></caption>
<thead><tr>${heads.join("")}</tr></thead>
<tbody>
${rows.map(tableRow).join("\n")}
</tbody>${foot.length === 0 ? "" : `\n<tfoot>\n${foot.map(tableRow).join("\n")}\n</tfoot>`}
</table>
</div>${notes.map((note) => `\n<p class="table-note">${flowHtml(note)}</p>`).join("")}`;
}

/** A button in the cell, by which the live page edits its reading; the place as file, offset and length, the file as in an address. */
function changeable({ text, at }: TableCell, inside: string): string {
  if (at?.offset === undefined || text === "") return inside;
  const place = `${encodeURIComponent(visible(at.file))}:${at.offset}:${at.length ?? 0}`;
  return `<span class="at" role="button" tabindex="0" data-at="${escapeHtml(place)}">${inside}</span>`;
}

/** In a column of short texts, as in one of numbers, the style sheet keeps every cell on one line. */
function words({ text, fault }: TableCell, shortColumn: boolean): string {
  if (shortColumn) return escapeHtml(text) + faultHtml(fault);
  const short = text.length <= SHORT_TEXT && text.includes(" ");
  if (fault !== undefined || !short) return flowHtml(text) + faultHtml(fault);
  return `<span class="u">${escapeHtml(text)}</span>`;
}

interface PartWidths {
  readonly fraction: number;
  readonly rest: number;
}

/** None where every figure has as much behind its mark as the next: set flush right, the marks then meet as they are. */
function partWidths(texts: readonly string[]): PartWidths | undefined {
  const shapes = new Set(
    texts.flatMap((text) => {
      const cut = cutAtDecimalMark(text);
      return text === "" || !cut ? [] : [`${cut.fraction}${cut.rest}`.replace(/\d/g, "0")];
    }),
  );
  return shapes.size > 1 ? widthsAfterMark(texts) : undefined;
}

function content(cell: TableCell, widths?: PartWidths): string {
  const fault = faultHtml(cell.fault);
  const cut = widths && cell.text !== "" ? cutAtDecimalMark(cell.text) : undefined;
  if (!cut || !widths) return escapeHtml(cell.text) + fault;
  return escapeHtml(cut.whole) + part(cut.fraction, widths.fraction) + part(cut.rest, widths.rest) + fault;
}

function faultHtml(fault: string | undefined): string {
  return fault === undefined ? "" : `<br/><span class="fault">${escapeHtml(fault)}</span>`;
}

/** Alike in width all down the column, so what stands before it ends at one line. */
function part(text: string, width: number): string {
  if (width === 0) return "";
  return `<span class="w${Math.min(width, WIDEST_PART)}">${escapeHtml(text)}</span>`;
}
