// Text as HTML: the only place where text becomes markup.

import type { Text } from "./blocks.ts";
import { pieces, visible } from "./visible.ts";

const ESCAPES: { readonly [character: string]: string } = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text that stands for itself in an element or in a quoted attribute. */
export function escapeHtml(text: string): string {
  return visible(text).replace(/[&<>"']/g, (character) => ESCAPES[character]!);
}

/** A text with its emphasis. */
export function htmlText(text: Text): string {
  return pieces(text)
    .map((piece) => {
      if (typeof piece === "string") return escapeHtml(piece);
      return "strong" in piece
        ? `<strong>${escapeHtml(piece.strong)}</strong>`
        : `<em>${escapeHtml(piece.em)}</em>`;
    })
    .join("");
}

export function htmlList(items: readonly string[], attributes = "", tag: "ul" | "ol" = "ul"): string {
  return `<${tag}${attributes}>\n${items.map((item) => `<li>${item}</li>`).join("\n")}\n</${tag}>`;
}
