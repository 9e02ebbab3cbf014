// The files that travel with a page, each one click away, and the block under its title.

import { attachedFiles } from "./attachments.ts";
import type { Attachment, TitleLine } from "./blocks.ts";
import { escapeHtml, flowHtml, htmlList } from "./html-text.ts";

/** A list of links that hold the files themselves; nothing is fetched and no script runs. */
export function htmlAttachments(attachments: readonly Attachment[]): string {
  return htmlList(
    attachedFiles(attachments).map(({ name, bytes, says }) => {
      const shown = escapeHtml(name);
      return `<a download="${shown}" href="data:text/plain;charset=utf-8;base64,${base64(bytes)}">${shown}</a>: ${flowHtml(says)}`;
    }),
  );
}

export function htmlTitleBlock(lines: readonly TitleLine[]): string {
  const each = lines.map(
    ({ label, text }) => `<div><dt>${escapeHtml(label)}</dt><dd>${flowHtml(text)}</dd></div>`,
  );
  return `<dl class="title-block">\n${each.join("\n")}\n</dl>`;
}

/** In pieces, for a call takes no more than some ten thousand arguments. */
function base64(bytes: Uint8Array): string {
  const piece = 0x2000;
  let binary = "";
  for (let at = 0; at < bytes.length; at += piece) {
    binary += String.fromCharCode(...bytes.subarray(at, at + piece));
  }
  return btoa(binary);
}
