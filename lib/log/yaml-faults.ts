// Plain words for what YAML cannot make sense of.

import type { Issue } from "../issue.ts";
import { decimalComma } from "./complaints-field.ts";
import { noFigure, strayMark } from "./complaints-figure.ts";
import { tooDeep } from "./complaints-file.ts";
import {
  backslash,
  badIndent,
  colonInText,
  commaMissing,
  hashInName,
  nameWithColon,
  noColon,
  noColonAfter,
  noSpaceAfterColon,
  noSpaceAfterDash,
  notYaml,
  oddKey,
  rowsOnOneLine,
  severalDocuments,
  signAtStart,
  tabAmongSpaces,
  textAfterQuote,
  tooManyRepeats,
  unclosedBracket,
  unclosedQuote,
} from "./complaints-yaml.ts";
import { lineList } from "./line-list.ts";
import { lostColon } from "./no-colon.ts";
import { indentOf, lineIndex, lineText, nextLine, type Source, shortened } from "./source.ts";
import { firstSlipped, longDashAt, valueAbove } from "./stands-wrong.ts";
import type { YamlFault } from "./yaml-document.ts";

/** The complaint, and the offset of what the founder should look at. */
export interface WordedFault {
  readonly complaint: Issue;
  readonly offset: number;
  /** What to take out before the rest is read; the line with what hangs below it unless said otherwise. */
  readonly span?: readonly [start: number, end: number];
}

