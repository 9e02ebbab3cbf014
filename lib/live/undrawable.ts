// What stands in place of a chart that cannot be drawn after a change.

import { escapeHtml } from "../page/html-text.ts";

/** Markup of a sentence; why: as the drawing threw it. */
export function undrawable(why: string): string {
  const reason = escapeHtml(why.replace(/[.\s]+$/, ""));
  return `<p class="undrawable">This chart cannot be drawn as the log is now (${reason}). Its figures are in the data under it.</p>`;
}
