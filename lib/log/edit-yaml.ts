// An edit of the log itself: what could be written, tried one after the other until the text reads back as it should.

import type { Issue, Place } from "../issue.ts";
import { changesMore, noSuchPath, noValueHere, oddWriting, unreadableText } from "./complaints-edit.ts";
import { abridged } from "./edit-abridge.ts";
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

/**
 * Of a long log only the entry is read that the edit is about, with what stands beside it: the entries around are whole
 * lines of their own, so that what holds for it there holds in the log. Where that does not succeed the whole is read.
 */
export function yamlEdited({ name, text }: LogText, edit: LogEdit): EditedText {
  const short = abridged(name, text, edit);
  const inShort = short && madeIn(name, short.text, short.edit, true);
  if (short && inShort && "splices" in inShort) {
    const moved = inShort.splices.map((splice) => short.inWhole(splice));
    const splices = moved.flatMap((splice) => splice ?? []);
    const { shown, notes } = inShort;
    const at = shown ? splices[inShort.splices.indexOf(shown.splice)] : undefined;
    if (splices.length === moved.length) {
      return edited(name, text, {
        splices,
        notes,
        ...(shown && at ? { shown: { ...shown, splice: at } } : {}),
      });
    }
  }
  if (inShort && "code" in inShort && !readAgain.has(inShort.code))
    return { issues: [placed(inShort, name, edit)] };

  const made = madeIn(name, text, edit, false);
  return "splices" in made ? edited(name, text, made) : { issues: [placed(made, name, edit)] };
}

/** Refusals that the whole log may lift. */
const readAgain: ReadonlySet<string> = new Set(
  [unreadableText(""), noValueHere(""), noSuchPath(""), oddWriting(""), changesMore("")].map(
    ({ code }) => code,
  ),
);

type Made = Pick<Try, "splices" | "shown"> & { readonly notes: readonly Issue[] };

/** The first way to write the edit after which the text reads as it should; clean: only where nothing is wrong in it before. */
function madeIn(name: string, text: string, edit: LogEdit, clean: boolean): Made | Issue {
  const before = readingOf(name, text);
  if (!before || (clean && before.codes.length > 0)) return unreadableText(name);
  const ways = triesOf(before, edit);
  if ("refused" in ways) return ways.refused;
  for (const { splices, change, shown } of ways.tries) {
    const after = readingOf(name, spliced(text, splices));
    if (!after || !noWorse(before, after)) continue;
    if (samePlain(plainOf(before.root, change), plainOf(after.root))) {
      return { splices, notes: ways.notes, ...(shown ? { shown } : {}) };
    }
  }
  return changesMore(ways.what);
}

function edited(name: string, text: string, made: Made): EditedText {
  const now = spliced(text, made.splices);
  return { text: now, issues: made.notes, ...shownIn(name, now, made) };
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

function shownIn(name: string, text: string, { splices, shown }: Made): { readonly changed?: Place } {
  if (!shown) return {};
  const shift = splices
    .filter(({ start }) => start < shown.splice.start)
    .reduce((sum, { start, end, text }) => sum + text.length - (end - start), 0);
  return { changed: placeIn(sourceOf(name, text), shown.splice.start + shift + shown.from, shown.length) };
}
