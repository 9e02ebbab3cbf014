// Is this text at all, and of a size and depth that a log can have? Looked at before anything is parsed.

import type { Issue } from "../issue.ts";
import { emptyFile, hiddenCharacter, inUtf16, notText, tooDeep, tooLarge } from "./complaints-file.ts";
import type { Report } from "./node.ts";
import { placeIn, type Source } from "./source.ts";

export const sizeLimit = 5_000_000;
const depthLimit = 60;

/** Reports what is wrong; false when nothing can be read from the file. A table is a CSV file, which no log is begun for. */
export function checkText(source: Source, report: Report, table = false): boolean {
  const refuse = (complaint: Issue, offset = 0): false => {
    report(complaint, placeIn(source, offset, 1));
    return false;
  };
  const { text } = source;
  if (text.length > sizeLimit) {
    return refuse(tooLarge(`${(text.length / 1e6).toFixed(1)} million characters`, "5 million"));
  }
  const kind = kindOfFile(text);
  if (kind === utf16) return refuse(inUtf16());
  if (kind !== undefined) return refuse(notText(kind, table));
  if (/^[\s\uFEFF]*$/.test(text)) return refuse(emptyFile(table));
  const hidden = /[\x01-\x08\x0B\x0C\x0E-\x1F\x7F\u200B-\u200F\u202A-\u202E\u2066-\u2069]/.exec(text);
  if (hidden) {
    const name = `U+${hidden[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}`;
    report(hiddenCharacter(name), placeIn(source, hidden.index, 1));
  }
  return true;
}

/** For YAML only: reports the first place that lies too deep for any log, which a parser could choke on. */
export function checkDepth(source: Source, report: Report): boolean {
  const offset = tooDeepAt(source);
  if (offset !== undefined) report(tooDeep(String(depthLimit)), placeIn(source, offset, 1));
  return offset === undefined;
}

const utf16 = "text in UTF-16";

/** What a file that is no plain text seems to be; by the signatures that such files begin with. */
function kindOfFile(text: string): string | undefined {
  if (text.startsWith("PK"))
    return "a zip archive, or a spreadsheet or word processor's file (save it as CSV or text)";
  if (text.startsWith("%PDF")) return "a PDF";
  if (/^(\x89|\uFFFD)PNG|^GIF8|^(\uFFFD|\xFF)(\uFFFD|\xD8)(\uFFFD|\xFF)/.test(text)) return "a picture";
  if (text.startsWith("{\\rtf")) return "a word processor's file (save it as plain text)";
  if (/^\s*<(!doctype|html|\?xml)/i.test(text)) return "a web page or XML";
  const head = text.slice(0, 65_536);
  const zeros = head.split("\0").length - 1;
  // Every second byte of plain English is one there.
  if (zeros > head.length / 4) return utf16;
  const odd = head.match(/[\x01-\x08\x0E-\x1A\x1C-\x1F\uFFFD]/g)?.length ?? 0;
  if (zeros > 0 || text.includes("\0") || odd > head.length / 20) return "a program's own (binary) file";
  return undefined;
}

/** Offset of the first bracket or indent that lies too deep. Brackets count where a value could begin. */
function tooDeepAt(source: Source): number | undefined {
  let open = 0;
  for (const match of source.text.matchAll(/(?<=^|[\s,:[{])[[{]|[\]}]/gm)) {
    if (match[0] === "[" || match[0] === "{") open += 1;
    else open = Math.max(0, open - 1);
    if (open > depthLimit) return match.index;
  }
  const indents: number[] = [];
  for (const match of source.text.matchAll(/^([ \t]*)((?:[-?:][ \t]+)*)[^\s#]/gm)) {
    const indent = match[1]?.length ?? 0;
    while (indents.length > 0 && (indents.at(-1) ?? 0) >= indent) indents.pop();
    indents.push(indent);
    if (indents.length + (match[2] ?? "").replace(/\s/g, "").length > depthLimit) return match.index;
  }
  return undefined;
}
