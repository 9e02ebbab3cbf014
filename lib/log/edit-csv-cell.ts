// A text as a cell of a CSV file.

const unfit =
  /[\x00-\x08\x0B\x0C\x0E-\x1F\x7F\u200B-\u200F\u202A-\u202E\u2066-\u2069\uFEFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/;

/**
 * True where signs stand in it that a CSV file cannot hold or give back: controls, halves of pairs, and what cannot be
 * seen or turns the line round, which CSV has no escape for.
 */
export function csvUnfit(text: string): boolean {
  return unfit.test(text);
}

/** RFC 4180, 2.5 to 2.7: quotes around what holds a separator, a quote or a line end; a quote is written twice. */
export function csvCell(text: string, separator: string, quoted: boolean): string {
  const needed = text.includes(separator) || /["\r\n]/.test(text);
  return needed || quoted ? `"${text.replaceAll('"', '""')}"` : text;
}
