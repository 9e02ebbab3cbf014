// A value or a name of the log written anew: in which spellings, and over which stretch.

import type { Place } from "../issue.ts";
import { alsoRepeated, nameTaken, nothingWritten, noValueHere } from "./complaints-edit.ts";
import { blockSpelling } from "./edit-block-text.ts";
import { type Found, foundAt } from "./edit-find.ts";
import { plainOf, timesIn } from "./edit-plain.ts";
import type { Reading } from "./edit-reading.ts";
import { type ScalarStyle, spellings, spellingsLike, styleAt } from "./edit-spelling.ts";
import type { Tries, Try } from "./edit-tries.ts";
import { type LogNode, plainName } from "./node.ts";

export function writeTries(reading: Reading, at: Place, text: string): Tries {
  const found = foundAt(reading.root, reading.text, at);
  if (!found) return { refused: noValueHere(at.file) };
  return found.kind === "key" ? keyTries(reading, found, text) : valueTries(reading, found, text);
}

function valueTries(reading: Reading, found: Found & { kind: "value" }, text: string): Tries {
  const { node, flow, inList } = found;
  const { offset = 0, length = 0 } = node.place;
  const times = timesIn(reading.root, node) - 1;
  const notes = times > 0 ? [alsoRepeated(String(times))] : [];
  const style = node.kind === "empty" ? "plain" : styleAt(reading.text, offset);
  const span =
    node.kind === "empty"
      ? emptySpan(reading.text, found)
      : { start: offset, end: offset + length, before: "" };
  const tries = valueSpellings(reading.text, node, text, style, flow, inList).map((spelt): Try => {
    const splice = { start: span.start, end: span.end, text: span.before + spelt };
    return {
      splices: [splice],
      change: { node, to: spelt.trim() === "" ? null : text },
      shown: { splice, from: span.before.length, length: spelt.length },
    };
  });
  return { tries, notes, what: text };
}

function valueSpellings(
  source: string,
  node: LogNode,
  text: string,
  style: ScalarStyle,
  flow: boolean,
  inList: boolean,
): string[] {
  if (text === "" && style === "plain" && !(flow && inList)) return [""];
  if (style === "block") {
    const block = blockSpelling(source, node.place, text);
    const { offset = 0, length = 0 } = node.place;
    const end = /[\r\n]*$/.exec(source.slice(offset, offset + length))?.[0] ?? "";
    const others = text === "" ? [""] : spellings(text, "plain", flow);
    return [...(block === undefined ? [] : [block]), ...others.map((other) => other + end)];
  }
  return node.kind === "text" ? spellingsLike(text, node.text, style, flow) : spellings(text, style, flow);
}

/** Behind the colon and one space, where there is one; a name without a colon gets one. */
function emptySpan(text: string, { node, keyPlace }: Found & { kind: "value" }) {
  const nameEnd = keyPlace ? (keyPlace.offset ?? 0) + (keyPlace.length ?? 0) : undefined;
  const colon = nameEnd === undefined ? undefined : /^\s*:/.exec(text.slice(nameEnd, nameEnd + 200));
  let start = node.place.offset ?? 0;
  if (nameEnd !== undefined) start = Math.max(start, nameEnd + (colon?.[0].length ?? 0));
  const missing = nameEnd !== undefined && !colon ? ": " : "";
  if (missing === "" && text[start] === "#") return beforeComment(text, start);
  if (missing === "" && text[start] === " ") start += 1;
  const before = missing !== "" || /[\s{[,]/.test(text[start - 1] ?? "\n") ? missing : " ";
  return { start, end: start, before };
}

/** In the blanks between colon or dash and the comment, so that a blank is left on either side. */
function beforeComment(text: string, comment: number) {
  const blanks = /[ \t]*$/.exec(text.slice(Math.max(0, comment - 200), comment))?.[0].length ?? 0;
  const start = comment - blanks + (blanks > 1 ? 1 : 0);
  return { start, end: start, before: blanks > 1 ? "" : " " };
}

function keyTries(reading: Reading, { entry, map, flow }: Found & { kind: "key" }, text: string): Tries {
  if (text.trim() === "") return { refused: nothingWritten(entry.key) };
  const taken = map.entries.some((other) => other !== entry && plainName(other.key) === plainName(text));
  if (taken) return { refused: nameTaken(text) };
  const { offset = 0, length = 0 } = entry.keyPlace;
  const to = {
    pairs: map.entries.map((one) => [one === entry ? text : one.key, plainOf(one.value)] as const),
  };
  const tries = spellings(text, styleAt(reading.text, offset), flow).map((spelt): Try => {
    const splice = { start: offset, end: offset + length, text: spelt };
    return { splices: [splice], change: { node: map, to }, shown: { splice, from: 0, length: spelt.length } };
  });
  return { tries, notes: [], what: text };
}
