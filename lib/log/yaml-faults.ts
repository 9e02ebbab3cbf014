// Plain words for what YAML cannot make sense of.

import type { Issue } from "../issue.ts";
import { decimalComma } from "./complaints-field.ts";
import { noFigure, strayMark } from "./complaints-figure.ts";
import { tooDeep } from "./complaints-file.ts";
import {
  backslash,
  badIndent,
  colonInText,
  noColon,
  noSpaceAfterColon,
  noSpaceAfterDash,
  notYaml,
  oddKey,
  severalDocuments,
  signAtStart,
  tabAmongSpaces,
  tooManyRepeats,
  unclosedBracket,
  unclosedQuote,
} from "./complaints-yaml.ts";
import { lineList } from "./line-list.ts";
import { lostColon } from "./no-colon.ts";
import { indentOf, lineIndex, lineText, type Source } from "./source.ts";
import type { YamlFault } from "./yaml-document.ts";

/** The complaint, and the offset of what the founder should look at. */
export interface WordedFault {
  readonly complaint: Issue;
  readonly offset: number;
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
  switch (fault.code) {
    case "MISSING_CHAR":
      if (/quote/.test(fault.message)) return here(unclosedQuote(sign));
      if (fault.opening !== undefined) return here(unclosedBracket(sign));
      return inBrackets(line, offset - (source.lineStarts[index] ?? 0), offset) ?? onLine(colonless(trimmed));
    case "BAD_INDENT":
      if (fault.opening !== undefined) return here(unclosedBracket(sign));
      return onLine(badIndent(trimmed));
    case "BLOCK_AS_IMPLICIT_KEY": {
      if (dash?.[1] !== undefined) return onLine(noSpaceAfterDash(trimmed, `- ${dash[1]}`));
      const twice = /^\s*(?:- +)*([^:]+):\s+(\S.*:(?:\s.*|$))/.exec(line);
      const figure = /^\s*(?:- +)*[^:]+:\s+([\d.]+(?: ?[a-z]+)?):\s*(?:#.*)?$/i.exec(line)?.[1];
      if (figure !== undefined) return here(strayMark(`${figure}:`, ":", "end", figure));
      if (twice?.[1] && twice[2]) {
        const text = twice[2].replace(/\s+#.*$/, "").replaceAll('"', "'");
        return here(colonInText(twice[1], shortened(text), /^\d/.test(text)));
      }
      return nextLineIndented(source, index) ?? onLine(badIndent(trimmed));
    }
    case "MULTILINE_IMPLICIT_KEY": {
      if (dash?.[1] !== undefined) return onLine(noSpaceAfterDash(trimmed, `- ${dash[1]}`));
      const close = /^([^:]+):(\S.*)$/.exec(line.trim());
      if (close) return onLine(noSpaceAfterColon(trimmed, `${close[1]}: ${close[2]}`));
      return onLine(colonless(trimmed));
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
      if (dashed) {
        const dashAt = dashed.index + dashed[0].indexOf("-");
        return { complaint: noFigure("-"), offset: (source.lineStarts[index] ?? 0) + dashAt };
      }
      return onLine(/^["'][^:]*$/.test(trimmed) ? colonless(trimmed) : unreadable(trimmed));
  }
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

function colonless(line: string): Issue {
  if (line.includes(":")) return unreadable(line);
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

/** A value on one line and names below it, further in: it is the line below that stands wrong. */
function nextLineIndented(source: Source, index: number): WordedFault | undefined {
  const next = source.lineStarts.findIndex((_, at) => at > index && lineText(source, at).trim() !== "");
  if (next < 0) return undefined;
  const line = lineText(source, next);
  const offset = (source.lineStarts[next] ?? 0) + indentOf(line);
  return { complaint: badIndent(shortened(line.trim())), offset };
}

/** Long lines are cut, so that a message stays readable. */
function shortened(text: string): string {
  return text.length <= 60 ? text : `${text.slice(0, 57)}...`;
}
