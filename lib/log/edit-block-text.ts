// A text of several lines written anew in the form of the one that stood there: literal (|) or folded (>).

import type { Place } from "../issue.ts";
import { endOfLine } from "./edit-splice.ts";

/** Undefined where the form cannot hold the text. The head keeps its comment; its lines keep their indentation. */
export function blockSpelling(
  source: string,
  { offset = 0, length = 0 }: Place,
  text: string,
): string | undefined {
  const old = source.slice(offset, offset + length);
  const [, sign, comment] = /^([|>])[-+0-9]*([^\r\n]*)/.exec(old) ?? [];
  const indent = /[\r\n]([ \t]*)[^\s]/.exec(old)?.[1];
  if (
    text === "" ||
    !sign ||
    indent === undefined ||
    /^[\s]|[ \t]$/.test(text) ||
    /[\x00-\x09\x0B-\x1F\x7F]/.test(text)
  )
    return undefined;
  const body = text.replace(/\n+$/, "");
  const tail = text.length - body.length;
  const lines = (sign === ">" ? body.replace(/\n+/g, "$&\n") : body).split("\n");
  const chomp = tail === 0 ? "-" : tail === 1 ? "" : "+";
  const eol = endOfLine(source);
  const rest = /[\r\n]+$/.exec(old)?.[0] ?? "";
  const end = tail > 1 ? eol.repeat(tail) : rest;
  return `${sign}${chomp}${comment}${eol}${lines.map((line) => (line === "" ? "" : indent + line)).join(eol)}${end}`;
}
