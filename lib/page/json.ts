// A page as JSON, for a founder's own script.

import { invariant } from "../issue.ts";
import type { Page, TableCell, TableColumn } from "./blocks.ts";
import { everyBlock, layOut } from "./lay-out.ts";
import { cellOf, tenDigits } from "./table-parts.ts";
import { hiddenAsCodes, plainText, visible } from "./visible.ts";

/** Raised when a key changes its meaning or goes; keys may be added without. */
const PAGE_FORMAT = "mullbook-page/1";

/**
 * The page's figures, tables, charts, findings, cautions and issues as JSON. Numbers carry ten significant digits;
 * a number that is none (NaN, infinite) is null. Keys stand in a fixed order, those of figures by name, so the
 * same page gives the same bytes. Hidden characters are written as codes; in the files that travel with the page as
 * codes of JSON, so that they read back byte for byte. Throws Misuse on a circle in figures.
 * @example JSON.parse(writeJson(fineness.run(log))).format // "mullbook-page/1"
 */
export function writeJson(page: Page): string {
  const laid = layOut(page);
  const blocks = laid.sections.flatMap((section) => everyBlock(section.blocks));
  const whole = {
    format: PAGE_FORMAT,
    title: laid.title,
    invented: laid.invented,
    ...(laid.titleBlock.length === 0 ? {} : { titleBlock: laid.titleBlock }),
    question: plainText(laid.question),
    answer: laid.answer.map(plainText),
    cautions: blocks.flatMap((block) => (block.kind === "caution" ? [withoutSaid(block.caution)] : [])),
    figures: sortedByName(laid.figures, []),
    findings: blocks.flatMap((block) => (block.kind === "finding" ? [withoutSaid(block.finding)] : [])),
    tables: blocks.flatMap((block) => {
      if (block.kind !== "table") return [];
      const { stem, number, label, caption, columns, rows, foot = [] } = block;
      const cells = (row: readonly (string | TableCell)[]) => row.map((cell) => jsonCell(cellOf(cell)));
      return [
        {
          name: stem,
          number,
          label,
          caption,
          columns: columns.map(dataColumn),
          rows: rows.map(cells),
          foot: foot.map(cells),
        },
      ];
    }),
    charts: blocks.flatMap((block) => {
      if (block.kind !== "chart") return [];
      const { caption, alt, table, data = table } = block.chart;
      return [{ name: block.stem, number: block.number, label: block.label, caption, alt, ...data }];
    }),
    issues: laid.issues.map(withoutSaid),
    sources: laid.sources,
    colophon: laid.colophon,
    ...(laid.attachments.length === 0 ? {} : { attachments: laid.attachments }),
  };
  const files = new Set<unknown>(laid.attachments);
  function written(this: unknown, key: string, value: unknown): unknown {
    return key === "text" && files.has(this) ? value : printable(value);
  }
  const text = hiddenAsCodes(JSON.stringify(whole, written, 2));
  // Can stand in a script element too, should anyone put it there.
  return `${text.replace(/<(?=[/!])/g, "\\u003c")}\n`;
}

/** Without what only a translation needs. */
function withoutSaid<T extends { readonly said?: unknown; readonly lead?: unknown }>(thing: T) {
  const { said: _, lead: __, ...rest } = thing;
  return rest;
}

function printable(value: unknown): unknown {
  if (typeof value === "string") return visible(value);
  if (typeof value === "number") return Number.isFinite(value) ? tenDigits(value) : null;
  return value;
}

/** A column of numbers with the unit that they are in, whatever the page prints. */
function dataColumn({ dataUnit, ...column }: TableColumn): TableColumn {
  return dataUnit === undefined ? column : { ...column, unit: dataUnit };
}

/** The number where there is one, else the text; an object where there is a fault to tell or a range with its ends. */
function jsonCell({ text, number, fault, ends }: TableCell): unknown {
  if (ends !== undefined) return { text, low: tenDigits(ends.low), high: tenDigits(ends.high) };
  if (fault !== undefined) return { text, ...(number === undefined ? {} : { number }), fault };
  return number ?? text;
}

/** Plain data with its keys in order; typed arrays become arrays, what is no data is left out. */
function sortedByName(value: unknown, above: readonly unknown[]): unknown {
  if (typeof value !== "object" || value === null) return value;
  invariant(!above.includes(value), "the figures of a page hold themselves; JSON cannot say that");
  const within = [...above, value];
  if (Array.isArray(value)) return value.map((item) => sortedByName(item, within));
  if (ArrayBuffer.isView(value)) return Array.from(value as unknown as ArrayLike<number>);
  const entries = value instanceof Map ? [...value] : Object.entries(value);
  return Object.fromEntries(
    entries
      .map(([name, item]) => [String(name), sortedByName(item, within)] as const)
      .sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)),
  );
}