export function wordsForFault(fault: YamlFault, source: Source): WordedFault {
  const offset = fault.opening ?? fault.offset;
  const index = lineIndex(source, offset);
  const line = lineText(source, index).slice(0, 400);
  const trimmed = shortened(line.trim());
  const value = /^\s*(?:- +)*[^:]+:\s+(.*)$/.exec(line)?.[1] ?? trimmed;
  const sign = source.text[offset] ?? "";
  const start = (source.lineStarts[index] ?? 0) + indentOf(line);
  const valueStart = (source.lineStarts[index] ?? 0) + line.length - value.length;
  const dashed = /:\s+-\s*(?:[,}]|$)/.exec(line);
  const here = (complaint: Issue): WordedFault => ({ complaint, offset });
  const onLine = (complaint: Issue): WordedFault => ({ complaint, offset: start });

  const dash = /^-([^\s-].*)$/.exec(line.trim());
  const asked = loneQuestionMark(source, index);
  if (asked !== undefined) return { complaint: noFigure("?"), offset: asked };
  const cut = hashedName(source, index);
  if (cut) return cut;
  const bullet = longDashAt(source, index);
  if (bullet) return bullet;
  const comma =
    fault.code === "BLOCK_IN_FLOW" && withoutComma(source.text.slice(offset, offset + 200), offset);
  if (comma) return comma;
  switch (fault.code) {
    case "MISSING_CHAR":
      if (/quote/.test(fault.message)) return here(unclosedQuote(sign));
      if (fault.opening !== undefined) return here(unclosedBracket(sign));
      if (/Sequence item without/.test(fault.message)) {
        const stands = firstSlipped(source, index);
        if (stands) return stands;
      }
      return (
        inBrackets(line, offset - (source.lineStarts[index] ?? 0), offset) ??
        onLine(colonless(trimmed, opensBlock(source, index)))
      );
    case "BAD_INDENT":
      if (fault.opening !== undefined) return here(unclosedBracket(sign));
      return firstSlipped(source, index) ?? onLine(badIndent(trimmed));
    case "BLOCK_AS_IMPLICIT_KEY": {
      if (dash?.[1] !== undefined) return onLine(noSpaceAfterDash(trimmed, `- ${dash[1]}`));
      const twice = /^\s*(?:- +)*([^:]+):\s+(\S.*:(?:\s.*|$))/.exec(line);
      const figure = /^\s*(?:- +)*[^:]+:\s+([\d.]+(?: ?[a-z]+)?):\s*(?:#.*)?$/i.exec(line)?.[1];
      if (figure !== undefined) return here(strayMark(`${figure}:`, ":", "end", figure));
      if (twice?.[1] && twice[2]) {
        const key = twice[1].trim();
        const name = /^((?!- )[^"'#]+):\s*(?:#.*)?$/.exec(line.trim())?.[1];
        if (name !== undefined && opensBlock(source, index)) return onLine(nameWithColon(name));
        const rows = twice[2]
          .replace(/\s+#.*$/, "")
          .replace(/^\((.*)\)$/, "$1")
          .trim();
        if (/^(retained|sands|sievings|scales|sieve sets)$/i.test(key))
          return here(rowsOnOneLine(key, `${key}: { ${shortened(rows)} }`));
        const text = twice[2].replace(/\s+#.*$/, "").replaceAll('"', "'");
        return here(colonInText(twice[1], shortened(text), /^\d/.test(text)));
      }
      return valueAbove(source, index) ?? onLine(badIndent(trimmed));
    }
    case "MULTILINE_IMPLICIT_KEY": {
      if (dash?.[1] !== undefined) return onLine(noSpaceAfterDash(trimmed, `- ${dash[1]}`));
      const close = /^([^:]+):(\S.*)$/.exec(line.trim());
      if (close) return onLine(noSpaceAfterColon(trimmed, `${close[1]}: ${close[2]}`));
      return onLine(colonless(trimmed, opensBlock(source, index)));
    }
    case "BAD_SCALAR_START":
      if (/^,\d/.test(value)) return here(decimalComma(value, `0.${value.slice(1)}`));
      return here(signAtStart(sign, shortened(value.replaceAll('"', "'"))));
    case "BAD_ALIAS":
    case "TAG_RESOLVE_FAILED":
      return here(signAtStart(sign, shortened(value.replaceAll('"', "'"))));
    case "BAD_DQ_ESCAPE":
      return here(backslash());
    case "MULTIPLE_DOCS":
      return here(severalDocuments());
    case "TAB_AS_INDENT":
      return onLine(tabAmongSpaces(lineList([index + 1])));
    case "REPEATS":
      return here(tooManyRepeats("100"));
    case "ODD_KEY":
      return here(oddKey());
    case "RESOURCE_EXHAUSTION":
      return here(tooDeep("60"));
    default:
      if (/[*&!>|]/.test(value[0] ?? "")) {
        return { complaint: signAtStart(value[0] ?? "", shortened(value)), offset: valueStart };
      }
      if (/scalar at node end/.test(fault.message)) {
        const complaint = afterQuote(value);
        if (complaint) return { complaint, offset: valueStart };
      }
      if (dashed) {
        const dashAt = dashed.index + dashed[0].indexOf("-");
        return { complaint: noFigure("-"), offset: (source.lineStarts[index] ?? 0) + dashAt };
      }
      return onLine(/^["'][^:]*$/.test(trimmed) ? colonless(trimmed) : unreadable(trimmed));
  }
}

/** "Bag #2:" with lines of its own below: what is left is no name. */
function hashedName(source: Source, index: number): WordedFault | undefined {
  for (const at of [index, index - 1]) {
    const line = at < 0 ? "" : lineText(source, at);
    const [, kept, rest] = /^\s*((?!- )[^\s:#"'][^:#]*?)(\s+#[^:#]*):\s*(?:#.*)?$/.exec(line) ?? [];
    if (kept === undefined || rest === undefined || !opensBlock(source, at)) continue;
    const offset = (source.lineStarts[at] ?? 0) + line.indexOf("#");
    return { complaint: hashInName(kept, `"${kept}${rest.trimEnd()}":`), offset };
  }
  return undefined;
}

/** "No. 40: ?", which begins a name for YAML: it is the line below that it stumbles at. */
function loneQuestionMark(source: Source, index: number): number | undefined {
  for (const at of [index, index - 1]) {
    const line = at < 0 ? "" : lineText(source, at);
    const before = /^[^#]*?:\s+(?=\?\s*(?:#.*)?$)/.exec(line)?.[0].length;
    if (before !== undefined) return (source.lineStarts[at] ?? 0) + before;
  }
  return undefined;
}

function colonless(line: string, block = false): Issue {
  if (line.includes(":")) return unreadable(line);
  if (block && line.length < 60) return noColonAfter(line, `${line}:`);
  return lostColon(line) ?? noColon(line);
}

/** In `{ "#200" 25, pan: 0.2 }` the fault is at the value, and the name in quotes before it is what to look at. */
function inBrackets(line: string, at: number, offset: number): WordedFault | undefined {
  const name = /(?:"[^"]*"|'[^']*')\s+$/.exec(line.slice(0, at))?.[0];
  const value = /^[^,}\]]+/.exec(line.slice(at))?.[0];
  const complaint = name && value && !value.includes(":") && lostColon(`${name.trim()} ${value.trim()}`);
  return complaint ? { complaint, offset: offset - name.length } : undefined;
}

/** Where nothing is wrong within a line, it is where it stands. */
function unreadable(line: string): Issue {
  if (/:\s+-\s*(?:[,}#]|$)/.test(line)) return noFigure("-");
  const plain = /^(?:- +)?[^:'"[\]{}&*!|>%@`#,]+:(?: +[^:'"[\]{}&*!|>%@`#]+)?$/.test(line);
  return plain ? badIndent(line) : notYaml(line);
}

/** True where the next line stands further in, or begins with a dash: the line is the name of a block. */
function opensBlock(source: Source, index: number): boolean {
  const at = nextLine(source, index);
  if (at === undefined) return false;
  const next = lineText(source, at);
  return indentOf(next) > indentOf(lineText(source, index)) || /^\s*- /.test(next);
}

/** "{ No. 30: 0.4 No. 40: 3.2 }" from the value on. */
function withoutComma(text: string, offset: number): WordedFault | undefined {
  const [, before, name, value] = /^([^\s,:{}[\]]+) +([^,:{}[\]\n]+): +([^\s,}\]]+)/.exec(text) ?? [];
  if (before === undefined) return undefined;
  return { complaint: commaMissing(before, `${before}, ${name}: ${value}`), offset };
}

/** `"My" sand`: a value that begins with a quote and does not end with it. */
function afterQuote(value: string): Issue | undefined {
  const quote = /^(["']).*\1.*\S/.exec(value)?.[1];
  const text = value.replace(/\s+#.*$/, "").trimEnd();
  if (quote === undefined || text.endsWith(quote)) return undefined;
  const other = quote === '"' ? "'" : '"';
  return text.includes(other) ? undefined : textAfterQuote(shortened(text), `${other}${text}${other}`);
}
