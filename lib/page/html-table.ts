// A table as HTML: figures aligned at the decimal mark, wide ones scroll in a box of their own.

import type { TableCell, TableRow } from "./blocks.ts";
import { cutAtDecimalMark, widthsAfterMark } from "./decimal-mark.ts";
import { escapeHtml, flowHtml } from "./html-text.ts";
import { cellOf, type TableParts } from "./table-parts.ts";

/** Widest part behind a decimal mark that the style sheet has a class for, in characters. */
export const WIDEST_PART = 24;

export function htmlTable({ label, caption, columns, rows, foot = [] }: TableParts): string {
  const widths = columns.map((column, c) =>
    widthsAfterMark(column.align === "text" ? [] : [...rows, ...foot].map((row) => cellOf(row[c]).text)),
  );
  const tableRow = (row: TableRow) => {
    const cells = columns.map((column, c) => {
      const cell = cellOf(row[c]);
      if (c === 0 && column.align === "text") return `<th scope="row">${content(cell)}</th>`;
      if (column.align === "text") return `<td>${content(cell)}</td>`;
      return `<td class="n">${content(cell, widths[c])}</td>`;
    });
    return `<tr>${cells.join("")}</tr>`;
  };
  const heads = columns.map(({ head, unit, align }) => {
    const under = unit === undefined ? "" : `<span class="unit">${escapeHtml(unit)}</span>`;
    return `<th scope="col"${align === "number" ? ' class="n"' : ""}>${escapeHtml(head)}${under}</th>`;
  });
  const name = escapeHtml(caption === undefined ? label : `${label}. ${caption}`);
  const after = caption === undefined ? "" : ` ${escapeHtml(caption)}`;
  return `<div class="scroll" role="region" aria-label="${name}" tabindex="0">
<table>
<caption><span><b>${escapeHtml(label)}.</b>${after}</span></caption>
<thead><tr>${heads.join("")}</tr></thead>
<tbody>
${rows.map(tableRow).join("\n")}
</tbody>${foot.length === 0 ? "" : `\n<tfoot>\n${foot.map(tableRow).join("\n")}\n</tfoot>`}
</table>
</div>`;
}

function content(cell: TableCell, widths?: { fraction: number; rest: number }): string {
  const fault = cell.fault === undefined ? "" : `<span class="fault">${escapeHtml(cell.fault)}</span>`;
  const cut = widths && widths.fraction + widths.rest > 0 ? cutAtDecimalMark(cell.text) : undefined;
  if (!cut || !widths) return flowHtml(cell.text) + fault;
  return escapeHtml(cut.whole) + part(cut.fraction, widths.fraction) + part(cut.rest, widths.rest) + fault;
}

/** Alike in width all down the column, so what stands before it ends at one line. */
function part(text: string, width: number): string {
  if (width === 0) return "";
  return `<span class="w${Math.min(width, WIDEST_PART)}">${escapeHtml(text)}</span>`;
}
