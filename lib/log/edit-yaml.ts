// An edit of the log itself: what could be written, tried one after the other until the text reads back as it should.

import type { Issue, Place } from "../issue.ts";
import { changesMore, unreadableText } from "./complaints-edit.ts";
import { addTries } from "./edit-add.ts";
import { plainOf, samePlain } from "./edit-plain.ts";
import { noWorse, type Reading, readingOf } from "./edit-reading.ts";
import { removeTries } from "./edit-remove.ts";
import { spliced } from "./edit-splice.ts";
import type { Tries, Try } from "./edit-tries.ts";
import type { EditedText, LogEdit } from "./edit-types.ts";
import { writeTries } from "./edit-write.ts";
import { placeIn, sourceOf } from "./source.ts";
import type { LogText } from "./types.ts";

export function yamlEdited({ name, text }: LogText, edit: LogEdit): EditedText {
  const before = readingOf(name, text);
  if (!before) return { issues: [{ ...unreadableText(name), place: { file: name } }] };
  const ways = triesOf(before, edit);
  if ("refused" in ways) return { issues: [placed(ways.refused, name, edit)] };
  for (const one of ways.tries) {
    const now = spliced(text, one.splices);
    const after = readingOf(name, now);
    if (!after || !noWorse(before, after)) continue;
    if (!samePlain(plainOf(before.root, one.change), plainOf(after.root))) continue;
    return { text: now, issues: ways.notes, ...shownIn(name, now, one) };
  }
  return { issues: [placed(changesMore(ways.what), name, edit)] };
}

function triesOf(reading: Reading, edit: LogEdit): Tries {
  switch (edit.kind) {
    case "write":
      return writeTries(reading, edit.at, edit.text);
    case "add":
      return addTries(reading, edit);
    case "remove":
      return removeTries(reading, edit.path);
  }
}

function placed(issue: Issue, file: string, edit: LogEdit): Issue {
  return { ...issue, place: edit.kind === "write" ? edit.at : { file } };
}

function shownIn(name: string, text: string, { splices, shown }: Try): { readonly changed?: Place } {
  if (!shown) return {};
  const shift = splices
    .filter(({ start }) => start < shown.splice.start)
    .reduce((sum, { start, end, text }) => sum + text.length - (end - start), 0);
  return { changed: placeIn(sourceOf(name, text), shown.splice.start + shift + shown.from, shown.length) };
}
