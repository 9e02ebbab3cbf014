// The files that travel with a page, each one click away, and the block under its title.

import { attachedFiles } from "./attachments.ts";
import type { Attachment, TitleLine } from "./blocks.ts";
import { escapeHtml, flowHtml, htmlList } from "./html-text.ts";

/** A list of links that hold the files themselves; nothing is fetched and no script runs. */
export function htmlAttachments(attachments: readonly Attachment[]): string {
  return htmlList(
    attachedFiles(attachments).map(({ name, bytes, says }) => {
      const shown = escapeHtml(name);
      return `<a download="${shown}" href="data:text/plain;charset=utf-8,${inAddress(bytes)}">${shown}</a>: ${flowHtml(says)}`;
    }),
  );
}

export function htmlTitleBlock(lines: readonly TitleLine[]): string {
  const each = lines.map(
    ({ label, text }) => `<div><dt>${escapeHtml(label)}</dt><dd>${flowHtml(text)}</dd></div>`,
  );
  return `<dl class="title-block">\n${each.join("\n")}\n</dl>`;
}

/**
 * The bytes in an address (RFC 2397): letters and most signs stand for themselves, so a log takes a fifth less than in
 * base64. Spaces at its end, line ends and whatever else an address would change are written by their number.
 */
function inAddress(bytes: Uint8Array): string {
  let text = "";
  for (const byte of bytes) text += PLAIN[byte]!;
  return text.replace(/ +$/, (spaces) => "%20".repeat(spaces.length));
}

const PLAIN = Array.from({ length: 256 }, (_, byte) => {
  const sign = String.fromCharCode(byte);
  return /[A-Za-z0-9 _.,:;()[\]{}=+*!/?~^|@$-]/.test(sign)
    ? sign
    : `%${byte.toString(16).toUpperCase().padStart(2, "0")}`;
});
