// Text as Markdown (CommonMark and GFM): log text never becomes markup, a link or a heading.

import type { Text } from "./blocks.ts";
import { codePieces, pieces, visible, visibleLine } from "./visible.ts";

/**
 * One line of text in which nothing is markup. Escaped are the signs of CommonMark and GFM, "$" for mathematics,
 * and the sign that would make an address into a link ("https\://", "www\.", "a\@b").
 * @example escapeMarkdown("1. <b>*[x](y)")  // "1\\. \\<b\\>\\*\\[x\\](y)"
 */
export function escapeMarkdown(text: string): string {
  return escapeStart(escapeWithin(visibleLine(text)));
}

function escapeWithin(line: string): string {
  return (
    line
      .replace(/[\\`*_[\]<>|~$]/g, "\\$&")
      .replace(/&(?=#?\w+;)/g, "\\&")
      // The colon first: looking back from every letter takes time by the square of a long word.
      .replace(/:(?<=[A-Za-z][A-Za-z\d+.-]*:)(?=[\w/])/g, "\\:")
      .replace(/(?<=\b[Ww]{3})\.(?=[\w-])/g, "\\.")
      .replace(/@(?=\w)/g, "\\@")
  );
}

/** What would begin a heading, a list, a rule or a setext underline at the start of a line. */
function escapeStart(line: string): string {
  return line
    .replace(/^[#=](?!$)|^[#=]$|^[-+](?=[\s-]|$)|^:(?=-)/, "\\$&")
    .replace(/^(\d{1,9})([.)])(?=\s|$)/, "$1\\$2");
}

/** A text with its emphasis, on one line. */
export function markdownText(text: Text): string {
  const line = pieces(text)
    .map((piece) => {
      if (typeof piece === "string") return escapeWithin(spaced(piece));
      if ("code" in piece) return markdownCode(piece.code);
      return "strong" in piece ? marked(piece.strong, "**") : marked(piece.em, "*");
    })
    .join("")
    .trim();
  return escapeStart(line);
}

/** One line of text in which words between back-ticks are code as it stands, and all else is no markup. */
export function markdownWithCode(text: string): string {
  const line = codePieces(visibleLine(text))
    .map(({ code, words }) => (code ? markdownCode(words) : escapeWithin(words)))
    .join("");
  return escapeStart(line);
}

/** Emphasis that does not swallow the spaces around it; nothing for an empty piece. */
function marked(text: string, sign: string): string {
  const words = spaced(text);
  const inner = words.trim();
  if (inner === "") return words;
  return words.replace(inner, () => `${sign}${escapeWithin(inner)}${sign}`);
}

/** As visibleLine, but a space at an end stays: the next piece follows it. */
function spaced(piece: string): string {
  const line = visibleLine(piece);
  if (line === "") return piece === "" ? "" : " ";
  return `${/^\s/.test(piece) ? " " : ""}${line}${/\s$/.test(piece) ? " " : ""}`;
}

/** Lines as they stand, between fences longer than any run of backticks in them: nothing in them ends the block. */
export function markdownLines(text: string): string {
  const lines = visible(text).replace(/\r\n?/g, "\n");
  const longest = Math.max(2, ...(lines.match(/`+/g) ?? []).map((run) => run.length));
  const fence = "`".repeat(longest + 1);
  return `${fence}text\n${lines}\n${fence}`;
}

/** Code as it stands: fenced by more backticks than it holds. */
export function markdownCode(text: string): string {
  const line = visibleLine(text);
  const longest = Math.max(0, ...(line.match(/`+/g) ?? []).map((run) => run.length));
  const fence = "`".repeat(longest + 1);
  return longest > 0 ? `${fence} ${line} ${fence}` : `${fence}${line}${fence}`;
}
