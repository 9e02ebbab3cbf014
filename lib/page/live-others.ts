// From one page of a log to the others, where a server keeps them.

import { escapeHtml } from "./html-text.ts";
import type { LiveKeep } from "./live-setup.ts";

export const OTHERS_STYLE = `.live-others{margin-top:2.6rem;padding-top:1.1rem;border-top:1px solid var(--rule);font:.9rem/1.5 var(--sans)}
@media screen{.live-others+footer{margin-top:1.6rem}}`;

/** A list of links at the foot; empty for a page from a file. data-live: no part of the page as written. */
export function linksToOthers(keep: LiveKeep): string {
  if (keep.kind !== "server" || keep.others.length === 0) return "";
  const links = keep.others.map(
    ({ name, href, question }) =>
      `<li><a href="${escapeHtml(href)}">${escapeHtml(name)}</a>: ${escapeHtml(question)}</li>`,
  );
  return `<nav class="live-others" data-live aria-label="Other pages of this log">
<ul>
${links.join("\n")}
</ul>
</nav>`;
}
