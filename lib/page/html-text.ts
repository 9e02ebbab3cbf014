// Text as HTML: the only place where text becomes markup.

import type { Text } from "./blocks.ts";
import { codePieces, isolated, pieces, visible } from "./visible.ts";

const ESCAPES: { readonly [character: string]: string } = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text that stands for itself in an element or in a quoted attribute. */
export function escapeHtml(text: string): string {
  return isolated(visible(text)).replace(/[&<>"']/g, (character) => ESCAPES[character]!);
}

/** Escaped text in which a figure stays on one line with its ± and its unit, a sieve with its number, a date with itself. Not for attributes. */
export function flowHtml(text: string): string {
  return escapeHtml(text).replace(togetherPattern, '<span class="u">$&</span>');
}
const unit = "(?:%|[kmµc]?[gmlL]|kPa|psi|°[CF]|min|oz|lb|in|µm|φ)(?![\\p{L}\\d])";
const togetherPattern = new RegExp(
  `\\b\\d{4}-\\d{2}-\\d{2}\\b|\\bNo\\. \\d+|\\b[pr] = \\d[\\d.]*|[\\d.,]*\\d(?: ${unit})? ± (?:at least )?[\\d.,]*\\d(?: ${unit})?|\\d ${unit}|[^\\s<>;&]{1,40} \\[\\d+\\]$`,
  "gu",
);

/** Text in which words between back-ticks are what stands in a file. */
export function htmlWithCode(text: string): string {
  return codePieces(text)
    .map(({ code, words }) => (code ? `<code>${escapeHtml(words)}</code>` : flowHtml(words)))
    .join("");
}

/** A text with its emphasis. */
export function htmlText(text: Text): string {
  return pieces(text)
    .map((piece) => {
      if (typeof piece === "string") return flowHtml(piece);
      if ("code" in piece) return `<code>${escapeHtml(piece.code)}</code>`;
      return "strong" in piece
        ? `<strong>${flowHtml(piece.strong)}</strong>`
        : `<em>${flowHtml(piece.em)}</em>`;
    })
    .join("");
}

export function htmlList(items: readonly string[], attributes = "", tag: "ul" | "ol" = "ul"): string {
  // An item ends where the next begins, or its list (HTML standard, 13.1.2.4).
  return `<${tag}${attributes}>${items.map((item) => `\n<li>${item}`).join("")}\n</${tag}>`;
}

/**
 * Lines to copy as they stand. One that is broken by a narrow window or by paper goes on further in than it began, so
 * that it is read alike where somebody types what is seen; copied, it is one line again.
 */
export function htmlLines(text: string): string {
  const lineOf = (line: string): string => `<span>${escapeHtml(line)}\n</span>`;
  return `<pre>${text.split("\n").map(lineOf).join("")}</pre>`;
}
