// What every complaint has: a code of the catalogue, whole sentences, what to do, and a place that lies in the text.

import { allMessages } from "../../lib/catalogue/messages.ts";
import type { Issue, Place } from "../../lib/index.ts";
import { sourceOf } from "../../lib/log/source.ts";
import { claim } from "./claim.ts";
import type { Texts } from "./texts.ts";

const codes = new Set(allMessages.map(({ code }) => code));

export function issuesHold(issues: readonly Issue[], texts: Texts): void {
  const starts = new Map(texts.map(({ name, text }) => [name, sourceOf(name, text).lineStarts]));
  const said = texts.map(({ text }) => text).join("\n");
  for (const issue of issues) {
    const { code, severity, message, remedy, place } = issue;
    claim(codes.has(code), `the code ${code} is in no catalogue`);
    claim(/^(error|warning|note)$/.test(severity), `${code} has the severity ${severity}`);
    claim(message.trim() === message && message !== "", `${code} has no message, or spaces around it`);
    claim(
      severity === "note" || (remedy !== undefined && remedy.trim() !== ""),
      `${code} says not what to do`,
    );
    if (!/undefined|NaN|object/i.test(said))
      claim(!/undefined|\bNaN\b|\[object/.test(`${message} ${remedy}`), () => `${code} says ${message}`);
    claim(place !== undefined, `${code} has no place`);
    placeHolds(code, place, texts, starts);
  }
}

/** A place within the file, or the file alone; of a file that is not there, its name alone. */
function placeHolds(
  code: string,
  place: Place,
  texts: Texts,
  starts: ReadonlyMap<string, readonly number[]>,
): void {
  const { file, line, column, offset, length = 0 } = place;
  const text = texts.find(({ name }) => name === file)?.text;
  const shown = `${code} at ${JSON.stringify(place)}`;
  claim(file !== "", `${code} has a place without a file`);
  if (line === undefined) {
    claim(column === undefined && offset === undefined, `${shown}: part of a place`);
    return;
  }
  claim(text !== undefined, `${shown}: in a file that is not there`);
  claim(offset !== undefined && column !== undefined, `${shown}: part of a place`);
  claim(Number.isInteger(offset) && Number.isInteger(length), `${shown}: no whole numbers`);
  claim(
    offset >= 0 && length >= 0 && offset + length <= text.length,
    `${shown}: outside ${text.length} characters`,
  );
  const lineStarts = starts.get(file)!;
  const mark = line === 1 && text.charCodeAt(0) === 0xfeff ? 1 : 0;
  const [from, to = text.length + 1] = [lineStarts[line - 1], lineStarts[line]];
  claim(from !== undefined && offset >= from && offset < to, `${shown}: the offset is not in the line`);
  claim(column === Math.max(1, offset - from + 1 - mark), `${shown}: the column is not that of the offset`);
}
