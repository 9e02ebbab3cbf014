// Cut-outs of a formula, for messages.

/** In quotation marks, on one line, never a screenful. */
export function textSnippet(text: string | undefined): string {
  const plain = (text ?? "").replace(/\s+/gu, " ").trim();
  return plain.length > 40 ? `"${plain.slice(0, 40)}…"` : `"${plain}"`;
}
